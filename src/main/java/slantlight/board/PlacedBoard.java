package slantlight.board;

import java.util.List;
import slantlight.geom.Vec2;
import slantlight.scene.BoardSize;

/**
 * One board in place.
 *
 * @param number order of hanging on its surface, from 1
 * @param stock the size it is cut from
 * @param outline its bounding rectangle's corners in plane coordinates, m, before cut-outs
 * @param area area left after cut-outs, m2
 */
public record PlacedBoard(int number, BoardSize stock, List<Vec2> outline, double area) {
  public PlacedBoard {
    outline = List.copyOf(outline);
  }
}
