package slantlight.scene;

/**
 * A coat of paint.
 *
 * @param lrv light reflectance value as a fraction, 0 to 1
 * @param sheen gloss level
 */
public record Paint(double lrv, Sheen sheen) {
  public Paint {
    if (!(lrv >= 0 && lrv <= 1)) {
      throw new IllegalArgumentException("LRV must be a fraction from 0 to 1, not " + lrv);
    }
  }

  /**
   * LRV of a colour whose CIE lightness is known: {@code Y = ((L* + 16)/116)^3}, and {@code L* /
   * 903.3} up to L* = 8 (CIE 1976).
   *
   * @param lightness L*, 0 to 100
   */
  public static double lrvOfLightness(double lightness) {
    return lightness > 8 ? Math.pow((lightness + 16) / 116, 3) : lightness / 903.3;
  }
}
