package slantlight.sight;

import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import slantlight.scene.Paint;

/**
 * How a painted surface reflects: a diffuse body under a rough clear lobe.
 *
 * <p>The body gets what the lobe lets through on the way in and out: {@code k (1-E(i)) (1-E(o)) /
 * (pi (1-Emean))}, with E the lobe's albedo (Kelemen and Szirmay-Kalos, "A microfacet based coupled
 * specular-matte BRDF model", Eurographics 2001 short papers). It is reciprocal and with k up to 1
 * never gives back more than arrives. k follows from the light reflectance value, which is measured
 * with the specular part included at 8 degrees: {@code LRV = E(8) + k (1-E(8))}; paint darker than
 * its own surface reflection has no body at all.
 *
 * <p>Directions are unit vectors in the frame of the surface, z along its normal.
 */
public final class Coating {
  /**
   * Root mean square slope of the stipple that a short-nap roller leaves, about 3 degrees (from
   * memory). A glossmeter reads a smooth drawdown; on a wall an eye some metres away sees the lobe
   * widened by the stipple, which it does not resolve. For Gaussian slopes alpha^2 = 2 sigma^2, and
   * independent slopes add in squares.
   */
  public static final double STIPPLE_SLOPE = 0.05;

  private static final double MEASURED_COS = Math.cos(Math.toRadians(8));
  private static final Map<Double, GlossLobe> BY_GLOSS = new ConcurrentHashMap<>();
  private static final Map<GlossLobe, Albedo> ALBEDOS = new ConcurrentHashMap<>();

  private final double bodyShare;
  private final double bodyScale;
  private final GlossLobe lobe;
  private final Albedo albedo;

  private Coating(double bodyShare, GlossLobe lobe, Albedo albedo) {
    this.bodyShare = bodyShare;
    this.bodyScale = bodyShare / (Math.PI * (1 - albedo.mean()));
    this.lobe = lobe;
    this.albedo = albedo;
  }

  /** A coat of paint. */
  public static Coating of(Paint paint) {
    return of(paint, 0);
  }

  /**
   * A coat of paint over something that makes it dry rougher, such as joint compound.
   *
   * @param roughnessGain share added to the lobe's roughness, 0 or more
   */
  public static Coating of(Paint paint, double roughnessGain) {
    GlossLobe fitted = BY_GLOSS.computeIfAbsent(paint.sheen().gloss60(), GlossLobe::ofGloss60);
    double rolled = Math.hypot(fitted.roughness(), Math.sqrt(2) * STIPPLE_SLOPE);
    double roughness = rolled * (1 + roughnessGain);
    GlossLobe lobe = new GlossLobe(GlossLobe.PAINT_INDEX, Math.min(1, roughness));
    Albedo albedo = ALBEDOS.computeIfAbsent(lobe, Albedo::of);
    double mirrored = albedo.at(MEASURED_COS);
    return new Coating(Math.max(0, (paint.lrv() - mirrored) / (1 - mirrored)), lobe, albedo);
  }

  /** A perfectly matt surface without a lobe, for first-order estimates and tests. */
  public static Coating matt(double reflectance) {
    return new Coating(reflectance, null, Albedo.NONE);
  }

  /** Coatings are equal when they reflect every light alike. */
  @Override
  public boolean equals(Object o) {
    return o instanceof Coating c && bodyShare == c.bodyShare && Objects.equals(lobe, c.lobe);
  }

  @Override
  public int hashCode() {
    return Objects.hash(bodyShare, lobe);
  }

  /** Reflectance k of the body under the lobe. */
  public double bodyShare() {
    return bodyShare;
  }

  /** Bidirectional reflectance of the body, 1/sr, by the cosines of incidence and view. */
  public double body(double iz, double oz) {
    if (iz <= 0 || oz <= 0) {
      return 0;
    }
    return bodyScale * (1 - albedo.at(iz)) * (1 - albedo.at(oz));
  }

  /** Bidirectional reflectance of the lobe, 1/sr. */
  public double lobe(double ix, double iy, double iz, double ox, double oy, double oz) {
    return lobe == null ? 0 : lobe.reflectance(ix, iy, iz, ox, oy, oz);
  }

  /** Bidirectional reflectance of body and lobe together, 1/sr. */
  public double reflectance(double ix, double iy, double iz, double ox, double oy, double oz) {
    return body(iz, oz) + lobe(ix, iy, iz, ox, oy, oz);
  }

  /**
   * What one direction brings into every reflectance it takes part in, worked out once.
   *
   * @param cos its cosine to the normal; 0 when it lies behind the surface
   * @param passed share of its light that gets past the lobe
   * @param mask masking of the lobe's facets
   */
  public record Side(double cos, double passed, double mask) {}

  /** One direction, of light or of view, by its cosine to the normal. */
  public Side side(double cos) {
    double c = Math.max(0, cos);
    return new Side(c, 1 - albedo.at(c), lobe == null ? 0 : lobe.masking(c));
  }

  /** Fresnel factor of the lobe between two directions, by the square of their sum's length. */
  public double fresnel(double h2) {
    return lobe == null ? 0 : lobe.fresnel(h2);
  }

  /**
   * Bidirectional reflectance, 1/sr, between two directions whose sides are known.
   *
   * @param h2 squared length of the sum of the two unit vectors
   * @param fresnel {@link #fresnel} of {@code h2}
   */
  public double reflectance(Side in, Side out, double h2, double fresnel) {
    if (in.cos <= 0 || out.cos <= 0) {
      return 0;
    }
    double body = bodyScale * in.passed * out.passed;
    return lobe == null
        ? body
        : body + fresnel * lobe.facets(in.cos, in.mask, out.cos, out.mask, h2);
  }

  /** Share of light from a direction that comes back in all, by its cosine of incidence. */
  public double directionalAlbedo(double iz) {
    double e = albedo.at(iz);
    return e + bodyShare * (1 - e);
  }

  /** Roughness alpha of the lobe; NaN without one. */
  public double roughness() {
    return lobe == null ? Double.NaN : lobe.roughness();
  }

  /** Albedo of a lobe by the cosine of incidence, tabulated in its root, and its diffuse mean. */
  private static final class Albedo {
    private static final int STEPS = 64;
    static final Albedo NONE = new Albedo(new float[STEPS + 1]);

    private final float[] byRoot;
    private final double mean;

    private Albedo(float[] byRoot) {
      this.byRoot = byRoot;
      int n = 512;
      double sum = 0;
      for (int i = 0; i < n; i++) {
        double mu = (i + 0.5) / n;
        sum += 2 * mu * at(mu) / n;
      }
      this.mean = sum;
    }

    static Albedo of(GlossLobe lobe) {
      float[] table = new float[STEPS + 1];
      for (int i = 0; i <= STEPS; i++) {
        double root = Math.max(0.02, (double) i / STEPS);
        table[i] = (float) lobe.albedo(root * root);
      }
      return new Albedo(table);
    }

    double mean() {
      return mean;
    }

    double at(double cosTheta) {
      double x = Math.sqrt(Math.max(0, Math.min(1, cosTheta))) * STEPS;
      int i = Math.min(STEPS - 1, (int) x);
      return byRoot[i] + (byRoot[i + 1] - byRoot[i]) * (x - i);
    }
  }
}
