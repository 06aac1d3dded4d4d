package slantlight.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slantlight.board.Boards.FT;
import static slantlight.board.Boards.IN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Framing;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

class QuantityTakeoffTest {
  private static final House ROOM =
      TestHouses.boxRoom(20 * FT, 14 * FT, 8 * FT, 5 * FT, 10 * FT, 3 * FT, 6 * FT, 0.8);

  @Test
  void everyInsideCornerOfABoxIsTapedOnce() {
    List<Quantities> parts = new ArrayList<>();
    double joints = 0;
    List<Layout> layouts = new ArrayList<>();
    QuantityTakeoff takeoff = new QuantityTakeoff(ROOM);
    for (Surface s : ROOM.surfaces()) {
      Layout l = LayoutSolver.solve(s, ShowWeight.PLAIN);
      layouts.add(l);
      joints += l.joints().stream().mapToDouble(Joint::length).sum();
      parts.add(takeoff.of(s, l, 4));
    }
    Quantities sum = QuantityTakeoff.sum(parts, CuttingPlan.of(ROOM.surfaces(), layouts));
    // Four corners and the ring where walls meet the ceiling; the floor is not boarded.
    double corners = 4 * 8 * FT + 2 * (20 + 14) * FT;
    assertThat(sum.tape()).isCloseTo(joints + corners, within(1e-9));
    assertThat(sum.cornerBead()).isZero();
    assertThat(sum.waste()).isBetween(0.0, 0.3);
  }

  @Test
  void boardsThatFitButForRoundingWasteNothing() {
    double area = 12 * FT * 4 * FT;
    SortedMap<Stock, Integer> one =
        new TreeMap<>(Map.of(new Stock(new BoardSize(4 * FT, 12 * FT), IN / 2), 1));
    double waste = new Quantities(one, area * (1 + 1e-12), area, 0, 0, 0, 0).waste();
    assertThat(String.format(Locale.ROOT, "%.0f %%", 100 * waste)).isEqualTo("0 %");
  }

  @Test
  void outsideCornerOfAnEllShapedRoomGetsBead() {
    double h = 2.5;
    Vec2[] plan = {
      new Vec2(0, 0), new Vec2(6, 0), new Vec2(6, 3), new Vec2(3, 3), new Vec2(3, 6), new Vec2(0, 6)
    };
    List<Surface> walls = new ArrayList<>();
    for (int i = 0; i < plan.length; i++) {
      // The room lies to the left of each side; seen from it, right is backward along the side.
      Vec2 a = plan[(i + 1) % plan.length];
      Vec2 b = plan[i];
      Vec2 d = b.minus(a).unit();
      Frame f =
          Frame.of(
              new Vec3(a.x(), a.y(), 0), new Vec3(d.x(), d.y(), 0), new Vec3(d.y(), -d.x(), 0));
      Surface like = ROOM.surface("room/north");
      walls.add(
          new Surface(
              "room/w" + i,
              "wall",
              "room",
              SurfaceKind.WALL,
              Face.of(f, TestHouses.rectangle(0, 0, a.distance(b), h)),
              like.paint(),
              true,
              like.framing(),
              like.boards(),
              like.level(),
              List.of(),
              List.of()));
    }
    House ell =
        new House(
            "L",
            "An invented room",
            ROOM.site(),
            ROOM.rooms(),
            walls,
            List.of(),
            List.of(),
            ROOM.outside(),
            List.of(),
            ROOM.rates(),
            ROOM.prescribed(),
            ROOM.scale());
    Corners corners = Corners.of(ell);
    double inside = walls.stream().mapToDouble(w -> corners.inside(w.id())).sum();
    double outside = walls.stream().mapToDouble(w -> corners.outside(w.id())).sum();
    assertThat(inside).isCloseTo(5 * h, within(1e-9));
    assertThat(outside).isCloseTo(h, within(1e-9));
  }

  @Test
  void levelZeroNeedsNoTapeAndEachLevelMoreCompound() {
    Surface s = ROOM.surface("room/ceiling");
    Layout l = LayoutSolver.solve(s, ShowWeight.PLAIN);
    QuantityTakeoff takeoff = new QuantityTakeoff(ROOM);
    assertThat(takeoff.of(s, l, 0).tape()).isZero();
    for (int level = 1; level <= 5; level++) {
      assertThat(takeoff.of(s, l, level).compound())
          .isGreaterThan(takeoff.of(s, l, level - 1).compound());
    }
  }

