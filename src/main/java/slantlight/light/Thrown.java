package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec3;

/**
 * What a sun throws through an opening on a plane.
 *
 * @param rings convex and counter-clockwise, without overlap, plane coordinates
 * @param boxes bounds of each
 * @param lux illuminance of the plane within them for unit normal illuminance of the sun
 */
record Thrown(List<double[]> rings, List<double[]> boxes, double lux) {
  /**
   * What an opening throws, or null when it throws nothing on the plane's front side.
   *
   * @param within box of the plane on which it must fall
   * @param lit parts of the opening's plane through which this sun shines
   * @param between what inside may stand in its way
   */
  static Thrown on(
      Frame plane, double[] within, Aperture a, List<double[]> lit, Shade[] between, Vec3 sun) {
    double cos = sun.dot(plane.n());
    if (cos <= 1e-6 || lit.isEmpty()) {
      return null;
    }
    double slipU = -sun.dot(plane.u()) / cos;
    double slipV = -sun.dot(plane.v()) / cos;
    List<double[]> rings = new ArrayList<>();
    for (double[] part : lit) {
      double[] ring = on(plane, a.frame, part, slipU, slipV);
      if (ring.length > 0 && Rings.meet(Rings.bounds(ring), within)) {
        rings.add(ring);
      }
    }
    List<double[]> left = Shade.lit(rings, between, slipU, slipV);
    double through = a.transmittance(Beam.cosine(a, sun.x(), sun.y(), sun.z()));
    return left.isEmpty()
        ? null
        : new Thrown(left, left.stream().map(Rings::bounds).toList(), cos * through);
  }

  /** A ring of another plane moved along the beam, cut off where it lies behind this one. */
  private static double[] on(Frame plane, Frame other, double[] ring, double slipU, double slipV) {
    // Height of the other plane over this one, linear in the other's coordinates.
    double h0 = plane.height(other.origin());
    double hu = other.u().dot(plane.n());
    double hv = other.v().dot(plane.n());
    double[] above = Rings.clip(ring, hu, hv, h0);
    double[] out = new double[above.length];
    Vec3 o = other.origin().minus(plane.origin());
    for (int k = 0; k < 2; k++) {
      Vec3 axis = k == 0 ? plane.u() : plane.v();
      double slip = k == 0 ? slipU : slipV;
      double c0 = o.dot(axis) + slip * h0;
      double cu = other.u().dot(axis) + slip * hu;
      double cv = other.v().dot(axis) + slip * hv;
      for (int i = 0; i < above.length; i += 2) {
        out[i + k] = c0 + cu * above[i] + cv * above[i + 1];
      }
    }
    return Rings.oriented(out, true);
  }
}
