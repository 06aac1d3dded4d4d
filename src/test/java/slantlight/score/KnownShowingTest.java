package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.SamplePoint;
import slantlight.light.SunBeams;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.sight.EyeModel;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;
import slantlight.units.Progress;

/** What is known already may spare work, never a state that shows more than is known of it. */
class KnownShowingTest {
  private static final House ROOM = TestHouses.boxRoom(6, 4, 2.75, 1, 5, 0.1, 2.44, 0.8);
  private static final RidgeTable TABLE = RidgeTable.standard();

  @Test
  void oneStateOfARunThatShowsMoreThanIsKnownIsFound() {
    for (Frame frame :
        List.of(
            new Frame(new Vec3(2, 2, 2.749), Vec3.EAST, Vec3.NORTH.times(-1), Vec3.DOWN),
            Frame.of(new Vec3(0.001, 1.2, 0.8), Vec3.NORTH, Vec3.EAST))) {
      for (Lean lean : Lean.values()) {
        follow(frame, lean);
      }
    }
  }

  private static void follow(Frame frame, Lean lean) {
    FollowedPoint point = new FollowedPoint(new SamplePoint(frame, "room"), ROOM.eyes());
    JointRidge[] ridges = {
      TABLE.ridge(RidgeKind.of(JointKind.TAPERED), 3),
      TABLE.ridge(RidgeKind.of(JointKind.TAPERED), 4),
      TABLE.ridge(RidgeKind.of(JointKind.TAPERED), 5)
    };
    LitYear year =
        LitYear.of(
            ROOM,
            ScoreOptions.standard()
                .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 10))
                .withStep(20));
    Transport light = Transport.of(ROOM, TransportOptions.DEFAULT, Progress.NONE);
    ReliefKernel kernel =
        ReliefKernel.of(point, new Paint(0.3, Sheen.SATIN), TABLE, lean != Lean.U);
    PointOptics optics = new PointOptics(point, kernel, TABLE, ridges, lean, EyeModel.STANDARD);
    Basis basis = light.basis(List.of(point.sample()), List.of(kernel), Progress.NONE);
    SunBeams beams = light.beams(List.of(point.sample()));
    YearScan scan = new YearScan(light, year);
    worstIsItsOwn(optics, beams, year, scan.kitchen(basis, 0));
    Ingredients.Kitchen kitchen = scan.kitchen(new Unflecked(basis), 0);
    float[][] exact = new float[3][year.states()];
    float[] most = new float[3];
    new PointTrace(optics, beams, 0, year, kitchen).follow(exact, most);
    float[][] known = known(year.menu(), exact);
    float[][] raised = new float[3][];
    for (int level = 0; level < 3; level++) {
      raised[level] = known[level].clone();
    }
    float[] own = new float[3];
    new PointTrace(optics, beams, 0, year, kitchen).follow(raised, own);
    assertThat(own).containsExactly(most);
    int found = 0;
    for (int level = 0; level < 3; level++) {
      for (int s = 0; s < year.states(); s++) {
        assertThat(raised[level][s])
            .as("level %s, state %s", level + 3, s)
            .isEqualTo(Math.max(known[level][s], exact[level][s]));
        found += raised[level][s] > known[level][s] ? 1 : 0;
      }
    }
    assertThat(found).isGreaterThan(60);
    worstIsItsOwn(optics, beams, year, kitchen);
  }

  /** Others may show five times as much in every state: the point's own worst is its own. */
  private static void worstIsItsOwn(
      PointOptics optics, SunBeams beams, LitYear year, Ingredients.Kitchen kitchen) {
    float[][] alone = new float[3][year.states()];
    float[] most = new float[3];
    new PointTrace(optics, beams, 0, year, kitchen).follow(alone, most);
    float[][] others = new float[3][year.states()];
    for (int level = 0; level < 3; level++) {
      for (int s = 0; s < year.states(); s++) {
        others[level][s] = 5 * alone[level][s];
      }
    }
    float[] still = new float[3];
    new PointTrace(optics, beams, 0, year, kitchen).follow(others, still);
    assertThat(still).containsExactly(most);
  }

  /**
   * Five times what is shown, so that runs are ruled out, but a little less for the first or the
   * last state of a run at one level.
   */
  private static float[][] known(Ingredients.Menu menu, float[][] exact) {
    float[][] out = new float[3][exact[0].length];
    for (int run = 0; run < menu.runs(); run++) {
      int from = menu.start(run);
      int to = menu.start(run + 1);
      for (int level = 0; level < 3; level++) {
        for (int s = from; s < to; s++) {
          out[level][s] = 5 * exact[level][s];
        }
        if (run % 4 == level) {
          int low = run % 8 < 4 ? from : to - 1;
          out[level][low] = 0.998f * exact[level][low];
        }
      }
    }
    return out;
  }
}
