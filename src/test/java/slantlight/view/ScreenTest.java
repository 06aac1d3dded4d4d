package slantlight.view;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slantlight.report.TestScores;
import slantlight.score.HouseScore;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Target;

class ScreenTest {
  @Test
  void picture() throws Exception {
    HouseScore score = TestScores.score();
    ViewModel model =
        new ViewModel(score.house(), Optional.of(score), TestScores.verdicts(), j -> 0.3);
    HouseShape shape = new HouseShape(model);
    Camera camera =
        Camera.fitting(
            shape.boxCorners(),
            shape.middle(),
            Math.toRadians(205),
            Math.toRadians(28),
            888.0 / 514);
    Stage stage = new Stage(score.surfaces().get(0).worst().orElseThrow().at(), camera);
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Screen screen = new Screen(model, 4);
        Target target = new Target(1280, 720, 4)) {
      screen.draw(target, stage, 1);
      target.read().write(Path.of("target/view/s1.png"));
      stage.surface = Optional.of("room/ceiling");
      stage.joint = Optional.of("room/ceiling#B3");
      stage.look = Stage.Look.BOARDS;
      screen.draw(target, stage, 1);
      target.read().write(Path.of("target/view/s2.png"));
      stage.surface = Optional.of("room/west");
      stage.joint = Optional.empty();
      screen.draw(target, stage, 1);
      target.read().write(Path.of("target/view/s3.png"));
      gl.check();
    }
  }
}
