package slantlight.score;

import java.util.ArrayList;
import java.util.List;
import slantlight.board.Joint;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.SamplePoint;
import slantlight.scene.Surface;

/** Followed places on a surface: along a joint, or at a spot. */
final class JointPath {
  /**
   * Distance of a sample in front of its surface, m: clear of rounding, far below any ridge width.
   */
  private static final double LIFT = 0.001;

  private JointPath() {}

  /** Midpoints of equal steps no longer than {@code spacing} along a joint, covered parts too. */
  static List<Vec2> steps(Joint joint, double spacing) {
    int n = Math.max(1, (int) Math.ceil(joint.length() / spacing - 1e-9));
    List<Vec2> out = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      out.add(joint.from().lerp(joint.to(), (i + 0.5) / n));
    }
    return out;
  }

  /** True when a place of the surface is behind tile, cabinets or the like. */
  static boolean covered(Surface surface, Vec2 at) {
    return surface.covered().stream().anyMatch(ring -> Face.inside(ring, at));
  }

  /**
   * Sample at a place of a surface.
   *
   * @param along unit direction in the plane that becomes v; u is across it
   */
  static SamplePoint sample(Surface surface, Vec2 at, Vec2 along) {
    Frame plane = surface.face().frame();
    Vec3 v = plane.u().times(along.x()).plus(plane.v().times(along.y()));
    Vec3 u = v.cross(plane.n());
    return new SamplePoint(new Frame(plane.toWorld(at, LIFT), u, v, plane.n()), surface.roomId());
  }
}
