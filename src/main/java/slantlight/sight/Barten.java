package slantlight.sight;

/**
 * Contrast sensitivity of the eye: Barten, "Formula for the contrast sensitivity of the human eye",
 * Proc. SPIE 5294 (2003), p. 231. Re-implemented from the formula.
 */
public final class Barten {
  private Barten() {}

  /**
   * Inverse of the Michelson contrast that is seen half the time in the laboratory.
   *
   * @param u spatial frequency, cycles per degree, above 0
   * @param luminance adaptation luminance, cd/m2; 0 gives 0
   * @param fieldDeg side of the field, degrees
   */
  public static double sensitivity(double u, double luminance, double fieldDeg) {
    if (luminance <= 0) {
      return 0;
    }
    double u2 = u * u;
    double optics = Math.exp(-0.0016 * u2 * Math.pow(1 + 100 / luminance, 0.08));
    double pooling = 1 + 144 / (fieldDeg * fieldDeg) + 0.64 * u2;
    double noise = 63 / Math.pow(luminance, 0.83) - 1 / Math.expm1(-0.02 * u2);
    return 5200 * optics / Math.sqrt(pooling * noise);
  }
}
