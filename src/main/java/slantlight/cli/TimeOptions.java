package slantlight.cli;

import picocli.CommandLine.Option;
import slantlight.score.ScoreOptions;

/** Which year, days and times of day are followed; use it as a picocli mixin. */
final class TimeOptions {
  private static final int FIRST_YEAR = 1950;
  private static final int LAST_YEAR = 2050;

  @Option(
      names = "--days",
      paramLabel = "N",
      defaultValue = "1",
      description = "Follow every N-th day of the year (default: ${DEFAULT-VALUE}, all).")
  private int everyDays;

  @Option(
      names = "--step",
      paramLabel = "MINUTES",
      defaultValue = "10",
      description = "Time step, a divisor of 1440 (default: ${DEFAULT-VALUE}).")
  private int step;

  @Option(names = "--year", paramLabel = "YEAR", description = "Calendar year (default: 2026).")
  private int year = ScoreOptions.DEFAULT_YEAR;

  /** The chosen times, for the record of a result. */
  String text() {
    return "year " + year + ", days " + everyDays + ", step " + step;
  }

  /**
   * These times instead of those of other options.
   *
   * @throws CommandFailure if a number is out of range
   */
  ScoreOptions in(ScoreOptions options) {
    if (everyDays < 1 || everyDays > 366) {
      throw CommandFailure.usage("--days " + everyDays + ": give a number from 1 to 366");
    }
    if (step < 1 || 1440 % step != 0) {
      throw CommandFailure.usage(
          "--step " + step + ": give minutes that divide a day, such as 5, 10, 15, 30 or 60");
    }
    if (year < FIRST_YEAR || year > LAST_YEAR) {
      throw CommandFailure.usage(
          "--year " + year + ": give a year from " + FIRST_YEAR + " to " + LAST_YEAR);
    }
    return options.withYear(year, ScoreOptions.everyDay(year, everyDays)).withStep(step);
  }
}
