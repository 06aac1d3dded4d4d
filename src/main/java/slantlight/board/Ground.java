package slantlight.board;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import slantlight.board.RowFrame.Box;
import slantlight.board.Run.Span;
import slantlight.geom.Vec2;
import slantlight.scene.BoardOffer;
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
  final Columns columns;
  final double s0;
  final double s1;
  final double t0;
  final double t1;

  /** Width of the widest board, m. */
  final double widest;

  /** Places where an end may lie, s, rising. */
  final double[] places;

  /** Boards already fixed by the user, in row coordinates. */
  final Fixed[] fixed;

  private final boolean[] backed;

  /** Smallest first. */
  private final List<BoardSize> sizes;

  /** Longest piece that can be carried in, m. */
  private final double longest;

  private final ShowWeight weight;
  private final JointLine[] butts;
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
    columns = new Columns(frame.sides(surface.face()));
    Box box = frame.box(surface.face().outer());
    s0 = box.s0();
    s1 = box.s1();
    t0 = box.t0();
    t1 = box.t1();
    stagger = rules.staggerBays() * framing.spacing();
    sizes = carried(surface.boards().orElseThrow());
    longest = longest(surface.boards().orElseThrow(), sizes);
    widest = widest(sizes);
    for (List<Vec2> hole : surface.face().holes()) {
      for (Vec2 p : hole) {
        corners.add(frame.toRow(p));
      }
    }
    fixed = new Fixed[fixedBoards.size()];
    for (int i = 0; i < fixed.length; i++) {
      fixed[i] = toFixed(fixedBoards.get(i));
    }
    TreeSet<Double> onMembers = new TreeSet<>();
    TreeSet<Double> elsewhere = new TreeSet<>();
    collectPlaces(framing, onMembers, elsewhere);
    TreeSet<Double> all = new TreeSet<>(onMembers);
    all.addAll(elsewhere);
    places = thinned(all);
    backed = new boolean[places.length];
    butts = new JointLine[places.length];
    for (int i = 0; i < places.length; i++) {
      backed[i] =
          direction == BoardRun.ALONG_FRAMING
              || onMembers.contains(places[i])
              || isFixedEnd(places[i]);
      butts[i] = line(false, places[i], JointKind.BUTT);
    }
  }

  private boolean isFixedEnd(double s) {
    for (Fixed f : fixed) {
      if (f.s0 == s || f.s1 == s) {
        return true;
      }
    }
    return false;
  }

  /** A line from side to side of the surface, along its rows or square to them. */
  private JointLine line(boolean alongRows, double at, JointKind kind) {
    double from = alongRows ? s0 : t0;
    double to = alongRows ? s1 : t1;
    Vec2 direction = alongRows ? frame.s() : frame.t();
    int cells = Math.max(1, (int) Math.ceil((to - from) / rules.sampleStep() - 1e-9));
    double step = (to - from) / cells;
    double[] samples = new double[cells + 1];
    for (int i = 0; i <= cells; i++) {
      double place = from + i * step;
      Vec2 p = alongRows ? frame.toPlane(place, at) : frame.toPlane(at, place);
      samples[i] = weight.at(p, direction, kind);
    }
    double clearance = rules.cornerClearance() - 1e-6;
    List<double[]> near = new ArrayList<>();
    for (Vec2 c : corners) {
      double off = Math.abs((alongRows ? c.y() : c.x()) - at);
      if (off < clearance) {
        near.add(new double[] {alongRows ? c.x() : c.y(), off});
      }
    }
    return new JointLine(from, to, samples, near.toArray(new double[0][]), clearance);
  }

  /**
   * Sizes that can be carried in, by their areas; when none can, the shortest ones cut down to the
   * carry.
   */
  static List<BoardSize> carried(BoardOffer offer) {
    double shortest = Double.POSITIVE_INFINITY;
    for (BoardSize b : offer.sizes()) {
      shortest = Math.min(shortest, b.length());
    }
    double limit = shortest <= offer.carry() + 1e-6 ? offer.carry() : shortest;
    List<BoardSize> fit = new ArrayList<>();
    for (BoardSize b : offer.sizes()) {
      if (b.length() <= limit + 1e-6) {
        int rank = fit.size();
        while (rank > 0 && area(fit.get(rank - 1)) > area(b)) {
          rank--;
        }
        fit.add(rank, b);
      }
    }
    return fit;
  }

  private static double area(BoardSize b) {
    return b.width() * b.length();
  }

  private Fixed toFixed(PlacedBoard b) {
    Box box = frame.box(b.outline());
    return new Fixed(box.s0(), box.s1(), box.t0(), box.t1(), b.stock());
  }

  private static double longest(BoardOffer offer, List<BoardSize> sizes) {
    double longest = 0;
    for (BoardSize b : sizes) {
      longest = Math.max(longest, b.length());
    }
    return Math.min(longest, offer.carry());
  }

  private static double widest(List<BoardSize> sizes) {
    double widest = 0;
    for (BoardSize b : sizes) {
      widest = Math.max(widest, b.width());
    }
    return widest;
  }

  /** False for a length that no board spans, a fixed board perhaps excepted. */
  boolean mayCover(double length) {
    return length <= longest + FITS || fixed.length > 0;
  }

  /**
   * Widths that make whole rows, rising: those above half the widest; narrower boards only fill
   * rips.
   */
  double[] rowWidths() {
    SortedSet<Double> whole = new TreeSet<>();
    for (BoardSize b : sizes) {
      if (b.width() > widest / 2 + 1e-6) {
        whole.add(b.width());
      }
    }
    return array(whole);
  }

  static double[] array(Collection<Double> numbers) {
    double[] out = new double[numbers.size()];
    int n = 0;
    for (double x : numbers) {
      out[n++] = x;
    }
    return out;
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
    return array(out);
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
      faults += butts[place].cornersNear(v);
    }
    return new Cost(faults, Cost.micro(showing), 0, 0, 0);
  }

  /**
   * Cost of the joint between two rows.
   *
   * @param line of the edge that they share
   */
  Cost rowJointCost(JointLine line, List<Span> visible, boolean cut) {
    double showing = 0;
    int hits = 0;
    for (Span v : visible) {
      showing += line.over(v);
      hits += line.cornersNear(v);
    }
    // Along the framing a row can start at any member, so a joint at a corner is a fault. Across
    // it, only one row more could avoid it: that counts after the showing.
    boolean strict = direction == BoardRun.ALONG_FRAMING || cut;
    return new Cost(strict ? hits : 0, Cost.micro(showing), strict ? 0 : hits, 0, 0);
  }

  JointLine rowLine(double t, JointKind kind) {
    return line(true, t, kind);
  }

  /** The boards that a row can be cut from, smallest first: only those longer than all before. */
  BoardSize[] stock(Row row) {
    List<BoardSize> out = new ArrayList<>();
    double length = 0;
    for (BoardSize b : sizes) {
      if (b.width() > row.height() - 1e-3 && b.length() > length) {
        out.add(b);
        length = b.length();
      }
    }
    return out.toArray(new BoardSize[0]);
  }

  /**
   * The smallest board that covers a piece; a fixed board keeps its own. Null when there is none,
   * or when the piece would overlap a fixed board without being it.
   *
   * @param stock of the row, smallest first
   */
  BoardSize stockFor(Row row, BoardSize[] stock, Run run, double from, double to) {
    BoardSize own = null;
    for (Fixed f : fixed) {
      if (f.meetsRow(row.t0(), row.t1()) && from < f.s1 - 1e-6 && to > f.s0 + 1e-6) {
        boolean whole =
            Math.abs(from - Math.max(f.s0, run.from())) <= 1e-4
                && Math.abs(to - Math.min(f.s1, run.to())) <= 1e-4;
        if (!whole) {
          return null;
        }
        own = own == null && f.isRow(row.t0(), row.t1()) ? f.stock : own;
      }
    }
    if (own != null || to - from > longest + FITS) {
      return own;
    }
    for (BoardSize b : stock) {
      if (b.length() > to - from - 1e-3) {
        return b;
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
