package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.board.Joint;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.SamplePoint;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;

/** Bands, days, options, and the places that are followed on a surface. */
class PlacesTest {
  private static final House ROOM = TestHouses.boxRoom(4, 5, 2.5, 1, 3, 1, 2, 0.8);

  @Test
  void bandsBeginWhereTheReadmeSays() {
    assertThat(Band.of(0)).isEqualTo(Band.QUIET);
    assertThat(Band.of(0.999)).isEqualTo(Band.QUIET);
    assertThat(Band.of(1)).isEqualTo(Band.TRACE);
    assertThat(Band.of(2.499)).isEqualTo(Band.TRACE);
    assertThat(Band.of(2.5)).isEqualTo(Band.PLAIN);
    assertThat(Band.of(5.999)).isEqualTo(Band.PLAIN);
    assertThat(Band.of(6)).isEqualTo(Band.LOUD);
    for (Band b : Band.values()) {
      assertThat(Band.of(b.from())).isEqualTo(b);
    }
  }

  @Test
  void figuresByBandStandInTheOrderOfTheBands() {
    assertThat(java.util.Arrays.stream(Band.values()).map(Band::index)).containsExactly(0, 1, 2, 3);
  }

  @Test
  void aCalendarKeepsItsOwnCopyAndHasAColumnForEachStep() {
    float[][] grid = new float[2][48];
    grid[1][7] = 3;
    Calendar calendar = new Calendar(List.of(80, 81), 30, grid);
    grid[1][7] = 9;
    assertThat(calendar.showing(1, 7)).isEqualTo(3);
    assertThat(calendar.columns()).isEqualTo(48);
    assertThat(calendar.stepMinutes()).isEqualTo(30);
    assertThat(calendar.days()).containsExactly(80, 81);
  }

  @Test
  void everyNthDayStandsInTheMiddleOfItsStretch() {
    assertThat(ScoreOptions.everyDay(2026, 1)).hasSize(365).startsWith(1).endsWith(365);
    assertThat(ScoreOptions.everyDay(2028, 1)).hasSize(366);
    assertThat(ScoreOptions.everyDay(2026, 10)).hasSize(36).startsWith(6, 16);
  }

  @Test
  void optionsChangeOneThingEach() {
    ScoreOptions all = ScoreOptions.standard();
    assertThat(all.withDays(List.of(5)).days()).containsExactly(5);
    assertThat(all.withYear(2028, List.of(366)).year()).isEqualTo(2028);
    assertThat(all.withStep(60).stepMinutes()).isEqualTo(60);
    assertThat(all.withSurfaces(Set.of("a")).surfaces()).containsExactly("a");
    assertThat(all.withBackBlocked(Set.of("b")).backBlocked()).containsExactly("b");
    assertThat(all.withSpacing(2).spacing()).isEqualTo(2);
    assertThat(all.withThreads(7).threads()).isEqualTo(7);
    assertThat(all.withLayouts(java.util.Map.of()).layouts()).isEmpty();
    assertThatThrownBy(() -> all.withDays(List.of())).hasMessageContaining("one day");
    assertThatThrownBy(() -> all.withStep(7)).hasMessageContaining("not 7");
    assertThatThrownBy(() -> all.withStep(0)).hasMessageContaining("not 0");
    assertThat(all.withStep(1).stepMinutes()).isEqualTo(1);
  }

  @Test
  void poolingFollowsQuicksRule() {
    Random random = new Random(3);
    for (double p : new double[] {1, 2, 3.5, 6}) {
      Pooling pooling = Pooling.of(p);
      for (int i = 0; i < 500; i++) {
        float a = 20 * random.nextFloat();
        float b = i % 5 == 0 ? 0 : 20 * random.nextFloat();
        double exact = Math.pow(Math.pow(a, p) + Math.pow(b, p), 1 / p);
        assertThat((double) pooling.of(a, b)).isCloseTo(exact, within(2e-5 * exact));
      }
      assertThat(pooling.of(0, 0)).isZero();
      assertThat((double) pooling.of(3, 3)).isCloseTo(3 * Math.pow(2, 1 / p), within(1e-5));
    }
  }

