package slantlight.sight;

/** Geometries of a glossmeter (ASTM D523, ISO 2813): angle and full receptor window, degrees. */
public enum GlossAngle {
  TWENTY(20, 1.8, 3.6),
  SIXTY(60, 4.4, 11.7),
  EIGHTY_FIVE(85, 4.0, 6.0);

  /** Refractive index of the polished black glass that reads 100. */
  public static final double BLACK_GLASS = 1.567;

  private final double degrees;
  private final double inPlaneDeg;
  private final double acrossDeg;

  GlossAngle(double degrees, double inPlaneDeg, double acrossDeg) {
    this.degrees = degrees;
    this.inPlaneDeg = inPlaneDeg;
    this.acrossDeg = acrossDeg;
  }

  public double degrees() {
    return degrees;
  }

  /** Receptor window in the plane of measurement. */
  public double inPlaneDeg() {
    return inPlaneDeg;
  }

  /** Receptor window across it. */
  public double acrossDeg() {
    return acrossDeg;
  }
}
