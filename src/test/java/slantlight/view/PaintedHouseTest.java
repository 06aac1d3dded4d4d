package slantlight.view;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.lwjgl.opengl.GL11C;
import slantlight.report.TestScores;
import slantlight.score.HouseScore;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Target;

class PaintedHouseTest {
  @Test
  void picture() throws Exception {
    HouseScore score = TestScores.score();
    ViewModel model =
        new ViewModel(score.house(), Optional.of(score), TestScores.verdicts(), j -> 0.3);
    HouseShape shape = new HouseShape(model);
    Camera camera = Camera.around(shape.middle(), Math.toRadians(205), Math.toRadians(28), shape.radius() * 4);
    Stage stage = new Stage(score.surfaces().get(0).worst().orElseThrow().at(), camera);
    stage.surface = Optional.of("room/ceiling");
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        PaintedHouse house = new PaintedHouse();
        Target target = new Target(1280, 720, 4)) {
      target.bind();
      GL11C.glClearColor(0.95f, 0.94f, 0.91f, 1);
      GL11C.glClear(GL11C.GL_COLOR_BUFFER_BIT | GL11C.GL_STENCIL_BUFFER_BIT| GL11C.GL_DEPTH_BUFFER_BIT);
      house.fill(model, shape, stage, new JointColours(Stage.Measure.YEAR, j -> List.of()));
      house.draw(camera, 1280, 720, 1);
      target.read().write(Path.of("target/view/painted.png"));
      gl.check();
    }
  }
}
