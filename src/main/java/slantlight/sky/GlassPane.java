package slantlight.sky;

/**
 * Transmittance of clear window glass with the angle of incidence.
 *
 * <p>Each pane is a slab with inner reflections and absorption, worked out for both polarisations
 * (Duffie and Beckman, Solar Engineering of Thermal Processes, section 5.3): {@code T = a(1-r)^2 /
 * (1-r^2 a^2)}, {@code R = r(1+aT)}, {@code a = exp(-KL / cos t)}. Two panes stack as {@code T1 T2
 * / (1-R1 R2)}. Index 1.526, KL 0.03 per pane. Coatings change the level far more than the shape,
 * so the level is the glazing's own and only the shape is taken from here.
 */
public final class GlassPane {
  static final double INDEX = 1.526;
  static final double ABSORPTION = 0.03;
  private static final int STEPS = 512;
  private static final double[] SINGLE = table(1);
  private static final double[] DOUBLE = table(2);

  private GlassPane() {}

  /**
   * Transmittance of clear glass for unpolarised light.
   *
   * @param cosTheta cosine of the angle of incidence, 0 to 1
   * @param panes 0, 1 or 2; more count as 2
   */
  public static double transmittance(double cosTheta, int panes) {
    if (panes <= 0) {
      return 1;
    }
    if (cosTheta <= 0) {
      return 0;
    }
    double c = Math.min(1, cosTheta);
    return (polarised(Fresnel.perpendicular(c, INDEX), c, panes)
            + polarised(Fresnel.parallel(c, INDEX), c, panes))
        / 2;
  }

  /**
   * Transmittance as a share of that at normal incidence: multiply the glazing's stated
   * transmittance by it. From a table, linear in the cosine, within 0.0005.
   *
   * @param cosTheta cosine of the angle of incidence; 0 or less lets nothing through
   * @param panes 0 (an empty hole: always 1), 1 or 2; more count as 2
   */
  public static double relativeTransmittance(double cosTheta, int panes) {
    if (panes <= 0) {
      return 1;
    }
    if (cosTheta <= 0) {
      return 0;
    }
    double[] table = panes == 1 ? SINGLE : DOUBLE;
    double x = Math.min(1, cosTheta) * STEPS;
    int i = Math.min(STEPS - 1, (int) x);
    return table[i] + (table[i + 1] - table[i]) * (x - i);
  }

  private static double polarised(double r, double cosTheta, int panes) {
    double a = Math.exp(-ABSORPTION / Fresnel.cosRefracted(cosTheta, INDEX));
    double t = a * (1 - r) * (1 - r) / (1 - r * r * a * a);
    double reflected = r * (1 + a * t);
    return panes == 1 ? t : t * t / (1 - reflected * reflected);
  }

  private static double[] table(int panes) {
    double normal = transmittance(1, panes);
    double[] out = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      out[i] = transmittance((double) i / STEPS, panes) / normal;
    }
    return out;
  }
}
