package slantlight.scene;

import java.util.Optional;
import slantlight.geom.Face;

/**
 * A hole in a surface through which light comes.
 *
 * @param id stable, such as {@code great-room/W1}
 * @param label what a person calls it, such as "south slider"
 * @param surfaceId the surface whose face it is a hole of
 * @param toRoomId the room behind a passage; the hole in that room's surface is cut by the reader
 * @param face the hole, in its surface's frame (normal into the room)
 * @param transmittance visible transmittance of the glass at normal incidence, 1 for a passage
 * @param panes panes of glass, 0 for a passage or an empty hole, 1 or 2 (3 is treated as 2)
 * @param frameShare share of the hole taken by frame and bars, 0 to 1
 * @param revealDepth distance from the inner wall face to the glass plane, m
 */
public record Opening(
    String id,
    String label,
    String roomId,
    OpeningKind kind,
    String surfaceId,
    Optional<String> toRoomId,
    Face face,
    double transmittance,
    int panes,
    double frameShare,
    double revealDepth,
    Optional<Shade> shade) {

  /** This opening in another place or shape. */
  public Opening withFace(Face newFace) {
    return new Opening(
        id,
        label,
        roomId,
        kind,
        surfaceId,
        toRoomId,
        newFace,
        transmittance,
        panes,
        frameShare,
        revealDepth,
        shade);
  }

  /** This opening behind a shade or film. */
  public Opening withShade(Shade newShade) {
    return new Opening(
        id,
        label,
        roomId,
        kind,
        surfaceId,
        toRoomId,
        face,
        transmittance,
        panes,
        frameShare,
        revealDepth,
        Optional.of(newShade));
  }
}
