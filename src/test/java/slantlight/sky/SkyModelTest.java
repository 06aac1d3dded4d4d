package slantlight.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slantlight.TestHouses;
import slantlight.geom.Vec3;
import slantlight.scene.PrescribedLight;
import slantlight.scene.Site;
import slantlight.scene.SkylinePoint;

/** Skies at ordinary and awkward places and hours. */
class SkyModelTest {
  @ParameterizedTest
  @ValueSource(doubles = {90, 66.6, 0, -45, -90})
  void everyHourOfAYearIsFiniteAnywhere(double latitude) {
    SkyModel model = SkyModel.of(site(latitude, 0, ZoneId.of("UTC"), 0));
    Instant t = Instant.parse("2026-01-01T00:30:00Z");
    for (int i = 0; i < 8760; i += 3, t = t.plus(Duration.ofHours(3))) {
      for (Weather weather : Weather.values()) {
        SkyState s = model.at(t, weather);
        assertThat(s.globalHorizontalLux()).isBetween(0.0, 150_000.0);
        assertThat(s.luminance().toward(0.6, 0, 0.8)).isBetween(0.0, 1e6);
        assertThat(s.sun().length()).isCloseTo(1, within(1e-12));
      }
    }
  }

  @Test
  void overcastHasNoBeamAndPartlyCloudyLessThanClear() {
    SkyModel model = SkyModel.of(TestHouses.site());
    Instant noon = Instant.parse("2026-06-21T18:00:00Z");
    double clear = model.at(noon, Weather.CLEAR).sunNormalLux();
    double partly = model.at(noon, Weather.PARTLY_CLOUDY).sunNormalLux();
    assertThat(model.at(noon, Weather.OVERCAST).sunNormalLux()).isZero();
    assertThat(partly).isBetween(1.0, clear - 1);
  }

  @Test
  void lightFadesWithoutAStepThroughCivilTwilight() {
    SkyModel model = SkyModel.of(TestHouses.site());
    double last = 0;
    for (double deg = -7; deg < 5; deg += 0.01) {
      SkyState s = model.at(new Sun(0, Math.toRadians(deg)), 80, Month.MARCH, Weather.OVERCAST);
      double lux = s.diffuseHorizontalLux();
      assertThat(lux).as("at %s degrees", deg).isGreaterThanOrEqualTo(last);
      if (last > 10) {
        assertThat(lux).isLessThan(1.05 * last);
      }
      last = lux;
    }
    assertThat(at(model, -6.01)).isZero();
    assertThat(at(model, -5.99)).isCloseTo(3.4, within(0.1));
    assertThat(at(model, 0)).isCloseTo(300, within(0.5));
  }

  @Test
  void thinAirOfAMountainLetsMoreOfTheLowSunThrough() {
    Sun low = new Sun(2, Math.toRadians(8));
    ZoneId utc = ZoneId.of("UTC");
    double sea =
        SkyModel.of(site(45, 0, utc, 0)).at(low, 80, Month.MARCH, Weather.CLEAR).sunNormalLux();
    double high =
        SkyModel.of(site(45, 0, utc, 3000)).at(low, 80, Month.MARCH, Weather.CLEAR).sunNormalLux();
    assertThat(high).isGreaterThan(1.3 * sea);
    assertThat(SunPath.pressure(0)).isCloseTo(1013.25, within(1e-9));
  }

  @Test
  void clockTimesOnBothSidesOfTheSpringChangeMeanTheRightSun() {
    ZoneId chicago = ZoneId.of("America/Chicago");
    SkyModel model = SkyModel.of(TestHouses.site());
    // 2026-03-08: clocks jump from 2:00 to 3:00. The same sun is an hour later by the clock.
    ZonedDateTime before = ZonedDateTime.of(LocalDateTime.of(2026, 3, 7, 9, 0), chicago);
    ZonedDateTime after = ZonedDateTime.of(LocalDateTime.of(2026, 3, 8, 10, 0), chicago);
    Vec3 one = model.at(before, Weather.CLEAR).sun();
    Vec3 two = model.at(after, Weather.CLEAR).sun();
    assertThat(Math.toDegrees(one.distance(two))).isLessThan(0.6);
    assertThat(SkyModel.at(TestHouses.site(), after, Weather.CLEAR).sun()).isEqualTo(two);
    Vec3 unshifted = model.at(after.minusHours(1), Weather.CLEAR).sun();
    assertThat(Math.toDegrees(one.distance(unshifted))).isGreaterThan(10);
  }

  @Test
  void southernSummerIsInDecemberAndItsNoonSunInTheNorth() {
    SkyModel model = SkyModel.of(site(-40, 145, ZoneId.of("Australia/Melbourne"), 0));
    Vec3 december = model.at(Instant.parse("2026-12-21T02:20:00Z"), Weather.CLEAR).sun();
    Vec3 june = model.at(Instant.parse("2026-06-21T02:22:00Z"), Weather.CLEAR).sun();
    assertThat(Math.toDegrees(december.altitude())).isCloseTo(90 - 40 + 23.44, within(0.1));
    assertThat(Math.toDegrees(june.altitude())).isCloseTo(90 - 40 - 23.44, within(0.1));
    assertThat(june.y()).isPositive();
  }

