package slantlight.board;

import java.util.List;
import slantlight.geom.Vec2;
import slantlight.scene.BoardRun;
import slantlight.scene.JointKind;

/**
 * Boards on one surface and the joints they make.
 *
 * @param run the direction chosen, never AUTO
 * @param fasteners centres of the fasteners in the field of the boards, plane coordinates, m
 * @param reason why this direction and these boards, one sentence
 * @param notes rules that are broken or must be minded: GA-216 spacing, control joints, stagger
 */
public record Layout(
    String surfaceId,
    BoardRun run,
    List<PlacedBoard> boards,
    List<Joint> joints,
    List<Vec2> fasteners,
    String reason,
    List<String> notes) {
  public Layout {
    boards = List.copyOf(boards);
    joints = List.copyOf(joints);
    fasteners = List.copyOf(fasteners);
    notes = List.copyOf(notes);
  }

  /** A layout without notes. */
  public Layout(
      String surfaceId,
      BoardRun run,
      List<PlacedBoard> boards,
      List<Joint> joints,
      List<Vec2> fasteners,
      String reason) {
    this(surfaceId, run, boards, joints, fasteners, reason, List.of());
  }

  /** Length of the joints of one kind, m. */
  public double length(JointKind kind) {
    return joints.stream().filter(j -> j.kind() == kind).mapToDouble(Joint::length).sum();
  }
}
