package slantlight.board;

import java.util.ArrayList;
import java.util.List;
import slantlight.board.Run.Span;

/**
 * One row of boards between two row edges, before its joints are chosen.
 *
 * @param t0 lower edge, row coordinates, m
 * @param t1 upper edge
 * @param cutTop true when the upper edge is a cut edge inside the surface
 * @param faults rules this row breaks wherever its joints fall
 */
record Row(double t0, double t1, boolean cutTop, long faults, List<Run> runs) {
  double height() {
    return t1 - t0;
  }

  List<Span> reachingTop() {
    List<Span> out = new ArrayList<>();
    for (Run r : runs) {
      out.addAll(r.reachingUp(t1));
    }
    return Span.joined(out);
  }

  List<Span> reachingBottom() {
    List<Span> out = new ArrayList<>();
    for (Run r : runs) {
      out.addAll(r.reachingDown(t0));
    }
    return Span.joined(out);
  }
}
