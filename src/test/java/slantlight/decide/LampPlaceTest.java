package slantlight.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.scene.Paint;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.score.JointScore;

class LampPlaceTest {
  private final House house =
      HandScores.house(RoomUse.LIVING, Attention.EVERYDAY, new Paint(0.85, Sheen.FLAT));
  private final Surface ceiling = house.surface("room/ceiling");
  private final JointScore joint = HandScores.score(house, ceiling.id(), 6, 3.3, 1).joints().get(0);

  @Test
  void theLampRakesAtLeastAsHardAsTheWorstMoment() {
    LampPlace lamp = LampPlace.of(house, ceiling, joint).orElseThrow();
    assertThat(lamp.worstSlant()).isEqualTo(2.0);
    assertThat(lamp.slant()).isGreaterThanOrEqualTo(LampPlace.MARGIN * lamp.worstSlant());
    assertThat(lamp.reachable()).isTrue();
    assertThat(lamp.height() / lamp.across()).isCloseTo(Math.tan(lamp.grazing()), within(1e-12));
  }

  @Test
  void theLampStandsOnTheSideOfTheLight() {
    // The window is in the south wall, so the lamp is south of the joint and under the ceiling.
    LampPlace lamp = LampPlace.of(house, ceiling, joint).orElseThrow();
    assertThat(lamp.position().y()).isLessThan(lamp.target().y());
    assertThat(ceiling.face().frame().height(lamp.position())).isPositive();
  }

  /** A point of light across a joint has the same slant all along it. */
  @ParameterizedTest
  @ValueSource(doubles = {-2, -0.5, 0, 0.3, 1.5})
  void theSlantIsTheSameAllAlongTheJoint(double along) {
    Frame frame = ceiling.face().frame();
    double slant =
        LampPlace.slant(
            frame, new Vec2(2 + along, 1), new Vec2(0, 1), frame.toWorld(new Vec2(2, 2), 0.1));
    assertThat(slant).isCloseTo(10, within(1e-9));
  }
}
