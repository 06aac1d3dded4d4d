package slantlight.board;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import slantlight.board.Pattern.Piece;
import slantlight.board.Run.Span;
import slantlight.scene.BoardSize;

/**
 * The cheapest ways to cut one row, in order of cost: the k shortest paths from end to end over the
 * places where a joint may lie (a list-Viterbi recursion, exact).
 */
final class RowPatterns {
  private final Ground ground;
  private final Row row;
  private final List<BoardSize> stock;
  private final List<Node> nodes = new ArrayList<>();
  private final List<List<Edge>> into = new ArrayList<>();

  /** An end of a run or a possible joint in it. */
  private record Node(int run, double s, int place, boolean up, boolean down) {}

  private record Edge(int from, Cost cost, BoardSize stock) {}

  private record Path(Cost cost, int from, int rank, BoardSize stock) {}

  RowPatterns(Ground ground, Row row) {
    this.ground = ground;
    this.row = row;
    this.stock = ground.stock(row);
    for (int r = 0; r < row.runs().size(); r++) {
      addRun(r, row.runs().get(r));
    }
  }

  private void addRun(int index, Run run) {
    int first = nodes.size();
    List<Edge> entry = first == 0 ? List.of() : List.of(new Edge(first - 1, Cost.ZERO, null));
    nodes.add(new Node(index, run.from(), -1, false, false));
    into.add(entry);
    List<Cost> jointCost = new ArrayList<>(List.of(Cost.ZERO));
    for (int p = 0; p < ground.places.length; p++) {
      double s = ground.places[p];
      if (s > run.from() + 1e-6 && s < run.to() - 1e-6) {
        List<Span> cut = run.cut(s);
        boolean up = cut.stream().anyMatch(c -> c.to() > row.t1() - 1e-6);
        boolean down = cut.stream().anyMatch(c -> c.from() < row.t0() + 1e-6);
        nodes.add(new Node(index, s, p, up, down));
        into.add(new ArrayList<>());
        jointCost.add(ground.buttCost(p, cut));
      }
    }
    nodes.add(new Node(index, run.to(), -1, false, false));
    into.add(new ArrayList<>());
    jointCost.add(Cost.ZERO);
    double[] areaTo = new double[nodes.size() - first];
    for (int i = 1; i < areaTo.length; i++) {
      areaTo[i] = areaTo[i - 1] + run.area(nodes.get(first + i - 1).s, nodes.get(first + i).s);
    }
    for (int j = first + 1; j < nodes.size(); j++) {
      // Longest first, so that equal costs keep the longest board at the start of the run.
      for (int i = first; i < j; i++) {
        double from = nodes.get(i).s;
        double to = nodes.get(j).s;
        if (ground.mayCover(to - from) && ground.allowsPiece(row, from, to, run)) {
          BoardSize board = ground.stockFor(row, stock, from, to);
          if (board != null) {
            Cost c = ground.pieceCost(board, areaTo[j - first] - areaTo[i - first], to - from, run);
            into.get(j).add(new Edge(i, c.plus(jointCost.get(j - first)), board));
          }
        }
      }
    }
  }

  /** The {@code k} cheapest patterns, cheapest first; fewer when there are no more. */
  List<Pattern> cheapest(int k) {
    if (nodes.isEmpty()) {
      return List.of(toPattern(List.of(), row.faults() == 0 ? Cost.ZERO : faults()));
    }
    List<List<Path>> best = new ArrayList<>(nodes.size());
    best.add(List.of(new Path(faults(), -1, 0, null)));
    for (int j = 1; j < nodes.size(); j++) {
      best.add(merge(best, into.get(j), k));
    }
    List<Pattern> out = new ArrayList<>();
    int last = nodes.size() - 1;
    for (int rank = 0; rank < best.get(last).size(); rank++) {
      out.add(trace(best, last, rank));
    }
    return out;
  }

  private Cost faults() {
    return new Cost(row.faults(), 0, 0, 0, 0);
  }

  /** The best of sorted lists, merged: each edge offers its next path, the cheapest is taken. */
  private static List<Path> merge(List<List<Path>> best, List<Edge> edges, int k) {
    PriorityQueue<Offer> offers = new PriorityQueue<>(Offer.ORDER);
    for (int e = 0; e < edges.size(); e++) {
      offer(offers, best, edges, e, 0);
    }
    List<Path> kept = new ArrayList<>();
    while (kept.size() < k && !offers.isEmpty()) {
      Offer o = offers.poll();
      kept.add(o.path);
      offer(offers, best, edges, o.edge, o.path.rank + 1);
    }
    return kept;
  }

  /** A path that an edge offers; of equal ones the edge from the farthest start comes first. */
  private record Offer(int edge, Path path) {
    static final Comparator<Offer> ORDER =
        Comparator.comparing((Offer o) -> o.path.cost).thenComparingInt(o -> o.edge);
  }

  private static void offer(
      PriorityQueue<Offer> offers, List<List<Path>> best, List<Edge> edges, int edge, int rank) {
    Edge e = edges.get(edge);
    List<Path> from = best.get(e.from);
    if (rank < from.size()) {
      Cost cost = from.get(rank).cost.plus(e.cost);
      offers.add(new Offer(edge, new Path(cost, e.from, rank, e.stock)));
    }
  }

  private Pattern trace(List<List<Path>> best, int last, int rank) {
    List<Piece> pieces = new ArrayList<>();
    Cost cost = best.get(last).get(rank).cost;
    for (int node = last, at = rank; node > 0; ) {
      Path p = best.get(node).get(at);
      if (p.stock != null) {
        pieces.add(new Piece(nodes.get(node).run, nodes.get(p.from).s, nodes.get(node).s, p.stock));
      }
      node = p.from;
      at = p.rank;
    }
    Collections.reverse(pieces);
    return toPattern(pieces, cost);
  }

  private Pattern toPattern(List<Piece> pieces, Cost cost) {
    BitSet near = new BitSet(ground.places.length);
    BitSet down = new BitSet(ground.places.length);
    for (Piece piece : pieces) {
      for (Node n : nodes) {
        if (n.place >= 0 && n.run == piece.run() && n.s == piece.to()) {
          if (n.up) {
            ground.markNear(near, n.place);
          }
          if (n.down) {
            down.set(n.place);
          }
        }
      }
    }
    return new Pattern(cost, pieces, near, down);
  }
}
