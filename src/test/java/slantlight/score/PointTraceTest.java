package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.SamplePoint;
import slantlight.light.SunBeams;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.sight.Coating;
import slantlight.sight.EyeModel;
import slantlight.sight.FlankLight;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;
import slantlight.sky.Weather;

/**
 * One point under light from a few directions and the sun's beam: what the year's fast loop tells
 * against the flanks' luminances asked one by one, and the eye asked directly.
 */
class PointTraceTest {
  private static final House HOUSE = TestHouses.boxRoom(4, 5, 2.5, 1, 3, 1, 2, 0.8);
  private static final ZonedDateTime AT =
      ZonedDateTime.of(2026, 10, 15, 10, 0, 0, 0, HOUSE.site().zone());
  private static final LitYear MOMENT =
      LitYear.at(HOUSE, ScoreOptions.standard(), AT, Weather.CLEAR);
  private static final Vec3 SUN = new Vec3(MOMENT.suns()[0], MOMENT.suns()[1], MOMENT.suns()[2]);
  private static final RidgeTable TABLE = RidgeTable.standard();
  private static final JointRidge[] RIDGES = {
    TABLE.ridge(RidgeKind.of(JointKind.BUTT), 3),
    TABLE.ridge(RidgeKind.of(JointKind.BUTT), 4),
    TABLE.ridge(RidgeKind.of(JointKind.BUTT), 5)
  };

  /** Fill from four sides, local directions and lux; none clipped by any flank. */
  private static final double[] FILL = {0.5, 0.2, 0.84, -0.3, 0.6, 0.74, 0.1, -0.5, 0.86, 0, 0, 1};

  private static final double[] FILL_LUX = {300, 120, 200, 80};

  @ParameterizedTest
  @CsvSource({
    "U, 40, FLAT",
    "U, 4, SATIN",
    "U, 1.0, FLAT",
    "U, 0.5, SEMI_GLOSS",
    "U, 0, FLAT",
    "V, 40, FLAT",
    "V, 4, SATIN",
    "V, 0.7, FLAT",
    "ALL, 40, FLAT",
    "ALL, 4, SATIN",
    "ALL, 0.7, EGGSHELL"
  })
  void showingIsThatOfTheFlanksAskedOneByOne(Lean lean, double grazingDeg, Sheen sheen) {
    Frame frame = frame(Math.toRadians(grazingDeg), 0.4);
    Paint paint = new Paint(0.6, sheen);
    FollowedPoint point = point(frame, eye(frame, 0.5, 0.3, 1.5));
    ReliefKernel kernel = ReliefKernel.of(point, paint, TABLE, lean != Lean.U);
    PointOptics optics = new PointOptics(point, kernel, TABLE, RIDGES, lean, EyeModel.STANDARD);
    float[][] showing = new float[3][1];
    float[] own = new float[3];
    PointTrace.Worst worst = trace(optics, kernel, grazingDeg > 0 ? 0.2 : 0).follow(showing, own);
    for (int level = 0; level < 3; level++) {
      double expected = slow(optics, paint, lean, level, grazingDeg > 0 ? 0.2 : 0);
      assertThat((double) showing[level][0])
          .as("level %s", level + 3)
          .isCloseTo(expected, within(0.015 * expected));
      assertThat(own[level]).isEqualTo(showing[level][0]);
      raisesOnlyWhatIsLess(trace(optics, kernel, grazingDeg > 0 ? 0.2 : 0), showing, level);
    }
    assertThat(worst.state()).isZero();
    assertThat(worst.eye()).isZero();
    assertThat(worst.showing()).isEqualTo(own[1]);
  }

  /** Known to show a little more at all levels but one, where it is known to show a little less. */
  private static void raisesOnlyWhatIsLess(PointTrace trace, float[][] showing, int less) {
    float[][] known = new float[3][1];
    for (int level = 0; level < 3; level++) {
      known[level][0] = (level == less ? 0.99f : 1.01f) * showing[level][0];
    }
    float[] own = {known[0][0], known[1][0], known[2][0]};
    trace.follow(known, own);
    for (int level = 0; level < 3; level++) {
      assertThat(known[level][0])
          .isEqualTo(level == less ? showing[level][0] : 1.01f * showing[level][0]);
    }
  }

