package slantlight.scene;

import java.time.LocalTime;

/**
 * A daily span in which a lamp is switched on, local clock time.
 *
 * @param from first minute on
 * @param to first minute off; earlier than {@code from} means past midnight
 * @param whenDark true when the lamp is on only while the sun is below the horizon
 */
public record OnHours(LocalTime from, LocalTime to, boolean whenDark) {
  /** True when the lamp is on at that clock time with the sun at that altitude (radians). */
  public boolean on(LocalTime time, double sunAltitude) {
    if (whenDark && sunAltitude > 0) {
      return false;
    }
    return from.isBefore(to)
        ? !time.isBefore(from) && time.isBefore(to)
        : !time.isBefore(from) || time.isBefore(to);
  }
}
