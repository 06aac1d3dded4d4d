package slantlight.sight;

import slantlight.sky.Fresnel;

/**
 * Sheen of a rough clear coat: the microfacet lobe of Walter, Marschner, Li and Torrance,
 * "Microfacet models for refraction through rough surfaces" (EGSR 2007), with the GGX distribution,
 * Smith's height-correlated masking (Heitz, JCGT 3, 2014) and unpolarised Fresnel reflectance.
 *
 * <p>Directions are unit vectors in the frame of the surface, z along its normal. Light that meets
 * two facets is left out, so the lobe never gives back more than arrives.
 *
 * @param index refractive index of the binder
 * @param roughness alpha of GGX: tangent of the facet tilt that half the light stays within
 */
public record GlossLobe(double index, double roughness) {
  /** Index of paint binders: acrylic 1.48 to 1.50, alkyd 1.50 to 1.53. */
  public static final double PAINT_INDEX = 1.5;

  /** Smoothest lobe that can be integrated. */
  public static final double LEAST = 0.0005;

  private static final double MOST = 1.0;

  public GlossLobe {
    if (!(index > 1 && roughness >= LEAST && roughness <= MOST)) {
      throw new IllegalArgumentException(
          "a lobe needs an index above 1 and a roughness from 0.0005 to 1, not "
              + index
              + " and "
              + roughness);
    }
  }

  /** Bidirectional reflectance from a direction of light to a direction of view, 1/sr. */
  public double reflectance(double ix, double iy, double iz, double ox, double oy, double oz) {
    if (iz <= 0 || oz <= 0) {
      return 0;
    }
    double hx = ix + ox;
    double hy = iy + oy;
    double hz = iz + oz;
    double h2 = hx * hx + hy * hy + hz * hz;
    return fresnel(h2) * facets(iz, masking(iz), oz, masking(oz), h2);
  }

  /**
   * Fresnel reflectance of the facets that mirror one direction into another.
   *
   * @param h2 squared length of the sum of the two unit vectors, 0 to 4
   */
  double fresnel(double h2) {
    return Fresnel.reflectance(Math.min(1, Math.sqrt(h2) / 2), index);
  }

  /** Smith's masking of a direction by its cosine, as {@link #facets} takes it. */
  double masking(double cosTheta) {
    double a2 = roughness * roughness;
    return Math.sqrt(a2 + (1 - a2) * cosTheta * cosTheta);
  }

  /**
   * The lobe without its Fresnel factor, 1/sr: distribution and masking.
   *
   * @param maskI masking of {@code iz}, and {@code maskO} of {@code oz}
   * @param h2 squared length of the sum of the two directions
   */
  double facets(double iz, double maskI, double oz, double maskO, double h2) {
    double a2 = roughness * roughness;
    double hz = iz + oz;
    // d = 1 + (alpha^2 - 1) cos^2 of the facet's tilt, times h2; GGX is alpha^2 / (pi d^2), and
    // the masking carries the factor 1 / (4 cos cos).
    double d = h2 + (a2 - 1) * hz * hz;
    return a2 * h2 * h2 / (2 * Math.PI * d * d * (oz * maskI + iz * maskO));
  }

  /**
   * Share of light from a direction that the lobe sends back, by integration over facets.
   *
   * @param cosTheta cosine of the angle of incidence, above 0
   */
  public double albedo(double cosTheta) {
    double ix = Math.sqrt(Math.max(0, 1 - cosTheta * cosTheta));
    double a2 = roughness * roughness;
    int rings = 64;
    int parts = 48;
    double sum = 0;
    for (int r = 0; r < rings; r++) {
      // Equal shares of D cos over the facets: tan^2 = alpha^2 e / (1 - e).
      double e = (r + 0.5) / rings;
      double tan2 = a2 * e / (1 - e);
      double hz = 1 / Math.sqrt(1 + tan2);
      double sin = Math.sqrt(Math.max(0, 1 - hz * hz));
      double d = 1 + (a2 - 1) * hz * hz;
      double weight = Math.PI * d * d / (a2 * hz);
      for (int p = 0; p < parts; p++) {
        double azimuth = Math.PI * (p + 0.5) / parts;
        double hx = sin * Math.cos(azimuth);
        double hy = sin * Math.sin(azimuth);
        double cosOmega = hx * ix + hz * cosTheta;
        double oz = 2 * cosOmega * hz - cosTheta;
        if (cosOmega <= 0 || oz <= 0) {
          continue;
        }
        double ox = 2 * cosOmega * hx - ix;
        double oy = 2 * cosOmega * hy;
        sum += reflectance(ix, 0, cosTheta, ox, oy, oz) * oz * 4 * cosOmega * weight;
      }
    }
    return sum / (rings * parts);
  }

  /**
   * Specular gloss as a glossmeter reads the lobe alone: flux within the receptor over that of
   * polished black glass of index 1.567, times 100 (ASTM D523, ISO 2813; source taken as a point).
   * The body's own light within the receptor, up to 2 units for white, is not counted.
   *
   * @param angle 20, 60 or 85 degrees
   */
  public double gloss(GlossAngle angle) {
    double cosI = Math.cos(Math.toRadians(angle.degrees()));
    double sinI = Math.sin(Math.toRadians(angle.degrees()));
    double halfIn = Math.toRadians(angle.inPlaneDeg() / 2);
    double halfAcross = Math.toRadians(angle.acrossDeg() / 2);
    // Facet by facet over the receptor's window: smooth lobes are narrower than it, so the
    // steps crowd the mirror direction by a cubic.
    int n = 80;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double s = 2 * (i + 0.5) / n - 1;
      double turn = Math.toRadians(angle.degrees()) + halfIn * s * s * s;
      double stepIn = halfIn * 3 * s * s * 2 / n;
      for (int k = 0; k < n; k++) {
        double t = 2 * (k + 0.5) / n - 1;
        double tilt = halfAcross * t * t * t;
        double stepAcross = halfAcross * 3 * t * t * 2 / n;
        double oz = Math.cos(tilt) * Math.cos(turn);
        if (oz > 0) {
          sum +=
              reflectance(-sinI, 0, cosI, Math.cos(tilt) * Math.sin(turn), Math.sin(tilt), oz)
                  * oz
                  * Math.cos(tilt)
                  * stepIn
                  * stepAcross;
        }
      }
    }
    return 100 * sum / Fresnel.reflectance(cosI, GlossAngle.BLACK_GLASS);
  }

  /**
   * The lobe whose 60 degree gloss has a stated value. One number fits one angle: at 85 degrees the
   * fitted lobes read within the MPI class for flat and eggshell and low for velvet and satin, so
   * sheen at the steepest grazing is understated there.
   *
   * @param gloss60 gloss units; an index of 1.5 reads at most 89, and above that the smoothest lobe
   *     comes back
   */
  public static GlossLobe ofGloss60(double gloss60) {
    double smooth = LEAST;
    double rough = MOST;
    for (int i = 0; i < 40; i++) {
      double middle = Math.sqrt(smooth * rough);
      if (new GlossLobe(PAINT_INDEX, middle).gloss(GlossAngle.SIXTY) > gloss60) {
        smooth = middle;
      } else {
        rough = middle;
      }
    }
    return new GlossLobe(PAINT_INDEX, Math.sqrt(smooth * rough));
  }
}
