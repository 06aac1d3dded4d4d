package slantlight.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import slantlight.board.RowFrame.Box;
import slantlight.board.RowFrame.Side;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.scene.Surface;

/** Boards in the order they are hung, each with what it is cut from and the cuts to make. */
public final class CutList {
  private CutList() {}

  /**
   * One board to hang.
   *
   * @param order place in the order of hanging over all surfaces, from 1
   * @param sheet number of the board it is cut from, from 1 in the order they are first cut
   * @param from that board
   * @param first order of the first piece cut from it: this one's own for a new board
   * @param cuts what to cut, in order, in the user's units, and what each rest is kept for; empty
   *     for a whole board, and for a rest that is used as it is
   */
  public record Entry(
      int order, CuttingPlan.Piece piece, int sheet, Stock from, int first, List<String> cuts) {
    public Entry {
      cuts = List.copyOf(cuts);
    }

    /** What to do, in words. */
    public String words() {
      if (cuts.isEmpty()) {
        return opensBoard() ? "whole" : "as it is";
      }
      return String.join("; ", cuts);
    }

    /**
     * What it is cut from, in words.
     *
     * @param name of a new board
     */
    public String source(Function<Stock, String> name) {
      return opensBoard() ? name.apply(from) : "rest of " + first;
    }

    /** True when a new board is cut for it, false when it comes from what is left of one. */
    private boolean opensBoard() {
      return first == order;
    }
  }

  /**
   * The cut list of a plan.
   *
   * @param length writes a length given in m in the user's units
   */
  public static List<Entry> of(CuttingPlan plan, DoubleFunction<String> length) {
    Entry[] out = new Entry[plan.pieces().size()];
    for (int s = 0; s < plan.sheets().size(); s++) {
      CuttingPlan.Sheet sheet = plan.sheets().get(s);
      List<Integer> orders = sheet.cuts().stream().map(CuttingPlan.Cut::order).toList();
      List<List<Snaps.Snap>> snaps = Snaps.of(sheet);
      for (int i = 0; i < orders.size(); i++) {
        CuttingPlan.Piece piece = plan.pieces().get(orders.get(i) - 1);
        List<String> cuts = snaps(snaps.get(i), length);
        cuts.addAll(cutOuts(piece, length));
        out[orders.get(i) - 1] =
            new Entry(orders.get(i), piece, s + 1, sheet.stock(), orders.get(0), cuts);
      }
    }
    return List.of(out);
  }

  private static List<String> snaps(List<Snaps.Snap> snaps, DoubleFunction<String> length) {
    List<String> out = new ArrayList<>();
    for (Snaps.Snap s : snaps) {
      String rest =
          s.rest().isEmpty()
              ? ""
              : ", the rest for "
                  + s.rest().stream().map(c -> "" + c.order()).collect(Collectors.joining(", "));
      out.add((s.across() ? "cut to " : "rip to ") + length.apply(s.size()) + rest);
    }
    return out;
  }

  /** What is cut out of a piece, in the user's units. */
  private static List<String> cutOuts(CuttingPlan.Piece piece, DoubleFunction<String> length) {
    Surface surface = piece.surface();
    RowFrame frame = RowFrame.of(surface.framing().orElseThrow(), piece.run());
    Box box = frame.box(piece.board().blank().corners());
    List<String> cuts = new ArrayList<>();
    for (List<Vec2> hole : surface.face().holes()) {
      addHole(cuts, frame.box(hole), box, length);
    }
    Face bare = Face.of(surface.face().frame(), surface.face().outer());
    for (Side side : frame.sides(bare)) {
      addOutline(cuts, side, box, length);
    }
    return cuts;
  }

  private static void addHole(
      List<String> cuts, Box hole, Box board, DoubleFunction<String> length) {
    double s0 = Math.max(hole.s0(), board.s0());
    double s1 = Math.min(hole.s1(), board.s1());
    double t0 = Math.max(hole.t0(), board.t0());
    double t1 = Math.min(hole.t1(), board.t1());
    if (s1 - s0 > Snaps.TRIM && t1 - t0 > Snaps.TRIM) {
      cuts.add(
          String.format(
              Locale.ROOT,
              "cut out %s x %s, %s from its start and %s from its first edge",
              length.apply(s1 - s0),
              length.apply(t1 - t0),
              length.apply(s0 - board.s0()),
              length.apply(t0 - board.t0())));
    }
  }

  /** A side of the outline that runs through the inside of the board: a slope or a step. */
  private static void addOutline(
      List<String> cuts, Side side, Box board, DoubleFunction<String> length) {
    double ds = side.s1() - side.s0();
    double dt = side.t1() - side.t0();
    double[] deep = within(side, board, Snaps.TRIM);
    if ((deep[1] - deep[0]) * Math.hypot(ds, dt) > Snaps.TRIM) {
      double[] in = within(side, board, 0);
      cuts.add(
          String.format(
              Locale.ROOT,
              "cut from %s along and %s over to %s along and %s over",
              length.apply(side.s0() + in[0] * ds - board.s0()),
              length.apply(side.t0() + in[0] * dt - board.t0()),
              length.apply(side.s0() + in[1] * ds - board.s0()),
              length.apply(side.t0() + in[1] * dt - board.t0())));
    }
  }

  /** Stretch of a side, in shares of it, that lies at least so deep inside a board. */
  private static double[] within(Side side, Box board, double depth) {
    double[] in = {0, 1};
    clip(in, side.s0(), side.s1() - side.s0(), board.s0() + depth, board.s1() - depth);
    clip(in, side.t0(), side.t1() - side.t0(), board.t0() + depth, board.t1() - depth);
    return in;
  }

  /** Narrows a stretch of a line to where start + x step lies between two bounds. */
  private static void clip(double[] in, double start, double step, double from, double to) {
    if (Math.abs(step) < 1e-12) {
      in[1] = start > from && start < to ? in[1] : in[0];
      return;
    }
    double a = (from - start) / step;
    double b = (to - start) / step;
    in[0] = Math.max(in[0], Math.min(a, b));
    in[1] = Math.min(in[1], Math.max(a, b));
  }
}
