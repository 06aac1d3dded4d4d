package slantlight.geom;

/**
 * Configuration factors in closed form (Howell, "A Catalog of Radiation Heat Transfer Configuration
 * Factors", numbers as there; Hamilton and Morgan, NACA TN 2836, 1952).
 */
public final class ConfigurationFactors {
  private ConfigurationFactors() {}

  /**
   * B-3: element to a parallel rectangle a x b at distance c, the element's normal passing through
   * a corner.
   */
  public static double elementParallel(double a, double b, double c) {
    double x = a / c;
    double y = b / c;
    double sx = Math.sqrt(1 + x * x);
    double sy = Math.sqrt(1 + y * y);
    return (x / sx * Math.atan(y / sx) + y / sy * Math.atan(x / sy)) / (2 * Math.PI);
  }

  /** C-11: parallel equal rectangles a x b at distance c. */
  public static double parallelRectangles(double a, double b, double c) {
    double x = a / c;
    double y = b / c;
    double sx = Math.sqrt(1 + x * x);
    double sy = Math.sqrt(1 + y * y);
    double log = Math.log(Math.sqrt(sx * sx * sy * sy / (1 + x * x + y * y)));
    return 2
        / (Math.PI * x * y)
        * (log
            + x * sy * Math.atan(x / sy)
            + y * sx * Math.atan(y / sx)
            - x * Math.atan(x)
            - y * Math.atan(y));
  }

  /**
   * C-14: perpendicular rectangles with a common edge, from the first to the second.
   *
   * @param edge length of the common edge
   * @param from other side of the first
   * @param to other side of the second
   */
  public static double perpendicularRectangles(double edge, double from, double to) {
    double w = from / edge;
    double h = to / edge;
    double w2 = w * w;
    double h2 = h * h;
    double r2 = w2 + h2;
    double r = Math.sqrt(r2);
    double logs =
        Math.log((1 + w2) * (1 + h2) / (1 + r2))
            + w2 * Math.log(w2 * (1 + r2) / ((1 + w2) * r2))
            + h2 * Math.log(h2 * (1 + r2) / ((1 + h2) * r2));
    return (w * Math.atan(1 / w) + h * Math.atan(1 / h) - r * Math.atan(1 / r) + logs / 4)
        / (Math.PI * w);
  }
}
