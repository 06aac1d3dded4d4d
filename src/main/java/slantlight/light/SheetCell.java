package slantlight.light;

/** A sheet that glows evenly by itself, in the place of what is seen through an opening. */
final class SheetCell extends OutsideCell {
  @Override
  void fillDense(float[] out) {
    out[Columns.SHEET] = 1;
  }

  @Override
  void addSun(double dx, double dy, double dz, double weight, double[] groups) {
    // What the sun does is in the luminance of the sheet.
  }
}