  /** A beam knows nothing of north or up: a surface turned about it shows the same. */
  @ParameterizedTest
  @CsvSource({"20", "2"})
  void turningTheSurfaceAboutTheBeamChangesNothing(double grazingDeg) {
    float first = 0;
    for (int k = 0; k < 8; k++) {
      Frame f = frame(Math.toRadians(grazingDeg), 0.3);
      double a = k * Math.PI / 4;
      Frame turned = new Frame(f.origin(), about(f.u(), a), about(f.v(), a), about(f.n(), a));
      FollowedPoint point = point(turned, eye(turned, 0.2, 0.4, 1.5));
      ReliefKernel kernel = ReliefKernel.of(point, new Paint(0.5, Sheen.SATIN), TABLE, false);
      PointOptics optics = new PointOptics(point, kernel, TABLE, RIDGES, Lean.U, EyeModel.STANDARD);
      Ingredients.Kitchen dark = Ingredients.Kitchen.plain(new float[1][kernel.rows()]);
      float[][] showing = new float[3][1];
      new PointTrace(optics, new Fixed(0.3), 0, MOMENT, dark).follow(showing, new float[3]);
      assertThat(showing[1][0]).isPositive();
      first = k == 0 ? showing[1][0] : first;
      assertThat(showing[1][0]).isCloseTo(first, within(1e-3f * first));
    }
  }

  /** Turned about the direction to the sun (Rodrigues 1840). */
  private static Vec3 about(Vec3 d, double angle) {
    return d.times(Math.cos(angle))
        .plus(SUN.cross(d).times(Math.sin(angle)))
        .plus(SUN.times(SUN.dot(d) * (1 - Math.cos(angle))));
  }

  /** A joint along u is a joint along v in a frame turned a quarter. */
  @ParameterizedTest
  @CsvSource({"30", "3", "0.6"})
  void turningTheFrameChangesNothing(double grazingDeg) {
    Frame frame = frame(Math.toRadians(grazingDeg), 0.7);
    Frame turned = new Frame(frame.origin(), frame.v(), frame.u().times(-1), frame.n());
    Paint paint = new Paint(0.5, Sheen.EGGSHELL);
    float[][] across = new float[3][1];
    float[][] along = new float[3][1];
    Vec3 eye = eye(frame, -0.4, 0.8, 1.2);
    for (boolean isTurned : new boolean[] {false, true}) {
      FollowedPoint point = point(isTurned ? turned : frame, eye);
      ReliefKernel kernel = ReliefKernel.of(point, paint, TABLE, true);
      Lean lean = isTurned ? Lean.U : Lean.V;
      PointOptics optics = new PointOptics(point, kernel, TABLE, RIDGES, lean, EyeModel.STANDARD);
      // Only the beam: fill directions are local and would turn with the frame.
      SunBeams beams = new Fixed(0.3);
      Ingredients.Kitchen kitchen = Ingredients.Kitchen.plain(new float[1][kernel.rows()]);
      new PointTrace(optics, beams, 0, MOMENT, kitchen)
          .follow(isTurned ? across : along, new float[3]);
    }
    for (int level = 0; level < 3; level++) {
      assertThat(along[level][0]).isPositive();
      assertThat(across[level][0]).isCloseTo(along[level][0], within(2e-3f * along[level][0]));
    }
  }

