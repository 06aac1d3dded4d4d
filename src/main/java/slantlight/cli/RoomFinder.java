package slantlight.cli;

import java.util.Optional;
import slantlight.geom.Face;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Room;
import slantlight.scene.Surface;

/** Finds the room that a point is in. */
final class RoomFinder {
  private final House house;

  RoomFinder(House house) {
    this.house = house;
  }

  /**
   * The room around a point: straight up and straight down a face of the room turns toward it.
   *
   * @return empty when the point is outside, above, below or inside something solid
   */
  Optional<Room> around(Vec3 p) {
    return house.rooms().stream()
        .filter(r -> turnsTo(r, p, Vec3.UP) && turnsTo(r, p, Vec3.DOWN))
        .findFirst();
  }

  private boolean turnsTo(Room room, Vec3 p, Vec3 d) {
    double nearest = Double.POSITIVE_INFINITY;
    boolean front = false;
    for (Surface s : house.surfaces()) {
      if (!s.roomId().equals(room.id())) {
        continue;
      }
      Face face = s.face();
      double facing = face.frame().n().dot(d);
      if (Math.abs(facing) < 1e-9) {
        continue;
      }
      double t = -face.frame().height(p) / facing;
      Vec3 at = p.plus(d.times(t));
      // Openings count as part of the face: one may stand under a skylight.
      if (t >= 0 && t < nearest && Face.inside(face.outer(), face.frame().toPlane(at))) {
        nearest = t;
        front = facing < 0;
      }
    }
    return front;
  }
}
