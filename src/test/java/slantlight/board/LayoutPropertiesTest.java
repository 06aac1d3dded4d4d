package slantlight.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slantlight.board.Boards.FT;
import static slantlight.board.Boards.IN;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Framing;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/** Rules of GA-216 and ASTM C840 over random walls, gables, L-shapes and skew-framed ceilings. */
class LayoutPropertiesTest {
  private static final double[] SPACINGS = {12 * IN, 16 * IN, 19.2 * IN, 24 * IN, 0.4, 0.6};

  /** Skew boards that only touch: floating overlay can take the touch for a whole overlap. */
  private static final PrecisionModel NANOMETRES = new PrecisionModel(1e9);

  private static final String SEED = "20261125";

  @Property(tries = 1000, seed = SEED)
  void everyEndOrLongEdgeIsOnAMember(@ForAll("surfaces") Surface surface) {
    Layout l = LayoutSolver.solve(surface, ShowWeight.PLAIN);
    Framing f = surface.framing().orElseThrow();
    JointKind onMember = l.run() == BoardRun.ACROSS_FRAMING ? JointKind.BUTT : JointKind.TAPERED;
    for (Joint j : l.joints()) {
      if (j.kind() == onMember || (j.kind() == JointKind.CUT && onMember == JointKind.TAPERED)) {
        double bays = (j.from().dot(f.across()) - f.offset()) / f.spacing();
        assertThat((bays - Math.rint(bays)) * f.spacing()).as("%s", j).isCloseTo(0, within(1e-6));
      }
    }
  }

  @Property(tries = 1000, seed = SEED)
  void buttJointsOfNeighbouringRowsAreABayApart(@ForAll("surfaces") Surface surface) {
    Layout l = LayoutSolver.solve(surface, ShowWeight.PLAIN);
    Framing f = surface.framing().orElseThrow();
    RowFrame frame = RowFrame.of(f, l.run());
    List<Joint> butts = l.joints().stream().filter(j -> j.kind() == JointKind.BUTT).toList();
    for (Joint a : butts) {
      for (Joint b : butts) {
        Vec2 top = frame.toRow(a.to());
        Vec2 foot = frame.toRow(b.from());
        if (Math.abs(top.y() - foot.y()) < 1e-6 && onRowEdge(l, frame, top.y())) {
          assertThat(Math.abs(top.x() - foot.x()))
              .as("%s under %s", a, b)
              .isGreaterThan(f.spacing() - 1e-6);
        }
      }
    }
  }

  private static boolean onRowEdge(Layout l, RowFrame frame, double t) {
    return l.boards().stream().anyMatch(b -> Math.abs(frame.box(b.outline()).t0() - t) < 1e-6);
  }

  @Property(tries = 1000, seed = SEED)
  void boardsCoverTheSurfaceOnce(@ForAll("surfaces") Surface surface) {
    Layout l = LayoutSolver.solve(surface, ShowWeight.PLAIN);
    Geometry polygon = Reckoning.polygon(surface);
    double sum = 0;
    List<Geometry> earlier = new ArrayList<>();
    for (PlacedBoard b : l.boards()) {
      Geometry cut = polygon.intersection(Reckoning.JTS.createPolygon(Reckoning.ring(b.outline())));
      assertThat(b.area()).as("board %s", b.number()).isCloseTo(cut.getArea(), within(1e-6));
      sum += b.area();
      for (Geometry e : earlier) {
        Geometry twice = OverlayNG.overlay(e, cut, OverlayNG.INTERSECTION, NANOMETRES);
        assertThat(twice.getArea()).as("overlap").isCloseTo(0, within(1e-6));
      }
      earlier.add(cut);
    }
    assertThat(sum).isCloseTo(polygon.getArea(), within(1e-6));
  }

  @Property(tries = 1000, seed = SEED)
  void noBoardIsLongerOrWiderThanItsStockOrTheCarry(@ForAll("surfaces") Surface surface) {
    Layout l = LayoutSolver.solve(surface, ShowWeight.PLAIN);
    BoardOffer offer = surface.boards().orElseThrow();
    RowFrame frame = RowFrame.of(surface.framing().orElseThrow(), l.run());
    for (PlacedBoard b : l.boards()) {
      assertThat(offer.sizes()).contains(b.stock());
      RowFrame.Box box = frame.box(b.outline());
      assertThat(box.length()).isLessThan(Math.min(b.stock().length(), offer.carry()) + 1e-3);
      assertThat(box.width()).isLessThan(b.stock().width() + 4e-3);
    }
  }

  /** A joint at a corner is forgiven only when its row, its neighbours kept, has no other cut. */
  @Property(tries = 1000, seed = SEED)
  void noButtJointAtAnOpeningCornerWhereItCanBeAvoided(@ForAll("surfaces") Surface surface) {
    Surface across = withRun(surface, BoardRun.ACROSS_FRAMING);
    Layout l = LayoutSolver.solve(across, ShowWeight.PLAIN);
    for (Joint j : l.joints()) {
      if (j.kind() == JointKind.BUTT
          && Reckoning.cornersNear(
                  across, Reckoning.line(j.from().x(), j.from().y(), j.to().x(), j.to().y()))
              > 0) {
        assertThat(canBeRecut(across, l, j)).as("%s of %s", j, across.face()).isFalse();
      }
    }
  }

