package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slantlight.board.Joint;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.SamplePoint;
import slantlight.scene.Eye;
import slantlight.scene.JointKind;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.sight.EyeModel;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;

class PointOpticsTest {
  private static final RidgeTable TABLE = RidgeTable.standard();

  @Test
  void onlyAButtJointIsDrawnBackByItsBlocking() {
    for (int level = 3; level <= 5; level++) {
      assertThat(ridges(JointKind.BUTT, true)[level - 3])
          .isEqualTo(TABLE.ridge(RidgeKind.BACK_BLOCKED, level))
          .isNotEqualTo(ridges(JointKind.BUTT, false)[level - 3]);
      assertThat(ridges(JointKind.BUTT, false)[level - 3])
          .isEqualTo(TABLE.ridge(RidgeKind.BUTT, level));
      assertThat(ridges(JointKind.CUT, true)[level - 3])
          .isEqualTo(TABLE.ridge(RidgeKind.CUT, level));
    }
  }

  /** Gains at levels 3 to 5 are those of the eye's model at the ridge's frequencies. */
  @Test
  void gainsAreTheEyesAtTheRidgesWidths() {
    for (double luminance : new double[] {0.05, 3, 40, 900}) {
      hold(JointKind.BUTT, Lean.U, luminance, EyeModel.STANDARD);
    }
  }

  /** A spot fills only its own size and its surround: twice the angle of its crown at 2 m. */
  @Test
  void aSpotIsJudgedInAFieldOfTwiceItsSize() {
    for (int level = 3; level <= 5; level++) {
      double crown = TABLE.ridge(RidgeKind.SPOT, level).crown().width();
      double field = 2 * Math.toDegrees(Math.atan(crown / 2));
      assertThat(field).isLessThan(60);
      hold(JointKind.SPOT, Lean.ALL, 40, new EyeModel(2.5, 3.5, field), level);
    }
  }

  private static void hold(JointKind kind, Lean lean, double luminance, EyeModel eye) {
    for (int level = 3; level <= 5; level++) {
      hold(kind, lean, luminance, eye, level);
    }
  }

  private static void hold(JointKind kind, Lean lean, double luminance, EyeModel eye, int level) {
    JointRidge[] ridges = ridges(kind, false);
    PointOptics optics = optics(ridges, lean);
    JointRidge ridge = ridges[level - 3];
    double crown = eye.gain(EyeModel.frequency(ridge.crown().width(), 2, 1), luminance);
    double edge = eye.gain(EyeModel.frequency(ridge.edge().width(), 2, 1), luminance);
    double bands = eye.gain(EyeModel.frequency(2 * ridge.crown().width(), 2, 1), luminance);
    double relief = eye.pooled(crown * ridge.crown().peakSlope(), edge * ridge.edge().peakSlope());
    double mismatch = bands * TABLE.roughnessGain(level) / TABLE.roughnessGain(4);
    int i = level - 3;
    assertThat((double) optics.relief(0, i).at((float) luminance))
        .isCloseTo(relief, within(0.02 * relief));
    assertThat((double) optics.mismatch(0, i).at((float) luminance))
        .isCloseTo(mismatch, within(0.02 * mismatch));
    assertThat(optics.edgeSlope(i)).isEqualTo(ridge.edge().peakSlope());
    assertThat(optics.crownHeight(i)).isEqualTo(ridge.crown().height());
  }

  /** A point with an eye 2 m straight before it. */
  private static PointOptics optics(JointRidge[] ridges, Lean lean) {
    Frame frame = Frame.of(new Vec3(0, 2, 1), Vec3.NORTH, Vec3.EAST);
    Eye eye = new Eye("eye", "eye", "room", new Vec3(2, 2, 1), false);
    FollowedPoint point = new FollowedPoint(new SamplePoint(frame, "room"), List.of(eye));
    ReliefKernel kernel = ReliefKernel.of(point, new Paint(0.6, Sheen.FLAT), TABLE, lean != Lean.U);
    return new PointOptics(point, kernel, TABLE, ridges, lean, EyeModel.STANDARD);
  }

  private static JointRidge[] ridges(JointKind kind, boolean backBlocked) {
    Joint joint =
        new Joint(
            "j",
            kind,
            new Vec2(0, 0),
            new Vec2(0, 1),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    return PointOptics.ridges(TABLE, joint, backBlocked);
  }
}
