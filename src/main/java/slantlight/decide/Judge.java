package slantlight.decide;

import java.util.HashMap;
import java.util.Map;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.score.Band;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;

/**
 * Says whether a room bears what a surface shows, from a score on few days.
 *
 * <p>A room bears a showing above its limit for some hours a year. A score on few days knows its
 * peak well, since the worst days are among them, but not the hours; these are taken as the hours
 * of the whole year's score in the proportion in which the change alters them on the few days.
 */
final class Judge {
  private final House house;
  private final Map<String, Double> yearPerDays = new HashMap<>();

  /**
   * @param year the score over the whole year
   * @param fewDays the same house on few days
   */
  Judge(HouseScore year, HouseScore fewDays) {
    house = year.house();
    for (SurfaceScore few : fewDays.surfaces()) {
      String id = few.surfaceId();
      double all = hours(year.surface(id));
      double some = hours(few);
      yearPerDays.put(id, some == 0 ? 1 : all / some);
    }
  }

  /** What the room of a surface accepts. */
  Attention attention(String surfaceId) {
    return house.room(house.surface(surfaceId).roomId()).attention();
  }

  /** True when the room bears what the surface shows at a level from 3 to 5. */
  boolean borne(SurfaceScore few, int level) {
    Attention attention = attention(few.surfaceId());
    double hours =
        Showing.hours(few, level, Band.of(attention.limit())) * yearPerDays.get(few.surfaceId());
    return Showing.at(few, level) <= attention.limit() || hours <= attention.hours();
  }

  /** {@link Excess} at a level from 3 to 5; 0 when the room bears it. */
  double excess(SurfaceScore few, int level) {
    return borne(few, level) ? 0 : Excess.of(few, level, attention(few.surfaceId()).limit());
  }

  private double hours(SurfaceScore score) {
    int level = Math.max(3, Baseline.level(house, score));
    return Showing.hours(score, level, Band.of(attention(score.surfaceId()).limit()));
  }
}
