package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec3;

/**
 * Something convex that may keep the sun from places of a plane.
 *
 * @param corners along u and v of the plane's frame and away from it, of each in turn
 * @param solid true when they are of a body, false when they run round a flat face
 */
record Shade(double[] corners, boolean solid) {
  /** What lies nearer to a plane than this, m, is taken to lie in it and shades nothing of it. */
  static final double CLEAR = 1e-6;

  /**
   * A face, or the faces of a convex body.
   *
   * @param side 1 when the sun stands on the side of the frame's normal, -1 on the other
   */
  static Shade of(Frame plane, double side, List<Vec3> corners, boolean solid) {
    double[] out = new double[3 * corners.size()];
    for (int i = 0; i < corners.size(); i++) {
      Vec3 d = corners.get(i).minus(plane.origin());
      out[3 * i] = d.dot(plane.u());
      out[3 * i + 1] = d.dot(plane.v());
      out[3 * i + 2] = side * d.dot(plane.n());
    }
    return new Shade(out, solid);
  }

  /** The part of a ring where a height, linear in place, is positive. */
  static List<Vec3> above(List<Vec3> ring, ToDoubleFunction<Vec3> height) {
    List<Vec3> out = new ArrayList<>();
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      Vec3 from = ring.get(j);
      Vec3 to = ring.get(i);
      double a = height.applyAsDouble(from);
      double b = height.applyAsDouble(to);
      if (a > 0 != b > 0) {
        out.add(from.plus(to.minus(from).times(a / (a - b))));
      }
      if (b > 0) {
        out.add(to);
      }
    }
    return out;
  }

  /**
   * Its shadow on the plane, convex and counter-clockwise; empty when it does not come near.
   *
   * @param slipU by how much a beam from the sun moves along u for each metre toward the plane
   * @param within box of the plane
   */
  double[] thrown(double slipU, double slipV, double[] within) {
    double[] shadow = new double[2 * corners.length / 3];
    for (int i = 0, k = 0; i < corners.length; i += 3) {
      shadow[k++] = corners[i] + slipU * corners[i + 2];
      shadow[k++] = corners[i + 1] + slipV * corners[i + 2];
    }
    if (!Rings.meet(Rings.bounds(shadow), within)) {
      return new double[0];
    }
    return solid ? Rings.hull(shadow) : Rings.oriented(shadow, true);
  }

  /** Takes the shadows of some things from convex rings. */
  static List<double[]> lit(List<double[]> rings, Shade[] shades, double slipU, double slipV) {
    double[] within = Rings.bounds(rings);
    List<double[]> left = rings;
    for (int i = 0; i < shades.length && !left.isEmpty(); i++) {
      double[] shadow = shades[i].thrown(slipU, slipV, within);
      if (shadow.length > 0) {
        List<double[]> rest = new ArrayList<>();
        for (double[] ring : left) {
          Rings.addOutside(ring, shadow, rest);
        }
        left = rest;
      }
    }
    return left;
  }
}
