package slantlight.board;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import slantlight.board.RowFrame.Box;
import slantlight.board.RowFrame.Side;
import slantlight.board.Run.Span;
import slantlight.geom.Vec2;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Framing;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;

/**
 * A surface seen along one direction of its boards: row frame, places where joints may lie, what a
 * joint or a piece costs there.
 */
final class Ground {
  /** A piece this much longer than the longest still counts as that long, m. */
  private static final double FITS = 1e-4;

  final Surface surface;
  final BoardRun direction;
  final LayoutRules rules;
  final RowFrame frame;
  final List<Side> sides;
  final double s0;
  final double s1;
  final double t0;
  final double t1;

  /** Places where an end may lie, s, rising. */
  final double[] places;

  /** Boards already fixed by the user, in row coordinates. */
  final List<Fixed> fixed;

  private final boolean[] backed;
  private final List<BoardSize> sizes;

  /** Longest piece that can be carried in, m. */
  private final double longest;

  private final ShowWeight weight;
  private final LineWeight[] butts;
  private final List<Vec2> corners = new ArrayList<>();
  private final double stagger;

  /** A fixed board in row coordinates. */
  record Fixed(double s0, double s1, double t0, double t1, BoardSize stock) {
    boolean meetsRow(double a, double b) {
      return a < t1 - 1e-6 && b > t0 + 1e-6;
    }

    boolean isRow(double a, double b) {
      return Math.abs(a - t0) < 1e-4 && Math.abs(b - t1) < 1e-4;
    }
  }

  Ground(
      Surface surface,
      BoardRun direction,
      ShowWeight weight,
      LayoutRules rules,
      List<PlacedBoard> fixedBoards) {
    this.surface = surface;
    this.direction = direction;
    this.weight = weight;
    this.rules = rules;
    Framing framing = surface.framing().orElseThrow();
    frame = RowFrame.of(framing, direction);
    sides = frame.sides(surface.face());
    Box box = frame.box(surface.face().outer());
    s0 = box.s0();
    s1 = box.s1();
    t0 = box.t0();
    t1 = box.t1();
    stagger = rules.staggerBays() * framing.spacing();
    sizes = carried(surface);
    longest = longest(surface, sizes);
    surface.face().holes().forEach(h -> h.forEach(p -> corners.add(frame.toRow(p))));
    fixed = fixedBoards.stream().map(this::toFixed).toList();
    TreeSet<Double> onMembers = new TreeSet<>();
    TreeSet<Double> elsewhere = new TreeSet<>();
    collectPlaces(framing, onMembers, elsewhere);
    TreeSet<Double> all = new TreeSet<>(onMembers);
    all.addAll(elsewhere);
    places = thinned(all);
    backed = new boolean[places.length];
    butts = new LineWeight[places.length];
    for (int i = 0; i < places.length; i++) {
      double s = places[i];
      backed[i] =
          direction == BoardRun.ALONG_FRAMING
              || onMembers.contains(s)
              || fixed.stream().anyMatch(f -> f.s0 == s || f.s1 == s);
      butts[i] =
          new LineWeight(
              t0,
              t1,
              rules.sampleStep(),
              t -> weight.at(frame.toPlane(s, t), frame.t(), JointKind.BUTT));
    }
  }

  /** Sizes that can be carried in; when none can, the shortest ones cut down to the carry. */
  private static List<BoardSize> carried(Surface surface) {
    List<BoardSize> all = surface.boards().orElseThrow().sizes();
    double carry = surface.boards().orElseThrow().carry();
    List<BoardSize> fit = all.stream().filter(b -> b.length() <= carry + 1e-6).toList();
    if (!fit.isEmpty()) {
      return fit;
    }
    double shortest = all.stream().mapToDouble(BoardSize::length).min().orElseThrow();
    return all.stream().filter(b -> b.length() <= shortest + 1e-6).toList();
  }

  private Fixed toFixed(PlacedBoard b) {
    Box box = frame.box(b.outline());
    return new Fixed(box.s0(), box.s1(), box.t0(), box.t1(), b.stock());
  }

  private static double longest(Surface surface, List<BoardSize> sizes) {
    double longest = sizes.stream().mapToDouble(BoardSize::length).max().orElseThrow();
    return Math.min(longest, surface.boards().orElseThrow().carry());
  }

  /** False for a length that no board spans, a fixed board perhaps excepted. */
  boolean mayCover(double length) {
    return length <= longest + FITS || !fixed.isEmpty();
  }

  double widest() {
    return sizes.stream().mapToDouble(BoardSize::width).max().orElseThrow();
  }

  /** Widths that make whole rows: those above half the widest; narrower boards only fill rips. */
  double[] rowWidths() {
    return sizes.stream()
        .mapToDouble(BoardSize::width)
        .filter(w -> w > widest() / 2 + 1e-6)
        .distinct()
        .sorted()
        .toArray();
  }

