package slantlight.scene;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Type C photometry of one luminaire (LM-63). A value like a record; a class because its lookup,
 * asked for every ray to a lamp, keeps plain arrays.
 */
public final class Photometry {
  private final String name;
  private final List<Double> verticalDeg;
  private final List<Double> horizontalDeg;
  private final List<List<Double>> candela;
  private final double width;
  private final double length;
  private final double height;
  private final double lumens;

  private final double[] vertical;
  private final double[] horizontal;

  /** Candela by horizontal, then vertical angle. */
  private final double[] values;

  /**
   * A table of intensities.
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
  public Photometry(
      String name,
      List<Double> verticalDeg,
      List<Double> horizontalDeg,
      List<List<Double>> candela,
      double width,
      double length,
      double height,
      double lumens) {
    this.name = name;
    this.verticalDeg = List.copyOf(verticalDeg);
    this.horizontalDeg = List.copyOf(horizontalDeg);
    this.candela = candela.stream().map(List::copyOf).toList();
    this.width = width;
    this.length = length;
    this.height = height;
    this.lumens = lumens;
    this.vertical = plain(verticalDeg);
    this.horizontal = plain(horizontalDeg);
    this.values = new double[vertical.length * horizontal.length];
    for (int i = 0; i < horizontal.length; i++) {
      double[] plane = plain(candela.get(i));
      System.arraycopy(plane, 0, values, i * vertical.length, vertical.length);
    }
  }

  /** A table of intensities with its flux worked out, arguments as in the constructor. */
  public static Photometry of(
      String name,
      List<Double> verticalDeg,
      List<Double> horizontalDeg,
      List<List<Double>> candela,
      double width,
      double length,
      double height) {
    double lumens =
        new Photometry(name, verticalDeg, horizontalDeg, candela, width, length, height, 0).flux();
    return new Photometry(name, verticalDeg, horizontalDeg, candela, width, length, height, lumens);
  }

  public String name() {
    return name;
  }

  /** Vertical angles, degrees, ascending, 0 = nadir. */
  public List<Double> verticalDeg() {
    return verticalDeg;
  }

  /** Horizontal angles, degrees, ascending. */
  public List<Double> horizontalDeg() {
    return horizontalDeg;
  }

  /** Intensities, cd, by horizontal then vertical angle. */
  public List<List<Double>> candela() {
    return candela;
  }

  /** Luminous opening along C90, m. */
  public double width() {
    return width;
  }

  /** Luminous opening along C0, m. */
  public double length() {
    return length;
  }

  /** Height of the luminous opening, m. */
  public double height() {
    return height;
  }

  /** Flux, lm. */
  public double lumens() {
    return lumens;
  }

  /**
   * Intensity toward a direction, cd, linear in both angles; zero outside the vertical angles.
   *
   * @param gamma radians from nadir
   * @param c radians counter-clockwise from C0
   */
  public double candela(double gamma, double c) {
    double g = Math.toDegrees(gamma);
    if (g < vertical[0] - 1e-9 || g > vertical[vertical.length - 1] + 1e-9) {
      return 0;
    }
    int k = below(vertical, g);
    double tv = share(vertical, k, g);
    double plane = folded(Math.toDegrees(c));
    int i = below(horizontal, plane);
    double low = along(i, k, tv);
    if (horizontal.length == 1) {
      return low;
    }
    return low + (along(i + 1, k, tv) - low) * share(horizontal, i, plane);
  }

  private double along(int plane, int k, double t) {
    int at = plane * vertical.length + k;
    return values[at] + (values[at + 1] - values[at]) * t;
  }

  /** Folds a horizontal angle into the span of the table, by its symmetry. */
  private double folded(double degrees) {
    double last = horizontal[horizontal.length - 1];
    if (horizontal.length == 1) {
      return last;
    }
    double a = degrees % 360;
    a = a < 0 ? a + 360 : a;
    if (last <= 180 && a > 180) {
      a = 360 - a;
    }
    if (last <= 90 && a > 90) {
      a = 180 - a;
    }
    return a;
  }

  /**
   * Flux, lm: exact for intensities linear between the angles, in each strip the integral of (p + q
   * gamma) sin(gamma), by the trapezium round the horizontal angles.
   */
  private double flux() {
    double[] planes = new double[horizontal.length];
    for (int i = 0; i < planes.length; i++) {
      for (int k = 0; k + 1 < vertical.length; k++) {
        double g0 = Math.toRadians(vertical[k]);
        double g1 = Math.toRadians(vertical[k + 1]);
        int at = i * vertical.length + k;
        double q = (values[at + 1] - values[at]) / (g1 - g0);
        double p = values[at] - q * g0;
        planes[i] +=
            (p + q * g0) * Math.cos(g0)
                - (p + q * g1) * Math.cos(g1)
                + q * (Math.sin(g1) - Math.sin(g0));
      }
    }
    if (planes.length == 1) {
      return 2 * Math.PI * planes[0];
    }
    double sum = 0;
    for (int i = 0; i + 1 < planes.length; i++) {
      sum += (planes[i] + planes[i + 1]) / 2 * Math.toRadians(horizontal[i + 1] - horizontal[i]);
    }
    // The table covers one of the equal parts that its symmetry cuts the circle into.
    return sum * 360 / (horizontal[horizontal.length - 1] - horizontal[0]);
  }

  /** Index of the last interval that starts at or below a value. */
  private static int below(double[] angles, double a) {
    int at = Arrays.binarySearch(angles, a);
    int i = at >= 0 ? at : -at - 2;
    return Math.max(0, Math.min(angles.length - 2, i));
  }

  private static double share(double[] angles, int i, double a) {
    double t = (a - angles[i]) / (angles[i + 1] - angles[i]);
    return Math.max(0, Math.min(1, t));
  }

  private static double[] plain(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Photometry p
        && name.equals(p.name)
        && verticalDeg.equals(p.verticalDeg)
        && horizontalDeg.equals(p.horizontalDeg)
        && candela.equals(p.candela)
        && width == p.width
        && length == p.length
        && height == p.height
        && lumens == p.lumens;
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, verticalDeg, horizontalDeg, candela, width, length, height, lumens);
  }

  @Override
  public String toString() {
    return "Photometry[" + name + ", " + lumens + " lm]";
  }
}
