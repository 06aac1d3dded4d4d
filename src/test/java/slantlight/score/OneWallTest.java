package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.Incident;
import slantlight.light.IncidentField;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.PrescribedLight;
import slantlight.scene.Surface;
import slantlight.sight.Coating;
import slantlight.sight.EyeModel;
import slantlight.sight.FlankLight;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;
import slantlight.sky.SkyModel;
import slantlight.sky.Weather;
import slantlight.units.Progress;

/** A year's score of one wall with two joints, small enough to be asked again the slow way. */
class OneWallTest {
  private static final House HOUSE =
      Variants.joints(
          TestHouses.boxRoom(4, 3, 2.5, 0.3, 1.5, 0.8, 2.2, 0.8),
          "room/east",
          Variants.joint(JointKind.BUTT, 1.2, 0.2, 1.2, 2.3),
          Variants.joint(JointKind.TAPERED, 0.2, 1.22, 2.8, 1.22));
  private static final ScoreOptions OPTIONS =
      ScoreOptions.standard()
          .withDays(List.of(60, 172, 290))
          .withStep(60)
          .withSpacing(0.7)
          .withSurfaces(Set.of("room/east"))
          .withThreads(1);

  @Test
  void peaksAreWhatTheLightOfTheirMomentShowsAskedDirectly() {
    LightModel light = Transport.of(HOUSE, TransportOptions.DEFAULT, Progress.NONE);
    SurfaceScore wall = Scorer.score(light, OPTIONS, Progress.NONE).surfaces().get(0);
    assertThat(wall.joints()).hasSize(2);
    for (JointScore joint : wall.joints()) {
      Peak peak = joint.peak().orElseThrow();
      assertThat(joint.visibleLength()).isCloseTo(joint.joint().length(), within(1e-9));
      assertThat(joint.profile()).hasSize((int) Math.ceil(joint.joint().length() / 0.7));
      assertThat(joint.profile().stream().mapToDouble(d -> d).max().orElseThrow())
          .isCloseTo(peak.showing(), within(1e-6));
      assertThat(joint.atLevel(4).peakShowing()).isCloseTo(peak.showing(), within(1e-6));
      assertThat(joint.atLevel(3).peakShowing()).isGreaterThan(peak.showing());
      assertThat(joint.atLevel(5).peakShowing()).isLessThan(peak.showing());
      againSlowly(light, joint, peak);
      bandsAreConsistent(joint.levels());
    }
    bandsAreConsistent(wall.levels());
    JointScore worst =
        wall.joints().get(0).atLevel(4).peakShowing()
                > wall.joints().get(1).atLevel(4).peakShowing()
            ? wall.joints().get(0)
            : wall.joints().get(1);
    assertThat(wall.worst()).isEqualTo(worst.peak());
    calendarHoldsThePeak(wall);
  }

  /** Asked for one moment, every joint shows what the year says of it, and nothing at night. */
  @Test
  void aMomentOfTheYearShowsWhatItsPeakSays() {
    LightModel light = Transport.of(HOUSE, TransportOptions.DEFAULT, Progress.NONE);
    Scorer.Followed followed = Scorer.follow(light, OPTIONS, Progress.NONE);
    HouseScore score = followed.score();
    assertThat(score.surfaces()).hasSize(1);
    SurfaceScore wall = score.surface("room/east");
    assertThat(wall).isSameAs(score.surfaces().get(0));
    assertThatThrownBy(() -> score.surface("room/west")).isInstanceOf(NoSuchElementException.class);
    assertThat(wall.atLevel(4).level()).isEqualTo(4);
    for (JointScore joint : wall.joints()) {
      Peak peak = joint.peak().orElseThrow();
      List<Double> then = followed.moments().at(peak.at(), peak.weather()).get(joint.joint().id());
      assertThat(then).hasSameSizeAs(joint.profile());
      assertThat(then.stream().mapToDouble(d -> d).max().orElseThrow())
          .isCloseTo(peak.showing(), within(0.02 * peak.showing()));
    }
    ZonedDateTime night = ZonedDateTime.of(2026, 6, 21, 2, 0, 0, 0, HOUSE.site().zone());
    assertThat(followed.moments().at(night, Weather.CLEAR).values())
        .hasSize(2)
        .allMatch(profile -> profile.stream().allMatch(d -> d == 0));
  }

  /** Light that stands still fills every hour of the year and every step of the calendar. */
  @Test
  void prescribedLightShowsTheSameAllYear() {
    PrescribedLight noon =
        new PrescribedLight(
            Optional.of(Vec3.ofAzimuthAltitude(2.6, 0.5)),
            60_000,
            12,
            4000,
            OptionalDouble.empty());
    House still =
        new House(
            HOUSE.name(),
            HOUSE.note(),
            HOUSE.site(),
            HOUSE.rooms(),
            HOUSE.surfaces(),
            HOUSE.openings(),
            HOUSE.lamps(),
            HOUSE.outside(),
            HOUSE.eyes(),
            HOUSE.rates(),
            Optional.of(noon),
            HOUSE.scale());
    SurfaceScore wall = Scorer.score(still, OPTIONS, Progress.NONE).surfaces().get(0);
    LevelScore level = wall.atLevel(4);
    assertThat(level.peakShowing()).isPositive();
    assertThat(level.clearHours().get(0)).isEqualTo(8760);
    assertThat(level.expectedHours().get(0)).isEqualTo(8760);
    for (int row = 0; row < 3; row++) {
      for (int c = 0; c < 24; c++) {
        assertThat((double) wall.calendar().showing(row, c))
            .isCloseTo(level.peakShowing(), within(1e-5));
      }
    }
    Peak peak = wall.worst().orElseThrow();
    assertThat(peak.at().getDayOfYear()).isEqualTo(60);
    assertThat(peak.at().getHour()).isEqualTo(12);
  }

