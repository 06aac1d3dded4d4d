package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.Kernel;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.Suns;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Site;
import slantlight.scene.Surface;
import slantlight.sky.SkyModel;
import slantlight.sky.SunPath;
import slantlight.units.Progress;

/** The light of a peak of the year beside all light traced for that moment alone. */
class PeakLightTest {
  private static final double CLOSE = 0.03;

  private static final House LAKE =
      ((Read.Ok) SceneReader.read(Path.of("scenes", "lake-house.json"))).house();

  /**
   * A small room with one small window. Shares by which the peak's illuminance and slant are off.
   */
  @ParameterizedTest
  @ValueSource(strings = {"ceiling", "wall-north", "wall-east", "wall-south", "wall-west"})
  void peaksOfTheLaundryAreLitAsTheirMoments(String part) {
    for (double[] off : peaks("laundry", "laundry/" + part)) {
      assertThat(off[0]).isLessThan(CLOSE);
      assertThat(off[1]).isLessThan(CLOSE);
    }
  }

  /** Of ten peaks nine are as close; none is off by more than twice as much. */
  @Test
  void peaksOfTheGarageAreLitAsTheirMoments() {
    List<double[]> off = peaks("garage", "garage/ceiling");
    assertThat(off).hasSizeGreaterThan(9);
    assertThat(off).allSatisfy(o -> assertThat(Math.max(o[0], o[1])).isLessThan(2 * CLOSE));
    long close = off.stream().filter(o -> Math.max(o[0], o[1]) < CLOSE).count();
    assertThat((double) close / off.size()).isGreaterThanOrEqualTo(0.9);
  }

  /**
   * What would be left of a peak were it mixed of the suns of the grid: not within twice as much.
   */
  @Test
  void mixedOfTheSunsOfTheGridAPeakIsLitOtherwise() {
    House house = LAKE.alone("laundry");
    LightModel light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    JointScore joint = joints(light, "laundry/wall-north").get(0);
    Peak peak = joint.peak().orElseThrow();
    SamplePoint at = sample(house.surface("laundry/wall-north"), joint, peak.place());
    LightState state = state(house, peak);
    Basis basis = light.basis(List.of(at), List.of(Kernel.VECTOR), Progress.NONE);
    float[][] rows = new float[3][1];
    basis.evaluate(0, basis.block(List.of(state)), rows);
    assertThat((double) Math.abs(rows[1][0] / rows[0][0]))
        .isCloseTo(peak.slant(), within(CLOSE * peak.slant()));
    Vec3 sun = state.sky().sun();
    float[][] more = new float[3][1];
    Suns only = new Suns(new double[] {sun.x(), sun.y(), sun.z()}, new int[] {0, 1});
    basis.flecks(0, only, 0, 0, more);
    float lux = (float) state.sky().sunNormalLux();
    float mixed = (rows[1][0] - lux * more[1][0]) / (rows[0][0] - lux * more[0][0]);
    assertThat(Math.abs(Math.abs(mixed) / peak.slant() - 1)).isGreaterThan(2 * CLOSE);
  }

  @Test
  void twoThreadsScoreTheSame() {
    assertThat(inThreads(2)).isEqualTo(inThreads(1));
  }

  private static List<JointScore> inThreads(int threads) {
    ScoreOptions options = options("laundry/wall-north").withThreads(threads);
    return Scorer.score(LAKE.alone("laundry"), options, Progress.NONE).surfaces().get(0).joints();
  }

  /** By joint: how far the illuminance and the slant of its peak are off, as shares. */
  private static List<double[]> peaks(String room, String surfaceId) {
    House house = LAKE.alone(room);
    LightModel light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    List<JointScore> joints = joints(light, surfaceId);
    assertThat(joints).isNotEmpty();
    return joints.stream()
        .map(
            joint -> {
              Peak peak = joint.peak().orElseThrow();
              SamplePoint at = sample(house.surface(surfaceId), joint, peak.place());
              Vec3 vector = light.incident(at, state(house, peak)).lightVector();
              Vec3 exact = at.frame().directionToLocal(vector);
              double slant = Math.abs(exact.x()) / exact.z();
              return new double[] {
                Math.abs(peak.illuminance() / exact.z() - 1), Math.abs(peak.slant() / slant - 1)
              };
            })
        .toList();
  }

  private static List<JointScore> joints(LightModel light, String surfaceId) {
    return Scorer.score(light, options(surfaceId), Progress.NONE).surface(surfaceId).joints();
  }

  private static ScoreOptions options(String surfaceId) {
    return ScoreOptions.standard()
        .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 5))
        .withStep(20)
        .withSurfaces(Set.of(surfaceId));
  }

  private static SamplePoint sample(Surface surface, JointScore joint, Vec3 place) {
    Vec2 along = joint.joint().to().minus(joint.joint().from());
    return JointPath.sample(
        surface, surface.face().frame().toPlane(place), along.times(1 / along.length()));
  }

  private static LightState state(House house, Peak peak) {
    Site s = house.site();
    double altitude =
        SunPath.at(s.latitudeDeg(), s.longitudeDeg(), s.elevation(), peak.at().toInstant())
            .altitude();
    return new LightState(
        SkyModel.at(s, peak.at(), peak.weather()),
        house.lampShares(peak.at().toLocalTime(), altitude));
  }
}
