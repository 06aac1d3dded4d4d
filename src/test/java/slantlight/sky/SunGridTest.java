package slantlight.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slantlight.geom.Vec3;

/** The grid of suns holds every sun of a year, anywhere. */
class SunGridTest {
  @ParameterizedTest
  @ValueSource(doubles = {0, 23.4, 45, 66.6, 90, -34, -70, -90})
  void everySunOfAYearIsAMixOfNearNodes(double latitude) {
    SunGrid grid = SunGrid.of(latitude);
    int[] idx = new int[4];
    float[] w = new float[4];
    Instant t = Instant.parse("2026-01-01T00:07:00Z");
    int lit = 0;
    for (int i = 0; i < 8760; i++, t = t.plus(1, ChronoUnit.HOURS)) {
      Vec3 sun = SunPath.at(latitude, 10, 0, t).direction();
      if (sun.z() <= 0) {
        continue;
      }
      lit++;
      grid.weights(sun, idx, w);
      Vec3 mix = Vec3.ZERO;
      float sum = 0;
      for (int k = 0; k < 4; k++) {
        assertThat(w[k]).isBetween(-1e-6f, 1.000001f);
        sum += w[k];
        mix = mix.plus(grid.nodes().get(idx[k]).times(w[k]));
      }
      assertThat(sum).isCloseTo(1, within(1e-5f));
      // A chord of a 5 degree cell sags by (2.5 degrees)^2 in all; refraction and nodes moved up to
      // the horizon shift low suns by less than the step.
      double allowed = sun.z() > 0.09 ? 0.004 : 0.06;
      assertThat(mix.distance(sun)).as("%s", sun).isLessThan(allowed);
    }
    assertThat(lit).isBetween(4000, 4700);
    assertThat(grid.nodes()).allMatch(v -> v.z() >= 0 && Math.abs(v.length() - 1) < 1e-12);
    assertThat(grid.nodes().size()).isBetween(300, 500);
  }

  @Test
  void aSunDeepBelowTheHorizonWeighsNothing() {
    int[] idx = new int[4];
    float[] w = {1, 1, 1, 1};
    SunGrid.of(45).weights(Vec3.ofAzimuthAltitude(0, -1), idx, w);
    assertThat(w).containsOnly(0f);
  }

  @Test
  void aFixedSunIsItsOnlyNode() {
    Vec3 sun = Vec3.ofAzimuthAltitude(1, 1.5);
    SunGrid grid = SunGrid.fixed(sun);
    int[] idx = new int[4];
    float[] w = new float[4];
    grid.weights(Vec3.UP, idx, w);
    assertThat(grid.nodes()).containsExactly(sun);
    assertThat(w).containsExactly(1f, 0f, 0f, 0f);
  }
}
