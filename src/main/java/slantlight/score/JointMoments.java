package slantlight.score;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slantlight.light.LightModel;
import slantlight.sky.Weather;

/**
 * How much every joint of a scored house shows at any one moment, for the eyes that judge it
 * through the year. The light at the joints is kept for it: a moment costs a fraction of a second.
 */
public final class JointMoments {
  private static final int LEVEL_4 = 1;

  private final LightModel light;
  private final ScoreOptions options;
  private final Map<String, PointLights> joints;

  /**
   * Keeps what a score was made from.
   *
   * @param joints light at the points of each joint, by its id
   */
  JointMoments(LightModel light, ScoreOptions options, Map<String, PointLights> joints) {
    this.light = light;
    this.options = options;
    this.joints = joints;
  }

  /**
   * Showing at level 4 at a moment.
   *
   * <p>Sky, ground, lamps and flecks of sun are those of the moment; sunlight bounced twice or from
   * far away is mixed of four suns of the grid.
   *
   * @return by joint id, at the places of {@link JointScore#profile}; 0 where no eye sees it
   */
  public Map<String, List<Double>> at(ZonedDateTime at, Weather weather) {
    LitYear moment = LitYear.at(light.house(), options, at, weather);
    YearScan scan = new YearScan(light, moment);
    List<String> ids = List.copyOf(joints.keySet());
    List<List<Double>> showing =
        ids.parallelStream().map(id -> profile(joints.get(id), scan)).toList();
    Map<String, List<Double>> out = new LinkedHashMap<>();
    for (int i = 0; i < ids.size(); i++) {
      out.put(ids.get(i), showing.get(i));
    }
    return out;
  }

  private static List<Double> profile(PointLights lights, YearScan scan) {
    List<Double> out = new ArrayList<>();
    for (int i = 0; i < lights.points().size(); i++) {
      float[][] showing = new float[3][scan.year().states()];
      int sample = lights.sample()[i];
      if (sample >= 0) {
        scan.follow(lights, i, scan.kitchen(lights.basis(), sample), showing, new float[3]);
      }
      out.add((double) showing[LEVEL_4][0]);
    }
    return out;
  }
}
