package slantlight.scene;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slantlight.geom.Face;
import slantlight.geom.Vec2;

/**
 * One flat surface of a room, seen from inside it. The face's normal points into the room; openings
 * and passages are holes of the face, and so is what a box covers; a hole may touch the outer ring
 * (a door on the floor).
 *
 * @param id stable: room id, slash, part, such as {@code great-room/ceiling}
 * @param label what a person calls it, such as "Great room ceiling"
 * @param boarded true when it is drywall and so is scored
 * @param framing the members behind it; present on every boarded surface
 * @param boards what may be hung; present on every boarded surface
 * @param level finish level fixed by the user, or empty for "auto"
 * @param covered regions that nobody sees (tile, cabinets, wardrobes), rings in plane coordinates
 * @param joints joints already up; when not empty they replace the computed layout
 */
public record Surface(
    String id,
    String label,
    String roomId,
    SurfaceKind kind,
    Face face,
    Paint paint,
    boolean boarded,
    Optional<Framing> framing,
    Optional<BoardOffer> boards,
    OptionalInt level,
    List<List<Vec2>> covered,
    List<GivenJoint> joints) {
  public Surface {
    covered = covered.stream().map(List::copyOf).toList();
    joints = List.copyOf(joints);
  }

  /** This surface with other boards on offer. */
  public Surface withBoards(BoardOffer offer) {
    return new Surface(
        id,
        label,
        roomId,
        kind,
        face,
        paint,
        boarded,
        framing,
        Optional.of(offer),
        level,
        covered,
        joints);
  }

  /** This surface in another place or shape. */
  public Surface withFace(Face newFace) {
    return new Surface(
        id, label, roomId, kind, newFace, paint, boarded, framing, boards, level, covered, joints);
  }

  /** This surface in another paint. */
  public Surface withPaint(Paint newPaint) {
    return new Surface(
        id, label, roomId, kind, face, newPaint, boarded, framing, boards, level, covered, joints);
  }

  /** This surface with its finish level fixed. */
  public Surface withLevel(int newLevel) {
    return new Surface(
        id,
        label,
        roomId,
        kind,
        face,
        paint,
        boarded,
        framing,
        boards,
        OptionalInt.of(newLevel),
        covered,
        joints);
  }

  /** This surface with joints already up. */
  public Surface withJoints(List<GivenJoint> newJoints) {
    return new Surface(
        id, label, roomId, kind, face, paint, boarded, framing, boards, level, covered, newJoints);
  }
}