  @Test
  void darknessAndASunBehindTheSurfaceShowNothing() {
    Frame behind = frame(Math.toRadians(-5), 0);
    FollowedPoint point = point(behind, eye(behind, 0.5, 0.3, 1.5));
    ReliefKernel kernel = ReliefKernel.of(point, new Paint(0.6, Sheen.FLAT), TABLE, false);
    PointOptics optics = new PointOptics(point, kernel, TABLE, RIDGES, Lean.U, EyeModel.STANDARD);
    float[][] showing = new float[3][1];
    Ingredients.Kitchen dark = Ingredients.Kitchen.plain(new float[1][kernel.rows()]);
    PointTrace.Worst worst =
        new PointTrace(optics, new Fixed(1), 0, MOMENT, dark).follow(showing, new float[3]);
    assertThat(showing[1][0]).isZero();
    assertThat(worst.state()).isEqualTo(-1);
  }

  @Test
  void theEyeThatSeesMostIsNamedAndWhatIsKnownIsOnlyRaised() {
    Frame frame = frame(Math.toRadians(6), 0);
    Eye far = new Eye("far", "far", "room", eye(frame, 0, 0.2, 25), false);
    Eye near = new Eye("near", "near", "room", eye(frame, 0, 0.2, 1), false);
    FollowedPoint point = new FollowedPoint(new SamplePoint(frame, "room"), List.of(near, far));
    ReliefKernel kernel = ReliefKernel.of(point, new Paint(0.6, Sheen.FLAT), TABLE, false);
    PointOptics optics = new PointOptics(point, kernel, TABLE, RIDGES, Lean.U, EyeModel.STANDARD);
    float[] own = new float[3];
    PointTrace.Worst worst = trace(optics, kernel, 0.2).follow(new float[3][1], own);
    assertThat(worst.eye()).isEqualTo(1);
    float[][] known = {{1000}, {1000}, {1000}};
    float[] again = new float[3];
    trace(optics, kernel, 0.2).follow(known, again);
    assertThat(known[1][0]).isEqualTo(1000);
    assertThat(again[1]).isEqualTo(own[1]);
  }

  private static PointTrace trace(PointOptics optics, ReliefKernel kernel, double through) {
    float[] rows = new float[kernel.rows()];
    double[] one = new double[kernel.rows()];
    for (int i = 0; i < FILL_LUX.length; i++) {
      Vec3 d = new Vec3(FILL[3 * i], FILL[3 * i + 1], FILL[3 * i + 2]).unit();
      kernel.weigh(d.x(), d.y(), d.z(), one);
      for (int r = 0; r < rows.length; r++) {
        rows[r] += (float) (FILL_LUX[i] * one[r]);
      }
    }
    Ingredients.Kitchen kitchen = Ingredients.Kitchen.plain(new float[][] {rows});
    return new PointTrace(optics, new Fixed(through), 0, MOMENT, kitchen);
  }

  /** The same by flanks: fill and beam as cones of light, the worst of the lean's directions. */
  private static double slow(
      PointOptics optics, Paint paint, Lean lean, int level, double through) {
    JointRidge ridge = RIDGES[level];
    Vec3 eye = local(optics, optics.point().eyes().get(0).position());
    Vec3 toward = eye.unit();
    Coating coating = Coating.of(paint);
    Coating compound = Coating.of(paint, TABLE.roughnessGain(4));
    double luminance = FlankLight.level(directions(optics, 0), lux(through), coating, toward);
    double bare = FlankLight.level(directions(optics, 0), lux(through), compound, toward);
    Vec3 sun = optics.frame().directionToLocal(SUN);
    double beamAzimuth = Math.atan2(sun.y(), sun.x());
    double slope = ridge.edge().peakSlope();
    double q = 0;
    int turns = lean == Lean.ALL ? 180 : 1;
    boolean grazing =
        through > 0 && sun.z() <= Math.max(3 * slope, 0.012) * lean.part(sun.x(), sun.y());
    for (int k = 0; k < turns; k++) {
      double azimuth =
          switch (lean) {
            case U -> 0;
            case V -> Math.PI / 2;
            // Under a grazing beam a spot's worst flank is the one square to it.
            case ALL -> grazing ? beamAzimuth : Math.PI * k / turns;
          };
      double[] turned = directions(optics, azimuth);
      Vec3 seen = turn(toward, azimuth);
      FlankLight flanks = FlankLight.of(turned, lux(through), slope, coating, seen);
      q = Math.max(q, flanks.michelson() / slope);
    }
    Vec3 judged = lean == Lean.V ? turn(eye, Math.PI / 2) : eye;
    double foreshortening = Math.hypot(judged.y(), judged.z()) / judged.length();
    EyeModel model = EyeModel.STANDARD;
    if (lean == Lean.ALL) {
      double field = 2 * Math.toDegrees(Math.atan(ridge.crown().width() / eye.length()));
      model = new EyeModel(2.5, 3.5, Math.min(60, field));
    }
    double crown = EyeModel.frequency(ridge.crown().width(), eye.length(), foreshortening);
    double edge = EyeModel.frequency(ridge.edge().width(), eye.length(), foreshortening);
    double bands = EyeModel.frequency(2 * ridge.crown().width(), eye.length(), foreshortening);
    double share = TABLE.roughnessGain(level + 3) / TABLE.roughnessGain(4);
    double step = share * Math.abs(bare - luminance) / (bare + luminance);
    return model.pooled(
        q * ridge.crown().peakSlope() * model.gain(crown, luminance),
        q * slope * model.gain(edge, luminance),
        step * model.gain(bands, luminance));
  }

