package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.file.Compass;

/**
 * One flat piece of a ceiling over its plan: height z = z0 + gx x + gy y in drawing coordinates, m.
 */
record RoofFace(Polygon plan, double z0, double gx, double gy) {
  double z(Vec2 p) {
    return z0 + gx * p.x() + gy * p.y();
  }

  boolean flat() {
    return Math.hypot(gx, gy) < 1e-9;
  }

  /** Compass word of the downhill direction. */
  String side() {
    return Compass.word(Math.toDegrees(Math.atan2(-gx, -gy)));
  }

  /**
   * Frame with n down into the room. Flat: u east, v south, origin at the north-west of the plan.
   * Sloped: v downhill, so that rafters run along v, and the origin on the highest contour.
   */
  Frame frame() {
    Vec3 normal = new Vec3(gx, gy, -1).unit();
    Vec2 down = flat() ? new Vec2(0, -1) : new Vec2(-gx, -gy).unit();
    // n = u x v with n down and v downhill needs u to the left of downhill, seen from above.
    Vec2 along = new Vec2(-down.y(), down.x());
    double uMin = Double.POSITIVE_INFINITY;
    double vMin = Double.POSITIVE_INFINITY;
    for (Vec2 p : Plan.outer(plan)) {
      uMin = Math.min(uMin, p.dot(along));
      vMin = Math.min(vMin, p.dot(down));
    }
    Vec2 at = along.times(uMin).plus(down.times(vMin));
    return Frame.of(new Vec3(at.x(), at.y(), z(at)), new Vec3(along.x(), along.y(), 0), normal);
  }

  /** The face in the given frame of it. */
  List<Vec2> lifted(Frame frame, List<Vec2> ring) {
    List<Vec2> out = new ArrayList<>();
    for (Vec2 p : ring) {
      out.add(frame.toPlane(new Vec3(p.x(), p.y(), z(p))));
    }
    return out;
  }

  Face face() {
    Frame frame = frame();
    return new Face(
        frame,
        Plan.counterClockwise(lifted(frame, Plan.outer(plan))),
        Plan.holes(plan).stream().map(h -> lifted(frame, h)).toList());
  }
}
