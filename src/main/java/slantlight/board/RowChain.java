package slantlight.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import slantlight.board.Run.Span;
import slantlight.scene.JointKind;

/**
 * The cheapest chain of rows from side to side of a surface: a dynamic program over row edges and,
 * within each row, over the ways to cut it.
 *
 * <p>A row has far more ways to be cut than could be listed. Each row lists only its cheapest few
 * and one wildcard, which costs as much as the cheapest way left out and suits every neighbour. The
 * wildcard is a relaxation of all that is left out, so the cheapest chain is a lower bound; when it
 * uses no wildcard it is the optimum itself. Otherwise the rows whose wildcard was used list more
 * and the program runs again.
 */
final class RowChain {
  private static final int FIRST_LIST = 4;

  /** Ways listed per row before a chain is taken without proof. */
  private static final int LONGEST_LIST = 1024;

  private final Ground ground;
  private final List<Stage> stages = new ArrayList<>();
  private final Map<Long, List<Link>> links = new HashMap<>();
  private final Map<String, LineWeight> lines = new HashMap<>();

  /** A row with the ways listed so far. */
  private static final class Stage {
    final Row row;
    final RowPatterns source;
    final List<Span> top;
    final List<Span> bottom;
    int size = FIRST_LIST;
    List<Pattern> listed = List.of();
    Cost leftOut;
    Cost[] best;
    State[] from;

    /** States that can be reached, cheapest first. */
    List<Integer> order = List.of();

    Stage(Ground ground, Row row) {
      this.row = row;
      source = new RowPatterns(ground, row);
      top = row.reachingTop();
      bottom = row.reachingBottom();
      list();
    }

    final void list() {
      List<Pattern> all = source.cheapest(size + 1);
      boolean complete = all.size() <= size;
      listed = complete ? all : all.subList(0, size);
      leftOut = complete ? null : all.get(size).cost();
    }

    int states() {
      return listed.size() + (leftOut == null ? 0 : 1);
    }

    Cost costOf(int state) {
      return state < listed.size() ? listed.get(state).cost() : leftOut;
    }

    boolean isWildcard(int state) {
      return state >= listed.size();
    }
  }

  private record State(int stage, int pattern) {}

  private record Link(int below, Cost joint) {}

  /** A row with its pieces chosen. */
  record Cut(Row row, Pattern pattern) {}

  /**
   * The chosen rows from the lowest up.
   *
   * @param proved true when no cheaper chain exists
   */
  record Plan(Cost cost, List<Cut> rows, boolean proved) {}

  private RowChain(Ground ground) {
    this.ground = ground;
  }

  /** The optimum, or empty when the fixed boards leave no way to fill the rest. */
  static Optional<Plan> solve(Ground ground) {
    RowChain chain = new RowChain(ground);
    for (Row row : new RowEdges(ground).rows()) {
      chain.stages.add(new Stage(ground, row));
    }
    chain.stages.sort(Comparator.comparingDouble(s -> s.row.t0()));
    chain.connect();
    return chain.search();
  }

  private void connect() {
    for (int b = 0; b < stages.size(); b++) {
      Stage above = stages.get(b);
      List<Link> below = new ArrayList<>();
      for (int a = 0; a < b; a++) {
        Stage under = stages.get(a);
        if (under.row.t1() == above.row.t0()) {
          below.add(new Link(a, jointCost(under, above)));
        }
      }
      links.put((long) b, below);
    }
  }

  private Cost jointCost(Stage under, Stage above) {
    double t = above.row.t0();
    boolean cut = under.row.cutTop();
    JointKind kind = cut ? JointKind.CUT : JointKind.TAPERED;
    LineWeight line = lines.computeIfAbsent(kind + " " + t, key -> ground.rowLine(t, kind));
    return ground.rowJointCost(t, Span.common(under.top, above.bottom), cut, line);
  }

  private Optional<Plan> search() {
    while (true) {
      sweep(true);
      State end = cheapestEnd();
      if (end == null) {
        return Optional.empty();
      }
      List<State> path = trace(end);
      boolean grown = false;
      boolean full = false;
      for (State s : path) {
        Stage stage = stages.get(s.stage);
        if (stage.isWildcard(s.pattern)) {
          full |= stage.size >= LONGEST_LIST;
          stage.size *= 4;
          grown = true;
          if (!full) {
            stage.list();
          }
        }
      }
      if (!grown) {
        return Optional.of(plan(end, path, true));
      }
      if (full) {
        sweep(false);
        State listedEnd = cheapestEnd();
        return Optional.of(plan(listedEnd, trace(listedEnd), false));
      }
    }
  }

  private void sweep(boolean wildcards) {
    for (int b = 0; b < stages.size(); b++) {
      Stage above = stages.get(b);
      int n = wildcards ? above.states() : above.listed.size();
      above.best = new Cost[n];
      above.from = new State[n];
      if (above.row.t0() == ground.t0) {
        for (int q = 0; q < n; q++) {
          above.best[q] = above.costOf(q);
        }
      }
      for (Link link : links.get((long) b)) {
        extend(link, above, n);
      }
      above.order =
          IntStream.range(0, n)
              .filter(q -> above.best[q] != null)
              .boxed()
              .sorted(Comparator.comparing(q -> above.best[q]))
              .toList();
    }
  }

  private void extend(Link link, Stage above, int n) {
    Stage under = stages.get(link.below);
    for (int q = 0; q < n; q++) {
      Cost step = link.joint.plus(above.costOf(q));
      for (int p : under.order) {
        Cost sum = under.best[p].plus(step);
        if (above.best[q] != null && sum.compareTo(above.best[q]) >= 0) {
          break; // and so are all that follow
        }
        if (!under.isWildcard(p) && !above.isWildcard(q)) {
          sum = sum.withFaults(Cost.HARD * under.listed.get(p).conflicts(above.listed.get(q)));
        }
        if (above.best[q] == null || sum.compareTo(above.best[q]) < 0) {
          above.best[q] = sum;
          above.from[q] = new State(link.below, p);
        }
      }
    }
  }

  private State cheapestEnd() {
    State end = null;
    for (int s = 0; s < stages.size(); s++) {
      Stage stage = stages.get(s);
      if (stage.row.t1() != ground.t1) {
        continue;
      }
      for (int p = 0; p < stage.best.length; p++) {
        if (stage.best[p] != null && (end == null || stage.best[p].compareTo(costAt(end)) < 0)) {
          end = new State(s, p);
        }
      }
    }
    return end;
  }

  private Cost costAt(State s) {
    return stages.get(s.stage).best[s.pattern];
  }

  private List<State> trace(State end) {
    List<State> path = new ArrayList<>();
    for (State s = end; s != null; s = stages.get(s.stage).from[s.pattern]) {
      path.add(0, s);
    }
    return path;
  }

  private Plan plan(State end, List<State> path, boolean proved) {
    List<Cut> rows = new ArrayList<>();
    for (State s : path) {
      Stage stage = stages.get(s.stage);
      rows.add(new Cut(stage.row, stage.listed.get(s.pattern)));
    }
    return new Plan(costAt(end), rows, proved);
  }
}
