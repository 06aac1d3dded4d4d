package slantlight.board;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
  record Snap(boolean across, double size, List<Cut> rest) {}

  /** A part of the board that is still in one, with the pieces to come from it. */
  private record Part(double x0, double y0, double x1, double y1, List<Cut> pieces) {
    double length() {
      return x1 - x0;
    }

    double width() {
      return y1 - y0;
    }

    /** The pieces before a line, or behind it. */
    List<Cut> side(Line line, boolean before) {
      return pieces.stream().filter(c -> line.isBehind(c) == before).toList();
    }

    /** What lies before a line, or behind it. */
    Part cut(Line line, boolean before, List<Cut> left) {
      if (line.across) {
        return before ? new Part(x0, y0, line.at, y1, left) : new Part(line.at, y0, x1, y1, left);
      }
      return before ? new Part(x0, y0, x1, line.at, left) : new Part(x0, line.at, x1, y1, left);
    }

    /**
     * A line moved up to a piece that is alone on its side, so that the other side keeps the rest.
     */
    Line close(Cut piece, Line line, boolean before) {
      if (side(line, before).size() > 1) {
        return line;
      }
      double size = line.across ? piece.length() : piece.width();
      double at =
          before
              ? Math.min(line.at, (line.across ? x0 : y0) + size)
              : Math.max(line.at, (line.across ? x1 : y1) - size);
      return new Line(line.across, at);
    }

    /** True when a line parts pieces and cuts through none. */
    boolean isPartedBy(Line line) {
      int before = 0;
      for (Cut c : pieces) {
        boolean low = line.to(c) <= line.at + SAME;
        if (!low && line.from(c) < line.at - SAME) {
          return false;
        }
        before += low ? 1 : 0;
      }
      return before > 0 && before < pieces.size();
    }
  }

  /** Where a board may be snapped: square across it or along it, m from its edge. */
  private record Line(boolean across, double at) {
    /** Along the sides of a piece. */
    static Stream<Line> of(Cut c) {
      return Stream.of(
          new Line(true, c.x() + c.length()),
          new Line(true, c.x()),
          new Line(false, c.y() + c.width()),
          new Line(false, c.y()));
    }

    double from(Cut c) {
      return across ? c.x() : c.y();
    }

    double to(Cut c) {
      return across ? c.x() + c.length() : c.y() + c.width();
    }

    boolean isBehind(Cut c) {
      return (from(c) + to(c)) / 2 < at;
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
    Line found =
        Stream.concat(Stream.of(piece), part.pieces.stream())
            .flatMap(Line::of)
            .filter(part::isPartedBy)
            .findFirst()
            .orElseThrow();
    boolean before = found.isBehind(piece);
    Line line = part.close(piece, found, before);
    List<Cut> rest = part.side(found, !before);
    parts.add(part.cut(line, !before, rest));
    Part kept = part.cut(line, before, part.side(found, before));
    out.add(new Snap(line.across, line.across ? kept.length() : kept.width(), rest));
    return kept;
  }
}
