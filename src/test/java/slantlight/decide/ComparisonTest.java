package slantlight.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.scene.Paint;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;

class ComparisonTest {
  private final House house =
      HandScores.house(RoomUse.LIVING, Attention.EVERYDAY, new Paint(0.85, Sheen.FLAT));

  @Test
  void sameJointsArePairedAndSurfacesOfOneSideStay() {
    Comparison c =
        Comparison.of(
            HandScores.of(
                house,
                HandScores.score(house, "room/ceiling", 6, 3.3, 1),
                HandScores.score(house, "room/east", 2, 1, 0)),
            HandScores.of(house, HandScores.score(house, "room/ceiling", 4, 1.3, 0.2)));
    assertThat(c.surfaces()).hasSize(2);
    Comparison.SurfaceChange ceiling = c.surfaces().get(0);
    assertThat(ceiling.difference()).isCloseTo(-2, within(1e-12));
    assertThat(ceiling.before().orElseThrow().level()).isEqualTo(5);
    assertThat(ceiling.after().orElseThrow().level()).isEqualTo(4);
    assertThat(ceiling.joints())
        .containsExactly(
            new Comparison.JointChange(
                "room/ceiling#B1", OptionalDouble.of(3.3), OptionalDouble.of(1.3)));
    assertThat(c.surfaces().get(1).after()).isEmpty();
    assertThat(c.surfaces().get(1).showingAfter()).isEmpty();
  }
}
