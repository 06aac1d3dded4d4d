package slantlight.score;

import java.util.List;

/**
 * How a joint or surface does at one finish level over the year.
 *
 * @param level 0 to 5
 * @param peakShowing largest showing of the year, clear weather
 * @param lengthShares share of the length in each band at its own worst moment, in the order of
 *     {@link Band}, summing to 1
 * @param clearHours hours a year at or above each band if every day were clear, by {@link Band}
 * @param expectedHours the same weighted by the site's monthly share of clear sky, overcast the
 *     rest
 */
public record LevelScore(
    int level,
    double peakShowing,
    List<Double> lengthShares,
    List<Double> clearHours,
    List<Double> expectedHours) {
  public LevelScore {
    lengthShares = List.copyOf(lengthShares);
    clearHours = List.copyOf(clearHours);
    expectedHours = List.copyOf(expectedHours);
  }
}