  private void collectPlaces(Framing framing, Set<Double> onMembers, Set<Double> elsewhere) {
    double reach = longest;
    if (direction == BoardRun.ACROSS_FRAMING) {
      onMembers.addAll(members(framing, s0, s1));
      if (framing.spacing() > reach - 1e-6) {
        for (double s = s0 + reach; s < s1 - 1e-6; s += reach) {
          elsewhere.add(s);
        }
      }
    } else {
      // Ends between members need blocking, wherever they are: a grid of bays and the stock
      // lengths.
      double grid = Math.min(framing.spacing(), reach / 2);
      for (double s = s0 + grid; s < s1 - 1e-6; s += grid) {
        elsewhere.add(s);
      }
      for (BoardSize b : sizes) {
        elsewhere.add(s0 + Math.min(b.length(), reach));
        elsewhere.add(s1 - Math.min(b.length(), reach));
      }
    }
    for (Fixed f : fixed) {
      elsewhere.add(f.s0);
      elsewhere.add(f.s1);
    }
  }

  /** Members strictly between two places, measured square to them. */
  static List<Double> members(Framing framing, double from, double to) {
    List<Double> out = new ArrayList<>();
    long first = (long) Math.floor((from - framing.offset()) / framing.spacing());
    for (long k = first; ; k++) {
      double at = framing.offset() + k * framing.spacing();
      if (at >= to - 1e-6) {
        return out;
      }
      if (at > from + 1e-6) {
        out.add(at);
      }
    }
  }

  private double[] thinned(SortedSet<Double> all) {
    List<Double> out = new ArrayList<>();
    for (double s : all) {
      boolean inside = s > s0 + 1e-6 && s < s1 - 1e-6;
      if (inside && (out.isEmpty() || s - out.get(out.size() - 1) > 1e-6)) {
        out.add(s);
      }
    }
    return out.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Marks the places that are nearer to a joint than the stagger allows. */
  void markNear(BitSet bits, int place) {
    for (int i = 0; i < places.length; i++) {
      double apart = Math.abs(places[i] - places[place]);
      if (i == place || apart < stagger - 1e-6) {
        bits.set(i);
      }
    }
  }

  Cost buttCost(int place, List<Span> visible) {
    double showing = 0;
    long faults = backed[place] ? 0 : Cost.HARD;
    for (Span v : visible) {
      showing += butts[place].over(v);
      faults += cornersNear(places[place], places[place], v.from(), v.to());
    }
    return new Cost(faults, Cost.micro(showing), 0, 0, 0);
  }

  /** Corners of openings nearer than the clearance to a level or square stretch. */
  private int cornersNear(double sa, double sb, double ta, double tb) {
    int n = 0;
    for (Vec2 c : corners) {
      double ds = Math.max(0, Math.max(sa - c.x(), c.x() - sb));
      double dt = Math.max(0, Math.max(ta - c.y(), c.y() - tb));
      if (Math.hypot(ds, dt) < rules.cornerClearance() - 1e-6) {
        n++;
      }
    }
    return n;
  }

  /** Cost of the row joint between two rows that share the edge t. */
  Cost rowJointCost(double t, List<Span> visible, boolean cut, LineWeight line) {
    double showing = 0;
    int hits = 0;
    for (Span v : visible) {
      showing += line.over(v);
      hits += cornersNear(v.from(), v.to(), t, t);
    }
    // Along the framing a row can start at any member, so a joint at a corner is a fault. Across
    // it, only one row more could avoid it: that counts after the showing.
    boolean strict = direction == BoardRun.ALONG_FRAMING || cut;
    return new Cost(strict ? hits : 0, Cost.micro(showing), strict ? 0 : hits, 0, 0);
  }

  LineWeight rowLine(double t, JointKind kind) {
    return new LineWeight(
        s0, s1, rules.sampleStep(), s -> weight.at(frame.toPlane(s, t), frame.s(), kind));
  }

  /** False when a piece would overlap a fixed board without being it. */
  boolean allowsPiece(Row row, double from, double to, Run run) {
    for (Fixed f : fixed) {
      boolean overlaps = f.meetsRow(row.t0(), row.t1()) && from < f.s1 - 1e-6 && to > f.s0 + 1e-6;
      if (overlaps
          && (Math.abs(from - Math.max(f.s0, run.from())) > 1e-4
              || Math.abs(to - Math.min(f.s1, run.to())) > 1e-4)) {
        return false;
      }
    }
    return true;
  }

  /** The boards that a row can be cut from, smallest first. */
  List<BoardSize> stock(Row row) {
    return sizes.stream()
        .filter(b -> b.width() > row.height() - 1e-3)
        .sorted(Comparator.comparingDouble(b -> b.width() * b.length()))
        .toList();
  }

  /**
   * The smallest board that covers a piece, or null; a fixed board keeps its own.
   *
   * @param stock of the row, smallest first
   */
  BoardSize stockFor(Row row, List<BoardSize> stock, double from, double to) {
    for (Fixed f : fixed) {
      if (f.isRow(row.t0(), row.t1()) && from < f.s1 - 1e-6 && to > f.s0 + 1e-6) {
        return f.stock;
      }
    }
    if (to - from > longest + FITS) {
      return null;
    }
    for (int i = 0; i < stock.size(); i++) {
      if (stock.get(i).length() > to - from - 1e-3) {
        return stock.get(i);
      }
    }
    return null;
  }

  Cost pieceCost(BoardSize stock, double area, double length, Run run) {
    boolean sliver =
        length < rules.minPiece() - 1e-6 && run.to() - run.from() > rules.minPiece() + 1e-6;
    long waste = Math.round((stock.width() * stock.length() - area) * 1e6);
    return new Cost(sliver ? 1 : 0, 0, 0, waste, 1);
  }
}