  private static void againSlowly(LightModel light, JointScore joint, Peak peak) {
    Surface wall =
        HOUSE.surfaces().stream().filter(s -> s.id().equals("room/east")).findFirst().orElseThrow();
    Frame plane = wall.face().frame();
    SamplePoint sample =
        JointPath.sample(
            wall,
            plane.toPlane(peak.place()),
            joint.joint().to().minus(joint.joint().from()).unit());
    LightState state =
        new LightState(SkyModel.of(HOUSE.site()).at(peak.at(), peak.weather()), List.of());
    IncidentField field = light.incident(sample, state);
    // The year's light is interpolated between places of the sun: 2 % here, where a sun patch is
    // near.
    assertThat(peak.illuminance())
        .isCloseTo(field.illuminance(), within(0.03 * field.illuminance()));
    double across = field.lightVector().dot(sample.frame().u());
    assertThat(peak.slant())
        .isCloseTo(Math.abs(across) / field.illuminance(), within(0.04 * peak.slant()));
    Eye eye =
        HOUSE.eyes().stream().filter(e -> e.id().equals(peak.eyeId())).findFirst().orElseThrow();
    Vec3 to = sample.frame().directionToLocal(eye.position().minus(sample.frame().origin()));
    assertThat(peak.eyeDistance()).isCloseTo(to.length(), within(1e-9));
    assertThat(peak.sourceShare()).isBetween(0.0, 1.0);
    double[] directions = new double[3 * field.incidents().size()];
    double[] lux = new double[field.incidents().size()];
    for (int i = 0; i < lux.length; i++) {
      Incident one = field.incidents().get(i);
      Vec3 d = sample.frame().directionToLocal(one.direction());
      directions[3 * i] = d.x();
      directions[3 * i + 1] = d.y();
      directions[3 * i + 2] = d.z();
      lux[i] = one.normalLux();
    }
    RidgeTable table = RidgeTable.standard();
    JointRidge ridge = table.ridge(RidgeKind.of(joint.joint().kind()), 4);
    Coating paint = Coating.of(wall.paint());
    Coating bare = Coating.of(wall.paint(), table.roughnessGain(4));
    Vec3 toward = to.unit();
    double luminance = FlankLight.level(directions, lux, paint, toward);
    double compound = FlankLight.level(directions, lux, bare, toward);
    double slope = ridge.edge().peakSlope();
    double contrast = FlankLight.of(directions, lux, slope, paint, toward).michelson();
    double foreshortening = Math.hypot(to.y(), to.z()) / to.length();
    EyeModel model = EyeModel.STANDARD;
    double crown = EyeModel.frequency(ridge.crown().width(), to.length(), foreshortening);
    double edge = EyeModel.frequency(ridge.edge().width(), to.length(), foreshortening);
    double bands = EyeModel.frequency(2 * ridge.crown().width(), to.length(), foreshortening);
    double expected =
        model.pooled(
            contrast / slope * ridge.crown().peakSlope() * model.gain(crown, luminance),
            contrast * model.gain(edge, luminance),
            Math.abs(compound - luminance) / (compound + luminance) * model.gain(bands, luminance));
    assertThat(peak.showing()).isCloseTo(expected, within(0.06 * expected));
    assertThat(peak.contrast()).isCloseTo(contrast, within(0.07 * contrast));
  }

  private static void bandsAreConsistent(List<LevelScore> levels) {
    for (LevelScore level : levels) {
      assertThat(level.lengthShares().stream().mapToDouble(d -> d).sum())
          .isCloseTo(1, within(1e-9));
      for (Band band : Band.values()) {
        int b = band.index();
        boolean reached = level.peakShowing() >= band.from();
        assertThat(level.clearHours().get(b) > 0).isEqualTo(reached);
        if (band != Band.QUIET) {
          assertThat(level.clearHours().get(b)).isLessThanOrEqualTo(level.clearHours().get(b - 1));
          assertThat(level.expectedHours().get(b))
              .isLessThanOrEqualTo(level.expectedHours().get(b - 1));
        }
      }
      // Half the year's hours have the sun up; three days stand for it.
      assertThat(level.clearHours().get(0)).isBetween(8760 * 0.45, 8760 * 0.55);
      assertThat(level.expectedHours().get(0)).isCloseTo(level.clearHours().get(0), within(1e-6));
    }
  }

  private static void calendarHoldsThePeak(SurfaceScore wall) {
    Calendar calendar = wall.calendar();
    assertThat(calendar.columns()).isEqualTo(24);
    float most = 0;
    for (int row = 0; row < 3; row++) {
      assertThat(calendar.showing(row, 0)).as("midnight").isZero();
      for (int c = 0; c < 24; c++) {
        most = Math.max(most, calendar.showing(row, c));
      }
    }
    Peak peak = wall.worst().orElseThrow();
    assertThat((double) most).isCloseTo(peak.showing(), within(1e-5));
    int row = calendar.days().indexOf(peak.at().getDayOfYear());
    assertThat(calendar.showing(row, peak.at().getHour())).isEqualTo(most);
  }
}
