package slantlight.board;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import slantlight.board.RowFrame.Box;
import slantlight.board.Run.Span;
import slantlight.geom.Vec2;
import slantlight.scene.BoardRun;
import slantlight.scene.Framing;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/**
 * Where the screws go: on every member behind a board and along its ends, single layer.
 *
 * <p>Spacing: 12 in on ceilings; on walls 16 in where members are 16 in apart or closer, else 12 in
 * (trade guides); never nearer to an edge than 3/8 in (Gypsum Association).
 */
public final class Fasteners {
  private static final double INCH = 0.0254;

  /** Distance from a board's edge, m: 3/8 in is the least allowed. */
  static final double EDGE = 0.01;

  /** Screws nearer than this to a board's edge lie under the joint's compound, m. */
  private static final double UNDER_TAPE = 0.06;

  private Fasteners() {}

  /**
   * Largest distance between screws on one member, m.
   *
   * @param spacing of the members, m
   */
  public static double maxSpacing(SurfaceKind kind, double spacing) {
    boolean wide = spacing > 16.1 * INCH;
    return kind == SurfaceKind.WALL && !wide ? 16 * INCH : 12 * INCH;
  }

  /** Every screw of the boards on a surface, plane coordinates, m. */
  public static List<Vec2> all(Surface surface, List<PlacedBoard> boards) {
    return place(surface, boards, 0);
  }

  /** Screws away from the edges of their boards, those that are finished as spots. */
  static List<Vec2> field(Surface surface, List<PlacedBoard> boards) {
    return place(surface, boards, UNDER_TAPE);
  }

  /** Screws on the members of a surface whose joints, not boards, are known. */
  static List<Vec2> onMembers(Surface surface) {
    return place(surface, List.of(new PlacedBoard(1, null, surface.face().outer(), 0)), UNDER_TAPE);
  }

  private static List<Vec2> place(Surface surface, List<PlacedBoard> boards, double clear) {
    Framing framing = surface.framing().orElseThrow();
    RowFrame frame = RowFrame.of(framing, BoardRun.ACROSS_FRAMING);
    Columns columns = new Columns(frame.sides(surface.face()));
    double step = maxSpacing(surface.kind(), framing.spacing());
    Map<List<Double>, List<Run>> rows = new HashMap<>();
    TreeSet<Screw> out = new TreeSet<>();
    for (PlacedBoard b : boards) {
      Box box = frame.box(b.outline());
      List<Double> row = List.of(box.t0(), box.t1());
      List<Run> runs = rows.get(row);
      if (runs == null) {
        runs = Run.inRow(columns, box.t0(), box.t1());
        rows.put(row, runs);
      }
      for (double s : lines(framing, box.s0(), box.s1())) {
        if (s - box.s0() < clear || box.s1() - s < clear) {
          continue;
        }
        for (Run run : runs) {
          for (Span chord : Span.joined(run.cut(s))) {
            addChord(out, s, chord, step, clear);
          }
        }
      }
    }
    List<Vec2> points = new ArrayList<>();
    for (Screw x : out) {
      points.add(frame.toPlane(x.s * 1e-4, x.t * 1e-4));
    }
    return points;
  }

  /** A place in tenths of a millimetre, so that boards that share it share the screw. */
  private record Screw(long s, long t) implements Comparable<Screw> {
    @Override
    public int compareTo(Screw o) {
      int c = Long.compare(s, o.s);
      return c == 0 ? Long.compare(t, o.t) : c;
    }
  }

  private static void addChord(Set<Screw> out, double s, Span chord, double step, double clear) {
    double lo = chord.from() + EDGE;
    double hi = chord.to() - EDGE;
    if (hi <= lo) {
      return;
    }
    int gaps = Math.max(1, (int) Math.ceil((hi - lo) / step - 1e-9));
    for (int i = 0; i <= gaps; i++) {
      double t = lo + (hi - lo) * i / gaps;
      if (t - chord.from() >= clear && chord.to() - t >= clear) {
        out.add(new Screw(Math.round(s * 1e4), Math.round(t * 1e4)));
      }
    }
  }

  /** Both ends, a little inside, and every member between that is not already served by an end. */
  private static List<Double> lines(Framing framing, double s0, double s1) {
    List<Double> out = new ArrayList<>(List.of(s0 + EDGE));
    for (double m : Ground.members(framing, s0 + 4 * EDGE, s1 - 4 * EDGE)) {
      out.add(m);
    }
    if (s1 - s0 > 2 * EDGE) {
      out.add(s1 - EDGE);
    }
    return out;
  }
}
