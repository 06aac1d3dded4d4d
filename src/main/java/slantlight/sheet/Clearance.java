package slantlight.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.geom.Face;
import slantlight.geom.Vec2;

/**
 * Finds places for labels on a drawing: of several the first that touches nothing drawn so far,
 * else the one that crosses the least lines; faint grids count as nothing. A label never stands on
 * other text, on a symbol or off the paper; where no place is left it has none.
 */
final class Clearance {
  /** Lines from this width on, mm, are more than guides. */
  private static final double STRONG = 0.3;

  /** A filled area no wider than this, mm, is a symbol. */
  private static final double SYMBOL = 4.2;

  /** Free paper round a label, mm. */
  static final double MARGIN = 0.3;

  private static final double CROSSED = 10;

  private final Extent paper;
  private final List<Obstacle> obstacles = new ArrayList<>();
  private final List<Cover> covers = new ArrayList<>();

  /**
   * A convex piece of what was drawn.
   *
   * @param cost of a label on it; infinite where none may stand
   */
  private record Obstacle(List<Vec2> ring, Extent extent, double cost) {}

  /** A filled rectangle that hides the first {@code under} obstacles. */
  private record Cover(Extent extent, int under) {}

  /** A place for a label and whether lines run through it. */
  record Place(Mark.Label label, boolean crossed) {}

  Clearance(Extent paper) {
    this.paper = paper;
  }

  /** Keeps later labels off a mark. */
  void keepOff(Mark mark) {
    if (mark instanceof Mark.Label label) {
      add(label.outline(MARGIN), Double.POSITIVE_INFINITY);
    } else if (mark instanceof Mark.Path path) {
      path.rings().forEach(ring -> keepOff(path, ring));
    }
  }

  private void keepOff(Mark.Path path, List<Vec2> ring) {
    Extent e = Extent.of(ring);
    if (path.fill().isPresent()) {
      if (Math.min(e.width(), e.height()) <= SYMBOL) {
        keepOff(Pencil.rectangle(e.left(), e.top(), e.width(), e.height()));
      } else if (Math.abs(Face.signedArea(ring)) > (1 - 1e-9) * e.width() * e.height()) {
        covers.add(new Cover(e, obstacles.size()));
      }
    }
    path.pen().ifPresent(pen -> keepOff(pen, ring, path.closed()));
  }

  private void keepOff(Pen pen, List<Vec2> ring, boolean closed) {
    if (pen.ink() == Ink.FAINT) {
      return;
    }
    for (int i = closed ? 0 : 1; i < ring.size(); i++) {
      Vec2 a = ring.get((i + ring.size() - 1) % ring.size());
      Vec2 b = ring.get(i);
      if (a.distance(b) > 1e-9) {
        Vec2 d = b.minus(a).unit().times(pen.width() / 2);
        Vec2 side = new Vec2(-d.y(), d.x());
        add(
            List.of(a.minus(side), b.minus(side), b.plus(side), a.plus(side)),
            pen.width() >= STRONG ? CROSSED : 1);
      }
    }
  }

  /** Keeps later labels off an area. */
  void keepOff(List<Vec2> area) {
    add(area, Double.POSITIVE_INFINITY);
  }

  private void add(List<Vec2> ring, double cost) {
    obstacles.add(new Obstacle(ring, Extent.of(ring), cost));
  }

  /** The best of several places, of equally good ones the first; empty when none is left. */
  Optional<Place> best(List<Mark.Label> places) {
    Mark.Label best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Mark.Label label : places) {
      double cost = cost(label, least);
      if (cost < least) {
        least = cost;
        best = label;
      }
      if (cost == 0) {
        break;
      }
    }
    return best == null ? Optional.empty() : Optional.of(new Place(best, least > 0));
  }

  /** What a place costs, counted until it is no better than {@code least}. */
  private double cost(Mark.Label label, double least) {
    List<Vec2> ring = label.outline(MARGIN);
    Extent extent = Extent.of(ring);
    if (!paper.holds(extent)) {
      return Double.POSITIVE_INFINITY;
    }
    int hidden =
        covers.stream()
            .filter(c -> c.extent().holds(extent))
            .mapToInt(Cover::under)
            .max()
            .orElse(0);
    double sum = 0;
    for (Obstacle o : obstacles.subList(hidden, obstacles.size())) {
      if (o.extent().touches(extent) && !parted(ring, o.ring()) && !parted(o.ring(), ring)) {
        sum += o.cost();
        if (sum >= least) {
          return sum;
        }
      }
    }
    return sum;
  }

  /** True when an edge of convex {@code a} parts it from {@code b} (separating axis theorem). */
  private static boolean parted(List<Vec2> a, List<Vec2> b) {
    for (int i = 0, j = a.size() - 1; i < a.size(); j = i++) {
      Vec2 edge = a.get(i).minus(a.get(j));
      Vec2 normal = new Vec2(edge.y(), -edge.x());
      double[] one = span(a, normal);
      double[] other = span(b, normal);
      if (one[1] <= other[0] + 1e-12 || other[1] <= one[0] + 1e-12) {
        return true;
      }
    }
    return false;
  }

  private static double[] span(List<Vec2> ring, Vec2 normal) {
    double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (Vec2 p : ring) {
      double d = p.dot(normal);
      span[0] = Math.min(span[0], d);
      span[1] = Math.max(span[1], d);
    }
    return span;
  }
}
