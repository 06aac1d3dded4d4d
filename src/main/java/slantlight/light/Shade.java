package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import slantlight.geom.Face;
import slantlight.geom.Rings;
import slantlight.geom.Vec3;

/**
 * A face outside that may keep the sun from an opening.
 *
 * @param corners along u and v of the opening's frame and outward from its plane, of each in turn
 */
record Shade(double[] corners) {
  /** Faces nearer to the glass than this, m, are its own wall. */
  private static final double CLEAR = 1e-6;

  /** What of a face lies beyond the plane of an opening's glass; no corners when nothing does. */
  static Shade of(Aperture a, Face face) {
    List<double[]> out = new ArrayList<>();
    List<Vec3> ring = face.corners();
    double[] last = in(a, ring.get(ring.size() - 1));
    for (Vec3 p : ring) {
      double[] next = in(a, p);
      double from = last[2] - a.reveal - CLEAR;
      double to = next[2] - a.reveal - CLEAR;
      if (from > 0 != to > 0) {
        double t = from / (from - to);
        out.add(
            new double[] {
              last[0] + t * (next[0] - last[0]),
              last[1] + t * (next[1] - last[1]),
              last[2] + t * (next[2] - last[2])
            });
      }
      if (to > 0) {
        out.add(next);
      }
      last = next;
    }
    return new Shade(out.stream().flatMapToDouble(DoubleStream::of).toArray());
  }

  private static double[] in(Aperture a, Vec3 p) {
    return new double[] {
      a.footU(p.x(), p.y(), p.z()), a.footV(p.x(), p.y(), p.z()), -a.height(p.x(), p.y(), p.z())
    };
  }

  /**
   * Bounds of its shadow on the opening's plane: least u, least v, greatest u, greatest v.
   *
   * @param slipU by how much a beam from the sun moves along u for each metre inward
   */
  double[] thrown(double slipU, double slipV) {
    double[] shadow = new double[2 * corners.length / 3];
    for (int i = 0, k = 0; i < corners.length; i += 3) {
      shadow[k++] = corners[i] + slipU * corners[i + 2];
      shadow[k++] = corners[i + 1] + slipV * corners[i + 2];
    }
    return Rings.bounds(shadow);
  }
}
