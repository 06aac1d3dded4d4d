package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.board.ShowWeight;
import slantlight.geom.Vec2;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.GivenJoint;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;
import slantlight.sight.RidgeTable;
import slantlight.units.Progress;

/** What the field foretells for a joint against the score of that joint when it is there. */
class ShowFieldTest {
  private static final House HOUSE = TestHouses.boxRoom(4, 3, 2.5, 0.3, 1.5, 0.8, 2.2, 0.8);
  private static final ScoreOptions OPTIONS =
      ScoreOptions.standard()
          .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 23))
          .withStep(60)
          .withSpacing(1)
          .withSurfaces(Set.of("room/east"))
          .withThreads(1);
  private static final Vec2 UP = new Vec2(0, 1);
  private static final Vec2 ASIDE = new Vec2(1, 0);

  /** The wall is 3 m by 2.5 m: three by two places 1.2 m apart about its middle. */
  private static final List<Vec2> NODES =
      List.of(
          new Vec2(0.3, 0.65),
          new Vec2(1.5, 0.65),
          new Vec2(2.7, 0.65),
          new Vec2(0.3, 1.85),
          new Vec2(1.5, 1.85),
          new Vec2(2.7, 1.85));

  @Test
  void theFieldIsTheScoreOfAJointAtItsPlaces() {
    List<GivenJoint> joints = new ArrayList<>();
    for (Vec2 node : NODES) {
      for (JointKind kind : List.of(JointKind.TAPERED, JointKind.BUTT)) {
        for (Vec2 d : List.of(UP, ASIDE)) {
          Vec2 a = node.minus(d.times(0.05));
          Vec2 b = node.plus(d.times(0.05));
          joints.add(Variants.joint(kind, a.x(), a.y(), b.x(), b.y()));
        }
      }
    }
    House jointed = Variants.joints(HOUSE, "room/east", joints.toArray(GivenJoint[]::new));
    LightModel light = Transport.of(jointed, TransportOptions.DEFAULT, Progress.NONE);
    List<JointScore> scores =
        Scorer.score(light, OPTIONS, Progress.NONE).surfaces().get(0).joints();
    assertThat(scores).hasSize(24);
    Surface wall =
        HOUSE.surfaces().stream().filter(s -> s.id().equals("room/east")).findFirst().orElseThrow();
    ShowWeight field =
        ShowField.of(light, List.of(wall), RidgeTable.standard(), OPTIONS, Progress.NONE)
            .get("room/east");
    for (JointScore score : scores) {
      Vec2 from = score.joint().from();
      Vec2 to = score.joint().to();
      JointKind kind = score.joint().kind();
      double shown = score.atLevel(4).peakShowing();
      assertThat(shown).isPositive();
      // A thousandth of the plain weight keeps ties in order.
      double tie = kind == JointKind.TAPERED ? 0.001 : 0.003;
      Vec2 node = from.lerp(to, 0.5);
      Vec2 d = to.minus(from).unit();
      assertThat(field.at(node, d, kind)).isCloseTo(shown + tie, within(1e-3 * shown));
      assertThat(field.at(node, d.times(-3), kind)).isCloseTo(shown + tie, within(1e-3 * shown));
    }
    betweenAndBeyondItsPlaces(field);
  }

  private static void betweenAndBeyondItsPlaces(ShowWeight field) {
    JointKind kind = JointKind.BUTT;
    double mean =
        IntStream.of(0, 1, 3, 4)
            .mapToDouble(i -> field.at(NODES.get(i), UP, kind))
            .average()
            .orElseThrow();
    assertThat(field.at(new Vec2(0.9, 1.25), UP, kind)).isCloseTo(mean, within(1e-6));
    assertThat(field.at(new Vec2(0.6, 0.65), UP, kind))
        .isCloseTo(
            0.75 * field.at(NODES.get(0), UP, kind) + 0.25 * field.at(NODES.get(1), UP, kind),
            within(1e-6));
    assertThat(field.at(new Vec2(0.3, 1.55), UP, kind))
        .isCloseTo(
            0.25 * field.at(NODES.get(0), UP, kind) + 0.75 * field.at(NODES.get(3), UP, kind),
            within(1e-6));
    assertThat(field.at(new Vec2(0, 0), UP, kind))
        .isCloseTo(field.at(NODES.get(0), UP, kind), within(1e-6));
    assertThat(field.at(new Vec2(3, 2.5), ASIDE, kind))
        .isCloseTo(field.at(NODES.get(5), ASIDE, kind), within(1e-6));
    double diagonal = field.at(NODES.get(1), new Vec2(1, 1), kind);
    double half = (field.at(NODES.get(1), UP, kind) + field.at(NODES.get(1), ASIDE, kind)) / 2;
    assertThat(diagonal).isCloseTo(half, within(1e-6));
  }

  @Test
  void coveredPlacesShowNothing() {
    LightModel light = Transport.of(HOUSE, TransportOptions.DEFAULT, Progress.NONE);
    Surface wall =
        HOUSE.surfaces().stream().filter(s -> s.id().equals("room/east")).findFirst().orElseThrow();
    Surface tiled = Variants.covered(wall, TestHouses.rectangle(0, 0, 3, 1.3));
    ShowWeight field =
        ShowField.of(light, List.of(tiled), RidgeTable.standard(), OPTIONS, Progress.NONE)
            .get("room/east");
    assertThat(field.at(NODES.get(0), UP, JointKind.TAPERED)).isCloseTo(0.001, within(1e-9));
    assertThat(field.at(NODES.get(4), UP, JointKind.TAPERED)).isGreaterThan(0.01);
  }
}
