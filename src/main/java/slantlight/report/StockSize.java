package slantlight.report;

import java.util.Locale;
import slantlight.scene.BoardSize;

/** Names of stock boards. */
final class StockSize {
  private StockSize() {}

  /** A stock size: feet where it is a whole number of inches and feet, else millimetres. */
  static String name(BoardSize s) {
    double inches = s.width() / 0.0254;
    double feet = s.length() / 0.3048;
    if (whole(inches) && whole(feet)) {
      return String.format(Locale.ROOT, "%d in \u00d7 %d ft", Math.round(inches), Math.round(feet));
    }
    return String.format(
        Locale.ROOT,
        "%d \u00d7 %d mm",
        Math.round(1000 * s.width()),
        Math.round(1000 * s.length()));
  }

  private static boolean whole(double d) {
    return Math.abs(d - Math.rint(d)) < 1e-3;
  }
}
