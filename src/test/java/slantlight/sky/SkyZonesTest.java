package slantlight.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Vec3;
import slantlight.scene.Site;
import slantlight.scene.SkylinePoint;

/** The division of the vault and the means over it. */
class SkyZonesTest {
  @Test
  void zonesFillTheHemisphere() {
    double angle = 0;
    double projected = 0;
    for (int i = 0; i < SkyZones.COUNT; i++) {
      angle += SkyZones.solidAngle(i);
      projected += SkyZones.solidAngle(i) * SkyZones.direction(i).z();
    }
    assertThat(angle).isCloseTo(2 * Math.PI, within(1e-12));
    assertThat(projected).as("all but the cap's own tilt").isCloseTo(Math.PI, within(2e-4));
  }

  @Test
  void directionsFindTheirOwnZone() {
    for (int i = 0; i < SkyZones.COUNT; i++) {
      Vec3 d = SkyZones.direction(i);
      assertThat(SkyZones.indexOf(d.x(), d.y(), d.z())).isEqualTo(i);
    }
    assertThat(SkyZones.indexOf(1, 0, -1e-9)).isEqualTo(-1);
    assertThat(SkyZones.indexOf(-1e-12, 1, 0)).isEqualTo(0);
  }

  @Test
  void aZoneIsTheSetOfDirectionsThatFindIt() {
    int[] hits = new int[SkyZones.COUNT];
    Random random = new Random(20260101);
    int n = 400_000;
    for (int i = 0; i < n; i++) {
      double z = random.nextDouble();
      double azimuth = random.nextDouble() * 2 * Math.PI;
      double h = Math.sqrt(1 - z * z);
      hits[SkyZones.indexOf(h * Math.sin(azimuth), h * Math.cos(azimuth), z)]++;
    }
    for (int i = 0; i < SkyZones.COUNT; i++) {
      double expected = n * SkyZones.solidAngle(i) / (2 * Math.PI);
      // Five standard deviations of a count.
      assertThat((double) hits[i]).isCloseTo(expected, within(5 * Math.sqrt(expected)));
    }
  }

  /**
   * Zone means keep the flux of every part of the vault. Their horizontal illuminance strays when
   * the lowest band is steep within itself: by 2 % for a clear sky with the sun at the horizon.
   */
  @Test
  void zonesCarryTheHorizontalIlluminanceOfEverySkyAndSun() {
    SkyModel model = SkyModel.of(TestHouses.site());
    for (Weather weather : Weather.values()) {
      for (double altitudeDeg = -5; altitudeDeg <= 90; altitudeDeg += 2.5) {
        Sun sun = new Sun(2.3, Math.toRadians(altitudeDeg));
        SkyState state = model.at(sun, 100, Month.APRIL, weather);
        double share = weather == Weather.CLEAR && altitudeDeg < 20 ? 0.02 : 0.01;
        assertThat(zoneSum(state))
            .as("%s sun at %s", weather, altitudeDeg)
            .isCloseTo(state.diffuseHorizontalLux(), within(share * state.diffuseHorizontalLux()));
      }
    }
  }

  @Test
  void zonesKeepTheFluxOfEachBandOfAClearSky() {
    CieSky sky = CieSky.ofHorizontal(12, Vec3.ofAzimuthAltitude(1.1, Math.toRadians(14)), 10_000);
    float[] l = new float[SkyZones.COUNT];
    SkyZones.luminances(sky, l, 0, 1);
    int zone = 0;
    int[] rows = {30, 30, 24, 24, 18, 12, 6};
    for (int r = 0; r < rows.length; r++) {
      double flux = 0;
      for (int c = 0; c < rows[r]; c++, zone++) {
        flux += l[zone] * SkyZones.solidAngle(zone);
      }
      double exact = bandFlux(sky, Math.toRadians(12.0 * r), Math.toRadians(12.0 * (r + 1)));
      assertThat(flux).as("band %s", r).isCloseTo(exact, within(0.003 * exact));
    }
  }

  private static double bandFlux(CieSky sky, double low, double high) {
    int n = 360;
    int m = 40;
    double sum = 0;
    for (int k = 0; k < m; k++) {
      double z = Math.sin(low) + (Math.sin(high) - Math.sin(low)) * (k + 0.5) / m;
      double h = Math.sqrt(1 - z * z);
      for (int i = 0; i < n; i++) {
        double a = 2 * Math.PI * (i + 0.5) / n;
        sum += sky.toward(h * Math.sin(a), h * Math.cos(a), z);
      }
    }
    return sum * 2 * Math.PI * (Math.sin(high) - Math.sin(low)) / (n * m);
  }

  @Test
  void tableAgreesWithTheFormulaAskedDirectionByDirection() {
    CieSky sky = CieSky.ofHorizontal(12, Vec3.ofAzimuthAltitude(1, 0.5), 10_000);
    float[] fast = new float[SkyZones.COUNT];
    float[] slow = new float[SkyZones.COUNT];
    SkyZones.luminances(sky, fast, 0, 1);
    SkyZones.luminances((x, y, z) -> sky.toward(x, y, z), slow, 0, 1);
    for (int i = 0; i < SkyZones.COUNT; i++) {
      assertThat(fast[i]).isCloseTo(slow[i], within(slow[i] * 2e-4f));
    }
  }

