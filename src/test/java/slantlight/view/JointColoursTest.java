package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec3;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.score.SurfaceScore;
import slantlight.units.Progress;

class JointColoursTest {
  /** The year interpolates light between places of the sun, by 1 % at most. */
  private static final double INTERPOLATED = 0.02;

  @Test
  void atItsWorstMomentAJointHasTheColourOfItsPeak() {
    House house = ((Read.Ok) SceneReader.read(Path.of("scenes", "one-room.json"))).house();
    LightModel light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    ScoreOptions options = ScoreOptions.standard().withDays(List.of(80, 172, 355)).withStep(30);
    Scorer.Followed followed = Scorer.follow(light, options, Progress.NONE);
    ViewModel model = ViewModel.of(followed.score(), List.of());
    int compared = 0;
    for (SurfaceScore surface : followed.score().surfaces()) {
      for (JointScore joint : surface.joints()) {
        if (joint.peak().isEmpty() || joint.peak().get().showing() < 0.5) {
          continue;
        }
        Peak peak = joint.peak().get();
        Stage stage = new Stage(peak.at(), Camera.around(new Vec3(0, 0, 0), 0, 0.5, 10));
        stage.weather = peak.weather();
        stage.measure = Stage.Measure.MOMENT;
        JointsThen then = JointsThen.of(followed.moments(), peak.at(), peak.weather());
        JointColours colours = new JointColours(model, stage, Optional.of(then));
        double most = 0;
        int steps = Math.max(1, joint.profile().size() - 1);
        for (int i = 0; i <= steps; i++) {
          most = Math.max(most, colours.showing(joint, (double) i / steps));
        }
        assertThat(most)
            .as(joint.joint().id())
            .isCloseTo(peak.showing(), within(INTERPOLATED * peak.showing()));
        assertThat(colours.words()).isEqualTo("this moment");
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(5);
  }

  @Test
  void withoutTheMomentTheColourIsABoundAndSaysSo() {
    Stage stage = Studio.stage(new HouseShape(Studio.MODEL));
    stage.measure = Stage.Measure.MOMENT;
    JointsThen other = new JointsThen(stage.time.plusHours(1), stage.weather, java.util.Map.of());
    JointColours colours = new JointColours(Studio.MODEL, stage, Optional.of(other));
    assertThat(colours.words()).isEqualTo("this moment, at most");
  }
}
