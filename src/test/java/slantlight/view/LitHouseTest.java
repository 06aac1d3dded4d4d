package slantlight.view;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec3;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.report.TestScores;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.score.HouseScore;
import slantlight.sky.SkyModel;
import slantlight.sky.Weather;
import slantlight.units.Progress;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Target;

class LitHouseTest {
  @Test
  void picture() throws Exception {
    HouseScore score = TestScores.score();
    ViewModel model =
        new ViewModel(score.house(), Optional.of(score), TestScores.verdicts(), j -> 0.3);
    HouseShape shape = new HouseShape(model);
    LightModel light = Transport.of(score.house(), TransportOptions.DEFAULT, Progress.NONE);
    RoomField room = new RoomField(light, shape, "room", Progress.NONE);
    ZonedDateTime at = ZonedDateTime.of(2026, 5, 18, 12, 45, 0, 0, score.house().site().zone());
    LightState state =
        new LightState(SkyModel.at(score.house().site(), at, Weather.CLEAR), List.of());
    LitMoment moment = LitMoment.of(light, List.of(room), state, Optional.empty());
    Camera camera = Camera.from(new Vec3(4.2, 7.2, 1.6), new Vec3(1.8, 0, 1.7));
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        LitHouse house = new LitHouse();
        Target target = new Target(1280, 720, 1)) {
      house.fill(model, shape, moment);
      System.out.println("white " + house.white());
      int[] r = {0, 0, 1280, 720};
      house.draw(target, r, camera, List.of(new LitHouse.Half(4, Optional.empty())), 1, 4);
      gl.check();
      target.read().write(Path.of("target/view/lit1.png"));
      house.draw(
          target,
          r,
          camera,
          List.of(
              new LitHouse.Half(4, Optional.empty()),
              new LitHouse.Half(4, Optional.of(new Paint(0.12, Sheen.SATIN)))),
          1,
          4);
      target.read().write(Path.of("target/view/lit2.png"));
      house.draw(
          target,
          r,
          camera,
          List.of(
              new LitHouse.Half(4, Optional.empty()), new LitHouse.Half(5, Optional.empty())),
          4,
          4);
      target.read().write(Path.of("target/view/lit3.png"));
      gl.check();
    }
  }
}
