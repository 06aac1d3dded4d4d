package slantlight.score;

import slantlight.scene.JointKind;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;

/**
 * Between what a showing is likely to lie, given what is not known before the work is done.
 *
 * <p>Showing is proportional to the ridge's height and to the inverse of the field factor. The
 * ridge table states the span of heights met in practice; the field factor is 2 to 3 where 2.5 is
 * used (from memory); light and reflectances add {@value #LIGHT_SHARE} either way, an estimate of
 * ours. The three are independent, so their logarithms add in squares.
 *
 * @param low showing that is likely exceeded
 * @param high showing that is likely not reached
 */
public record Span(double low, double high) {
  private static final double FIELD_LOW = 2.5 / 3;
  private static final double FIELD_HIGH = 2.5 / 2;
  private static final double LIGHT_SHARE = 0.15;

  /**
   * Span of a showing.
   *
   * @param level finish level it was computed for, 0 to 5
   */
  public static Span of(double showing, JointKind kind, int level) {
    JointRidge ridge = RidgeTable.standard().ridge(RidgeKind.of(kind), level);
    return new Span(
        showing * combined(ridge.lowShare(), FIELD_LOW, 1 - LIGHT_SHARE),
        showing * combined(ridge.highShare(), FIELD_HIGH, 1 + LIGHT_SHARE));
  }

  /** Product-like combination of independent shares, all below 1 or all above it. */
  private static double combined(double... shares) {
    double sum = 0;
    for (double s : shares) {
      sum += Math.log(s) * Math.log(s);
    }
    double away = Math.sqrt(sum);
    return Math.exp(shares[0] < 1 ? -away : away);
  }
}
