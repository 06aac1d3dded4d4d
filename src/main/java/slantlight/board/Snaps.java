package slantlight.board;

import java.util.ArrayList;
import java.util.List;
import slantlight.board.CuttingPlan.Cut;
import slantlight.board.CuttingPlan.Sheet;

/**
 * In which order a board is snapped so that each piece comes off it at its turn and none that is
 * wanted later is cut through.
 */
final class Snaps {
  private static final double SAME = 1e-6;

  /** A cut shorter than this is a trim, not worth a line, m. */
  static final double TRIM = 3e-3;

  /**
   * A snap from edge to edge of what is in hand.
   *
   * @param across square across the board, else along it
   * @param size length or width of the part that is cut on, m
   * @param rest pieces that the other part is kept for
   */
  record Snap(boolean across, double size, List<Integer> rest) {}

  /** A part of the board that is still in one, with the pieces to come from it. */
  private record Part(double x0, double y0, double x1, double y1, List<Cut> pieces) {
    double length() {
      return x1 - x0;
    }

    double width() {
      return y1 - y0;
    }

    /** The pieces before a line, or behind it. */
    List<Cut> side(boolean across, double at, boolean before) {
      return pieces.stream().filter(c -> middle(c, across) < at == before).toList();
    }

    /** What lies before a line, or behind it. */
    Part cut(boolean across, double line, boolean before, List<Cut> left) {
      if (across) {
        return before ? new Part(x0, y0, line, y1, left) : new Part(line, y0, x1, y1, left);
      }
      return before ? new Part(x0, y0, x1, line, left) : new Part(x0, line, x1, y1, left);
    }

    /**
     * A line moved up to a piece that is alone on its side, so that the other side keeps the rest.
     */
    double close(Cut piece, boolean across, double at, boolean before) {
      if (side(across, at, before).size() > 1) {
        return at;
      }
      double size = across ? piece.length() : piece.width();
      if (before) {
        return Math.min(at, (across ? x0 : y0) + size);
      }
      return Math.max(at, (across ? x1 : y1) - size);
    }

    /** True when a line parts pieces and cuts through none. */
    boolean parts(boolean across, double at) {
      int before = 0;
      for (Cut c : pieces) {
        boolean low = to(c, across) <= at + SAME;
        if (!low && from(c, across) < at - SAME) {
          return false;
        }
        before += low ? 1 : 0;
      }
      return before > 0 && before < pieces.size();
    }
  }

  private final List<Part> parts = new ArrayList<>();

  private Snaps(Sheet sheet) {
    double length = sheet.stock().size().length();
    parts.add(new Part(0, 0, length, sheet.stock().size().width(), sheet.cuts()));
  }

  /** For each piece of a board, in their order, the snaps that bring it off. */
  static List<List<Snap>> of(Sheet sheet) {
    Snaps snaps = new Snaps(sheet);
    return sheet.cuts().stream().map(snaps::off).toList();
  }

  private List<Snap> off(Cut piece) {
    Part part = parts.stream().filter(p -> p.pieces.contains(piece)).findFirst().orElseThrow();
    parts.remove(part);
    List<Snap> out = new ArrayList<>();
    while (part.pieces.size() > 1) {
      part = snap(part, piece, out);
    }
    if (part.length() > piece.length() + TRIM) {
      out.add(new Snap(true, piece.length(), List.of()));
    }
    if (part.width() > piece.width() + TRIM) {
      out.add(new Snap(false, piece.width(), List.of()));
    }
    return out;
  }

  /** Along the piece's own sides if that parts it from others, else along another's. */
  private Part snap(Part part, Cut piece, List<Snap> out) {
    List<Cut> sides = new ArrayList<>(part.pieces);
    sides.remove(piece);
    sides.add(0, piece);
    for (Cut c : sides) {
      for (boolean across : new boolean[] {true, false}) {
        for (double at : new double[] {to(c, across), from(c, across)}) {
          if (part.parts(across, at)) {
            boolean before = middle(piece, across) < at;
            double line = part.close(piece, across, at, before);
            List<Cut> others = part.side(across, at, !before);
            parts.add(part.cut(across, line, !before, others));
            Part kept = part.cut(across, line, before, part.side(across, at, before));
            List<Integer> rest = others.stream().map(Cut::piece).toList();
            out.add(new Snap(across, across ? kept.length() : kept.width(), rest));
            return kept;
          }
        }
      }
    }
    throw new IllegalStateException("no snap parts " + piece + " from " + part);
  }

  private static double from(Cut c, boolean across) {
    return across ? c.x() : c.y();
  }

  private static double to(Cut c, boolean across) {
    return across ? c.x() + c.length() : c.y() + c.width();
  }

  private static double middle(Cut c, boolean across) {
    return (from(c, across) + to(c, across)) / 2;
  }
}
