package slantlight.sight;

import slantlight.geom.Vec3;

/**
 * Luminances of the two flanks of a ridge under light from many directions, exact in the tilt: each
 * flank has its own cosine, its own attached shadow and its own view of the lobe.
 *
 * <p>The frame of the ridge: x across it, y along it, z out of the surface. The flank that rises
 * with x has the normal (-sin t, 0, cos t), t the tilt; the one that falls has (sin t, 0, cos t).
 * For matt paint, unclipped, the contrast is {@code tan(t) |Ex| / Ez}, with E the light vector.
 *
 * @param rising luminance of the flank whose height grows with x, cd/m2
 * @param falling luminance of the other, cd/m2
 */
public record FlankLight(double rising, double falling) {
  /**
   * Flanks under some cones of light.
   *
   * @param directions x, y, z of unit vectors toward the light, one after the other
   * @param normalLux illuminance of each square to it, lx
   * @param slope tangent of the tilt
   * @param eye unit vector from the ridge toward the eye
   */
  public static FlankLight of(
      double[] directions, double[] normalLux, double slope, Coating coating, Vec3 eye) {
    double cos = 1 / Math.sqrt(1 + slope * slope);
    double sin = slope * cos;
    double rising = 0;
    double falling = 0;
    for (int i = 0; i < normalLux.length; i++) {
      double x = directions[3 * i];
      double y = directions[3 * i + 1];
      double z = directions[3 * i + 2];
      rising += normalLux[i] * weight(coating, sin, cos, x, y, z, eye);
      falling += normalLux[i] * weight(coating, -sin, cos, x, y, z, eye);
    }
    return new FlankLight(rising, falling);
  }

  /**
   * Luminance of the level surface under some cones of light, cd/m2. The same light on two coatings
   * gives the contrast of joint compound against paper.
   */
  public static double level(double[] directions, double[] normalLux, Coating coating, Vec3 eye) {
    double sum = 0;
    for (int i = 0; i < normalLux.length; i++) {
      sum +=
          normalLux[i]
              * weight(
                  coating,
                  0,
                  1,
                  directions[3 * i],
                  directions[3 * i + 1],
                  directions[3 * i + 2],
                  eye);
    }
    return sum;
  }

  /**
   * Luminance of a tilted flank per lx of normal illuminance from one direction, 1/sr. Light or eye
   * below the surface or behind the flank gives 0.
   *
   * @param sin sine of the tilt: positive where the surface rises with x
   * @param cos cosine of the tilt
   */
  public static double weight(
      Coating coating, double sin, double cos, double x, double y, double z, Vec3 eye) {
    double iz = z * cos - x * sin;
    double oz = eye.z() * cos - eye.x() * sin;
    if (z <= 0 || eye.z() <= 0 || iz <= 0 || oz <= 0) {
      return 0;
    }
    double ix = x * cos + z * sin;
    double ox = eye.x() * cos + eye.z() * sin;
    return coating.reflectance(ix, y, iz, ox, eye.y(), oz) * iz;
  }

  /** Michelson contrast of the flanks, 0 when both are dark. */
  public double michelson() {
    double sum = rising + falling;
    return sum <= 0 ? 0 : Math.abs(rising - falling) / sum;
  }
}
