package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.SamplePoint;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.sight.Coating;
import slantlight.units.Progress;

/** A year made of ingredients against the same moments lit whole. */
class IngredientsTest {
  private static final House ROOM = TestHouses.boxRoom(6, 8, 2.75, 0.5, 5.5, 0, 2.44, 0.85);

  /** Three metres in from the glass, and beside its end. */
  private static final double[][] PLACES = {{3, 3}, {5.5, 1}};

  @Test
  void cookedMomentsAgreeWithWholeOnes() {
    Transport light = Transport.of(ROOM, TransportOptions.DEFAULT, Progress.NONE);
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 37))
            .withStep(60);
    LitYear year = LitYear.of(ROOM, options);
    for (double[] place : PLACES) {
      Frame frame =
          new Frame(
              new Vec3(place[0], place[1], 2.749), Vec3.EAST, Vec3.NORTH.times(-1), Vec3.DOWN);
      SamplePoint sample = new SamplePoint(frame, "room");
      FollowedPoint point = new FollowedPoint(sample, ROOM.eyes());
      Coating coating = Coating.of(new Paint(0.85, Sheen.FLAT));
      ReliefKernel kernel = new ReliefKernel(point, coating, coating, false);
      Basis basis = light.basis(List.of(sample), List.of(kernel), Progress.NONE);
      YearScan scan = new YearScan(basis, light.beams(List.of(sample)), Map.of(), year);
      compare(basis, scan.kitchen(0), year, kernel);
    }
  }

  private static void compare(
      Basis basis, Ingredients.Kitchen kitchen, LitYear year, ReliefKernel kernel) {
    float[][] cooked = new float[kernel.rows()][1];
    float[][] whole = new float[kernel.rows()][1];
    double worst = 0;
    double sum = 0;
    int count = 0;
    for (int s = 0; s < year.states(); s++) {
      kitchen.cook(year.menu(), s, s + 1, cooked, 0, cooked.length);
      basis.evaluate(0, basis.block(List.of(year.light(s))), whole);
      double scale = whole[kernel.illuminance()][0];
      if (scale > 1) {
        for (int r : new int[] {kernel.illuminance(), kernel.lightAcross(), kernel.lightAlong()}) {
          double off = Math.abs(cooked[r][0] - whole[r][0]) / scale;
          worst = Math.max(worst, off);
          sum += off;
          count++;
        }
      }
    }
    assertThat(count).isGreaterThan(300);
    assertThat(sum / count).isLessThan(0.001);
    assertThat(worst).isLessThan(0.01);
  }
}
