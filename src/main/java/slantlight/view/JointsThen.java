package slantlight.view;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import slantlight.score.JointMoments;
import slantlight.sky.Weather;

/**
 * How much each joint shows at one moment.
 *
 * @param showing by joint id, at equal steps along it
 */
record JointsThen(ZonedDateTime at, Weather weather, Map<String, List<Double>> showing) {
  static JointsThen of(JointMoments moments, ZonedDateTime at, Weather weather) {
    return new JointsThen(at, weather, moments.at(at, weather));
  }

  /** Whether it is of the moment that is set. */
  boolean is(Stage stage) {
    return at.equals(stage.time) && weather == stage.weather;
  }
}
