package slantlight.sky;

import slantlight.geom.Vec3;

/**
 * Sun and sky mirrored by level water, ice or wet paving, roughened by wind.
 *
 * <p>Facets tilt by a Gaussian of slopes, equal in all directions, whose mean square follows the
 * wind: {@code 0.003 + 0.00512 W} (Cox and Munk, "Measurement of the roughness of the sea surface
 * from photographs of the sun's glitter", JOSA 44, 1954, clean surface, W at 12.5 m). Luminance of
 * the glitter is their {@code L = En R P / (4 cos^4(beta) cos(theta))}, times Smith's masking for
 * Gaussian slopes (Smith, "Geometrical shadowing of a random rough surface", IEEE Trans. AP 15,
 * 1967), without which grazing light would not conserve energy. Light mirrored twice is left out.
 *
 * @param index refractive index
 * @param slopeVariance mean square slope of the facets, both directions together
 */
public record WaterMirror(double index, double slopeVariance) {
  /** Roughness left to a film of water on paving or to ice: as water without wind. */
  public static final double CALM_VARIANCE = 0.003;

  public WaterMirror {
    if (!(index > 1 && slopeVariance > 0)) {
      throw new IllegalArgumentException(
          "a mirror needs an index above 1 and a positive slope variance, not "
              + index
              + " and "
              + slopeVariance);
    }
  }

  /**
   * Open water under wind.
   *
   * @param wind m/s at 12.5 m
   */
  public static WaterMirror water(double wind) {
    return new WaterMirror(Fresnel.WATER, CALM_VARIANCE + 0.00512 * Math.max(0, wind));
  }

  /** Smooth ice. */
  public static WaterMirror ice() {
    return new WaterMirror(Fresnel.ICE, CALM_VARIANCE);
  }

  /** Reflectance of the level surface toward a cosine of incidence. */
  public double reflectance(double cosTheta) {
    return Fresnel.reflectance(Math.max(0, Math.min(1, cosTheta)), index);
  }

  /**
   * Luminance of the sun's glitter per lx of beam normal illuminance, cd/m2 per lx (1/sr).
   *
   * @param sun unit vector from the water toward the sun
   * @param out unit vector from the water toward the viewer, upward
   */
  public double glitter(Vec3 sun, Vec3 out) {
    return glitter(sun.x(), sun.y(), sun.z(), out.x(), out.y(), out.z());
  }

  /** As {@link #glitter(Vec3, Vec3)}, by components. */
  public double glitter(double sx, double sy, double sz, double ox, double oy, double oz) {
    double hz = sz + oz;
    if (sz <= 0 || oz <= 0) {
      return 0;
    }
    double hx = sx + ox;
    double hy = sy + oy;
    double slope2 = (hx * hx + hy * hy) / (hz * hz);
    double exponent = slope2 / slopeVariance;
    if (exponent > 60) {
      return 0;
    }
    double density = Math.exp(-exponent) / (Math.PI * slopeVariance);
    double sec2 = 1 + slope2;
    double cosOmega = Math.sqrt(Math.max(0, (1 + sx * ox + sy * oy + sz * oz) / 2));
    double shown = 1 / (1 + masking(sz) + masking(oz));
    return Fresnel.reflectance(Math.min(1, cosOmega), index)
        * density
        * sec2
        * sec2
        * shown
        / (4 * oz);
  }

  /** Smith's Lambda for Gaussian slopes toward a direction of vertical component z. */
  private double masking(double z) {
    double a = z / Math.sqrt(Math.max(1e-12, (1 - z * z) * slopeVariance));
    if (a > 3) {
      return 0;
    }
    return (Math.exp(-a * a) / (a * Math.sqrt(Math.PI)) - complementaryError(a)) / 2;
  }

  /** erfc for x >= 0 within 1.5e-7 (Abramowitz and Stegun, 7.1.26). */
  private static double complementaryError(double x) {
    double t = 1 / (1 + 0.3275911 * x);
    double p =
        t
            * (0.254829592
                + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
    return p * Math.exp(-x * x);
  }
}