  private static double[] directions(PointOptics optics, double azimuth) {
    double[] out = new double[FILL.length + 3];
    for (int i = 0; i <= FILL_LUX.length; i++) {
      Vec3 d =
          i == FILL_LUX.length
              ? optics.frame().directionToLocal(SUN)
              : new Vec3(FILL[3 * i], FILL[3 * i + 1], FILL[3 * i + 2]).unit();
      Vec3 t = turn(d, azimuth);
      out[3 * i] = t.x();
      out[3 * i + 1] = t.y();
      out[3 * i + 2] = t.z();
    }
    return out;
  }

  private static double[] lux(double through) {
    double[] out = java.util.Arrays.copyOf(FILL_LUX, FILL_LUX.length + 1);
    out[FILL_LUX.length] = through * MOMENT.beam(0);
    return out;
  }

  /** A local direction in a frame turned about the normal, x toward that azimuth. */
  private static Vec3 turn(Vec3 d, double azimuth) {
    double c = Math.cos(azimuth);
    double s = Math.sin(azimuth);
    return new Vec3(d.x() * c + d.y() * s, d.y() * c - d.x() * s, d.z());
  }

  private static Vec3 local(PointOptics optics, Vec3 world) {
    return optics.frame().directionToLocal(world.minus(optics.frame().origin()));
  }

  /** A surface that the sun grazes by an angle, its u turned from the sun by another. */
  private static Frame frame(double grazing, double turned) {
    Vec3 square = SUN.cross(Vec3.UP).unit();
    Vec3 n = square.times(Math.cos(grazing)).plus(SUN.times(Math.sin(grazing)));
    Vec3 toSun = SUN.minus(n.times(SUN.dot(n))).unit();
    Vec3 aside = n.cross(toSun);
    Vec3 u = toSun.times(Math.cos(turned)).plus(aside.times(Math.sin(turned)));
    return Frame.of(new Vec3(2, 4, 1.2), u, n);
  }

  private static Vec3 eye(Frame frame, double u, double v, double n) {
    return frame.origin().plus(frame.directionToWorld(new Vec3(u, v, n)));
  }

  private static FollowedPoint point(Frame frame, Vec3 eye) {
    return new FollowedPoint(
        new SamplePoint(frame, "room"), List.of(new Eye("eye", "eye", "room", eye, false)));
  }

  /** A beam that loses the same share wherever it comes from. */
  private record Fixed(double share) implements SunBeams {
    @Override
    public double transmittance(int sample, double dx, double dy, double dz) {
      return share;
    }

    @Override
    public int opening(int sample, double dx, double dy, double dz) {
      return 0;
    }
  }
}
