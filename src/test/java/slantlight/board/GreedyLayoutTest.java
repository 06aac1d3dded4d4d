package slantlight.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import slantlight.board.Reckoning.CutRow;
import slantlight.board.Reckoning.Sum;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Framing;
import slantlight.scene.Surface;

/**
 * The solver against boards hung without planning (common practice, no source): widest boards from
 * one side, in each row the longest board first, cut back to the last place that it reaches where a
 * joint may lie without standing over one of the row below; a new board for each piece. Both are
 * reckoned by {@link Reckoning}.
 *
 * <p>The solver may have more pieces only where it breaks fewer rules or leaves less weighted
 * joint, and then no more than one for each of its rows: docs/model.md says when that happens. More
 * boards are bought on one surface in fifty at most, since offcuts serve other pieces.
 */
class GreedyLayoutTest {
  /** Sums of weighted joint length within this are one, m. */
  private static final double SAME_SHOWING = 2e-5;

  private static final int SURFACES = 1000;

  @Test
  void neverDearerThanTheGreedyLayoutAcrossTheFraming() {
    assertThat(holdAll(BoardRun.ACROSS_FRAMING)).isLessThanOrEqualTo(SURFACES / 500);
  }

  @Test
  void neverDearerThanTheGreedyLayoutAlongTheFraming() {
    assertThat(holdAll(BoardRun.ALONG_FRAMING)).isLessThanOrEqualTo(SURFACES / 500);
  }

  /** How many of random surfaces take more boards than a greedy layout that keeps the rules. */
  private static int holdAll(BoardRun run) {
    int more = 0;
    for (int seed = 0; seed < SURFACES; seed++) {
      more += hold(seed, run) ? 1 : 0;
    }
    return more;
  }

  private static boolean hold(int seed, BoardRun run) {
    Surface any = LayoutPropertiesTest.randomSurface(new Random(seed));
    Surface surface = LayoutPropertiesTest.withRun(any, run);
    RowFrame frame = RowFrame.of(surface.framing().orElseThrow(), run);
    Surface level = carried(LayoutPropertiesTest.turned(surface, frame));
    Geometry polygon = Reckoning.polygon(level);
    Sum greedy = Reckoning.cost(level, polygon, greedy(level, polygon, run), ShowWeight.PLAIN);
    Layout l = LayoutSolver.solve(surface, ShowWeight.PLAIN);
    List<RowFrame.Box> boards = l.boards().stream().map(b -> frame.box(b.outline())).toList();
    List<CutRow> rows = Reckoning.rowsOf(boards, polygon);
    Sum ours = Reckoning.cost(level, polygon, rows, ShowWeight.PLAIN);
    assertThat(ours.boards()).isEqualTo(l.boards().size());
    assertThat(ours.compare(greedy))
        .as("surface %d: ours %s, greedy %s", seed, ours, greedy)
        .isNotPositive();
    if (ours.boards() > greedy.boards()) {
      boolean worthIt =
          ours.faults() < greedy.faults() || ours.showing() < greedy.showing() - SAME_SHOWING;
      assertThat(worthIt).as("surface %d: ours %s, greedy %s", seed, ours, greedy).isTrue();
    }
    assertThat(ours.boards()).isLessThanOrEqualTo(greedy.boards() + rows.size());
    int bought = CuttingPlan.of(List.of(surface), List.of(l)).sheets().size();
    return bought > greedy.boards() && ours.faults() == greedy.faults();
  }

  /** Only boards that can be carried in are on offer. */
  private static Surface carried(Surface s) {
    BoardOffer o = s.boards().orElseThrow();
    List<BoardSize> sizes = o.sizes().stream().filter(b -> b.length() <= o.carry() + 1e-6).toList();
    return s.withBoards(new BoardOffer(sizes, o.thickness(), o.run(), o.carry()));
  }

  private static List<CutRow> greedy(Surface level, Geometry polygon, BoardRun run) {
    Envelope box = polygon.getEnvelopeInternal();
    double width =
        level.boards().orElseThrow().sizes().stream()
            .mapToDouble(BoardSize::width)
            .max()
            .orElseThrow();
    Framing framing = level.framing().orElseThrow();
    List<Double> places = places(level, box, run);
    List<CutRow> rows = new ArrayList<>();
    double t = box.getMinY();
    while (t < box.getMaxY() - 1e-6) {
      double next = Math.min(t + width, box.getMaxY());
      if (run == BoardRun.ALONG_FRAMING && next < box.getMaxY()) {
        for (double m : Ground.members(framing, t, t + width + Reckoning.FILLS)) {
          next = m;
        }
      }
      CutRow row = new CutRow(t, next, new TreeSet<>());
      CutRow below = rows.isEmpty() ? null : rows.get(rows.size() - 1);
      for (Geometry r : Reckoning.runs(polygon, t, next)) {
        cut(level, r.getEnvelopeInternal(), places, below, row);
      }
      rows.add(row);
      t = next;
    }
    return rows;
  }

  /** Places where an end may lie, as {@link LayoutSolver} says. */
  private static List<Double> places(Surface level, Envelope box, BoardRun run) {
    Framing framing = level.framing().orElseThrow();
    if (run == BoardRun.ACROSS_FRAMING) {
      return Ground.members(framing, box.getMinX(), box.getMaxX());
    }
    List<Double> out = new ArrayList<>();
    for (double s = box.getMinX() + framing.spacing(); s < box.getMaxX(); s += framing.spacing()) {
      out.add(s);
    }
    for (BoardSize b : level.boards().orElseThrow().sizes()) {
      out.add(box.getMinX() + b.length());
      out.add(box.getMaxX() - b.length());
    }
    out.sort(Comparator.naturalOrder());
    return out;
  }

  private static void cut(
      Surface level, Envelope run, List<Double> places, CutRow below, CutRow row) {
    double longest =
        level.boards().orElseThrow().sizes().stream()
            .filter(b -> b.width() > row.t1() - row.t0() - Reckoning.FILLS)
            .mapToDouble(BoardSize::length)
            .max()
            .orElseThrow();
    double bay = level.framing().orElseThrow().spacing();
    double at = run.getMinX();
    while (run.getMaxX() - at > longest + 1e-6) {
      double last = Double.NaN;
      double free = Double.NaN;
      for (double p : places) {
        if (p > at + 1e-6 && p < at + longest + 1e-6) {
          last = p;
          boolean over =
              below != null && below.cuts().stream().anyMatch(b -> Math.abs(b - p) < bay - 1e-6);
          free = over ? free : p;
        }
      }
      at = Double.isNaN(free) ? last : free;
      row.cuts().add(at);
    }
  }
}
