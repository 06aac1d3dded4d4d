package slantlight.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static slantlight.board.Boards.FT;
import static slantlight.board.Boards.IN;
import static slantlight.board.Boards.feet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec2;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Framing;
import slantlight.scene.GivenJoint;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;

class LayoutSolverTest {
  private static final double[] BOTH = {48, 54};
  private static final double[] FOUR_FEET = {48};

  @Test
  void nineFootWallTakesTwoWideRows() {
    Surface wall =
        Boards.wall(
            Boards.offer(BoardRun.ACROSS_FRAMING, BOTH, 8, 10, 12),
            16 * IN,
            feet(0, 0, 12, 9),
            List.of());
    Layout l = LayoutSolver.solve(wall, ShowWeight.PLAIN);
    assertThat(l.boards()).hasSize(2);
    assertThat(l.boards())
        .allSatisfy(b -> assertThat(b.stock()).isEqualTo(new BoardSize(54 * IN, 12 * FT)));
    assertThat(l.length(JointKind.TAPERED)).isCloseTo(12 * FT, within(1e-9));
    assertThat(l.length(JointKind.BUTT)).isZero();
  }

  @Test
  void fullHeightPassageInterruptsTheRowsWithoutJointsInIt() {
    Surface wall =
        Boards.wall(
            Boards.offer(BoardRun.ACROSS_FRAMING, FOUR_FEET, 8, 12),
            16 * IN,
            feet(0, 0, 16, 8),
            List.of(feet(6, 0, 10, 8)));
    Layout l = LayoutSolver.solve(wall, ShowWeight.PLAIN);
    assertThat(l.boards()).hasSize(4);
    assertThat(l.length(JointKind.BUTT)).isZero();
    assertThat(l.length(JointKind.TAPERED)).isCloseTo(12 * FT, within(1e-9));
  }

  @Test
  void buttJointOverADoorCountsOnlyItsVisiblePart() {
    // A wall longer than any board: with no stock above 12 ft, the cheapest place is over the door.
    Surface wall =
        Boards.wall(
            Boards.offer(BoardRun.ACROSS_FRAMING, FOUR_FEET, 12),
            16 * IN,
            feet(0, 0, 16, 8),
            List.of(feet(5.5, 0, 10, 6.8)));
    Layout l = LayoutSolver.solve(wall, ShowWeight.PLAIN);
    assertThat(l.joints())
        .filteredOn(j -> j.kind() == JointKind.BUTT)
        .singleElement()
        .satisfies(j -> assertThat(j.length()).isCloseTo(1.2 * FT, within(1e-9)));
  }

  @Test
  void halfInchBoardAlongWideCeilingFramingIsRefused() {
    Surface ceiling =
        Boards.ceiling(
            Boards.offer(BoardRun.AUTO, FOUR_FEET, 8, 16),
            new Framing(Math.PI / 2, 24 * IN, 0),
            feet(0, 0, 24, 16));
    Layout l = LayoutSolver.solve(ceiling, ShowWeight.PLAIN);
    assertThat(l.run()).isEqualTo(BoardRun.ACROSS_FRAMING);
    assertThat(l.reason()).contains("GA-216");
  }

  @Test
  void fixedBoardsStayAndTheRestIsFilled() {
    Surface wall =
        Boards.wall(
            Boards.offer(BoardRun.ACROSS_FRAMING, FOUR_FEET, 8, 10, 12),
            16 * IN,
            feet(0, 0, 18, 8),
            List.of());
    PlacedBoard fixed =
        new PlacedBoard(
            1, new BoardSize(48 * IN, 8 * FT), feet(80.0 / 12, 4, 176.0 / 12, 8), 4 * FT * 8 * FT);
    Layout l = LayoutSolver.solve(wall, ShowWeight.PLAIN, LayoutRules.COMMON, List.of(fixed));
    assertThat(l.boards())
        .anySatisfy(
            b -> {
              assertThat(b.outline().get(0).distance(new Vec2(80 * IN, 4 * FT))).isLessThan(1e-6);
              assertThat(b.outline().get(2).distance(new Vec2(176 * IN, 8 * FT))).isLessThan(1e-6);
            });
    assertThat(l.boards().stream().mapToDouble(PlacedBoard::area).sum())
        .isCloseTo(wall.face().area(), within(1e-6));
  }

  @Test
  void jointsGoUnderTileWhereTheyMust() {
    Surface bare =
        Boards.wall(
            Boards.offer(BoardRun.ACROSS_FRAMING, FOUR_FEET, 12),
            16 * IN,
            feet(0, 0, 16, 4),
            List.of());
    Surface tiled =
        new Surface(
            bare.id(),
            bare.label(),
            bare.roomId(),
            bare.kind(),
            bare.face(),
            bare.paint(),
            true,
            bare.framing(),
            bare.boards(),
            bare.level(),
            List.of(feet(9, 0, 11, 4)),
            List.of());
    Layout l = LayoutSolver.solve(tiled, ShowWeight.PLAIN.whereUncovered(tiled));
    assertThat(l.joints())
        .singleElement()
        .satisfies(j -> assertThat(j.from().x()).isBetween(9 * FT, 11 * FT));
  }

  @Test
  void givenJointsReplaceTheLayout() {
    Surface bare =
        Boards.wall(
            Boards.offer(BoardRun.AUTO, FOUR_FEET, 12), 16 * IN, feet(0, 0, 16, 8), List.of());
    GivenJoint given =
        new GivenJoint(
            Optional.empty(),
            JointKind.TAPERED,
            new Vec2(0, 4 * FT),
            new Vec2(16 * FT, 4 * FT),
            OptionalDouble.of(6e-4),
            OptionalDouble.empty());
    Surface up =
        new Surface(
            bare.id(),
            bare.label(),
            bare.roomId(),
            bare.kind(),
            bare.face(),
            bare.paint(),
            true,
            bare.framing(),
            bare.boards(),
            bare.level(),
            List.of(),
            List.of(given));
    Layout l = LayoutSolver.solve(up, ShowWeight.PLAIN);
    assertThat(l.boards()).isEmpty();
    assertThat(l.run()).isEqualTo(BoardRun.ACROSS_FRAMING);
    assertThat(l.joints())
        .singleElement()
        .satisfies(j -> assertThat(j.crownHeight()).hasValue(6e-4));
  }

  @Test
  void boardsThatOverlapCannotBothStay() {
    Surface wall =
        Boards.wall(
            Boards.offer(BoardRun.ACROSS_FRAMING, FOUR_FEET, 8, 12),
            16 * IN,
            feet(0, 0, 16, 8),
            List.of());
    BoardSize eight = new BoardSize(48 * IN, 8 * FT);
    List<PlacedBoard> both =
        List.of(
            new PlacedBoard(1, eight, feet(0, 4, 8, 8), 1),
            new PlacedBoard(2, eight, feet(4, 2, 12, 6), 1));
    assertThatThrownBy(() -> LayoutSolver.solve(wall, ShowWeight.PLAIN, LayoutRules.COMMON, both))
        .isInstanceOf(ImpossibleLayoutException.class)
        .hasMessageContaining("room/it")
        .hasMessageContaining("release one of them");
  }
}
