package slantlight.decide;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Block;
import slantlight.scene.Eye;
import slantlight.scene.GroundZone;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;
import slantlight.scene.Outside;
import slantlight.scene.Room;
import slantlight.scene.Surface;

/**
 * A rotation about an axis through the origin (Rodrigues' formula).
 *
 * @param axis unit vector, world
 * @param angle right-handed about the axis, radians
 */
record Turn(Vec3 axis, double angle) {
  /** A turn of a plan: clockwise seen from above, as azimuth runs. */
  static Turn clockwise(double angle) {
    return new Turn(Vec3.DOWN, angle);
  }

  Vec3 direction(Vec3 w) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return w.times(c).plus(axis.cross(w).times(s)).plus(axis.times(axis.dot(w) * (1 - c)));
  }

  /**
   * The house turned on its lot with everything drawn around it (blocks, water, paving). What lies
   * far off stays: sun, skyline, weather.
   */
  House house(House h) {
    List<Room> rooms = new ArrayList<>();
    for (Room r : h.rooms()) {
      rooms.add(
          new Room(
              r.id(), r.label(), r.use(), r.attention(), ring(r.outline()), r.floor(), r.height()));
    }
    List<Surface> surfaces = h.surfaces().stream().map(s -> s.withFace(face(s.face()))).toList();
    List<Opening> openings = h.openings().stream().map(o -> o.withFace(face(o.face()))).toList();
    List<Lamp> lamps = new ArrayList<>();
    for (Lamp l : h.lamps()) {
      lamps.add(l.placed(direction(l.position()), direction(l.aim()), direction(l.c0())));
    }
    List<Eye> eyes = new ArrayList<>();
    for (Eye e : h.eyes()) {
      eyes.add(new Eye(e.id(), e.label(), e.roomId(), direction(e.position()), e.seated()));
    }
    return new House(
        h.name(),
        h.note(),
        h.site(),
        rooms,
        surfaces,
        openings,
        lamps,
        outside(h.outside()),
        eyes,
        h.rates(),
        h.prescribed(),
        h.scale());
  }

  private Outside outside(Outside o) {
    List<GroundZone> zones = new ArrayList<>();
    for (GroundZone z : o.zones()) {
      zones.add(
          new GroundZone(
              z.id(),
              z.label(),
              z.kind(),
              ring(z.outline()),
              z.z(),
              z.reflectance(),
              z.wet(),
              z.wind()));
    }
    List<Block> blocks = new ArrayList<>();
    for (Block b : o.blocks()) {
      blocks.add(
          new Block(
              b.id(), b.label(), b.faces().stream().map(this::face).toList(), b.reflectance()));
    }
    return new Outside(o.groundZ(), zones, blocks);
  }

  private Face face(Face f) {
    Frame frame =
        new Frame(
            direction(f.frame().origin()),
            direction(f.frame().u()),
            direction(f.frame().v()),
            direction(f.frame().n()));
    return new Face(frame, f.outer(), f.holes());
  }

  private List<Vec2> ring(List<Vec2> ring) {
    return ring.stream()
        .map(p -> direction(new Vec3(p.x(), p.y(), 0)))
        .map(p -> new Vec2(p.x(), p.y()))
        .toList();
  }
}
