package slantlight.scene.resolve;

import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/** Tells whether a point of a room is inside something made of free polygons, such as a stair. */
final class Solidity {
  /** Skew to the axes, so that no ray runs along a wall or through an edge of a drawing. */
  private static final List<Vec3> RAYS =
      List.of(
          new Vec3(0.9937, 0.0731, 0.0853),
          new Vec3(-0.9911, 0.0917, -0.0967),
          new Vec3(0.0871, 0.9923, -0.0877),
          new Vec3(-0.0713, -0.9941, 0.0811),
          new Vec3(0.0919, -0.0797, 0.9926),
          new Vec3(-0.0853, 0.0893, -0.9923));

  private Solidity() {}

  /** True when most of what is seen from the point is seen from behind. */
  static boolean inside(Shell shell, Vec3 p) {
    int behind = 0;
    for (Vec3 ray : RAYS) {
      behind += seesBack(shell.drafts(), p, ray) ? 1 : 0;
    }
    return 2 * behind > RAYS.size();
  }

  private static boolean seesBack(List<Draft> drafts, Vec3 p, Vec3 ray) {
    double nearest = Double.POSITIVE_INFINITY;
    boolean back = false;
    for (Draft d : drafts) {
      double toward = ray.dot(d.frame().n());
      if (Math.abs(toward) < 1e-9) {
        continue;
      }
      double t = -d.frame().height(p) / toward;
      if (t > 1e-9 && t < nearest && hit(d, p.plus(ray.times(t)))) {
        nearest = t;
        back = toward > 0;
      }
    }
    return back;
  }

  private static boolean hit(Draft d, Vec3 world) {
    Vec2 at = d.frame().toPlane(world);
    return d.whole.contains(at) && d.holes.stream().noneMatch(h -> Face.inside(h, at));
  }
}
