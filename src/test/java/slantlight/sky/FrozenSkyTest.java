package slantlight.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;

/**
 * Frozen values: what the program gave when its checks against published values passed. They tell
 * of a change, not of the truth.
 */
class FrozenSkyTest {
  private final SkyModel model = SkyModel.of(TestHouses.site());

  @Test
  void clearOctoberMorning() {
    SkyState s = model.at(Instant.parse("2026-10-15T14:10:00Z"), Weather.CLEAR);
    assertThat(Math.toDegrees(s.sun().azimuth())).isCloseTo(120.48664, within(1e-4));
    assertThat(Math.toDegrees(s.sun().altitude())).isCloseTo(16.00973, within(1e-4));
    assertThat(s.sunNormalLux()).isCloseTo(60_491.58, within(0.1));
    assertThat(s.diffuseHorizontalLux()).isCloseTo(8940.09, within(0.1));
  }
}
