package slantlight.sight;

/**
 * From contrast to showing: how many times over the threshold of an eye that was not asked to look.
 *
 * @param fieldFactor laboratory thresholds that make "noticed unasked" (2 to 3 in practice, from
 *     memory)
 * @param quickExponent exponent of probability summation over components (Quick 1974; about 3.5)
 * @param fieldDeg side of the field over which the eye sums, degrees
 */
public record EyeModel(double fieldFactor, double quickExponent, double fieldDeg) {
  /** Factor 2.5, exponent 3.5, field 60 degrees. */
  public static final EyeModel STANDARD = new EyeModel(2.5, 3.5, 60);

  public EyeModel {
    if (!(fieldFactor > 0 && quickExponent >= 1 && fieldDeg > 0)) {
      throw new IllegalArgumentException(
          "an eye needs a positive field factor and field and an exponent of 1 or more");
    }
  }

  /**
   * Spatial frequency of a ridge, its width taken as one period, cycles per degree.
   *
   * @param width of the ridge, m
   * @param distance from the eye, m
   * @param foreshortening apparent width / width, in the plane across the joint, 0 to 1
   */
  public static double frequency(double width, double distance, double foreshortening) {
    // One degree covers distance x tan(1 degree) square to the line of sight.
    return distance * Math.toRadians(1) / (width * Math.max(1e-3, foreshortening));
  }

  /** Showing per unit of Michelson contrast at a spatial frequency and luminance. */
  public double gain(double u, double luminance) {
    return Barten.sensitivity(u, luminance, fieldDeg) / fieldFactor;
  }

  /** Showing of components seen together (Quick's pooling). */
  public double pooled(double... showings) {
    double sum = 0;
    for (double s : showings) {
      sum += Math.pow(Math.abs(s), quickExponent);
    }
    return Math.pow(sum, 1 / quickExponent);
  }
}
