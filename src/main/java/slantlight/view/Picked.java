package slantlight.view;

import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Surface;
import slantlight.score.JointScore;

/**
 * What the pointer is on.
 *
 * @param at where on the surface, plane coordinates, m
 * @param joint the joint there, if there is one
 */
record Picked(Surface surface, Vec2 at, Optional<JointScore> joint) {
  /** A joint is caught this far beyond its feather, m. */
  private static final double REACH = 0.06;

  static Picked of(ViewModel model, Surface s, Vec2 at) {
    JointScore best = null;
    double nearest = Double.POSITIVE_INFINITY;
    for (JointScore j : model.score(s.id()).map(x -> x.joints()).orElse(java.util.List.of())) {
      double d = HouseShape.distance(at, j.joint().from(), j.joint().to());
      double half = model.featherWidth().applyAsDouble(j.joint()) / 2;
      if (d < half + REACH && d < nearest) {
        nearest = d;
        best = j;
      }
    }
    return new Picked(s, at, Optional.ofNullable(best));
  }

  /**
   * The first surface a ray meets from its inside; ceilings are met from above too where one of
   * their joints is, since those are drawn hung in the air.
   */
  static Optional<Picked> along(ViewModel model, Vec3 eye, Vec3 direction) {
    Picked best = null;
    double nearest = Double.POSITIVE_INFINITY;
    for (Surface s : model.house().surfaces()) {
      double toward = direction.dot(s.face().frame().n());
      double t = -s.face().frame().height(eye) / toward;
      if (!(t > 0) || t >= nearest) {
        continue;
      }
      Vec2 p = s.face().frame().toPlane(eye.plus(direction.times(t)));
      if (!s.face().contains(p)) {
        continue;
      }
      Picked found = of(model, s, p);
      boolean hung = s.face().frame().n().z() < -0.2 && found.joint().isPresent();
      if (toward < 0 || hung) {
        nearest = t;
        best = found;
      }
    }
    return Optional.ofNullable(best);
  }
}
