package slantlight.board;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import slantlight.board.Ground.Fixed;
import slantlight.scene.BoardRun;
import slantlight.scene.Framing;

/**
 * Where rows may begin and end: whole boards from either side, a balanced split with a ripped row
 * at both sides, and along the framing every member within reach.
 */
final class RowEdges {
  private static final double SAME = 1e-6;

  /** A board this much narrower than its row still fills it, m (48 in on 1220 mm centres). */
  private static final double FIT = 3e-3;

  private final Ground ground;
  private final double[] widths;
  private final double widest;
  private final double[] edges;

  RowEdges(Ground ground) {
    this.ground = ground;
    this.widths = ground.rowWidths();
    this.widest = ground.widest;
    this.edges = onMembers() ? memberEdges() : boardEdges();
  }

  /** True when long edges must lie on members and members lie close enough for it. */
  private boolean onMembers() {
    return ground.direction == BoardRun.ALONG_FRAMING && framing().spacing() <= widest + FIT;
  }

  private Framing framing() {
    return ground.surface.framing().orElseThrow();
  }

  /** All rows that lie on some chain of rows from side to side, by their lower edge. */
  List<Row> rows() {
    int n = edges.length;
    List<int[]> pairs = new ArrayList<>();
    boolean[] fromFirst = new boolean[n];
    fromFirst[0] = true;
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; fromFirst[i] && j < n && edges[j] - edges[i] <= widest + FIT; j++) {
        if (allowed(i, j) && keepsFixed(edges[i], edges[j])) {
          pairs.add(new int[] {i, j});
          fromFirst[j] = true;
        }
      }
    }
    boolean[] toLast = new boolean[n];
    toLast[n - 1] = true;
    for (int k = pairs.size() - 1; k >= 0; k--) {
      int[] pair = pairs.get(k);
      toLast[pair[0]] |= toLast[pair[1]];
    }
    List<Row> rows = new ArrayList<>();
    for (int[] pair : pairs) {
      if (toLast[pair[1]]) {
        rows.add(row(pair[0], pair[1]));
      }
    }
    return rows;
  }

  private Row row(int i, int j) {
    double a = edges[i];
    double b = edges[j];
    boolean inside = i > 0 && j < edges.length - 1;
    boolean narrow =
        b - a < ground.rules.minRow() - SAME
            && ground.t1 - ground.t0 > ground.rules.minRow() + SAME;
    boolean offMembers = ground.direction == BoardRun.ALONG_FRAMING && !onMembers();
    return new Row(
        a,
        b,
        inside && !isBoardWidth(b - a),
        (narrow ? 1 : 0) + (offMembers ? Cost.HARD : 0),
        Run.inRow(ground.columns, a, b));
  }

  private boolean allowed(int i, int j) {
    double height = edges[j] - edges[i];
    if (i == 0 || j == edges.length - 1 || isBoardWidth(height)) {
      return true;
    }
    return isFixedEdge(edges[i]) || isFixedEdge(edges[j]) || onMembers();
  }

  private boolean isBoardWidth(double height) {
    for (double w : widths) {
      if (Math.abs(height - w) <= FIT) {
        return true;
      }
    }
    return false;
  }

  private boolean isFixedEdge(double t) {
    for (Fixed f : ground.fixed) {
      if (Math.abs(f.t0() - t) < 1e-4 || Math.abs(f.t1() - t) < 1e-4) {
        return true;
      }
    }
    return false;
  }

  private boolean keepsFixed(double a, double b) {
    for (Fixed f : ground.fixed) {
      if (f.meetsRow(a, b) && !f.isRow(a, b)) {
        return false;
      }
    }
    return true;
  }

  private double[] memberEdges() {
    TreeSet<Double> all = new TreeSet<>();
    addFixedEdges(all);
    all.addAll(Ground.members(framing(), ground.t0, ground.t1));
    return thinned(all);
  }

  private double[] boardEdges() {
    TreeSet<Double> all = new TreeSet<>();
    addFixedEdges(all);
    List<Double> seeds = new ArrayList<>(all);
    seeds.add(ground.t0);
    seeds.add(ground.t1);
    for (double seed : seeds) {
      addSteps(all, seed, 1, widths);
      addSteps(all, seed, -1, widths);
    }
    double height = ground.t1 - ground.t0;
    for (double w : widths) {
      int whole = (int) Math.max(0, Math.ceil(height / w - 1e-6) - 2);
      double rip = (height - whole * w) / 2;
      if (rip > ground.rules.minRow() && rip <= widest + FIT) {
        addSteps(all, ground.t0 + rip, 1, new double[] {w});
      }
    }
    return thinned(all);
  }

  private void addFixedEdges(Set<Double> all) {
    for (Fixed f : ground.fixed) {
      all.add(f.t0());
      all.add(f.t1());
    }
  }

  private void addSteps(NavigableSet<Double> all, double from, int sign, double[] steps) {
    TreeSet<Double> front = new TreeSet<>(List.of(from));
    while (!front.isEmpty()) {
      double t = front.pollFirst();
      boolean inside = t >= ground.t0 - SAME && t <= ground.t1 + SAME;
      Double near = all.ceiling(t - SAME);
      boolean known = near != null && near <= t + SAME && t != from;
      if (inside && !known) {
        all.add(t);
        for (double w : steps) {
          front.add(t + sign * w);
        }
      }
    }
  }

  private double[] thinned(SortedSet<Double> all) {
    List<Double> out = new ArrayList<>();
    out.add(ground.t0);
    for (double t : all) {
      if (t - out.get(out.size() - 1) > 1e-5 && t < ground.t1 - 1e-5) {
        out.add(t);
      }
    }
    out.add(ground.t1);
    return Ground.array(out);
  }
}
