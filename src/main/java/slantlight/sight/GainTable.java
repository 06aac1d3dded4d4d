package slantlight.sight;

/**
 * Showing of a ridge per unit of slant, by luminance: the fast form of {@link EyeModel} for a year
 * of moments.
 *
 * <p>Each flank's contrast is slope x |q|, with q the relative change of brightness per radian of
 * tilt, and Quick's pooling is homogeneous, so the pooled showing of crown and edge is |q| K(L). K
 * is tabulated at half octaves of luminance and linear between.
 */
public final class GainTable {
  /** log2 of the luminance (cd/m2) of the first node. */
  public static final int FIRST_LOG2 = -6;

  /** log2 of the luminance of the last node; brighter is taken as this. */
  public static final int LAST_LOG2 = 16;

  /** Nodes per octave. */
  public static final int PER_OCTAVE = 2;

  /** How many nodes. */
  public static final int NODES = (LAST_LOG2 - FIRST_LOG2) * PER_OCTAVE + 1;

  private static final double LOWEST = Math.scalb(1.0, FIRST_LOG2);
  private static final double ROOT_2 = Math.sqrt(2);
  private static final double TWICE_LOG2_E = 2 / Math.log(2);

  private GainTable() {}

  /**
   * K at every node.
   *
   * @param distance from the eye, m
   * @param foreshortening apparent width / width in the plane across the joint, 0 to 1
   */
  public static double[] of(
      JointRidge ridge, double distance, double foreshortening, EyeModel eye) {
    double uCrown = EyeModel.frequency(ridge.crown().width(), distance, foreshortening);
    double uEdge = EyeModel.frequency(ridge.edge().width(), distance, foreshortening);
    double[] out = new double[NODES];
    for (int i = 0; i < NODES; i++) {
      double luminance = Math.pow(2, FIRST_LOG2 + (double) i / PER_OCTAVE);
      out[i] =
          eye.pooled(
              ridge.crown().peakSlope() * eye.gain(uCrown, luminance),
              ridge.edge().peakSlope() * eye.gain(uEdge, luminance));
    }
    return out;
  }

  /**
   * Place of a luminance among the nodes, for {@link #at}; several tables may share it. Negative
   * below the first node.
   */
  public static double position(double luminance) {
    if (luminance <= LOWEST) {
      // Below the table sensitivity falls with the root of luminance (DeVries-Rose law).
      return luminance <= 0 ? -2 : Math.sqrt(luminance / LOWEST) - 1;
    }
    return Math.min(NODES - 1, (log2(luminance) - FIRST_LOG2) * PER_OCTAVE);
  }

  /**
   * Logarithm to base 2 of a normal positive number within 2e-6: the exponent's own bits and three
   * terms of the series in (m - sqrt 2)/(m + sqrt 2) for the mantissa m. A year asks for it some
   * hundred million times, and the library's exact one is several times slower.
   */
  static double log2(double x) {
    long bits = Double.doubleToRawLongBits(x);
    int exponent = (int) (bits >>> 52) - 1023;
    double m = Double.longBitsToDouble((bits & 0x000fffffffffffffL) | 0x3ff0000000000000L);
    double t = (m - ROOT_2) / (m + ROOT_2);
    double t2 = t * t;
    return exponent + 0.5 + TWICE_LOG2_E * t * (1 + t2 * (1.0 / 3 + t2 / 5));
  }

  /** K at a place among the nodes. */
  public static double at(double[] table, double position) {
    if (position < 0) {
      return table[0] * Math.max(0, 1 + position);
    }
    int i = Math.min(NODES - 2, (int) position);
    return table[i] + (table[i + 1] - table[i]) * (position - i);
  }
}
