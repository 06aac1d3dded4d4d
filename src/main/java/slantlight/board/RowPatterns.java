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

  /** A way to cut the row up to a node; it ends with a piece, save at the row's start. */
  private record Path(Cost cost, Path before, Piece piece, Node end) {
    Path endedAt(Node node) {
      return new Path(cost.plus(node.cost), before, piece, node);
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
    Path[] start = {new Path(new Cost(row.faults(), 0, 0, 0, 0), null, null, null)};
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
   * The cheapest paths to a node; of equal ones those with the longest last board come first, so
   * that the longest board stays at the start of the run.
   *
   * @param first node from which a board reaches this one
   */
  private Path[] merge(Path[][] best, int first, int j, int k) {
    Path[] kept = new Path[k];
    int n = 0;
    for (int i = first; i < j; i++) {
      Piece piece = null;
      Cost step = null;
      for (Path before : best[i]) {
        if (n == k && before.cost.showsMoreThan(kept[k - 1].cost)) {
          break;
        }
        if (step == null) {
          piece = piece(i, j);
          if (piece == null) {
            break;
          }
          double area = nodes[j].area - nodes[i].area;
          step = ground.pieceCost(piece.stock(), area, piece.to() - piece.from(), nodes[j].run);
        }
        Cost cost = before.cost.plus(step);
        int rank = n;
        while (rank > 0 && cost.compareTo(kept[rank - 1].cost) < 0) {
          rank--;
        }
        if (rank == k) {
          break;
        }
        n = Math.min(n + 1, k);
        System.arraycopy(kept, rank, kept, rank + 1, n - 1 - rank);
        kept[rank] = new Path(cost, before, piece, null);
      }
    }
    Path[] out = Arrays.copyOf(kept, n);
    for (int rank = 0; rank < n; rank++) {
      out[rank] = out[rank].endedAt(nodes[j]);
    }
    return out;
  }

  /** The piece between two nodes, null when no board covers it or it would cut a fixed one. */
  private Piece piece(int i, int j) {
    double from = nodes[i].s;
    double to = nodes[j].s;
    BoardSize board = ground.stockFor(row, stock, nodes[j].run, from, to);
    return board == null ? null : new Piece(nodes[j].index, from, to, board);
  }

  private Pattern pattern(Path way) {
    List<Piece> pieces = new ArrayList<>();
    BitSet near = new BitSet(ground.places.length);
    BitSet down = new BitSet(ground.places.length);
    for (Path p = way; p.piece != null; p = p.before) {
      pieces.add(p.piece);
      if (p.end.up) {
        ground.markNear(near, p.end.place);
      }
      if (p.end.down) {
        down.set(p.end.place);
      }
    }
    Collections.reverse(pieces);
    return new Pattern(way.cost, pieces, near, down);
  }
}
