package slantlight.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slantlight.board.Boards.FT;
import static slantlight.board.Boards.IN;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import slantlight.TestHouses;
import slantlight.board.CuttingPlan.Cut;
import slantlight.board.CuttingPlan.Piece;
import slantlight.board.CuttingPlan.Sheet;
import slantlight.geom.Vec2;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardSize;
import slantlight.scene.Surface;

/** Boards cut so that what one leaves serves other pieces. */
class CuttingPlanTest {
  private static final List<BoardSize> FOUR_BY_TWELVE = List.of(new BoardSize(4 * FT, 12 * FT));

  @Test
  void stripsShareABoardOnlyWhileItHasEdgesOfItsOwn() {
    // Common practice, no source: a tapered joint needs the edge that the board was made with, and
    // a board has two of them; in a corner a cut edge will do.
    assertThat(Nesting.of(strips(2, 1))).hasSize(1);
    assertThat(Nesting.of(strips(3, 1))).hasSize(2);
    assertThat(Nesting.of(strips(3, 0))).hasSize(1);
    assertThat(Nesting.of(strips(4, 0))).hasSize(2);
  }

  private static List<Nesting.Part> strips(int n, int tapered) {
    List<Nesting.Part> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      out.add(new Nesting.Part(i, 12 * FT, 16 * IN, tapered, FOUR_BY_TWELVE));
    }
    return out;
  }

  private static Nesting.Part full(int piece, double length, List<BoardSize> sizes) {
    return new Nesting.Part(piece, length, 4 * FT, 2, sizes);
  }

  @Test
  void fewPiecesAreCutAlmostAsWellAsByTrialOfEveryWay() {
    Random random = new Random(20261128);
    List<BoardSize> sizes = List.of(new BoardSize(4 * FT, 8 * FT), new BoardSize(4 * FT, 12 * FT));
    double bought = 0;
    double least = 0;
    int optimal = 0;
    int cases = 300;
    for (int c = 0; c < cases; c++) {
      double[] lengths = random.doubles(2 + random.nextInt(5), 1.5 * FT, 12 * FT).toArray();
      List<Nesting.Part> parts = new ArrayList<>();
      for (double length : lengths) {
        parts.add(full(parts.size(), length, sizes));
      }
      double ours = Nesting.of(parts).stream().mapToDouble(n -> n.stock().length()).sum();
      double best = leastBought(lengths, 0, new ArrayList<>());
      assertThat(ours).as(Arrays.toString(lengths)).isGreaterThan(best - 1e-9);
      bought += ours;
      least += best;
      optimal += ours < best + 1e-9 ? 1 : 0;
    }
    assertThat(bought / least).isLessThan(1.02);
    assertThat(optimal).isGreaterThan(cases * 8 / 10);
  }

  /** Every way to share pieces out among boards of 8 and 12 ft, m of board. */
  private static double leastBought(double[] lengths, int next, List<Double> used) {
    if (next == lengths.length) {
      return used.stream().mapToDouble(u -> u <= 8 * FT ? 8 * FT : 12 * FT).sum();
    }
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= used.size(); i++) {
      List<Double> more = new ArrayList<>(used);
      if (i == used.size()) {
        more.add(0.0);
      }
      more.set(i, more.get(i) + lengths[next]);
      if (more.get(i) <= 12 * FT) {
        least = Math.min(least, leastBought(lengths, next + 1, more));
      }
    }
    return least;
  }

  @Provide
  Arbitrary<List<Surface>> houses() {
    return Arbitraries.randomValue(
        random -> {
          List<Surface> out = new ArrayList<>();
          for (int i = 0; i < 2 + random.nextInt(6); i++) {
            Surface s = LayoutPropertiesTest.randomSurface(random);
            BoardOffer o = s.boards().orElseThrow();
            double thickness = (4 + random.nextInt(2)) / 8.0 * IN;
            out.add(
                TestHouses.named(s, "s" + i, s.label())
                    .withBoards(new BoardOffer(o.sizes(), thickness, o.run(), o.carry())));
          }
          return out;
        });
  }

  @Property(tries = 200, seed = "20261128")
  void everyPieceIsCutOnceAndCanBeSnappedFromItsBoard(@ForAll("houses") List<Surface> surfaces) {
    List<Layout> layouts =
        surfaces.stream().map(s -> LayoutSolver.solve(s, ShowWeight.PLAIN)).toList();
    CuttingPlan plan = CuttingPlan.of(surfaces, layouts);
    assertThat(plan.pieces()).hasSize(layouts.stream().mapToInt(l -> l.boards().size()).sum());
    Set<Integer> cut = new HashSet<>();
    for (Sheet sheet : plan.sheets()) {
      for (Cut c : sheet.cuts()) {
        assertThat(cut.add(c.piece())).isTrue();
        hold(plan.pieces().get(c.piece()), c, sheet);
      }
      holdSnaps(sheet);
      BoardSize b = sheet.stock().size();
      assertThat(snaps(sheet.cuts(), new double[] {0, 0, b.length(), b.width()}))
          .as("%s", sheet)
          .isTrue();
    }
    assertThat(cut).hasSize(plan.pieces().size());
    double alone =
        plan.pieces().stream()
            .mapToDouble(p -> p.board().stock().width() * p.board().stock().length())
            .sum();
    assertThat(plan.area()).isLessThan(alone + 1e-6);
  }

  /** What is in hand: its length and width, and the pieces written on it. */
  private record Part(double length, double width, List<Integer> pieces) {}

  /** Snapped as told, in the order of hanging, every piece comes to its size. */
  private static void holdSnaps(Sheet sheet) {
    List<Part> parts = new ArrayList<>();
    BoardSize size = sheet.stock().size();
    parts.add(new Part(size.length(), size.width(), pieces(sheet.cuts())));
    List<List<Snaps.Snap>> told = Snaps.of(sheet);
    for (int i = 0; i < told.size(); i++) {
      Cut piece = sheet.cuts().get(i);
      Part hand =
          parts.stream().filter(p -> p.pieces.contains(piece.piece())).findFirst().orElseThrow();
      parts.remove(hand);
      for (Snaps.Snap s : told.get(i)) {
        double across = s.across() ? s.size() : hand.length;
        double along = s.across() ? hand.width : s.size();
        assertThat(s.size()).isLessThan((s.across() ? hand.length : hand.width) + 1e-6);
        parts.add(
            s.across()
                ? new Part(hand.length - s.size(), hand.width, pieces(s.rest()))
                : new Part(hand.length, hand.width - s.size(), pieces(s.rest())));
        hand = new Part(across, along, List.of());
      }
      assertThat(hand.length).as("%s", sheet).isCloseTo(piece.length(), within(2 * Snaps.TRIM));
      assertThat(hand.width).as("%s", sheet).isCloseTo(piece.width(), within(2 * Snaps.TRIM));
    }
  }

  private static List<Integer> pieces(List<Cut> cuts) {
    return cuts.stream().map(Cut::piece).toList();
  }

  private static void hold(Piece piece, Cut c, Sheet sheet) {
    Blank blank = piece.board().blank();
    BoardSize size = sheet.stock().size();
    assertThat(sheet.stock().thickness())
        .isCloseTo(piece.surface().boards().orElseThrow().thickness(), within(1e-5));
    assertThat(c.length()).isCloseTo(blank.length(), within(1e-9));
    assertThat(c.width()).isCloseTo(blank.width(), within(Nesting.FITS));
    boolean near = c.y() < 1e-6;
    boolean far = c.y() + c.width() > size.width() - Nesting.FITS;
    assertThat((near ? 1 : 0) + (far ? 1 : 0)).as("%s", c).isGreaterThanOrEqualTo(blank.tapered());
    Geometry place = Reckoning.polygon(piece.surface()).intersection(ring(piece.board().outline()));
    if (place.getArea() < piece.board().area() + 1e-6) { // one run in its row
      assertThat(place.intersection(ring(blank.corners())).getArea())
          .isCloseTo(piece.board().area(), within(1e-6));
    }
  }

  private static Geometry ring(List<Vec2> corners) {
    return Reckoning.JTS.createPolygon(Reckoning.ring(corners));
  }

  /** Whether straight cuts from edge to edge part all pieces from one another. */
  private static boolean snaps(List<Cut> cuts, double[] box) {
    for (Cut c : cuts) {
      if (c.x() < box[0] - 1e-6
          || c.y() < box[1] - 1e-6
          || c.x() + c.length() > box[2] + Nesting.FITS
          || c.y() + c.width() > box[3] + Nesting.FITS) {
        return false;
      }
    }
    if (cuts.size() < 2) {
      return true;
    }
    for (Cut edge : cuts) {
      for (boolean across : new boolean[] {true, false}) {
        double at = across ? edge.x() + edge.length() : edge.y() + edge.width();
        List<Cut> before = new ArrayList<>();
        List<Cut> after = new ArrayList<>();
        for (Cut c : cuts) {
          double from = across ? c.x() : c.y();
          double to = from + (across ? c.length() : c.width());
          if (to <= at + 1e-6) {
            before.add(c);
          } else if (from >= at - 1e-6) {
            after.add(c);
          }
        }
        if (!after.isEmpty() && before.size() + after.size() == cuts.size()) {
          double[] low = box.clone();
          double[] high = box.clone();
          low[across ? 2 : 3] = at;
          high[across ? 0 : 1] = at;
          return snaps(before, low) && snaps(after, high);
        }
      }
    }
    return false;
  }
}
