package slantlight.decide;

import java.util.List;
import java.util.stream.IntStream;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.SurfaceScore;

/**
 * What a surface gets before any money is spent on its showing: the level fixed in the scene, else
 * the standard's level for its use and coating in gentle light, level 4 at most.
 */
final class Baseline {
  private Baseline() {}

  static int level(House house, SurfaceScore score) {
    Surface surface = house.surface(score.surfaceId());
    return surface
        .level()
        .orElseGet(
            () ->
                Math.min(
                    4, Verdicts.ruling(house, surface, StandardRule.RakingLight.GENTLE).level()));
  }

  /** The levels that may be chosen: from the baseline to 5, or the fixed one alone. */
  static List<Integer> levels(House house, SurfaceScore score) {
    int level = level(house, score);
    return house.surface(score.surfaceId()).level().isPresent()
        ? List.of(level)
        : IntStream.rangeClosed(level, 5).filter(l -> l == level || l >= 3).boxed().toList();
  }

  /** Largest showing of the year at the baseline level (at level 3 where that is lower). */
  static double showing(House house, SurfaceScore score) {
    return Showing.at(score, Math.max(3, level(house, score)));
  }

  /** True when a surface at its baseline level shows more than its room bears. */
  static boolean tooMuch(House house, SurfaceScore score) {
    Attention attention = house.room(house.surface(score.surfaceId()).roomId()).attention();
    int level = level(house, score);
    return !Verdicts.excused(attention, level)
        && !Showing.borne(score, Math.max(3, level), attention);
  }
}
