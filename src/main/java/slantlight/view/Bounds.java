package slantlight.view;

import org.joml.FrustumIntersection;
import org.joml.Vector3f;
import slantlight.geom.Vec3;
import slantlight.scene.Surface;

/** The box round a surface, world axes, m. */
record Bounds(Vector3f low, Vector3f high) {
  static Bounds of(Surface s) {
    Bounds b =
        new Bounds(new Vector3f(Float.POSITIVE_INFINITY), new Vector3f(Float.NEGATIVE_INFINITY));
    for (Vec3 p : s.face().corners()) {
      Vector3f v = point(p);
      b.low.min(v);
      b.high.max(v);
    }
    return b;
  }

  private static Vector3f point(Vec3 p) {
    return new Vector3f((float) p.x(), (float) p.y(), (float) p.z());
  }

  boolean in(FrustumIntersection view) {
    return view.testAab(low, high);
  }

  /** Distance of an eye from the box; 0 inside it. */
  double distance(Vec3 eye) {
    Vector3f at = point(eye);
    return new Vector3f(at).max(low).min(high).distance(at);
  }
}
