package slantlight.score;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slantlight.light.Basis;
import slantlight.light.SunBeams;
import slantlight.scene.House;
import slantlight.sky.Weather;

/**
 * How much every joint of a scored house shows at any one moment, for the eyes that judge it
 * through the year. The responses of the score are kept for it, so that a moment costs
 * milliseconds.
 */
public final class JointMoments {
  private static final int LEVEL_4 = 1;

  private final House house;
  private final ScoreOptions options;
  private final Basis basis;
  private final SunBeams beams;
  private final Map<PointOptics, Integer> places;
  private final Map<String, List<PointOptics>> joints;

  /**
   * Keeps what a score was made from.
   *
   * @param places index in the basis of every point that some eye sees, by identity
   * @param joints points of each joint, by its id, from its first point to its last
   */
  JointMoments(
      House house,
      ScoreOptions options,
      Basis basis,
      SunBeams beams,
      Map<PointOptics, Integer> places,
      Map<String, List<PointOptics>> joints) {
    this.house = house;
    this.options = options;
    this.basis = basis;
    this.beams = beams;
    this.places = places;
    this.joints = joints;
  }

  /**
   * Showing at level 4 at a moment.
   *
   * <p>Sky, ground and lamps are those of the moment; sunlight bounced inside is interpolated
   * between places of the sun, as it is for the year, so a showing beside a patch of sun has the
   * year's error (docs/limits.md).
   *
   * @return by joint id, at the places of {@link JointScore#profile}; 0 where no eye sees it
   */
  public Map<String, List<Double>> at(ZonedDateTime at, Weather weather) {
    LitYear moment = LitYear.at(house, options, at, weather);
    YearScan scan = new YearScan(basis, beams, places, moment);
    List<String> ids = List.copyOf(joints.keySet());
    List<List<Double>> showing =
        ids.parallelStream().map(id -> profile(joints.get(id), scan)).toList();
    Map<String, List<Double>> out = new LinkedHashMap<>();
    for (int i = 0; i < ids.size(); i++) {
      out.put(ids.get(i), showing.get(i));
    }
    return out;
  }

  private static List<Double> profile(List<PointOptics> points, YearScan scan) {
    List<Double> out = new ArrayList<>();
    for (PointOptics point : points) {
      float[][] showing = new float[3][scan.year().states()];
      if (point.eyes() > 0) {
        scan.follow(point, scan.kitchen(scan.place(point)), showing, new float[3]);
      }
      out.add((double) showing[LEVEL_4][0]);
    }
    return out;
  }
}
