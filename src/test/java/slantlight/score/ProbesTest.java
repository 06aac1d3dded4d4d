package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slantlight.board.Joint;
import slantlight.geom.Vec2;
import slantlight.light.Basis;
import slantlight.light.Kernel;
import slantlight.light.LightModel;
import slantlight.light.SamplePoint;
import slantlight.light.SunBeams;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Surface;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeTable;
import slantlight.units.Progress;

/**
 * Peaks of the year beside every state of it looked at by itself, flecks of sun where they are:
 * what the probes and bounds pass over must show no more. The wall has a joint that shows most
 * under suns that no sun of the grid hints at.
 */
class ProbesTest {
  private static final House GARAGE =
      ((Read.Ok) SceneReader.read(Path.of("scenes", "lake-house.json"))).house().alone("garage");
  private static final String WALL = "garage/wall-north";
  private static final RidgeTable TABLE = RidgeTable.standard();

  /** Every day of the second half of October and the first of November, when the sun is low. */
  private static final ScoreOptions OPTIONS =
      ScoreOptions.standard()
          .withDays(IntStream.range(288, 318).boxed().toList())
          .withSurfaces(Set.of(WALL));

  @Test
  void noStateOfAJointShowsMoreThanItsPeak() {
    LightModel light = Transport.of(GARAGE, TransportOptions.DEFAULT, Progress.NONE);
    LitYear year = LitYear.of(light, OPTIONS);
    YearScan scan = new YearScan(light, year);
    List<JointScore> joints = Scorer.score(light, OPTIONS, Progress.NONE).surface(WALL).joints();
    assertThat(joints).hasSizeGreaterThan(1);
    for (JointScore joint : joints) {
      double most = most(joint.joint(), light, scan);
      double peak = joint.peak().orElseThrow().showing();
      assertThat(most).as(joint.joint().id()).isBetween(0.5 * peak, 1.0001 * peak);
    }
  }

  /** Largest showing of a joint at level 4 under any state that brings it no beam of its own. */
  private static double most(Joint joint, LightModel light, YearScan scan) {
    Surface wall = GARAGE.surface(WALL);
    Vec2 along = joint.to().minus(joint.from()).unit();
    JointRidge[] ridges = PointOptics.ridges(TABLE, joint, false);
    double most = 0;
    for (Vec2 at : JointPath.steps(joint, OPTIONS.spacing())) {
      SamplePoint sample = JointPath.sample(wall, at, along);
      FollowedPoint point = new FollowedPoint(sample, new EyeChoice(light).seeing(sample.frame()));
      ReliefKernel kernel = ReliefKernel.of(point, wall.paint(), TABLE, false);
      PointOptics optics = new PointOptics(point, kernel, TABLE, ridges, Lean.U, OPTIONS.eye());
      Basis basis = light.basis(List.of(sample), List.of((Kernel) kernel), Progress.NONE);
      Ingredients.Kitchen kitchen = scan.kitchen(basis, 0);
      SunBeams beams = light.beams(List.of(sample));
      most = Math.max(most, most(optics, kitchen, beams, scan.year()));
    }
    return most;
  }

  private static double most(
      PointOptics optics, Ingredients.Kitchen kitchen, SunBeams beams, LitYear year) {
    Ingredients.Menu menu = year.menu();
    int rows = optics.kernel().judged();
    double[] suns = year.suns();
    double most = 0;
    for (int run = 0; run < menu.runs(); run++) {
      int from = menu.start(run);
      int to = menu.start(run + 1);
      float[][] cooked = new float[rows][to - from];
      kitchen.cook(menu, from, to, cooked, 0, rows);
      kitchen.sharpen(menu, run, cooked, 0, rows);
      for (int s = from; s < to; s++) {
        double beam =
            year.beam(s) * beams.transmittance(0, suns[3 * s], suns[3 * s + 1], suns[3 * s + 2]);
        if (beam == 0 && year.clear(s)) {
          float[] own = new float[rows];
          for (int r = 0; r < rows; r++) {
            own[r] = cooked[r][s - from];
          }
          most = Math.max(most, most(optics, own));
        }
      }
    }
    return most;
  }

  private static double most(PointOptics optics, float[] rows) {
    double most = 0;
    for (int eye = 0; eye < optics.eyes(); eye++) {
      float luminance = optics.luminance(eye, rows);
      if (luminance > 1e-4) {
        float tilt = optics.change(eye, rows) / luminance;
        most =
            Math.max(
                most,
                optics.pooled(
                    tilt * optics.relief(eye, 1).at(luminance),
                    optics.contrast(eye, rows) * optics.mismatch(eye, 1).at(luminance)));
      }
    }
    return most;
  }
}