  @Test
  void leansTakeTheirPartOfAVector() {
    assertThat(Lean.U.part(-3, 4)).isEqualTo(3);
    assertThat(Lean.V.part(3, -4)).isEqualTo(4);
    assertThat(Lean.ALL.part(-3, 4)).isEqualTo(5);
    assertThat(Lean.U.turned(new Vec3(1, 2, 3))).isEqualTo(new Vec3(1, 2, 3));
    assertThat(Lean.V.turned(new Vec3(1, 2, 3))).isEqualTo(new Vec3(2, -1, 3));
  }

  @Test
  void stepsAlongAJointAreEvenAndNoLongerThanAsked() {
    Joint joint = joint(1, 1, 1, 3.5);
    assertThat(JointPath.steps(joint, 0.5)).hasSize(5).startsWith(new Vec2(1, 1.25));
    assertThat(JointPath.steps(joint, 0.49)).hasSize(6);
    assertThat(JointPath.steps(joint, 9)).containsExactly(new Vec2(1, 2.25));
    assertThat(JointPath.steps(joint(1, 1, 1, 1), 0.5)).containsExactly(new Vec2(1, 1));
  }

  @Test
  void samplesStandInFrontOfTheSurfaceWithTheJointAlongV() {
    for (Surface surface : ROOM.surfaces()) {
      SamplePoint at = JointPath.sample(surface, new Vec2(1, 2), new Vec2(0.6, 0.8));
      Frame frame = at.frame();
      Frame plane = surface.face().frame();
      assertThat(plane.height(frame.origin())).isCloseTo(0.001, within(1e-12));
      assertThat(plane.toPlane(frame.origin()).distance(new Vec2(1, 2))).isLessThan(1e-12);
      assertThat(plane.directionToLocal(frame.v()).distance(new Vec3(0.6, 0.8, 0)))
          .isLessThan(1e-12);
      assertThat(frame.u().cross(frame.v()).distance(plane.n())).isLessThan(1e-12);
      assertThat(at.roomId()).isEqualTo("room");
    }
  }

  @Test
  void oneSpotOfEachCellIsFollowedTheOneNearestItsMiddleThatIsNotCovered() {
    Surface wall = ROOM.surfaces().get(1);
    List<Vec2> all = new ArrayList<>();
    for (double x = 0.1; x < 4; x += 0.4) {
      for (double y = 0.1; y < 5; y += 0.4) {
        all.add(new Vec2(x, y));
      }
    }
    List<Vec2> chosen = Spots.chosen(wall, all);
    // 4 m x 5 m in cells of 2 m: two by three.
    assertThat(chosen).hasSize(6);
    for (Vec2 spot : chosen) {
      Vec2 middle = new Vec2(2 * Math.floor(spot.x() / 2) + 1, 2 * Math.floor(spot.y() / 2) + 1);
      for (Vec2 other : all) {
        boolean sameCell =
            Math.floor(other.x() / 2) == Math.floor(spot.x() / 2)
                && Math.floor(other.y() / 2) == Math.floor(spot.y() / 2);
        if (sameCell) {
          assertThat(spot.distance(middle)).isLessThanOrEqualTo(other.distance(middle) + 1e-12);
        }
      }
    }
    Surface tiled = Variants.covered(wall, TestHouses.rectangle(-1, -1, 2, 9));
    assertThat(Spots.chosen(tiled, all)).hasSize(3).allMatch(p -> p.x() > 2);
    assertThat(Spots.joint("w").kind()).isEqualTo(JointKind.SPOT);
    assertThat(Spots.joint("w").length()).isZero();
    assertThat(Spots.joint("w").id()).isEqualTo("w#S");
  }

  private static Joint joint(double x0, double y0, double x1, double y1) {
    return new Joint(
        "j",
        JointKind.BUTT,
        new Vec2(x0, y0),
        new Vec2(x1, y1),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }
}
