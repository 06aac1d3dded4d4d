package slantlight.view;

import slantlight.geom.Vec3;

/**
 * Hues of the as-lit picture, linear red, green and blue. Paint is known by its reflectance only,
 * so a hue is decoration; each has a luminance of exactly 1 and so changes no luminance.
 */
final class Hue {
  static final Vec3 WALL = of(1.0, 0.975, 0.93);
  static final Vec3 FLOOR = of(1.0, 0.80, 0.58);
  static final Vec3 SKY = of(0.80, 0.95, 1.15);
  static final Vec3 GROUND = of(0.95, 1.0, 0.85);

  private Hue() {}

  /** Luminance of a linear colour, ITU-R BT.709. */
  static double luminance(double r, double g, double b) {
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  }

  private static Vec3 of(double r, double g, double b) {
    double y = luminance(r, g, b);
    return new Vec3(r / y, g / y, b / y);
  }
}
