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

/**
 * No state of a year may show more than its run was said to show at most, flecks of sun between the
 * suns of the grid apart: those are followed where a run may show more than is known.
 */
class RunBoundsTest {
  private static final House ROOM = TestHouses.boxRoom(8, 6, 2.75, 2, 6, 0.1, 2.44, 0.8);
  private static final RidgeTable TABLE = RidgeTable.standard();
  private static final JointRidge[] RIDGES = {
    TABLE.ridge(RidgeKind.of(JointKind.TAPERED), 3),
    TABLE.ridge(RidgeKind.of(JointKind.TAPERED), 4),
    TABLE.ridge(RidgeKind.of(JointKind.TAPERED), 5)
  };

  @Test
  void noStateShowsMoreThanItsRunCan() {
    Frame frame = new Frame(new Vec3(3, 3, 2.749), Vec3.EAST, Vec3.NORTH.times(-1), Vec3.DOWN);
    FollowedPoint point = new FollowedPoint(new SamplePoint(frame, "room"), ROOM.eyes());
    ScoreOptions options =
        ScoreOptions.standard().withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 3));
    LitYear year = LitYear.of(ROOM, options);
    Transport light = Transport.of(ROOM, TransportOptions.DEFAULT, Progress.NONE);
    for (Lean lean : Lean.values()) {
      ReliefKernel kernel =
          ReliefKernel.of(point, new Paint(0.3, Sheen.SATIN), TABLE, lean != Lean.U);
      PointOptics optics = new PointOptics(point, kernel, TABLE, RIDGES, lean, EyeModel.STANDARD);
      Basis basis =
          new Unflecked(light.basis(List.of(point.sample()), List.of(kernel), Progress.NONE));
      SunBeams beams = light.beams(List.of(point.sample()));
      Ingredients.Kitchen kitchen = new YearScan(light, year).kitchen(basis, 0);
      compare(year, optics, kitchen, new PointTrace(optics, beams, 0, year, kitchen));
    }
  }

  private static void compare(
      LitYear year, PointOptics optics, Ingredients.Kitchen kitchen, PointTrace trace) {
    float[][] showing = new float[3][year.states()];
    trace.follow(showing, new float[3]);
    RunBounds bounds = new RunBounds(optics, kitchen, year.menu());
    int bounded = 0;
    double slack = 0;
    for (int run = 0; run < year.menu().runs(); run++) {
      for (int level = 0; level < 3; level++) {
        float most = 0;
        for (int eye = 0; eye < optics.eyes(); eye++) {
          most = Math.max(most, bounds.most(run, eye, level));
        }
        float seen = 0;
        for (int s = year.menu().start(run); s < year.menu().start(run + 1); s++) {
          seen = Math.max(seen, showing[level][s]);
        }
        assertThat(seen).isLessThanOrEqualTo(most);
        if (most < Float.POSITIVE_INFINITY) {
          bounded++;
          slack += most / seen;
        }
      }
    }
    assertThat(bounded).isGreaterThan(300);
    // A bound far above what is seen would rule nothing out.
    assertThat(slack / bounded).isLessThan(1.6);
  }
}
