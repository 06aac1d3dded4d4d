package slantlight.score;

import java.time.Year;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import slantlight.board.Layout;
import slantlight.sight.EyeModel;

/**
 * What to compute.
 *
 * @param year calendar year
 * @param days days of the year, 1 to 366, ascending
 * @param stepMinutes time step, a divisor of a day
 * @param surfaces ids of the surfaces to score; empty means all boarded ones
 * @param spacing longest step between followed points of a joint, m
 * @param eye how the eye judges
 * @param layouts layouts to use instead of computing them, by surface id
 * @param backBlocked ids of surfaces whose butt joints are back-blocked
 * @param threads worker threads, at least 1
 */
public record ScoreOptions(
    int year,
    List<Integer> days,
    int stepMinutes,
    Set<String> surfaces,
    double spacing,
    EyeModel eye,
    Map<String, Layout> layouts,
    Set<String> backBlocked,
    int threads) {
  /**
   * The year computed when none is named: not a leap year, so that results do not depend on today.
   */
  public static final int DEFAULT_YEAR = 2026;

  public ScoreOptions {
    days = List.copyOf(days);
    surfaces = Set.copyOf(surfaces);
    layouts = Map.copyOf(layouts);
    backBlocked = Set.copyOf(backBlocked);
    if (days.isEmpty()) {
      throw new IllegalArgumentException("at least one day is needed");
    }
    if (stepMinutes < 1 || 1440 % stepMinutes != 0) {
      throw new IllegalArgumentException(
          "a step must divide the day's 1440 minutes, not " + stepMinutes);
    }
  }

  /** The whole year in 10-minute steps, every surface. */
  public static ScoreOptions standard() {
    return new ScoreOptions(
        DEFAULT_YEAR,
        everyDay(DEFAULT_YEAR, 1),
        10,
        Set.of(),
        0.5,
        EyeModel.STANDARD,
        Map.of(),
        Set.of(),
        Runtime.getRuntime().availableProcessors());
  }

  /** Every n-th day of a year, from the middle of the first stretch. */
  public static List<Integer> everyDay(int year, int n) {
    return IntStream.rangeClosed(1, Year.of(year).length())
        .filter(d -> (d - 1) % n == n / 2)
        .boxed()
        .toList();
  }

  public ScoreOptions withDays(List<Integer> newDays) {
    return new ScoreOptions(
        year, newDays, stepMinutes, surfaces, spacing, eye, layouts, backBlocked, threads);
  }

  public ScoreOptions withYear(int newYear, List<Integer> newDays) {
    return new ScoreOptions(
        newYear, newDays, stepMinutes, surfaces, spacing, eye, layouts, backBlocked, threads);
  }

  public ScoreOptions withStep(int minutes) {
    return new ScoreOptions(
        year, days, minutes, surfaces, spacing, eye, layouts, backBlocked, threads);
  }

  public ScoreOptions withSurfaces(Set<String> ids) {
    return new ScoreOptions(
        year, days, stepMinutes, ids, spacing, eye, layouts, backBlocked, threads);
  }

  public ScoreOptions withLayouts(Map<String, Layout> fixed) {
    return new ScoreOptions(
        year, days, stepMinutes, surfaces, spacing, eye, fixed, backBlocked, threads);
  }

  public ScoreOptions withBackBlocked(Set<String> ids) {
    return new ScoreOptions(year, days, stepMinutes, surfaces, spacing, eye, layouts, ids, threads);
  }

  public ScoreOptions withSpacing(double metres) {
    return new ScoreOptions(
        year, days, stepMinutes, surfaces, metres, eye, layouts, backBlocked, threads);
  }

  public ScoreOptions withThreads(int n) {
    return new ScoreOptions(
        year, days, stepMinutes, surfaces, spacing, eye, layouts, backBlocked, n);
  }
}
