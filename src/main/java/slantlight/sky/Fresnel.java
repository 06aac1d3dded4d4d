package slantlight.sky;

/**
 * Reflectance of a smooth boundary between air and a clear dielectric, by Fresnel's equations (Born
 * and Wolf, Principles of Optics, section 1.5).
 */
public final class Fresnel {
  /** Refractive index of fresh water for light, 20 C. */
  public static final double WATER = 1.333;

  /** Refractive index of ice for light. */
  public static final double ICE = 1.31;

  private Fresnel() {}

  /**
   * Reflectance of unpolarised light arriving from air.
   *
   * @param cosTheta cosine of the angle of incidence, 0 to 1
   * @param n refractive index of the dielectric, above 1
   */
  public static double reflectance(double cosTheta, double n) {
    return (perpendicular(cosTheta, n) + parallel(cosTheta, n)) / 2;
  }

  /** Reflectance of light polarised across the plane of incidence (s). */
  static double perpendicular(double cosTheta, double n) {
    double cosT = cosRefracted(cosTheta, n);
    double r = (cosTheta - n * cosT) / (cosTheta + n * cosT);
    return r * r;
  }

  /** Reflectance of light polarised in the plane of incidence (p). */
  static double parallel(double cosTheta, double n) {
    double cosT = cosRefracted(cosTheta, n);
    double r = (n * cosTheta - cosT) / (n * cosTheta + cosT);
    return r * r;
  }

  static double cosRefracted(double cosTheta, double n) {
    return Math.sqrt(1 - (1 - cosTheta * cosTheta) / (n * n));
  }

  /** Reflectance under perfectly diffuse incidence from air: twice the integral of R mu dmu. */
  public static double diffuseReflectance(double n) {
    int steps = 2000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      // The substitution mu = t^2 crowds the steps where R climbs to 1.
      double t = (i + 0.5) / steps;
      double mu = t * t;
      sum += reflectance(mu, n) * mu * 2 * t;
    }
    return 2 * sum / steps;
  }
}
