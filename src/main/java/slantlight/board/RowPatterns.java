package slantlight.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import slantlight.board.Pattern.Piece;
import slantlight.board.Run.Span;
import slantlight.scene.BoardSize;

/**
 * The cheapest ways to cut one row, in order of cost: the k shortest paths from end to end over the
 * places where a joint may lie (a list-Viterbi recursion, exact).
 */
final class RowPatterns {
  private static final double SAME = 1e-6;

  private final Ground ground;
  private final Row row;
  private final BoardSize[] stock;
  private final Node[] nodes;

  /**
   * An end of a run or a possible joint in it.
   *
   * @param index of the run in its row
   * @param area of the run from its start to here, m2
   * @param cost of a joint here
   */
  private record Node(
      int index, Run run, double s, double area, int place, boolean up, boolean down, Cost cost) {
    static Node end(int index, Run run, double s, double area) {
      return new Node(index, run, s, area, -1, false, false, Cost.ZERO);
    }
  }

  /** A way to cut the row up to a node: its last board and the way before that, if any. */
  private record Path(Cost cost, Path before, Node from, Node to, BoardSize board) {
    Path withJoint() {
      return new Path(cost.plus(to.cost), before, from, to, board);
    }
  }

  RowPatterns(Ground ground, Row row) {
    this.ground = ground;
    this.row = row;
    this.stock = ground.stock(row);
    List<Node> all = new ArrayList<>();
    for (int r = 0; r < row.runs().size(); r++) {
      addRun(all, r);
    }
    nodes = all.toArray(new Node[0]);
  }

  private void addRun(List<Node> nodes, int index) {
    Run run = row.runs().get(index);
    nodes.add(Node.end(index, run, run.from(), 0));
    double last = run.from();
    double area = 0;
    for (int p = 0; p < ground.places.length; p++) {
      double s = ground.places[p];
      if (s > run.from() + SAME && s < run.to() - SAME) {
        boolean up = false;
        boolean down = false;
        List<Span> cut = run.cut(s);
        for (Span c : cut) {
          up |= c.to() > row.t1() - SAME;
          down |= c.from() < row.t0() + SAME;
        }
        area += run.area(last, s);
        last = s;
        nodes.add(new Node(index, run, s, area, p, up, down, ground.buttCost(p, cut)));
      }
    }
    nodes.add(Node.end(index, run, run.to(), area + run.area(last, run.to())));
  }

  /** What the cheapest way to cut the row costs; null when there is none. */
  Cost least() {
    Path[] ways = ways(1);
    return ways.length == 0 ? null : ways[0].cost;
  }

  /** The {@code k} cheapest patterns, cheapest first; fewer when there are no more. */
  List<Pattern> cheapest(int k) {
    List<Pattern> out = new ArrayList<>();
    for (Path way : ways(k)) {
      out.add(pattern(way));
    }
    return out;
  }

  private Path[] ways(int k) {
    Path[] start = {new Path(new Cost(row.faults(), 0, 0, 0, 0), null, null, null, null)};
    Path[][] best = new Path[nodes.length][];
    Path[] last = start;
    int first = 0;
    for (int j = 0; j < best.length; j++) {
      if (j == 0 || nodes[j].run != nodes[j - 1].run) {
        first = j;
        best[j] = last;
      } else {
        while (!ground.mayCover(nodes[j].s - nodes[first].s)) {
          first++;
        }
        best[j] = merge(best, first, j, k);
      }
      last = best[j];
    }
    return last;
  }

  /**
   * The {@code k} cheapest paths to a node; of equal ones those with the longest last board come
   * first, so that the longest board stays at the start of the run.
   *
   * @param first node from which a board reaches this one
   */
  private Path[] merge(Path[][] best, int first, int j, int k) {
    Path[] kept = new Path[k];
    int n = 0;
    Node to = nodes[j];
    for (int i = first; i < j; i++) {
      Node from = nodes[i];
      BoardSize board = null;
      Cost piece = null;
      for (Path before : best[i]) {
        if (n == k && before.cost.showsMoreThan(kept[k - 1].cost)) {
          break;
        }
        if (board == null) {
          board = ground.stockFor(row, stock, to.run, from.s, to.s);
          if (board == null) {
            break;
          }
          piece = ground.pieceCost(board, to.area - from.area, to.s - from.s, to.run);
        }
        Cost cost = before.cost.plus(piece);
        int rank = n;
        while (rank > 0 && cost.compareTo(kept[rank - 1].cost) < 0) {
          rank--;
        }
        if (rank == k) {
          break;
        }
        n = Math.min(n + 1, k);
        System.arraycopy(kept, rank, kept, rank + 1, n - 1 - rank);
        kept[rank] = new Path(cost, before, from, to, board);
      }
    }
    Path[] out = Arrays.copyOf(kept, n);
    for (int rank = 0; rank < n; rank++) {
      out[rank] = out[rank].withJoint();
    }
    return out;
  }

  private Pattern pattern(Path way) {
    List<Piece> pieces = new ArrayList<>();
    BitSet near = new BitSet(ground.places.length);
    BitSet down = new BitSet(ground.places.length);
    for (Path p = way; p.board != null; p = p.before) {
      pieces.add(new Piece(p.to.index, p.from.s, p.to.s, p.board));
      if (p.to.up) {
        ground.markNear(near, p.to.place);
      }
      if (p.to.down) {
        down.set(p.to.place);
      }
    }
    Collections.reverse(pieces);
    return new Pattern(way.cost, pieces, near, down);
  }
}