  @Test
  void strideAndOffsetPlaceTheZones() {
    CieSky sky = CieSky.ofHorizontal(1, Vec3.UP, 10_000);
    float[] plain = new float[SkyZones.COUNT];
    float[] woven = new float[3 * SkyZones.COUNT];
    SkyZones.luminances(sky, plain, 0, 1);
    SkyZones.luminances(sky, woven, 2, 3);
    assertThat(woven[2 + 3 * 77]).isEqualTo(plain[77]);
    assertThat(woven[1 + 3 * 77]).isZero();
  }

  @Test
  void aSkylineHidesSunAndSky() {
    Site open = TestHouses.site();
    Site hill = TestHouses.site(new SkylinePoint(0, 0.3), new SkylinePoint(Math.PI, 0.3));
    Sun low = new Sun(1, 0.29);
    SkyState seen = SkyModel.of(open).at(low, 80, Month.MARCH, Weather.CLEAR);
    SkyState hidden = SkyModel.of(hill).at(low, 80, Month.MARCH, Weather.CLEAR);
    assertThat(seen.sunNormalLux()).isPositive();
    assertThat(hidden.sunNormalLux()).isZero();
    assertThat(hidden.diffuseHorizontalLux())
        .isLessThan(seen.diffuseHorizontalLux())
        .isCloseTo(zoneSum(hidden), within(1e-3));
    double slow = 0;
    int n = 400;
    for (int r = 0; r < n; r++) {
      // Equal parts of sin^2(altitude), so of illuminance.
      double z = Math.sqrt((r + 0.5) / n);
      double h = Math.sqrt(1 - z * z);
      for (int p = 0; p < n; p++) {
        double a = 2 * Math.PI * (p + 0.5) / n;
        slow += Math.PI * hidden.luminance().toward(h * Math.sin(a), h * Math.cos(a), z) / (n * n);
      }
    }
    assertThat(hidden.diffuseHorizontalLux()).isCloseTo(slow, within(0.01 * slow));
    double below = hidden.luminance().toward(Math.sin(1), Math.cos(1), 0.1);
    assertThat(below)
        .isCloseTo(SkyModel.FAR_REFLECTANCE * seen.globalHorizontalLux() / Math.PI, within(1e-9));
    assertThat(hidden.luminance().toward(0, 0, 1)).isEqualTo(seen.luminance().toward(0, 0, 1));
  }

  @Test
  void partsOfAZoneLieInItAndHaveItsMeanHeight() {
    assertThat(SkyZones.parts()).isEqualTo(9);
    for (int zone = 0; zone < SkyZones.COUNT - 1; zone++) {
      double z = 0;
      for (int k = 0; k < SkyZones.parts(); k++) {
        Vec3 d = SkyZones.part(zone, k);
        assertThat(d.length()).isCloseTo(1, within(1e-6));
        assertThat(SkyZones.indexOf(d.x(), d.y(), d.z())).isEqualTo(zone);
        z += d.z() / SkyZones.parts();
      }
      assertThat(z).isCloseTo(SkyZones.direction(zone).z(), within(1e-6));
    }
  }

  /** Open solid angle under a level skyline is 2 pi (1 - sin h), and a wall hides only its side. */
  @Test
  void sharesAboveASkylineAddUpToTheOpenSolidAngle() {
    for (double h : new double[] {0.01, 0.1, 0.3, 0.7, 1.2}) {
      assertThat(openAngle(SkyZones.clearShares(a -> h)))
          .isCloseTo(2 * Math.PI * (1 - Math.sin(h)), within(1e-5));
    }
    float[] none = SkyZones.clearShares(a -> 0);
    assertThat(none).containsOnly(1f);
    // Height follows the azimuth: the integral of 1 - sin(0.3 + 0.2 cos a) by its own sum.
    double slow = 0;
    for (int i = 0; i < 3600; i++) {
      slow += (1 - Math.sin(0.3 + 0.2 * Math.cos(2 * Math.PI * (i + 0.5) / 3600))) / 3600;
    }
    float[] tilted = SkyZones.clearShares(a -> 0.3 + 0.2 * Math.cos(a));
    assertThat(openAngle(tilted)).isCloseTo(2 * Math.PI * slow, within(1e-4));
    // North stands 0.5 high and south 0.1.
    for (int k = 0; k < 9; k++) {
      assertThat(tilted[k]).as("north, lowest band").isZero();
      assertThat(tilted[15 * 9 + k]).isBetween(k < 3 ? 0f : 0.5f, 1f);
      assertThat(tilted[144 * 9 + k]).isEqualTo(1f);
    }
    float[] east = SkyZones.clearShares(a -> Math.sin(a) > 0.99 ? 0.15 : 0);
    for (int zone = 0; zone < 30; zone++) {
      for (int k = 0; k < 9; k++) {
        double azimuth = (zone + (k % 3 + 0.5) / 3 - 0.5) * Math.toRadians(12);
        if (Math.abs(azimuth - Math.PI / 2) < 0.05) {
          assertThat(east[zone * 9 + k]).isLessThan(k < 6 ? 1e-6f : 0.9f);
        } else if (Math.abs(azimuth - Math.PI / 2) > 0.25) {
          assertThat(east[zone * 9 + k]).isEqualTo(1f);
        }
      }
    }
  }

  private static double openAngle(float[] shares) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += shares[i] * SkyZones.solidAngle(i / 9) / 9;
    }
    return sum;
  }

  private static double zoneSum(SkyState state) {
    float[] l = new float[SkyZones.COUNT];
    SkyZones.luminances(state, l, 0, 1);
    return SkyZones.horizontalLux(l);
  }
}
