package slantlight.scene;

import java.util.List;

/**
 * Type C photometry of one luminaire (LM-63).
 *
 * @param name first useful keyword of the file ([LUMINAIRE], [LUMCAT]) or the file's name
 * @param verticalDeg vertical angles, degrees, ascending, 0 = nadir
 * @param horizontalDeg horizontal angles, degrees, ascending; their span tells the symmetry
 * @param candela intensities with every multiplier applied, cd, by horizontal then vertical angle
 * @param width luminous opening along C90, m
 * @param length luminous opening along C0, m
 * @param height luminous opening height, m
 * @param lumens flux of the distribution, lm, integrated from the candela values
 */
public record Photometry(
    String name,
    List<Double> verticalDeg,
    List<Double> horizontalDeg,
    List<List<Double>> candela,
    double width,
    double length,
    double height,
    double lumens) {
  public Photometry {
    verticalDeg = List.copyOf(verticalDeg);
    horizontalDeg = List.copyOf(horizontalDeg);
    candela = candela.stream().map(List::copyOf).toList();
  }

  /**
   * Intensity toward a direction, cd, linear in both angles; zero outside the vertical angles.
   *
   * @param gamma radians from nadir
   * @param c radians counter-clockwise from C0
   */
  public double candela(double gamma, double c) {
    double g = Math.toDegrees(gamma);
    double[] h = place(horizontalDeg, folded(Math.toDegrees(c)));
    if (g < verticalDeg.get(0) - 1e-9 || g > verticalDeg.get(verticalDeg.size() - 1) + 1e-9) {
      return 0;
    }
    double[] v = place(verticalDeg, g);
    int i = (int) h[0];
    int k = (int) v[0];
    int i1 = Math.min(i + 1, horizontalDeg.size() - 1);
    int k1 = Math.min(k + 1, verticalDeg.size() - 1);
    double low = mix(candela.get(i).get(k), candela.get(i).get(k1), v[1]);
    double high = mix(candela.get(i1).get(k), candela.get(i1).get(k1), v[1]);
    return mix(low, high, h[1]);
  }

  /** Folds a horizontal angle into the span of the file, by its symmetry. */
  private double folded(double degrees) {
    double last = horizontalDeg.get(horizontalDeg.size() - 1);
    double a = ((degrees % 360) + 360) % 360;
    if (horizontalDeg.size() == 1) {
      return horizontalDeg.get(0);
    }
    if (last <= 180) {
      a = a > 180 ? 360 - a : a;
    }
    if (last <= 90) {
      a = a > 90 ? 180 - a : a;
    }
    return a;
  }

  private static double mix(double a, double b, double t) {
    return a + (b - a) * t;
  }

  private static double[] place(List<Double> angles, double a) {
    int n = angles.size();
    int i = 0;
    while (i < n - 2 && angles.get(i + 1) <= a) {
      i++;
    }
    if (n == 1) {
      return new double[] {0, 0};
    }
    double t = (a - angles.get(i)) / (angles.get(i + 1) - angles.get(i));
    return new double[] {i, Math.max(0, Math.min(1, t))};
  }
}
