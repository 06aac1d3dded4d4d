package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.units.Progress;

class JointMemoryTest {
  private static final String EAST = "room/east";

  private final House house = TestHouses.boxRoom(5, 8, 2.7, 1, 4, 0, 2.4, 0.8);
  private final LightModel light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
  private final ScoreOptions options =
      ScoreOptions.standard().withSurfaces(Set.of(EAST)).withDays(List.of(20, 80)).withStep(60);
  private final JointMemory memory = new JointMemory();
  private final HouseScore first = Scorer.score(light, options, memory, Progress.NONE);

  @Test
  void nothingIsFollowedTwice() {
    HouseScore again = Scorer.score(light, options, memory, Progress.NONE);
    assertThat(first.samples()).isPositive();
    assertThat(again.samples()).isZero();
    assertThat(again.surface(EAST).joints()).isEqualTo(first.surface(EAST).joints());
    assertThat(again.surface(EAST).levels()).isEqualTo(first.surface(EAST).levels());
    assertThat(again.surface(EAST).spots()).isEqualTo(first.surface(EAST).spots());
  }

  @Test
  void backBlockingIsFollowedAtButtJointsAlone() {
    ScoreOptions blocked = options.withBackBlocked(Set.of(EAST));
    HouseScore after = Scorer.score(light, blocked, memory, Progress.NONE);
    HouseScore fresh = Scorer.score(light, blocked, Progress.NONE);
    int butts =
        first.surface(EAST).joints().stream()
            .filter(j -> j.joint().kind() == JointKind.BUTT)
            .mapToInt(j -> j.profile().size())
            .sum();
    assertThat(butts).isPositive();
    assertThat(after.samples()).isEqualTo(butts).isLessThan(fresh.samples());
    assertThat(after.surface(EAST).joints()).isEqualTo(fresh.surface(EAST).joints());
    assertThat(after.surface(EAST).joints()).isNotEqualTo(first.surface(EAST).joints());
  }
}
