package slantlight.board;

import java.util.List;
import slantlight.geom.Vec2;
import slantlight.scene.BoardRun;

/**
 * Boards on one surface and the joints they make.
 *
 * @param run the direction chosen, never AUTO
 * @param fasteners centres of the fasteners in the field of the boards, plane coordinates, m
 * @param reason why this direction and these boards, one sentence
 */
public record Layout(
    String surfaceId,
    BoardRun run,
    List<PlacedBoard> boards,
    List<Joint> joints,
    List<Vec2> fasteners,
    String reason) {
  public Layout {
    boards = List.copyOf(boards);
    joints = List.copyOf(joints);
    fasteners = List.copyOf(fasteners);
  }
}
