package slantlight.view;

import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.report.TestScores;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.HouseScore;
import slantlight.sky.Weather;
import slantlight.units.Progress;

/** The box room with invented scores, its light computed once for all tests of the viewer. */
final class Studio {
  static final HouseScore SCORE = TestScores.score();
  static final House HOUSE = SCORE.house();
  static final ViewModel MODEL = ViewModel.of(SCORE, TestScores.verdicts());
  static final Scores.Scored SCORED = new Scores.Scored(MODEL, Optional.empty());

  private Studio() {}

  /** Computed when first asked for. */
  private static final class Light {
    static final LightModel MODEL = Transport.of(HOUSE, TransportOptions.DEFAULT, Progress.NONE);
    static final RoomField ROOM =
        new RoomField(MODEL, new HouseShape(Studio.MODEL), "room", Progress.NONE);
  }

  static LightModel light() {
    return Light.MODEL;
  }

  static ZonedDateTime at(int month, int day, int hour, int minute) {
    return ZonedDateTime.of(2026, month, day, hour, minute, 0, 0, HOUSE.site().zone());
  }

  static LitMoment moment(ZonedDateTime at) {
    return LitMoment.of(
        Light.MODEL,
        List.of(Light.ROOM),
        new Moments(HOUSE).at(at, Weather.CLEAR),
        Optional.of("room"));
  }

  /** The same light vector, in the surface's own frame, at every node of every surface. */
  static LitMoment even(ViewModel model, HouseShape shape, double u, double v, double n) {
    double[] one = new double[Cones.VALUES];
    double lux = Math.sqrt(u * u + v * v + n * n);
    Cones.KERNEL.weigh(u / lux, v / lux, n / lux, one);
    Map<String, float[]> cones = new HashMap<>();
    for (Surface s : model.house().surfaces()) {
      float[] values = new float[shape.grid(s).nodes() * Cones.VALUES];
      for (int i = 0; i < values.length; i++) {
        values[i] = (float) (lux * one[i % Cones.VALUES]);
      }
      cones.put(s.id(), values);
    }
    return new LitMoment(
        new Moments(model.house()).at(at(5, 18, 2, 0), Weather.CLEAR),
        cones,
        List.of(),
        Optional.empty());
  }

  static Stage stage(HouseShape shape) {
    double aspect = 888.0 / 514;
    Camera camera =
        Camera.fitting(
            shape.scope(), shape.middle(), Math.toRadians(205), Math.toRadians(28), aspect);
    return new Stage(at(5, 18, 12, 45), camera);
  }
}
