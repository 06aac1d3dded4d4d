package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Surface;
import slantlight.units.Progress;

class JointMomentsTest {
  /** The year interpolates light between places of the sun; IngredientsTest allows it 1 %. */
  private static final double INTERPOLATED = 0.02;

  private static House house() {
    return ((Read.Ok) SceneReader.read(Path.of("scenes", "one-room.json"))).house();
  }

  @Test
  void aJointAtItsWorstMomentShowsItsPeakOfTheYear() {
    House house = house();
    LightModel light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    ScoreOptions options =
        ScoreOptions.standard().withDays(List.of(20, 110, 172, 240, 330)).withStep(30);
    Scorer.Followed followed = Scorer.follow(light, options, Progress.NONE);
    int compared = 0;
    for (SurfaceScore surface : followed.score().surfaces()) {
      for (JointScore joint : surface.joints()) {
        if (joint.peak().isEmpty()) {
          continue;
        }
        Peak peak = joint.peak().get();
        List<Double> then =
            followed.moments().at(peak.at(), peak.weather()).get(joint.joint().id());
        double most = then.stream().mapToDouble(d -> d).max().orElseThrow();
        assertThat(then).hasSameSizeAs(joint.profile());
        assertThat(most)
            .as(joint.joint().id() + " at " + peak.at())
            .isCloseTo(peak.showing(), within(INTERPOLATED * peak.showing()));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(10);
  }

  @Test
  void nothingShowsInTheDarkAndScoringAloneGivesTheSame() {
    House house = house();
    LightModel light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(List.of(172))
            .withStep(120)
            .withSurfaces(
                Set.of(
                    house.surfaces().stream()
                        .filter(Surface::boarded)
                        .findFirst()
                        .orElseThrow()
                        .id()));
    Scorer.Followed followed = Scorer.follow(light, options, Progress.NONE);
    List<JointScore> alone = Scorer.score(light, options, Progress.NONE).surfaces().get(0).joints();
    assertThat(alone).isNotEmpty();
    assertThat(followed.score().surfaces().get(0).joints()).isEqualTo(alone);
    ZonedDateTime night = ZonedDateTime.of(2026, 6, 21, 3, 0, 0, 0, house.site().zone());
    Map<String, List<Double>> dark = followed.moments().at(night, slantlight.sky.Weather.CLEAR);
    assertThat(dark).hasSameSizeAs(alone);
    dark.values().forEach(v -> assertThat(v).allMatch(s -> s == 0));
  }
}
