package slantlight.light;

import java.util.List;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * An opening's outline as a sun throws it on a plane, cut off where the plane lies before the
 * opening.
 *
 * @param ring counter-clockwise, plane coordinates
 * @param box its bounds
 * @param lux illuminance of the plane within it for unit normal illuminance of the sun
 * @param shades boxes on the opening's plane beyond which nothing outside stands in this sun
 */
record Thrown(
    Aperture aperture, Vec3 sun, double[] ring, double[] box, double lux, List<double[]> shades) {
  /**
   * What an opening throws, or null when it throws nothing on the plane's front side.
   *
   * @param within box of the plane on which it must fall
   */
  static Thrown on(Frame plane, double[] within, Aperture a, Vec3 sun, Beam beam) {
    Vec3 n = plane.n();
    double cos = sun.dot(n);
    if (a.cloth != null || a.isBlack() || cos <= 1e-6 || sun.dot(a.frame.n()) >= -1e-9) {
      return null;
    }
    // Height of the opening's plane over this one, linear in the opening's coordinates.
    Frame g = a.frame;
    double h0 = plane.height(g.origin());
    double hu = g.u().dot(n);
    double hv = g.v().dot(n);
    double[] window = Rings.clip(a.filledBy(sun.x(), sun.y(), sun.z()), hu, hv, h0);
    if (window.length == 0) {
      return null;
    }
    Vec3 o = g.origin().minus(plane.origin());
    Vec3[] axes = {plane.u(), plane.v()};
    double[] ring = new double[window.length];
    for (int k = 0; k < 2; k++) {
      Vec3 axis = axes[k];
      double slip = sun.dot(axis) / cos;
      double c0 = o.dot(axis) - slip * h0;
      double cu = g.u().dot(axis) - slip * hu;
      double cv = g.v().dot(axis) - slip * hv;
      for (int i = 0; i < window.length; i += 2) {
        ring[i + k] = c0 + cu * window[i] + cv * window[i + 1];
      }
    }
    double[] box = Rings.bounds(ring);
    if (!Rings.meet(box, within)) {
      return null;
    }
    double lux = cos * a.transmittance(Beam.cosine(a, sun.x(), sun.y(), sun.z()));
    return new Thrown(a, sun, Rings.oriented(ring, true), box, lux, beam.shades(a, sun));
  }

  /**
   * The part of it that comes through a passage, or null when none does.
   *
   * @param corners of the passage, x, y and z of each in turn
   */
  Thrown through(double[] corners, Frame plane) {
    double[] passage = new double[2 * corners.length / 3];
    double cos = sun.dot(plane.n());
    for (int i = 0; i < passage.length; i += 2) {
      int k = 3 * i / 2;
      Vec3 p = new Vec3(corners[k], corners[k + 1], corners[k + 2]);
      double height = plane.height(p);
      if (height < -1e-6) {
        return this; // The plane cuts the passage: rays must tell.
      }
      Vec2 foot = plane.toPlane(p.minus(sun.times(height / cos)));
      passage[i] = foot.x();
      passage[i + 1] = foot.y();
    }
    double[] left = Rings.clip(ring, Rings.oriented(passage, true));
    return left.length == 0
        ? null
        : new Thrown(aperture, sun, left, Rings.bounds(left), lux, shades);
  }

  /** True when something outside may keep this sun from a point. */
  boolean maybeShaded(Vec3 p) {
    if (shades.isEmpty()) {
      return false;
    }
    double t =
        aperture.height(p.x(), p.y(), p.z()) / Beam.cosine(aperture, sun.x(), sun.y(), sun.z());
    Vec3 at = p.plus(sun.times(t));
    double u = aperture.footU(at.x(), at.y(), at.z());
    double v = aperture.footV(at.x(), at.y(), at.z());
    for (double[] shade : shades) {
      if (u >= shade[0] && u <= shade[2] && v >= shade[1] && v <= shade[3]) {
        return true;
      }
    }
    return false;
  }

  /** False when nothing of it falls into a box. */
  boolean meets(double[] own) {
    return Rings.meet(box, own);
  }
}
