package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.Distribution;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.units.Progress;

/** Which eyes see a point of the north wall, and which are asked first. */
class EyeChoiceTest {
  /** On the north wall (y = 5), facing south, u east. */
  private static final Frame POINT =
      new Frame(new Vec3(2, 4.999, 1.5), Vec3.EAST, Vec3.UP, new Vec3(0, -1, 0));

  private static final Eye NEAR = eye("near", 2, 4, 1.5);
  private static final Eye FAR = eye("far", 2, 0.5, 1.5);

  /** Sees the window's mirror image: the window's middle stands at (0.75, 0, 1.5). */
  private static final Eye MIRROR = eye("mirror", 2 + 1.25 / 2, 2.5, 1.5);

  /** Sees the mirror image of the lamp at (3.5, 3, 2.4). */
  private static final Eye LAMP = eye("lamp", 1.25, 4, 1.05);

  private static final Eye IN_PLANE = eye("plane", 3, 4.99, 1.5);
  private static final Eye OUTSIDE = eye("outside", 2, 1, -1.5);

  @Test
  void eyesBehindInThePlaneOrBeyondAFloorDoNotSee() {
    EyeChoice choice = choice(NEAR, FAR, IN_PLANE, OUTSIDE);
    assertThat(choice.seeing(POINT)).containsExactly(NEAR, FAR);
  }

  @Test
  void theSharpestAndThoseAtTheMirrorImagesAreAskedFirst() {
    EyeChoice choice = choice(FAR, MIRROR, LAMP, NEAR);
    assertThat(choice.likely(POINT, (distance, f) -> 1 / distance))
        .containsExactlyInAnyOrder(NEAR, MIRROR, LAMP);
    assertThat(choice.likely(POINT, (distance, f) -> distance))
        .containsExactlyInAnyOrder(FAR, MIRROR, LAMP);
    assertThat(choice().likely(POINT, (distance, f) -> distance)).isEmpty();
  }

  @Test
  void foreshorteningIsTheSineFromTheAcrossDirection() {
    assertThat(EyeChoice.foreshortening(new Vec3(0, 3, 4))).isEqualTo(1);
    assertThat(EyeChoice.foreshortening(new Vec3(5, 0, 0))).isZero();
    assertThat(EyeChoice.foreshortening(new Vec3(3, 0, 4))).isCloseTo(0.8, within(1e-12));
  }

  private static EyeChoice choice(Eye... eyes) {
    House h = TestHouses.boxRoom(4, 5, 2.5, 0, 1.5, 1, 2, 0.8);
    House lit =
        Variants.lamps(
            h, Variants.lamp("room", new Vec3(3.5, 3, 2.4), Vec3.DOWN, Distribution.Named.BARE, 9));
    House house =
        new House(
            lit.name(),
            lit.note(),
            lit.site(),
            lit.rooms(),
            lit.surfaces(),
            lit.openings(),
            lit.lamps(),
            lit.outside(),
            List.of(eyes),
            lit.rates(),
            lit.prescribed(),
            lit.scale());
    LightModel light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    return new EyeChoice(light);
  }

  private static Eye eye(String id, double x, double y, double z) {
    return new Eye(id, id, "room", new Vec3(x, y, z), false);
  }
}
