package slantlight.board;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.board.Run.Span;
import slantlight.scene.JointKind;

/**
 * The cheapest chain of rows from side to side of a surface: a dynamic program over row edges and,
 * within each row, over the ways to cut it.
 *
 * <p>A row has far more ways to be cut than could be listed. Each row lists only its cheapest few,
 * at first none, and one wildcard, which costs as much as the cheapest way left out and suits every
 * neighbour. The wildcard is a relaxation of all that is left out, so the cheapest chain is a lower
 * bound; when it uses no wildcard it is the optimum itself. Otherwise the rows whose wildcard was
 * used list more and the program runs again.
 *
 * <p>Of many equal chains the same one is found however much is listed: the first in order of rows
 * and of their ways.
 */
final class RowChain {
  private static final int FIRST_LIST = 4;

  /** Ways listed per row before a chain is taken without proof. */
  private static final int LONGEST_LIST = 1024;

  private final Ground ground;
  private final List<Stage> stages = new ArrayList<>();

  /** A row with the ways listed so far; a state is one of them, by its number, or the wildcard. */
  private static final class Stage {
    final Row row;
    final RowPatterns source;
    final List<Span> top;
    final List<Span> bottom;
    final List<Link> below = new ArrayList<>();
    int size;
    List<Pattern> listed = List.of();

    /** Cost of the wildcard, null when all ways are listed. */
    Cost leftOut;

    /** The cheapest chain to each state that can be reached, cheapest first. */
    List<Chain> reached = List.of();

    Stage(Ground ground, Row row) {
      this.row = row;
      source = new RowPatterns(ground, row);
      top = row.reachingTop();
      bottom = row.reachingBottom();
      leftOut = source.least();
    }

    void listMore() {
      size = Math.max(FIRST_LIST, size * 4);
      List<Pattern> all = source.cheapest(size + 1);
      boolean complete = all.size() <= size;
      listed = complete ? all : all.subList(0, size);
      leftOut = complete ? null : all.get(size).cost();
    }

    Cost costOf(int state) {
      return isWildcard(state) ? leftOut : listed.get(state).cost();
    }

    boolean isWildcard(int state) {
      return state == listed.size();
    }
  }

  /** A row whose top is another's bottom, and what the joint between them costs. */
  private record Link(Stage under, Cost joint) {}

  /** Rows from the bottom up, each in a state: the last one, and the chain below it. */
  private record Chain(Stage stage, int state, Cost cost, Chain below)
      implements Comparable<Chain> {
    @Override
    public int compareTo(Chain o) {
      return cost.compareTo(o.cost);
    }

    boolean endsWithWildcard() {
      return stage.isWildcard(state);
    }
  }

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
    chain.connect();
    return chain.search();
  }

  private void connect() {
    Map<Double, List<Stage>> endingAt = new HashMap<>();
    Map<Double, JointLine> tapered = new HashMap<>();
    Map<Double, JointLine> cut = new HashMap<>();
    for (Stage above : stages) {
      double t = above.row.t0();
      for (Stage under : endingAt.getOrDefault(t, List.of())) {
        boolean isCut = under.row.cutTop();
        Map<Double, JointLine> lines = isCut ? cut : tapered;
        JointLine line = lines.get(t);
        if (line == null) {
          line = ground.rowLine(t, isCut ? JointKind.CUT : JointKind.TAPERED);
          lines.put(t, line);
        }
        List<Span> visible = Span.common(under.top, above.bottom);
        above.below.add(new Link(under, ground.rowJointCost(line, visible, isCut)));
      }
      List<Stage> ending = endingAt.get(above.row.t1());
      if (ending == null) {
        ending = new ArrayList<>();
        endingAt.put(above.row.t1(), ending);
      }
      ending.add(above);
    }
  }

  private Optional<Plan> search() {
    while (true) {
      sweep(true);
      Chain best = cheapest();
      if (best == null) {
        return Optional.empty();
      }
      List<Stage> open = open(best);
      if (open.isEmpty()) {
        return Optional.of(plan(best, true));
      }
      boolean full = false;
      for (Stage stage : open) {
        full |= stage.size >= LONGEST_LIST;
      }
      if (full) {
        return Optional.of(unproved());
      }
      for (Stage stage : open) {
        stage.listMore();
      }
    }
  }

  /** The rows whose wildcard a chain uses. */
  private static List<Stage> open(Chain chain) {
    List<Stage> open = new ArrayList<>();
    for (Chain c = chain; c != null; c = c.below) {
      if (c.endsWithWildcard()) {
        open.add(c.stage);
      }
    }
    return open;
  }

  /** The cheapest chain of listed ways. */
  private Plan unproved() {
    for (Stage stage : stages) {
      if (stage.size == 0) {
        stage.listMore();
      }
    }
    sweep(false);
    return plan(cheapest(), false);
  }

  private void sweep(boolean wildcards) {
    for (Stage above : stages) {
      boolean all = wildcards && above.leftOut != null;
      int states = above.listed.size() + (all ? 1 : 0);
      above.reached = new ArrayList<>(states);
      for (int state = 0; state < states; state++) {
        Chain chain = cheapestTo(above, state);
        if (chain != null) {
          above.reached.add(chain);
        }
      }
      Collections.sort(above.reached);
    }
  }

  private Chain cheapestTo(Stage above, int state) {
    Cost own = above.costOf(state);
    Chain best = above.row.t0() == ground.t0 ? new Chain(above, state, own, null) : null;
    for (Link link : above.below) {
      Cost step = link.joint.plus(own);
      for (Chain under : link.under.reached) {
        Cost sum = under.cost.plus(step);
        if (best != null && sum.compareTo(best.cost) >= 0) {
          break; // and so are all that follow
        }
        if (!under.endsWithWildcard() && !above.isWildcard(state)) {
          Pattern below = under.stage.listed.get(under.state);
          sum = sum.withFaults(Cost.HARD * below.conflicts(above.listed.get(state)));
        }
        if (best == null || sum.compareTo(best.cost) < 0) {
          best = new Chain(above, state, sum, under);
        }
      }
    }
    return best;
  }

  /** The cheapest chain from side to side, null when there is none. */
  private Chain cheapest() {
    Chain best = null;
    for (Stage stage : stages) {
      if (stage.row.t1() == ground.t1 && !stage.reached.isEmpty()) {
        Chain chain = stage.reached.get(0);
        best = best == null || chain.compareTo(best) < 0 ? chain : best;
      }
    }
    return best;
  }

  private static Plan plan(Chain chain, boolean proved) {
    List<Cut> rows = new ArrayList<>();
    for (Chain c = chain; c != null; c = c.below) {
      rows.add(new Cut(c.stage.row, c.stage.listed.get(c.state)));
    }
    Collections.reverse(rows);
    return new Plan(chain.cost, rows, proved);
  }
}
