package slantlight.board;

import java.util.List;
import slantlight.geom.Vec2;

/**
 * The smallest rectangle of board that a piece can be cut from. Where an opening or a slope takes
 * away a whole side of a piece it is smaller than the piece's place in its row.
 *
 * @param corners plane coordinates, m
 * @param length along the board, m
 * @param width across the board, m
 * @param tapered how many of its long edges meet the next row in a tapered joint, 0 to 2: these
 *     must be edges that the board was made with
 */
public record Blank(List<Vec2> corners, double length, double width, int tapered) {
  public Blank {
    corners = List.copyOf(corners);
  }

  /** A piece of which only the rectangle is known: longer than wide, no edge asked for. */
  static Blank of(List<Vec2> corners) {
    double a = corners.get(0).distance(corners.get(1));
    double b = corners.get(1).distance(corners.get(2));
    return new Blank(corners, Math.max(a, b), Math.min(a, b), 0);
  }
}
