package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Vec3;
import slantlight.light.SourceKind;
import slantlight.scene.Distribution;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Lamp;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.scene.Site;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;
import slantlight.sky.Sun;
import slantlight.sky.SunPath;
import slantlight.units.Progress;

/** Reasons of a worst moment where geometry alone gives them: one lamp in a black room, one sun. */
class PeakReasonsTest {
  private static final String WEST = "room/west";
  private static final House ROOM = TestHouses.boxRoom(4, 3, 2.5, 0.3, 3.7, 0, 2.2, 0.8);

  /** Black walls without a window, one joint up the west wall through (0, 1.5, 1). */
  private static final House BLACK =
      Variants.joints(
          Variants.paint(ROOM.withOpenings(List.of()), new Paint(0.02, Sheen.FLAT)),
          WEST,
          Variants.joint(JointKind.BUTT, 1.5, 0.8, 1.5, 1.2));

  /** The middle of the joint. */
  private static final Vec3 MIDDLE = new Vec3(0, 1.5, 1);

  /** One metre aside and half a metre out: tangent over normal is 2, the grazing angle atan 0.5. */
  private static final Vec3 ASIDE = new Vec3(0.5, 0.5, 1);

  @Test
  void aLampRakesAsItsPlaceSays() {
    Peak peak = peak(lit(lamp("a", ASIDE, 1000)));
    assertThat(peak.source().kind()).isEqualTo(SourceKind.LAMP);
    assertThat(peak.source().via()).isEqualTo("a");
    assertThat(peak.sourceShare()).isCloseTo(1, within(0.02));
    assertThat(Math.tan(peak.grazing())).isCloseTo(0.5, within(0.01));
    assertThat(peak.slant()).isCloseTo(2, within(0.04));
    assertThat(peak.shadowLength()).isNaN();
    // The beam's axis is on the joint: intensity per lumen times flux, distance, cosine.
    double candela = 1000 * Distribution.Named.SPOT.intensityPerLumen(0, 0);
    assertThat(peak.illuminance()).isCloseTo(candela / 1.25 * 0.5 / Math.sqrt(1.25), within(30.0));
    assertThat(peak.eyeDistance()).isCloseTo(MIDDLE.distance(new Vec3(2, 1.5, 1.6)), within(0.002));
    assertThat(peak.place().distance(MIDDLE)).isLessThan(0.002);
  }

  /** Two lamps at one place share the slant as their fluxes; the stronger is named. */
  @Test
  void theStrongerOfTwoLampsIsNamedWithItsShare() {
    Peak peak = peak(lit(lamp("weak", ASIDE, 500), lamp("strong", ASIDE, 1500)));
    assertThat(peak.source().via()).isEqualTo("strong");
    assertThat(peak.sourceShare()).isCloseTo(0.75, within(0.02));
  }

  /** A lamp from the other side takes slant away: it is no reason, and no share exceeds 1. */
  @Test
  void aLampFromTheOtherSideIsNoReason() {
    Peak peak = peak(lit(lamp("a", ASIDE, 1000), lamp("b", new Vec3(0.5, 2.5, 1), 400)));
    assertThat(peak.source().via()).isEqualTo("a");
    assertThat(peak.sourceShare()).isEqualTo(1);
    assertThat(peak.slant()).isCloseTo(2 * 600.0 / 1400, within(0.03));
  }

  /** A spot leans every way: its slant is the whole of the tangential light. */
  @Test
  void aSpotIsRakedFromAnySide() {
    House house = Variants.paint(ROOM.withOpenings(List.of()), new Paint(0.02, Sheen.FLAT));
    Vec3 at = new Vec3(0.3, 0.7, 2.1);
    House lit =
        Variants.lamps(house, Variants.lamp("room", at, Vec3.DOWN, Distribution.Named.BARE, 1000));
    SpotScore spots = score(lit, List.of(355), 60).spots().orElseThrow();
    Peak peak = spots.peak().orElseThrow();
    Vec3 to = at.minus(peak.place());
    double aside = Math.hypot(to.y(), to.z());
    assertThat(Math.abs(to.y())).isGreaterThan(0.05);
    assertThat(Math.abs(to.z())).isGreaterThan(0.05);
    assertThat(peak.slant()).isCloseTo(aside / to.x(), within(0.1 * aside / to.x()));
    assertThat(Math.tan(peak.grazing())).isCloseTo(to.x() / aside, within(0.02));
    assertThat(peak.source().kind()).isEqualTo(SourceKind.LAMP);
    assertThat(spots.levels().get(1).peakShowing()).isCloseTo(peak.showing(), within(1e-6));
  }

  /** A beam casts the crown's shadow: height over the tangent of its angle with the wall. */
  @Test
  void theSunsBeamCastsTheCrownsShadow() {
    House wall = Variants.joints(ROOM, WEST, Variants.joint(JointKind.TAPERED, 0.9, 0.4, 0.9, 0.8));
    Peak peak = score(wall, List.of(80), 720).worst().orElseThrow();
    Site s = ROOM.site();
    Sun sun = SunPath.at(s.latitudeDeg(), s.longitudeDeg(), s.elevation(), peak.at().toInstant());
    double grazing = Math.asin(sun.direction().x());
    assertThat(peak.source().kind()).isEqualTo(SourceKind.SUN);
    assertThat(peak.source().via()).isEqualTo("room/window");
    assertThat(peak.grazing()).isCloseTo(grazing, within(1e-6));
    double crown = RidgeTable.standard().ridge(RidgeKind.TAPERED, 4).crown().height();
    assertThat(peak.shadowLength()).isCloseTo(crown / Math.tan(grazing), within(1e-8));
    assertThat(peak.sourceShare()).isBetween(0.5, 1.0);
  }

  private static House lit(Lamp... lamps) {
    return BLACK.withLamps(Arrays.asList(lamps));
  }

  private static Lamp lamp(String id, Vec3 at, double lumens) {
    Vec3 aim = MIDDLE.minus(at).unit();
    Lamp l = Variants.lamp("room", at, aim, Distribution.Named.SPOT, lumens);
    return new Lamp(
        id,
        id,
        l.roomId(),
        at,
        aim,
        Vec3.UP,
        l.distribution(),
        lumens,
        l.width(),
        l.length(),
        l.height(),
        l.on());
  }

  private static Peak peak(House house) {
    return score(house, List.of(355), 60).worst().orElseThrow();
  }

  private static SurfaceScore score(House house, List<Integer> days, int step) {
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(days)
            .withStep(step)
            .withSpacing(1)
            .withSurfaces(Set.of(WEST))
            .withThreads(1);
    return Scorer.score(house, options, Progress.NONE).surfaces().get(0);
  }
}
