package slantlight.board;

import static org.assertj.core.api.Assertions.assertThat;
import static slantlight.board.Boards.FT;
import static slantlight.board.Boards.IN;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import slantlight.board.Reckoning.CutRow;
import slantlight.board.Reckoning.Sum;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Framing;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/**
 * The solver against trying every layout of small walls: every chain of rows, every choice of
 * places for the joints of every row. Across the framing joints lie on studs; along it rows end on
 * members and joints lie on a grid of one bay and the stock lengths from either end. Costs of both
 * are reckoned by {@link Reckoning}, not by the solver.
 */
class ExhaustiveTest {
  private static final double BAY = 24 * IN;

  static Stream<Wall> walls() {
    return Stream.concat(
        IntStream.range(0, 24).mapToObj(ExhaustiveTest::wall),
        IntStream.range(0, 24).mapToObj(ExhaustiveTest::girtWall));
  }

  /** A random small wall and a weight that is linear along every joint. */
  record Wall(int seed, Surface surface, ShowWeight weight) {
    boolean along() {
      return surface.boards().orElseThrow().run() == BoardRun.ALONG_FRAMING;
    }

    @Override
    public String toString() {
      return (along() ? "wall on level members " : "wall ") + seed;
    }
  }

  /** A smaller random wall on level members, its boards along them. */
  private static Wall girtWall(int seed) {
    Random random = new Random(1000 + seed);
    double length = 5 + random.nextInt(7) * 0.5;
    double height = 5 + random.nextInt(13) * 0.5;
    List<Vec2> outer = new ArrayList<>(Boards.feet(0, 0, length, height));
    if (seed % 4 == 3) {
      outer.add(3, new Vec2(length / 3 * FT, (height + 1) * FT));
    }
    List<List<Vec2>> holes = new ArrayList<>();
    if (seed % 3 > 0 && length > 7) {
      double s = 1 + random.nextInt(4) * 0.5;
      double sill = seed % 3 == 1 ? 0 : 1.5;
      holes.add(Boards.feet(s, sill, s + 2.5, sill + 2 + random.nextInt(4) * 0.5));
    }
    double[] widths = seed % 2 == 0 ? new double[] {48} : new double[] {54};
    Surface surface =
        Boards.surface(
            SurfaceKind.WALL,
            Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.NORTH.times(-1)),
            Boards.offer(BoardRun.ALONG_FRAMING, widths, seed % 5 == 0 ? 4 : 6, 8),
            new Framing(0, BAY, 0),
            outer,
            holes);
    double a = random.nextDouble();
    // Row joints cost much on some members and little on others, so that a rip can pay.
    double[] onMember = random.doubles(8, 0.2, 8).toArray();
    ShowWeight weight =
        seed % 6 == 0
            ? ShowWeight.PLAIN
            : (p, d, kind) ->
                kind == JointKind.BUTT
                    ? 3 + a * p.x()
                    : onMember[(int) Math.rint(p.y() / BAY)] + a * p.x();
    return new Wall(seed, surface, weight);
  }

  private static Wall wall(int seed) {
    Random random = new Random(seed);
    double length = (6 + random.nextInt(19) * 0.5) * FT;
    double height = (7 + random.nextInt(7) * 0.5) * FT;
    List<Vec2> outer = new ArrayList<>(Boards.feet(0, 0, length / FT, height / FT));
    if (seed % 4 == 3) {
      outer.add(3, new Vec2(length / 3, height + 2 * FT));
    }
    List<List<Vec2>> holes = new ArrayList<>();
    if (seed % 3 > 0 && length > 10 * FT) {
      double s = (1 + random.nextInt(8) * 0.5) * FT;
      holes.add(Boards.feet(s / FT, seed % 3 == 1 ? 0 : 3, s / FT + 3, 6 + 8.0 / 12));
    }
    double[] widths = seed % 2 == 0 ? new double[] {48} : new double[] {48, 54};
    Surface surface =
        Boards.wall(
            Boards.offer(BoardRun.ACROSS_FRAMING, widths, seed % 5 == 0 ? 4 : 6, 8, 10),
            BAY,
            outer,
            holes);
    double a = random.nextDouble();
    double b = random.nextDouble();
    ShowWeight weight =
        seed % 6 == 0
            ? ShowWeight.PLAIN
            : (p, d, kind) -> (kind == JointKind.TAPERED ? 1 : 3) + a * p.x() + b * p.y();
    return new Wall(seed, surface, weight);
  }

  @ParameterizedTest
  @MethodSource("walls")
  void noLayoutIsCheaper(Wall wall) {
    Geometry polygon = Reckoning.polygon(wall.surface);
    Layout solved = LayoutSolver.solve(wall.surface, wall.weight);
    List<RowFrame.Box> boards =
        solved.boards().stream().map(b -> box(b.outline().get(0), b.outline().get(2))).toList();
    Sum ours =
        Reckoning.cost(wall.surface, polygon, Reckoning.rowsOf(boards, polygon), wall.weight);
    Sum best = null;
    Map<List<Double>, List<Way>> known = new HashMap<>();
    for (List<Double> chain : chains(wall, polygon)) {
      Sum s = cheapestCuts(wall, polygon, chain, known);
      if (s != null && (best == null || s.compare(best) < 0)) {
        best = s;
      }
    }
    assertThat(ours.compare(best)).as("ours %s, exhaustive %s", ours, best).isZero();
  }

  private static RowFrame.Box box(Vec2 low, Vec2 high) {
    return new RowFrame.Box(low.x(), high.x(), low.y(), high.y());
  }

  /** Every list of row edges: whole rows between a first and a last row of any height on offer. */
  private static List<List<Double>> chains(Wall wall, Geometry polygon) {
    double top = polygon.getEnvelopeInternal().getMaxY();
    if (wall.along()) {
      return memberChains(wall.surface, top);
    }
    Surface surface = wall.surface;
    double[] widths =
        surface.boards().orElseThrow().sizes().stream()
            .mapToDouble(BoardSize::width)
            .distinct()
            .toArray();
    TreeSet<Double> edges = new TreeSet<>(List.of(0.0, top));
    stack(edges, 0, 1, widths, top);
    stack(edges, top, -1, widths, top);
    for (double w : widths) {
      double whole = Math.max(0, Math.ceil(top / w - 1e-6) - 2);
      double rip = (top - whole * w) / 2;
      if (rip > LayoutRules.COMMON.minRow() && rip <= widths[widths.length - 1] + 1e-6) {
        stack(edges, rip, 1, new double[] {w}, top);
      }
    }
    List<Double> distinct = new ArrayList<>();
    for (double e : edges) {
      if (distinct.isEmpty() || e - distinct.get(distinct.size() - 1) > 1e-5) {
        distinct.add(e);
      }
    }
    List<List<Double>> out = new ArrayList<>();
    extend(List.of(0.0), distinct, top, widths, out);
    return out;
  }

  /** Every list of row edges on members that boards can span. */
  private static List<List<Double>> memberChains(Surface surface, double top) {
    double widest =
        surface.boards().orElseThrow().sizes().stream()
            .mapToDouble(BoardSize::width)
            .max()
            .orElseThrow();
    List<Double> members = new ArrayList<>();
    for (int k = 1; k * BAY < top - 1e-6; k++) {
      members.add(k * BAY);
    }
    List<List<Double>> out = new ArrayList<>();
    for (int bits = 0; bits < 1 << members.size(); bits++) {
      List<Double> chain = new ArrayList<>(List.of(0.0));
      for (int i = 0; i < members.size(); i++) {
        if ((bits >> i & 1) == 1) {
          chain.add(members.get(i));
        }
      }
      chain.add(top);
      boolean spanned = true;
      for (int i = 0; i + 1 < chain.size(); i++) {
        spanned &= chain.get(i + 1) - chain.get(i) < widest + 1e-5;
      }
      if (spanned) {
        out.add(chain);
      }
    }
    return out;
  }

  private static void stack(Set<Double> edges, double from, int sign, double[] widths, double top) {
    if (from > 1e-6 && from < top - 1e-6) {
      edges.add(from);
    }
    for (double w : widths) {
      double next = from + sign * w;
      if (next > 1e-6 && next < top - 1e-6) {
        stack(edges, next, sign, widths, top);
      }
    }
  }

  private static void extend(
      List<Double> chain, List<Double> edges, double top, double[] widths, List<List<Double>> out) {
    double last = chain.get(chain.size() - 1);
    if (last > top - 1e-5) {
      out.add(chain);
      return;
    }
    for (double e : edges) {
      double h = e - last;
      boolean whole = false;
      boolean fits = false;
      for (double w : widths) {
        whole |= Math.abs(h - w) < 1e-5;
        fits |= h > 1e-5 && h < w + 1e-5;
      }
      if (whole || (fits && (last == 0 || e > top - 1e-5))) {
        List<Double> longer = new ArrayList<>(chain);
        longer.add(e);
        extend(longer, edges, top, widths, out);
      }
    }
  }

  /** A way to cut a row and what it costs by itself. */
  private record Way(CutRow row, Sum sum) {}

  private static Sum cheapestCuts(
      Wall wall, Geometry polygon, List<Double> edges, Map<List<Double>, List<Way>> known) {
    List<List<Way>> rows = new ArrayList<>();
    for (int i = 0; i + 1 < edges.size(); i++) {
      rows.add(
          known.computeIfAbsent(
              List.of(edges.get(i), edges.get(i + 1)),
              row -> ways(wall, polygon, row.get(0), row.get(1))));
    }
    return search(wall, polygon, rows, 0, null, Reckoning.NOTHING, null);
  }

  private static List<Way> ways(Wall wall, Geometry polygon, double t0, double t1) {
    List<Way> out = new ArrayList<>();
    for (SortedSet<Double> cuts : subsets(places(wall, polygon, t0, t1))) {
      CutRow row = new CutRow(t0, t1, cuts);
      Sum s = Reckoning.row(wall.surface, polygon, row, wall.weight);
      if (s != null) {
        out.add(new Way(row, s));
      }
    }
    return out;
  }

  private static Sum search(
      Wall wall, Geometry polygon, List<List<Way>> rows, int i, CutRow below, Sum soFar, Sum best) {
    if (i == rows.size()) {
      return best == null || soFar.compare(best) < 0 ? soFar : best;
    }
    for (Way way : rows.get(i)) {
      Sum sum = soFar.plus(way.sum);
      if (best != null && sum.compare(best) > 0) {
        continue; // costs only grow
      }
      if (below != null) {
        sum = sum.plus(Reckoning.between(wall.surface, polygon, below, way.row, wall.weight));
      }
      best = search(wall, polygon, rows, i + 1, way.row, sum, best);
    }
    return best;
  }

  private static List<Double> places(Wall wall, Geometry polygon, double t0, double t1) {
    if (!wall.along()) {
      return studs(polygon, t0, t1);
    }
    double end = polygon.getEnvelopeInternal().getMaxX();
    List<Double> all = new ArrayList<>();
    for (int k = 1; k * BAY < end; k++) {
      all.add(k * BAY);
    }
    for (BoardSize b : wall.surface.boards().orElseThrow().sizes()) {
      all.add(b.length());
      all.add(end - b.length());
    }
    List<Double> out = new ArrayList<>();
    for (Geometry run : Reckoning.runs(polygon, t0, t1)) {
      double from = run.getEnvelopeInternal().getMinX();
      double to = run.getEnvelopeInternal().getMaxX();
      for (double s : all) {
        boolean fresh = out.stream().noneMatch(o -> Math.abs(o - s) < 1e-6);
        if (fresh && s > from + 1e-6 && s < to - 1e-6) {
          out.add(s);
        }
      }
    }
    return out;
  }

  private static List<Double> studs(Geometry polygon, double t0, double t1) {
    List<Double> out = new ArrayList<>();
    for (Geometry run : Reckoning.runs(polygon, t0, t1)) {
      double from = run.getEnvelopeInternal().getMinX();
      double to = run.getEnvelopeInternal().getMaxX();
      for (int k = 0; k * BAY < to - 1e-6; k++) {
        if (k * BAY > from + 1e-6 && !out.contains(k * BAY)) {
          out.add(k * BAY);
        }
      }
    }
    return out;
  }

  private static List<SortedSet<Double>> subsets(List<Double> studs) {
    List<SortedSet<Double>> out = new ArrayList<>();
    for (int bits = 0; bits < 1 << studs.size(); bits++) {
      TreeSet<Double> s = new TreeSet<>();
      for (int i = 0; i < studs.size(); i++) {
        if ((bits >> i & 1) == 1) {
          s.add(studs.get(i));
        }
      }
      out.add(s);
    }
    return out;
  }
}