  @Test
  void groundFollowsTheMonthOfTheSitesOwnClock() {
    List<Double> snow = List.of(0.8, 0.7, 0.5, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.3, 0.6);
    Site site =
        new Site(
            45,
            -93,
            ZoneId.of("America/Chicago"),
            0,
            snow,
            0.21,
            Collections.nCopies(12, 0.5),
            List.of());
    Instant newYearInUtc = Instant.parse("2026-01-01T03:00:00Z");
    assertThat(SkyModel.of(site).at(newYearInUtc, Weather.CLEAR).groundReflectance())
        .isEqualTo(0.6);
  }

  @Test
  void prescribedLightComesThroughUnchanged() {
    Vec3 sun = Vec3.ofAzimuthAltitude(1, 0.4);
    PrescribedLight light =
        new PrescribedLight(
            Optional.of(sun), 50_000, CieSky.UNIFORM, 4000, OptionalDouble.of(1500));
    SkyState s = SkyModel.of(TestHouses.site()).prescribed(light, Month.MAY);
    assertThat(s.sun().distance(sun)).isLessThan(1e-12);
    assertThat(s.sunNormalLux()).isEqualTo(50_000);
    assertThat(s.luminance().toward(0.6, 0, 0.8)).isCloseTo(4000, within(1e-9));
    assertThat(s.diffuseHorizontalLux()).isCloseTo(4000 * Math.PI, within(0.5));
    assertThat(s.groundLuminance()).isEqualTo(1500);
    SkyState dark =
        SkyModel.of(TestHouses.site())
            .prescribed(
                new PrescribedLight(Optional.empty(), 50_000, 12, 1000, OptionalDouble.empty()),
                Month.MAY);
    assertThat(dark.sunNormalLux()).isZero();
    assertThat(dark.groundLuminance()).isNaN();
    assertThat(dark.luminance().toward(0, 0, 1)).isCloseTo(1000, within(1e-9));
  }

  /** Every sky is the sum of its vault and its beam, skyline or not. */
  @Test
  void vaultAndBeamAddUpToTheWholeSky() {
    Site open = TestHouses.site();
    Site hill = TestHouses.site(new SkylinePoint(0, 0.2), new SkylinePoint(Math.PI, 0.1));
    Sun sun = new Sun(2.5, 0.5);
    for (Site site : List.of(open, hill)) {
      SkyModel model = SkyModel.of(site);
      SkyState whole = model.at(sun, 100, Month.APRIL, Weather.CLEAR);
      SkyModel.Amounts amounts = model.amounts(sun, 100, Weather.CLEAR);
      double ground = whole.groundReflectance();
      SkyState vault = model.vaultOnly(sun.direction(), Weather.CLEAR, amounts.diffuse(), ground);
      SkyState beam = model.beamOnly(sun.direction(), amounts.beam(), ground);
      assertThat(vault.sunNormalLux()).isZero();
      assertThat(beam.sunNormalLux()).isEqualTo(whole.sunNormalLux());
      assertThat(vault.groundReflectance()).isEqualTo(ground);
      assertThat(beam.groundReflectance()).isEqualTo(ground);
      for (double z : new double[] {0.05, 0.3, 0.9}) {
        double h = Math.sqrt(1 - z * z);
        assertThat(vault.luminance().toward(h, 0, z) + beam.luminance().toward(h, 0, z))
            .isCloseTo(whole.luminance().toward(h, 0, z), within(1e-6));
      }
      assertThat(vault.diffuseHorizontalLux() + beam.diffuseHorizontalLux())
          .isCloseTo(whole.diffuseHorizontalLux(), within(0.05));
      assertThat(model.clears(sun.direction())).isTrue();
      assertThat(model.clears(new Sun(2.5, 0.05).direction())).isEqualTo(site.skyline().isEmpty());
    }
  }

  @Test
  void glassTableFollowsItsFormula() {
    for (int panes = 0; panes <= 3; panes++) {
      double normal = GlassPane.transmittance(1, panes);
      for (double c = 0.001; c <= 1; c += 0.0013) {
        assertThat(GlassPane.relativeTransmittance(c, panes))
            .isCloseTo(GlassPane.transmittance(c, panes) / normal, within(5e-4));
      }
    }
    assertThat(GlassPane.relativeTransmittance(-0.1, 1)).isZero();
    assertThat(GlassPane.relativeTransmittance(0.5, 3))
        .isEqualTo(GlassPane.relativeTransmittance(0.5, 2));
  }

  @Test
  void impossibleInputsAreRefused() {
    assertThatThrownBy(() -> new CieSky(17, Vec3.UP, 1)).hasMessageContaining("1 to 16");
    assertThatThrownBy(() -> SunGrid.of(91)).hasMessageContaining("91");
    assertThatThrownBy(() -> new WaterMirror(1, 0.1)).hasMessageContaining("index above 1");
  }

  private static double at(SkyModel model, double deg) {
    return model
        .at(new Sun(0, Math.toRadians(deg)), 80, Month.MARCH, Weather.OVERCAST)
        .diffuseHorizontalLux();
  }

  private static Site site(double latitude, double longitude, ZoneId zone, double elevation) {
    return new Site(
        latitude,
        longitude,
        zone,
        elevation,
        Collections.nCopies(12, 0.2),
        0.21,
        Collections.nCopies(12, 0.5),
        List.of());
  }
}