  private static boolean canBeRecut(Surface surface, Layout l, Joint bad) {
    RowFrame frame = RowFrame.of(surface.framing().orElseThrow(), BoardRun.ACROSS_FRAMING);
    RowFrame.Box row = null;
    for (PlacedBoard b : l.boards()) {
      RowFrame.Box box = frame.box(b.outline());
      double t = (frame.toRow(bad.from()).y() + frame.toRow(bad.to()).y()) / 2;
      row = t > box.t0() && t < box.t1() ? box : row;
    }
    List<Double> neighbours = new ArrayList<>();
    for (Joint j : l.joints()) {
      double t = (frame.toRow(j.from()).y() + frame.toRow(j.to()).y()) / 2;
      if (j.kind() == JointKind.BUTT && (t < row.t0() || t > row.t1())) {
        neighbours.add(frame.toRow(j.from()).x());
      }
    }
    Geometry polygon = inRowFrame(surface, frame);
    Surface turned = turned(surface, frame);
    double s = frame.toRow(bad.from()).x();
    for (Geometry run : Reckoning.runs(polygon, row.t0(), row.t1())) {
      double from = run.getEnvelopeInternal().getMinX();
      double to = run.getEnvelopeInternal().getMaxX();
      if (s > from && s < to) {
        return reachable(turned, run, row, from, to, neighbours);
      }
    }
    throw new AssertionError("the joint lies in no run");
  }

  private static boolean reachable(
      Surface surface,
      Geometry run,
      RowFrame.Box row,
      double from,
      double to,
      List<Double> neighbours) {
    BoardOffer offer = surface.boards().orElseThrow();
    double longest =
        Math.min(
            offer.carry(),
            offer.sizes().stream()
                .filter(b -> b.width() > row.width() - 1e-4 && b.length() <= offer.carry() + 1e-6)
                .mapToDouble(BoardSize::length)
                .max()
                .orElseThrow());
    Framing f = surface.framing().orElseThrow();
    List<Double> reached = new ArrayList<>(List.of(from));
    for (double m : Ground.members(f, from, to)) {
      Geometry joint = run.intersection(Reckoning.line(m, row.t0(), m, row.t1()));
      boolean free =
          neighbours.stream().noneMatch(n -> Math.abs(n - m) < f.spacing() - 1e-6)
              && cornersNear(surface, joint) == 0;
      if (free && reaches(reached, m, longest)) {
        reached.add(m);
      }
    }
    return reaches(reached, to, longest);
  }

  private static boolean reaches(List<Double> reached, double to, double longest) {
    return reached.stream()
        .anyMatch(r -> to - r <= longest && to - r >= LayoutRules.COMMON.minPiece());
  }

  private static long cornersNear(Surface surface, Geometry joint) {
    return surface.face().holes().stream()
        .flatMap(List::stream)
        .filter(
            c ->
                joint.distance(Reckoning.JTS.createPoint(new Coordinate(c.x(), c.y())))
                    < LayoutRules.COMMON.cornerClearance())
        .count();
  }

  private static Geometry inRowFrame(Surface surface, RowFrame frame) {
    return Reckoning.polygon(turned(surface, frame));
  }

  /** The surface with its rows level. */
  static Surface turned(Surface surface, RowFrame frame) {
    return Boards.surface(
        surface.kind(),
        surface.face().frame(),
        surface.boards().orElseThrow(),
        surface.framing().orElseThrow(),
        surface.face().outer().stream().map(frame::toRow).toList(),
        surface.face().holes().stream().map(h -> h.stream().map(frame::toRow).toList()).toList());
  }

  @Property(tries = 1000, seed = SEED)
  void neverMoreBoardsThanTheGreedyLayout(@ForAll("plainRectangles") Surface surface) {
    Layout l = LayoutSolver.solve(surface, ShowWeight.PLAIN);
    assertThat(l.boards()).hasSizeLessThanOrEqualTo(greedyBoards(surface));
  }

