package slantlight.units;

/** Units of length that a person may write. */
public enum LengthUnit {
  M(1),
  MM(0.001),
  CM(0.01),
  FT(0.3048),
  IN(0.0254);

  private final double metres;

  LengthUnit(double metres) {
    this.metres = metres;
  }

  /** Length of one of this unit, m (the foot and inch by the international definition of 1959). */
  public double metres() {
    return metres;
  }

  /** True for feet and inches. */
  public boolean imperial() {
    return this == FT || this == IN;
  }
}
