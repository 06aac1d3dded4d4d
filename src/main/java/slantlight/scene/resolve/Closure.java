package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * Tells whether floor, walls and ceiling close a room. For a closed surface Gauss's theorem gives:
 * the vector areas add to nothing, and the volume computed along x, y and z is one and the same.
 */
final class Closure {
  private Closure() {}

  /** True when the room closes; adds a fault when it does not. */
  static boolean closed(Scope scope, Shell shell) {
    List<Face> faces = new ArrayList<>();
    faces.add(shell.floorDraft().whole);
    shell.walls().forEach(w -> faces.add(w.draft().whole));
    shell.ceilings().forEach(c -> faces.add(c.whole));
    Vec3 area = Vec3.ZERO;
    Vec3 volume = Vec3.ZERO;
    double whole = 0;
    // Measured from a corner of the room, so that a far origin costs no digits.
    Vec3 o = shell.floorDraft().frame().origin();
    for (Face f : faces) {
      Vec3 n = f.frame().n();
      Vec3 m = f.frame().toWorld(centroid(f)).minus(o);
      double a = f.area();
      whole += a;
      area = area.plus(n.times(a));
      volume = volume.plus(new Vec3(n.x() * m.x() * a, n.y() * m.y() * a, n.z() * m.z() * a));
    }
    double spread =
        Math.max(
            Math.abs(volume.x() - volume.z()),
            Math.max(Math.abs(volume.y() - volume.z()), Math.abs(volume.x() - volume.y())));
    boolean closed = area.length() < 1e-4 * whole && spread < 1e-4 * Math.abs(volume.z());
    if (!closed) {
      scope.fault(
          shell.file(),
          "ceiling",
          "floor, walls and ceiling of " + shell.id() + " do not close",
          "where the ceiling steps, add an upright polygon between the two heights");
    }
    return closed;
  }

  /** Centroid of a face, its holes left out. */
  private static Vec2 centroid(Face f) {
    Vec2 sum = f.centroid().times(Math.abs(Face.signedArea(f.outer())));
    for (List<Vec2> hole : f.holes()) {
      Face h = Face.of(f.frame(), hole);
      sum = sum.minus(h.centroid().times(Math.abs(Face.signedArea(hole))));
    }
    return sum.times(1 / f.area());
  }
}