  @Test
  void cutListHangsCeilingsFirstAndTopRowsFirst() {
    List<Layout> layouts =
        ROOM.surfaces().stream()
            .filter(Surface::boarded)
            .map(
                s ->
                    LayoutSolver.solve(
                        s.withBoards(
                            Boards.offer(BoardRun.ACROSS_FRAMING, new double[] {48}, 8, 12, 14)),
                        ShowWeight.PLAIN))
            .toList();
    CuttingPlan plan = CuttingPlan.of(ROOM.surfaces(), layouts);
    List<CutList.Entry> list = CutList.of(plan, m -> Math.round(m / IN) + "\"");
    assertThat(list.get(0).piece().surface().kind()).isEqualTo(SurfaceKind.CEILING);
    assertThat(list.stream().map(e -> e.piece().surface().kind()).toList())
        .isSortedAccordingTo(Comparator.reverseOrder());
    CutList.Entry firstOfWall =
        list.stream()
            .filter(e -> e.piece().surface().id().equals("room/north"))
            .findFirst()
            .orElseThrow();
    assertThat(firstOfWall.piece().board().outline().get(0).y()).isCloseTo(4 * FT, within(1e-9));
  }

  @Test
  void cutsNameLengthRipAndHole() {
    Surface wall =
        Boards.wall(
            Boards.offer(BoardRun.ACROSS_FRAMING, new double[] {48}, 12),
            16 * IN,
            Boards.feet(0, 0, 10, 7),
            List.of(Boards.feet(3, 0, 6, 6.5)));
    Layout l = LayoutSolver.solve(wall, ShowWeight.PLAIN);
    List<List<String>> cuts =
        list(wall, l, m -> Math.round(m / IN) + "\"").stream().map(CutList.Entry::cuts).toList();
    assertThat(cuts.get(0).get(0)).isEqualTo("cut to 120\"");
    assertThat(cuts.stream().flatMap(List::stream))
        .anySatisfy(c -> assertThat(c).isEqualTo("rip to 36\""))
        .anySatisfy(c -> assertThat(c).startsWith("cut out 36\" x "));
  }

  @Test
  void gableCutIsDescribed() {
    List<Vec2> gable = List.of(new Vec2(0, 0), new Vec2(3, 0), new Vec2(3, 1.2), new Vec2(0, 0.6));
    Surface wall =
        Boards.wall(
            Boards.offer(BoardRun.ACROSS_FRAMING, new double[] {48}, 12),
            16 * IN,
            gable,
            List.of());
    Layout l = LayoutSolver.solve(wall, ShowWeight.PLAIN);
    assertThat(list(wall, l, m -> Math.round(m * 1000) + " mm").get(0).cuts())
        .anySatisfy(c -> assertThat(c).startsWith("cut from 0 mm along and 600 mm over to "));
  }

  private static List<CutList.Entry> list(Surface s, Layout l, DoubleFunction<String> length) {
    return CutList.of(CuttingPlan.of(List.of(s), List.of(l)), length);
  }

  @Test
  void screwsKeepToSpacingAndEdge() {
    Surface ceiling =
        Boards.ceiling(
            Boards.offer(BoardRun.ACROSS_FRAMING, new double[] {48}, 8),
            new Framing(Math.PI / 2, 16 * IN, 0),
            Boards.feet(0, 0, 8, 4));
    Layout l = LayoutSolver.solve(ceiling, ShowWeight.PLAIN);
    List<Vec2> screws = Fasteners.all(ceiling, l.boards());
    assertThat(screws).hasSize(7 * 5);
    for (Vec2 p : screws) {
      double edge = Math.min(Math.min(p.x(), 8 * FT - p.x()), Math.min(p.y(), 4 * FT - p.y()));
      assertThat(edge).isGreaterThan(0.375 * IN);
    }
    // In the field: the five members between the ends, without the screws under the row joints.
    assertThat(l.fasteners()).hasSize(5 * 3);
  }
}
