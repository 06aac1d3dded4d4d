package slantlight.validation;

import java.util.List;
import java.util.Locale;
import slantlight.reference.Comparison;

/** Light in whole rooms against paths traced by Monte Carlo. */
final class MonteCarloChecks {
  private MonteCarloChecks() {}

  static List<Check> all() {
    return Comparison.rooms().stream().map(MonteCarloChecks::check).toList();
  }

  private static Check check(String room) {
    Comparison c = Comparison.of(room);
    return new Check(
        "Light in rooms against Monte Carlo",
        room + ": mean illuminance of four points, lx",
        "own path tracer of the test tree, no shared transport code (Kajiya 1986), fixed seeds",
        twoDigits(c.meanReference()),
        twoDigits(c.meanProgram()),
        "illuminance and light vector at every point within 2 % of the room's mean",
        c.worst() <= Comparison.LIMIT);
  }

  private static String twoDigits(double value) {
    double step = Math.pow(10, Math.floor(Math.log10(value)) - 1);
    return String.format(Locale.ROOT, "%.0f", Math.round(value / step) * step);
  }
}