  /**
   * As hung without planning: widest boards from one side, in each row the longest board cut back
   * to the last member it reaches, or one more member back where it would stand over a joint.
   */
  private static int greedyBoards(Surface surface) {
    Framing f = surface.framing().orElseThrow();
    RowFrame frame = RowFrame.of(f, BoardRun.ACROSS_FRAMING);
    RowFrame.Box box = frame.box(surface.face().outer());
    BoardOffer offer = surface.boards().orElseThrow();
    double width = offer.sizes().stream().mapToDouble(BoardSize::width).max().orElseThrow();
    double length =
        offer.sizes().stream()
            .filter(b -> b.width() == width && b.length() <= offer.carry())
            .mapToDouble(BoardSize::length)
            .max()
            .orElseThrow();
    int boards = 0;
    List<Double> below = List.of();
    for (double t = box.t0(); t < box.t1() - 1e-6; t += width) {
      List<Double> joints = new ArrayList<>();
      double at = box.s0();
      while (box.s1() - at > length + 1e-6) {
        double last = Double.NaN;
        for (double m : Ground.members(f, at, at + length + 2e-6)) {
          boolean over = false;
          for (double b : below) {
            over |= Math.abs(b - m) < f.spacing() - 1e-6;
          }
          last = over ? last : m;
        }
        joints.add(last);
        at = last;
      }
      boards += joints.size() + 1;
      below = joints;
    }
    return boards;
  }

  static Surface withRun(Surface s, BoardRun run) {
    BoardOffer o = s.boards().orElseThrow();
    return Boards.surface(
        s.kind(),
        s.face().frame(),
        new BoardOffer(o.sizes(), o.thickness(), run, o.carry()),
        s.framing().orElseThrow(),
        s.face().outer(),
        s.face().holes());
  }

  @Provide
  Arbitrary<Surface> surfaces() {
    return Arbitraries.randomValue(LayoutPropertiesTest::randomSurface);
  }

  @Provide
  Arbitrary<Surface> plainRectangles() {
    return Arbitraries.randomValue(
        random ->
            Boards.ceiling(
                withoutAuto(offer(random)),
                framing(random, random.nextBoolean() ? 0 : Math.PI / 2),
                TestHouses.rectangle(0, 0, between(random, 2, 15), between(random, 2, 9))));
  }

  private static BoardOffer withoutAuto(BoardOffer o) {
    return new BoardOffer(o.sizes(), o.thickness(), BoardRun.ACROSS_FRAMING, o.carry());
  }

  static Surface randomSurface(Random random) {
    double w = between(random, 1, 14);
    double h = between(random, 2.2, 6);
    int shape = random.nextInt(4);
    if (shape == 0) {
      double angle =
          random.nextInt(3) == 0 ? between(random, 0, Math.PI) : random.nextInt(2) * Math.PI / 2;
      return Boards.ceiling(
          offer(random), framing(random, angle), TestHouses.rectangle(0, 0, w, h));
    }
    if (shape == 1) {
      double x = between(random, 0.3, 0.7) * w;
      double y = between(random, 0.3, 0.7) * h;
      List<Vec2> ell =
          List.of(
              new Vec2(0, 0),
              new Vec2(w, 0),
              new Vec2(w, y),
              new Vec2(x, y),
              new Vec2(x, h),
              new Vec2(0, h));
      return Boards.ceiling(offer(random), framing(random, random.nextInt(2) * Math.PI / 2), ell);
    }
    List<Vec2> outer = new ArrayList<>(TestHouses.rectangle(0, 0, w, h));
    if (shape == 2) {
      outer.add(3, new Vec2(between(random, 0.2, 0.8) * w, h + between(random, 0.3, 2)));
    }
    Frame frame = Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.NORTH.times(-1));
    return Boards.surface(
        SurfaceKind.WALL,
        frame,
        offer(random),
        framing(random, Math.PI / 2),
        outer,
        openings(random, w));
  }

  private static List<List<Vec2>> openings(Random random, double w) {
    List<List<Vec2>> holes = new ArrayList<>();
    double at = between(random, 0.2, 1.5);
    while (at + 1 < w && holes.size() < 3) {
      double width = Math.min(w - at - 0.1, between(random, 0.7, 2.5));
      double sill = random.nextBoolean() ? 0 : between(random, 0.3, 1.1);
      holes.add(TestHouses.rectangle(at, sill, at + width, between(random, 1.9, 2.15)));
      at += width + between(random, 0.3, 3);
    }
    return holes;
  }

  private static Framing framing(Random random, double angle) {
    double spacing = SPACINGS[random.nextInt(SPACINGS.length)];
    return new Framing(angle, spacing, random.nextInt(3) == 0 ? 0 : between(random, 0, spacing));
  }

  private static BoardOffer offer(Random random) {
    double carry = random.nextInt(4) == 0 ? 3.1 : Double.POSITIVE_INFINITY;
    List<BoardSize> sizes = new ArrayList<>();
    switch (random.nextInt(3)) {
      case 0 -> {
        for (double l : new double[] {2.4, 2.7, 3.0, 3.6}) {
          sizes.add(new BoardSize(1.2, l));
        }
      }
      case 1 -> sizes.addAll(TestHouses.offer().sizes());
      default -> {
        sizes.addAll(TestHouses.offer().sizes());
        for (double l : new double[] {8, 10, 12}) {
          sizes.add(new BoardSize(54 * IN, l * FT));
        }
      }
    }
    return new BoardOffer(sizes, 0.0127, BoardRun.AUTO, carry);
  }

  private static double between(Random random, double a, double b) {
    return a + (b - a) * random.nextDouble();
  }
}
