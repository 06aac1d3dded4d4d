package slantlight.light;

import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * How much of a patch the sun lights: the opening's outline is thrown onto the patch and clipped,
 * so that the lit area is exact where nothing else stands in the way; what does is found by rays.
 */
final class SunPatch {
  /** Tests along a side of a lit polygon that something cuts. */
  private static final int LATTICE = 8;

  private final Beam beam;

  SunPatch(Beam beam) {
    this.beam = beam;
  }

  /**
   * Illuminance of a patch by the beam of a sun of unit normal illuminance.
   *
   * @param outlooks openings that may throw light on it
   */
  double illuminance(Patch patch, Outlook[] outlooks, Vec3 sun) {
    double cos = sun.dot(patch.normal());
    if (cos <= 1e-6 || sun.z() <= 0) {
      return 0;
    }
    double sum = 0;
    for (Outlook o : outlooks) {
      Aperture a = o.aperture();
      if (a.cloth == null && sun.dot(a.frame.n()) < -1e-9) {
        double area = litArea(patch, o, sun, cos);
        if (area > 0) {
          sum += area * a.transmittance(Beam.cosine(a, sun.x(), sun.y(), sun.z()));
        }
      }
    }
    return cos * sum / patch.area();
  }

  private double litArea(Patch patch, Outlook outlook, Vec3 sun, double cos) {
    Aperture a = outlook.aperture();
    Frame f = patch.frame();
    Frame g = a.frame;
    Vec3 n = f.n();
    // Height of the opening's plane over the patch's, linear in the opening's coordinates.
    double h0 = f.height(g.origin());
    double hu = g.u().dot(n);
    double hv = g.v().dot(n);
    double[] window = a.filledBy(sun.x(), sun.y(), sun.z());
    window = Rings.clip(window, hu, hv, h0);
    if (window.length == 0) {
      return 0;
    }
    Vec3 o = g.origin().minus(f.origin());
    Vec3[] axes = {f.u(), f.v()};
    double[] thrown = new double[window.length];
    for (int k = 0; k < 2; k++) {
      Vec3 axis = axes[k];
      double slip = sun.dot(axis) / cos;
      double c0 = o.dot(axis) - slip * h0;
      double cu = g.u().dot(axis) - slip * hu;
      double cv = g.v().dot(axis) - slip * hv;
      for (int i = 0; i < window.length; i += 2) {
        thrown[i + k] = c0 + cu * window[i] + cv * window[i + 1];
      }
    }
    double[] box = Rings.bounds(thrown);
    double[] own = patch.box();
    if (box[0] >= own[2] || box[2] <= own[0] || box[1] >= own[3] || box[3] <= own[1]) {
      return 0;
    }
    thrown = Rings.oriented(thrown, true);
    double area = 0;
    double[] lit = null;
    for (double[] ring : patch.rings()) {
      double[] part = Rings.clip(ring, thrown);
      if (part.length > 0) {
        area += Rings.area(part);
        lit = lit == null ? part : lit;
      }
    }
    return area > 1e-9 ? area * open(patch, outlook, lit, sun) : 0;
  }

  /** Share of a lit polygon that nothing but the opening limits. */
  private double open(Patch patch, Outlook outlook, double[] lit, Vec3 sun) {
    double[] m = Rings.middle(lit);
    boolean first = reached(patch, outlook, m[0], m[1], sun);
    boolean even = true;
    for (int i = 0; even && i < lit.length; i += 2) {
      double u = lit[i] + (m[0] - lit[i]) * 0.03;
      double v = lit[i + 1] + (m[1] - lit[i + 1]) * 0.03;
      even = reached(patch, outlook, u, v, sun) == first;
    }
    return even ? (first ? 1 : 0) : openByLattice(patch, outlook, lit, sun, first);
  }

  private double openByLattice(
      Patch patch, Outlook outlook, double[] lit, Vec3 sun, boolean otherwise) {
    double[] b = Rings.bounds(lit);
    int seen = 0;
    int asked = 0;
    for (int j = 0; j < LATTICE; j++) {
      for (int i = 0; i < LATTICE; i++) {
        double u = b[0] + (b[2] - b[0]) * (i + 0.5) / LATTICE;
        double v = b[1] + (b[3] - b[1]) * (j + 0.5) / LATTICE;
        if (Rings.inside(lit, u, v)) {
          asked++;
          seen += reached(patch, outlook, u, v, sun) ? 1 : 0;
        }
      }
    }
    return asked == 0 ? (otherwise ? 1 : 0) : (double) seen / asked;
  }

  private boolean reached(Patch patch, Outlook outlook, double u, double v, Vec3 sun) {
    Vec3 p = patch.frame().toWorld(new Vec2(u, v), Interior.LIFT);
    return beam.reaches(
        outlook.aperture(), outlook.clear(), p.x(), p.y(), p.z(), sun.x(), sun.y(), sun.z());
  }
}
