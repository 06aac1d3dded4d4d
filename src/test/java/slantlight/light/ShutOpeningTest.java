package slantlight.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Shade;
import slantlight.units.Progress;

/**
 * Sheets in an opening against physics: light is linear in its sources (superposition), so what a
 * cloth brings goes with what it lets through, on top of the light of all other openings.
 */
class ShutOpeningTest {
  private static final String WINDOW = "r0-0/W";

  private final House house = RowHouses.grid(2, 1);
  private final LightModel drawn = Transport.of(house, LightHouses.QUICK, Progress.NONE);
  private final ShutOpening shut = drawn.shut(WINDOW).orElseThrow();
  private final List<SamplePoint> ceilings = RowHouses.ceilingSamples(house, 9);
  private final List<LightState> states =
      List.of(
          LightHouses.even(house, 5000, 1200),
          LightHouses.sunny(house, new Vec3(0.1, -0.8, 0.5).unit(), 60_000, 3000));

  private House shaded(double transmittance, boolean diffusing) {
    return house.withOpenings(
        house.openings().stream()
            .map(o -> o.id().equals(WINDOW) ? o.withShade(new Shade(transmittance, diffusing)) : o)
            .toList());
  }

  /** Illuminance and light vector by sample, then row, then state. */
  private float[][][] light(LightModel model) {
    Basis basis =
        model.basis(ceilings, Collections.nCopies(ceilings.size(), Kernel.VECTOR), Progress.NONE);
    Basis.Block block = basis.block(states);
    float[][][] out = new float[ceilings.size()][3][states.size()];
    for (int i = 0; i < out.length; i++) {
      basis.evaluate(i, block, out[i]);
    }
    return out;
  }

  /** Shares of illuminance: bounced light is spread within a group of patches source by source. */
  @Test
  void clothIsTheLightTracedAnewBehindIt() {
    LightModel cloth = shut.of(shaded(0.4, true));
    LightModel traced = Transport.of(shaded(0.4, true), LightHouses.QUICK, Progress.NONE);
    float[][][] a = light(cloth);
    float[][][] b = light(traced);
    for (int i = 0; i < a.length; i++) {
      for (int m = 0; m < states.size(); m++) {
        for (int r = 0; r < 3; r++) {
          assertThat((double) a[i][r][m]).isCloseTo(b[i][r][m], within(1e-3 * b[i][0][m]));
        }
        SamplePoint at = ceilings.get(i);
        LightState state = states.get(m);
        double lux = traced.incident(at, state).illuminance();
        assertThat(cloth.incident(at, state).illuminance()).isCloseTo(lux, within(1e-3 * lux));
        assertThat(cloth.direct(at, state).illuminance())
            .isCloseTo(traced.direct(at, state).illuminance(), within(1e-6 * lux));
      }
    }
    assertThat(cloth.house()).isEqualTo(shaded(0.4, true));
  }

  @Test
  void whatAClothBringsGoesWithWhatItLetsThrough() {
    float[][][] black = light(shut.of(shaded(0, false)));
    float[][][] some = light(shut.of(shaded(0.2, true)));
    float[][][] twice = light(shut.of(shaded(0.4, true)));
    for (int i = 0; i < black.length; i++) {
      for (int m = 0; m < states.size(); m++) {
        assertThat(some[i][0][m]).isGreaterThan(black[i][0][m]);
        for (int r = 0; r < 3; r++) {
          double brought = some[i][r][m] - black[i][r][m];
          assertThat((double) twice[i][r][m])
              .isCloseTo(black[i][r][m] + 2 * brought, within(1e-5 * twice[i][0][m]));
        }
      }
    }
  }

  @Test
  void blackIsTheLightTracedAnew() {
    float[][][] black = light(shut.of(shaded(0, false)));
    assertThat(black).isDeepEqualTo(light(drawn.changed(shaded(0, false)).orElseThrow()));
    assertThat(black[0][0][0]).isLessThan(0.1f * light(drawn)[0][0][0]);
  }

  @Test
  void theSunDoesNotComeThroughAClothStraight() {
    SamplePoint floor =
        new SamplePoint(slantlight.geom.Frame.of(new Vec3(2.5, 1, 0), Vec3.EAST, Vec3.UP), "r0-0");
    Vec3 sun = states.get(1).sky().sun();
    assertThat(drawn.beams(List.of(floor)).transmittance(0, sun.x(), sun.y(), sun.z()))
        .isPositive();
    assertThat(
            shut.of(shaded(0.4, true))
                .beams(List.of(floor))
                .transmittance(0, sun.x(), sun.y(), sun.z()))
        .isZero();
  }

  @Test
  void aClearFilmIsNoSheet() {
    assertThatThrownBy(() -> shut.of(shaded(0.5, false)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(WINDOW);
  }
}
