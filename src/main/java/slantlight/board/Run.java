package slantlight.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import slantlight.board.RowFrame.Side;

/**
 * One unbroken piece of a row: a part of the surface between two row edges, cut into trapezoids
 * with sides square to the row. Row coordinates, m.
 */
final class Run {
  /** Below this two positions are the same, m. */
  static final double SAME = 1e-9;

  private final List<Trapezoid> trapezoids;
  private final double from;
  private final double to;

  private Run(List<Trapezoid> trapezoids) {
    this.trapezoids = trapezoids;
    this.from = trapezoids.stream().mapToDouble(Trapezoid::s0).min().orElseThrow();
    this.to = trapezoids.stream().mapToDouble(Trapezoid::s1).max().orElseThrow();
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  List<Trapezoid> trapezoids() {
    return trapezoids;
  }

  /** The runs of the row between t0 and t1, in order of their starts. */
  static List<Run> inRow(List<Side> sides, double t0, double t1) {
    List<List<Trapezoid>> slabs = new ArrayList<>();
    double[] cuts = cuts(sides, t0, t1);
    for (int i = 0; i + 1 < cuts.length; i++) {
      slabs.add(slab(sides, cuts[i], cuts[i + 1], t0, t1));
    }
    return connect(slabs);
  }

  /** Every s at which the row's outline may change direction. */
  private static double[] cuts(List<Side> sides, double t0, double t1) {
    List<Double> all = new ArrayList<>();
    for (Side e : sides) {
      all.add(e.s0());
      all.add(e.s1());
      for (double t : new double[] {t0, t1}) {
        if ((e.t0() - t) * (e.t1() - t) < 0) {
          all.add(e.s0() + (e.s1() - e.s0()) * (t - e.t0()) / (e.t1() - e.t0()));
        }
      }
    }
    double[] sorted = all.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    int n = 0;
    for (double s : sorted) {
      if (n == 0 || s - sorted[n - 1] > SAME) {
        sorted[n++] = s;
      }
    }
    return Arrays.copyOf(sorted, n);
  }

  private static List<Trapezoid> slab(
      List<Side> sides, double s0, double s1, double t0, double t1) {
    double mid = (s0 + s1) / 2;
    List<Side> crossing = new ArrayList<>();
    for (Side e : sides) {
      if (e.s0() < mid && e.s1() > mid) {
        crossing.add(e);
      }
    }
    crossing.sort(Comparator.comparingDouble(e -> e.tAt(mid)));
    List<Trapezoid> out = new ArrayList<>();
    for (int i = 0; i + 1 < crossing.size(); i += 2) {
      Side lo = crossing.get(i);
      Side hi = crossing.get(i + 1);
      Trapezoid z =
          new Trapezoid(
              s0,
              s1,
              clamp(lo.tAt(s0), t0, t1),
              clamp(lo.tAt(s1), t0, t1),
              clamp(hi.tAt(s0), t0, t1),
              clamp(hi.tAt(s1), t0, t1));
      if (z.height(mid) > SAME) {
        out.add(z);
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
          if (group == mine || group.stream().noneMatch(z::continues)) {
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
        if (!contains(next, mine)) {
          next.add(mine);
        }
      }
      open = next;
    }
    List<Run> runs = new ArrayList<>();
    for (List<Trapezoid> group : groups) {
      group.sort(Comparator.comparingDouble(Trapezoid::s0).thenComparingDouble(Trapezoid::lo0));
      runs.add(new Run(group));
    }
    runs.sort(Comparator.comparingDouble(Run::from).thenComparing(r -> r.trapezoids.get(0).lo0));
    return runs;
  }

  private static void remove(List<List<Trapezoid>> lists, List<Trapezoid> gone) {
    lists.removeIf(l -> l == gone);
  }

  private static boolean contains(List<List<Trapezoid>> lists, List<Trapezoid> one) {
    return lists.stream().anyMatch(l -> l == one);
  }

  /** Area of the run between two places, m2. */
  double area(double s0, double s1) {
    double a = 0;
    for (Trapezoid z : trapezoids) {
      double p = Math.max(s0, z.s0);
      double q = Math.min(s1, z.s1);
      if (q > p) {
        a += (q - p) * (z.height(p) + z.height(q)) / 2;
      }
    }
    return a;
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
    return Span.joined(
        trapezoids.stream()
            .filter(z -> Math.abs(z.hi0 - t) < SAME && Math.abs(z.hi1 - t) < SAME)
            .map(z -> new Span(z.s0, z.s1))
            .toList());
  }

  /** Stretches of s where the run reaches the row edge {@code t} from above. */
  List<Span> reachingDown(double t) {
    return Span.joined(
        trapezoids.stream()
            .filter(z -> Math.abs(z.lo0 - t) < SAME && Math.abs(z.lo1 - t) < SAME)
            .map(z -> new Span(z.s0, z.s1))
            .toList());
  }

  /** Between s0 and s1, from lo to hi, both straight. */
  record Trapezoid(double s0, double s1, double lo0, double lo1, double hi0, double hi1) {
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
      return Math.max(0, Math.min(1, (s - s0) / (s1 - s0)));
    }

    boolean continues(Trapezoid before) {
      return before.s1 == s0 && Math.min(before.hi1, hi0) - Math.max(before.lo1, lo0) > SAME;
    }
  }

  /** A stretch of a line, m. */
  record Span(double from, double to) {
    double length() {
      return to - from;
    }

    /** Stretches that touch, made one; in order. */
    static List<Span> joined(List<Span> spans) {
      List<Span> sorted = new ArrayList<>(spans);
      sorted.sort(Comparator.comparingDouble(Span::from));
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
