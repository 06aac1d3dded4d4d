package slantlight.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slantlight.geom.Vec3;

/** Tables built anew against the formula they stand for, summed another way. */
class SkyTablesTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 7, 12, 16})
  void horizontalIlluminanceIsTheSumOverTheVault(int type) {
    SkyTables tables = new SkyTables(type);
    for (double altitudeDeg : new double[] {-4, 3.5, 30, 71.25, 90}) {
      Vec3 sun = Vec3.ofAzimuthAltitude(0.3, Math.toRadians(altitudeDeg));
      CieSky sky = new CieSky(type, sun, 1);
      int n = 300;
      double sum = 0;
      for (int r = 0; r < n; r++) {
        double altitude = Math.PI / 2 * (r + 0.5) / n;
        for (int p = 0; p < n; p++) {
          Vec3 d = Vec3.ofAzimuthAltitude(2 * Math.PI * (p + 0.5) / n, altitude);
          sum += sky.toward(d.x(), d.y(), d.z()) * Math.sin(altitude) * Math.cos(altitude);
        }
      }
      double slow = sum * Math.PI * Math.PI / (n * n);
      assertThat(tables.horizontal(Math.toRadians(altitudeDeg)))
          .as("sun at %s", altitudeDeg)
          .isCloseTo(slow, within(3e-3 * slow));
    }
  }

  @Test
  void indicatrixAndGradationFollowTheirFormula() {
    SkyTables tables = new SkyTables(12);
    for (double cos = -1; cos <= 1; cos += 0.0137) {
      double exact = CieSky.indicatrix(12, cos);
      assertThat((double) tables.indicatrix((float) cos)).isCloseTo(exact, within(1e-4 * exact));
    }
    assertThat((double) tables.indicatrix(1)).isCloseTo(CieSky.indicatrix(12, 1), within(1e-4));
    assertThat((double) tables.indicatrix(-1)).isCloseTo(CieSky.indicatrix(12, -1), within(1e-4));
    for (int zone = 0; zone < SkyZones.COUNT; zone++) {
      for (int k = 0; k < SkyZones.parts(); k++) {
        double exact = CieSky.gradation(12, SkyZones.part(zone, k).z());
        assertThat((double) tables.gradation[zone * SkyZones.parts() + k])
            .isCloseTo(exact, within(1e-5 * exact));
      }
    }
  }
}
