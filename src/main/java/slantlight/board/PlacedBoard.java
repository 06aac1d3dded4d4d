package slantlight.board;

import java.util.List;
import slantlight.geom.Vec2;
import slantlight.scene.BoardSize;

/**
 * One board in place.
 *
 * @param number order of hanging on its surface, from 1
 * @param stock the smallest size on offer that fills its place; {@link CuttingPlan} says what it is
 *     cut from
 * @param outline corners of its place in its row, plane coordinates, m, before cut-outs
 * @param area area left after cut-outs, m2
 * @param blank what has to be cut from a board for it
 */
public record PlacedBoard(
    int number, BoardSize stock, List<Vec2> outline, double area, Blank blank) {
  public PlacedBoard {
    outline = List.copyOf(outline);
  }

  /** A board that fills its place. */
  public PlacedBoard(int number, BoardSize stock, List<Vec2> outline, double area) {
    this(number, stock, outline, area, Blank.of(outline));
  }
}
