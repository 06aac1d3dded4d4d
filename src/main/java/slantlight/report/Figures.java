package slantlight.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as they are written into data files: six significant digits, no exponent, no -0. */
final class Figures {
  private static final MathContext SIX = new MathContext(6, RoundingMode.HALF_EVEN);
  private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_EVEN);

  private Figures() {}

  /** The rounded value, or null for a value that is not finite. */
  static BigDecimal six(double value) {
    if (!Double.isFinite(value)) {
      return null;
    }
    return plain(new BigDecimal(value).round(SIX));
  }

  /** A finite value with three significant digits. */
  static BigDecimal three(double value) {
    return plain(new BigDecimal(value).round(THREE));
  }

  private static BigDecimal plain(BigDecimal rounded) {
    if (rounded.signum() == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal trimmed = rounded.stripTrailingZeros();
    return trimmed.scale() < 0 ? trimmed.setScale(0) : trimmed;
  }

  /** The same as text, empty for a value that is not finite. */
  static String text(double value) {
    BigDecimal six = six(value);
    return six == null ? "" : six.toPlainString();
  }
}
