package slantlight.scene.resolve;

import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Block;
import slantlight.scene.Eye;
import slantlight.scene.GroundZone;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;
import slantlight.scene.Outside;
import slantlight.scene.Room;
import slantlight.scene.Surface;

/** Turns a drawing whose up direction is not north into the world: clockwise by an azimuth. */
final class Turn {
  private final double cos;
  private final double sin;

  Turn(double azimuthDeg) {
    double a = ((azimuthDeg % 360) + 360) % 360;
    // Quarter turns stay exact, so that walls of a turned drawing still share their planes.
    boolean quarter = a % 90 == 0;
    this.cos = quarter ? Math.rint(Math.cos(Math.toRadians(a))) : Math.cos(Math.toRadians(a));
    this.sin = quarter ? Math.rint(Math.sin(Math.toRadians(a))) : Math.sin(Math.toRadians(a));
  }

  Vec2 of(Vec2 p) {
    return new Vec2(p.x() * cos + p.y() * sin, -p.x() * sin + p.y() * cos);
  }

  Vec3 of(Vec3 p) {
    return new Vec3(p.x() * cos + p.y() * sin, -p.x() * sin + p.y() * cos, p.z());
  }

  private List<Vec2> of(List<Vec2> ring) {
    return ring.stream().map(this::of).toList();
  }

  private Face of(Face f) {
    Frame r = f.frame();
    return new Face(
        new Frame(of(r.origin()), of(r.u()), of(r.v()), of(r.n())), f.outer(), f.holes());
  }

  Room of(Room r) {
    return new Room(
        r.id(), r.label(), r.use(), r.attention(), of(r.outline()), r.floor(), r.height());
  }

  Surface of(Surface s) {
    return s.withFace(of(s.face()));
  }

  Opening of(Opening o) {
    return o.withFace(of(o.face()));
  }

  Lamp of(Lamp l) {
    return l.placed(of(l.position()), of(l.aim()), of(l.c0()));
  }

  Eye of(Eye e) {
    return new Eye(e.id(), e.label(), e.roomId(), of(e.position()), e.seated());
  }

  Outside of(Outside o) {
    return new Outside(
        o.groundZ(),
        o.zones().stream()
            .map(
                z ->
                    new GroundZone(
                        z.id(),
                        z.label(),
                        z.kind(),
                        of(z.outline()),
                        z.z(),
                        z.reflectance(),
                        z.wet(),
                        z.wind()))
            .toList(),
        o.blocks().stream()
            .map(
                b ->
                    new Block(
                        b.id(),
                        b.label(),
                        b.faces().stream().map(this::of).toList(),
                        b.reflectance()))
            .toList());
  }
}
