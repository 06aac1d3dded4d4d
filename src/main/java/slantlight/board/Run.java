package slantlight.board;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import slantlight.board.RowFrame.Side;

/**
 * One unbroken piece of a row: a part of the surface between two row edges, cut into trapezoids
 * with sides square to the row. Row coordinates, m.
 */
final class Run implements Comparable<Run> {
  /** Below this two positions are the same, m. */
  static final double SAME = 1e-9;

  private final Trapezoid[] trapezoids;
  private final double from;
  private final double to;

  /** Of at least one trapezoid, in their order. */
  private Run(List<Trapezoid> trapezoids) {
    this.trapezoids = trapezoids.toArray(new Trapezoid[0]);
    this.from = trapezoids.get(0).s0;
    this.to = trapezoids.get(trapezoids.size() - 1).s1;
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  /** The runs of the row between t0 and t1, in order of their starts. */
  static List<Run> inRow(Columns columns, double t0, double t1) {
    List<List<Trapezoid>> slabs = new ArrayList<>();
    double[] cuts = columns.cuts(t0, t1);
    for (int i = 0; i + 1 < cuts.length; i++) {
      Side[] sides = columns.at((cuts[i] + cuts[i + 1]) / 2);
      slabs.add(slab(sides, cuts[i], cuts[i + 1], t0, t1));
    }
    return connect(slabs);
  }

  private static List<Trapezoid> slab(Side[] sides, double s0, double s1, double t0, double t1) {
    double mid = (s0 + s1) / 2;
    List<Trapezoid> out = new ArrayList<>();
    for (int i = 0; i + 1 < sides.length; i += 2) {
      double lo0 = sides[i].tAt(s0);
      double lo1 = sides[i].tAt(s1);
      double hi0 = sides[i + 1].tAt(s0);
      double hi1 = sides[i + 1].tAt(s1);
      if (Math.min(lo0, lo1) < t1 && Math.max(hi0, hi1) > t0) {
        Trapezoid z =
            new Trapezoid(
                s0,
                s1,
                clamp(lo0, t0, t1),
                clamp(lo1, t0, t1),
                clamp(hi0, t0, t1),
                clamp(hi1, t0, t1));
        if (z.height(mid) > SAME) {
          out.add(z);
        }
      }
    }
    return out;
  }

  private static double clamp(double t, double t0, double t1) {
    return Math.max(t0, Math.min(t1, t));
  }

  private static List<Run> connect(List<List<Trapezoid>> slabs) {
    List<List<Trapezoid>> groups = new ArrayList<>();
    List<List<Trapezoid>> open = new ArrayList<>();
    for (List<Trapezoid> slab : slabs) {
      List<List<Trapezoid>> next = new ArrayList<>();
      for (Trapezoid z : slab) {
        List<Trapezoid> mine = null;
        for (List<Trapezoid> group : List.copyOf(open)) {
          if (group == mine || !continues(z, group)) {
            continue;
          }
          if (mine == null) {
            mine = group;
          } else {
            mine.addAll(group);
            remove(groups, group);
            remove(open, group);
            remove(next, group);
          }
        }
        if (mine == null) {
          mine = new ArrayList<>();
          groups.add(mine);
        }
        mine.add(z);
        if (indexOf(next, mine) < 0) {
          next.add(mine);
        }
      }
      open = next;
    }
    List<Run> runs = new ArrayList<>();
    for (List<Trapezoid> group : groups) {
      Collections.sort(group);
      runs.add(new Run(group));
    }
    Collections.sort(runs);
    return runs;
  }

  private static boolean continues(Trapezoid z, List<Trapezoid> group) {
    for (Trapezoid before : group) {
      if (z.continues(before)) {
        return true;
      }
    }
    return false;
  }

  private static void remove(List<List<Trapezoid>> lists, List<Trapezoid> gone) {
    int at = indexOf(lists, gone);
    if (at >= 0) {
      lists.remove(at);
    }
  }

  /** Of this very list, or -1: two lists of equal trapezoids are two groups. */
  private static int indexOf(List<List<Trapezoid>> lists, List<Trapezoid> one) {
    for (int i = 0; i < lists.size(); i++) {
      if (lists.get(i) == one) {
        return i;
      }
    }
    return -1;
  }

  /** By their starts, the lower first. */
  @Override
  public int compareTo(Run o) {
    return trapezoids[0].compareTo(o.trapezoids[0]);
  }

  /** Area of the run between two places, m2. */
  double area(double s0, double s1) {
    double a = 0;
    for (Trapezoid z : trapezoids) {
      if (z.s1 <= s0 || z.s0 >= s1) {
        continue;
      }
      double p = Math.max(s0, z.s0);
      double q = Math.min(s1, z.s1);
      a += (q - p) * (z.height(p) + z.height(q)) / 2;
    }
    return a;
  }

  /** How far the run reaches across its row between two places. */
  Span extent(double s0, double s1) {
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    for (Trapezoid z : trapezoids) {
      double p = Math.max(s0, z.s0);
      double q = Math.min(s1, z.s1);
      if (q - p > SAME) {
        lo = Math.min(lo, Math.min(z.lo(p), z.lo(q)));
        hi = Math.max(hi, Math.max(z.hi(p), z.hi(q)));
      }
    }
    return new Span(lo, hi);
  }

  /** Stretches of t where a square cut at {@code s} has board on both sides. */
  List<Span> cut(double s) {
    List<Span> out = new ArrayList<>();
    for (Trapezoid left : trapezoids) {
      if (!(left.s0 < s - SAME && s <= left.s1 + SAME)) {
        continue;
      }
      for (Trapezoid right : trapezoids) {
        if (right.s0 <= s + SAME && s < right.s1 - SAME) {
          double lo = Math.max(left.lo(s), right.lo(s));
          double hi = Math.min(left.hi(s), right.hi(s));
          if (hi - lo > SAME) {
            out.add(new Span(lo, hi));
          }
        }
      }
    }
    return out;
  }

  /** Stretches of s where the run reaches the row edge {@code t} from below. */
  List<Span> reachingUp(double t) {
    List<Span> out = new ArrayList<>();
    for (Trapezoid z : trapezoids) {
      if (Math.abs(z.hi0 - t) < SAME && Math.abs(z.hi1 - t) < SAME) {
        out.add(new Span(z.s0, z.s1));
      }
    }
    return Span.joined(out);
  }

  /** Stretches of s where the run reaches the row edge {@code t} from above. */
  List<Span> reachingDown(double t) {
    List<Span> out = new ArrayList<>();
    for (Trapezoid z : trapezoids) {
      if (Math.abs(z.lo0 - t) < SAME && Math.abs(z.lo1 - t) < SAME) {
        out.add(new Span(z.s0, z.s1));
      }
    }
    return Span.joined(out);
  }

  /** Between s0 and s1, from lo to hi, both straight. */
  record Trapezoid(double s0, double s1, double lo0, double lo1, double hi0, double hi1)
      implements Comparable<Trapezoid> {
    /** From left to right, then from below. */
    @Override
    public int compareTo(Trapezoid o) {
      int c = Double.compare(s0, o.s0);
      return c == 0 ? Double.compare(lo0, o.lo0) : c;
    }

    double lo(double s) {
      return lo0 + (lo1 - lo0) * share(s);
    }

    double hi(double s) {
      return hi0 + (hi1 - hi0) * share(s);
    }

    double height(double s) {
      return hi(s) - lo(s);
    }

    private double share(double s) {
      return s <= s0 ? 0 : s >= s1 ? 1 : (s - s0) / (s1 - s0);
    }

    boolean continues(Trapezoid before) {
      return before.s1 == s0 && Math.min(before.hi1, hi0) - Math.max(before.lo1, lo0) > SAME;
    }
  }

  /** A stretch of a line, m. */
  record Span(double from, double to) implements Comparable<Span> {
    @Override
    public int compareTo(Span o) {
      return Double.compare(from, o.from);
    }

    double length() {
      return to - from;
    }

    /** Stretches that touch, made one; in order. */
    static List<Span> joined(List<Span> spans) {
      if (spans.size() < 2) {
        return spans;
      }
      List<Span> sorted = new ArrayList<>(spans);
      Collections.sort(sorted);
      List<Span> out = new ArrayList<>();
      for (Span x : sorted) {
        Span last = out.isEmpty() ? null : out.get(out.size() - 1);
        if (last != null && x.from - last.to <= SAME) {
          out.set(out.size() - 1, new Span(last.from, Math.max(last.to, x.to)));
        } else {
          out.add(x);
        }
      }
      return out;
    }

    /** Stretches in both lists. */
    static List<Span> common(List<Span> a, List<Span> b) {
      List<Span> out = new ArrayList<>();
      for (Span x : a) {
        for (Span y : b) {
          double lo = Math.max(x.from, y.from);
          double hi = Math.min(x.to, y.to);
          if (hi - lo > SAME) {
            out.add(new Span(lo, hi));
          }
        }
      }
      return joined(out);
    }
  }
}
