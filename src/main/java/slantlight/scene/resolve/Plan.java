package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import slantlight.geom.Face;
import slantlight.geom.Vec2;

/** Rings in a plane and what they make together; overlays on a grid of a micrometre. */
final class Plan {
  /** Corners nearer than this are one corner, m. */
  static final double SAME = 1e-3;

  private static final GeometryFactory FACTORY = new GeometryFactory(new PrecisionModel(1e6));

  private Plan() {}

  /** What is wrong with a ring as the outline of a region; empty when nothing is. */
  static Optional<String> fault(List<Vec2> ring) {
    int n = ring.size();
    if (n < 3) {
      return Optional.of("has fewer than three corners");
    }
    for (int i = 0; i < n; i++) {
      if (ring.get(i).distance(ring.get((i + 1) % n)) < SAME) {
        return Optional.of(
            "has an edge shorter than 1 mm, from corner " + (i + 1) + " to " + ((i + 1) % n + 1));
      }
    }
    for (int i = 0; i < n; i++) {
      for (int k = i + 1; k < n; k++) {
        boolean neighbours = k == i + 1 || (i == 0 && k == n - 1);
        if (meet(ring, i, k, neighbours)) {
          return Optional.of("crosses or touches itself at edges " + (i + 1) + " and " + (k + 1));
        }
      }
    }
    return Math.abs(Face.signedArea(ring)) < 1e-4
        ? Optional.of("encloses no area")
        : Optional.empty();
  }

  /** True when two edges meet elsewhere than in a shared corner. */
  private static boolean meet(List<Vec2> ring, int i, int k, boolean neighbours) {
    int n = ring.size();
    Vec2 a = ring.get(i);
    Vec2 b = ring.get((i + 1) % n);
    Vec2 c = ring.get(k);
    Vec2 d = ring.get((k + 1) % n);
    if (neighbours) {
      Vec2 shared = (i + 1) % n == k ? b : a;
      Vec2 p = shared.equals(b) ? a : b;
      Vec2 q = shared.equals(c) ? d : c;
      // Neighbours meet twice only when one folds back along the other.
      Vec2 e = p.minus(shared).unit();
      Vec2 f = q.minus(shared).unit();
      return Math.abs(e.cross(f)) < 1e-9 && e.dot(f) > 0;
    }
    return segmentDistance(a, b, c, d) < SAME / 2;
  }

  private static double segmentDistance(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    double s1 = b.minus(a).cross(c.minus(a));
    double s2 = b.minus(a).cross(d.minus(a));
    double s3 = d.minus(c).cross(a.minus(c));
    double s4 = d.minus(c).cross(b.minus(c));
    if (s1 * s2 < 0 && s3 * s4 < 0) {
      return 0;
    }
    return Math.min(
        Math.min(distance(a, b, c), distance(a, b, d)),
        Math.min(distance(c, d, a), distance(c, d, b)));
  }

  /** Distance of {@code p} from the segment ab. */
  static double distance(Vec2 a, Vec2 b, Vec2 p) {
    Vec2 d = b.minus(a);
    double t = Math.max(0, Math.min(1, p.minus(a).dot(d) / d.dot(d)));
    return p.distance(a.lerp(b, t));
  }

  /** The ring counter-clockwise. */
  static List<Vec2> counterClockwise(List<Vec2> ring) {
    if (Face.signedArea(ring) >= 0) {
      return List.copyOf(ring);
    }
    List<Vec2> out = new ArrayList<>(ring);
    Collections.reverse(out);
    return List.copyOf(out);
  }

  static Polygon polygon(List<Vec2> outer) {
    return polygon(outer, List.of());
  }

  static Polygon polygon(List<Vec2> outer, List<List<Vec2>> holes) {
    return FACTORY.createPolygon(
        linear(outer), holes.stream().map(Plan::linear).toArray(LinearRing[]::new));
  }

  private static LinearRing linear(List<Vec2> ring) {
    Coordinate[] c = new Coordinate[ring.size() + 1];
    for (int i = 0; i <= ring.size(); i++) {
      Vec2 p = ring.get(i % ring.size());
      c[i] = new Coordinate(grid(p.x()), grid(p.y()));
    }
    return FACTORY.createLinearRing(c);
  }

  private static double grid(double v) {
    return FACTORY.getPrecisionModel().makePrecise(v);
  }

  static Geometry union(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.UNION);
  }

  static Geometry difference(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
  }

  static Geometry intersection(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
  }

  /** The polygons of a geometry that have an area worth speaking of. */
  static List<Polygon> polygons(Geometry g) {
    List<Polygon> out = new ArrayList<>();
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p && p.getArea() > 1e-4) {
        out.add(p);
      }
    }
    return out;
  }

  /** Outer ring of a polygon, counter-clockwise, needless corners on straight edges left out. */
  static List<Vec2> outer(Polygon p) {
    return counterClockwise(ring(p.getExteriorRing()));
  }

  /** Holes of a polygon, clockwise, needless corners left out. */
  static List<List<Vec2>> holes(Polygon p) {
    List<List<Vec2>> out = new ArrayList<>();
    for (int i = 0; i < p.getNumInteriorRing(); i++) {
      List<Vec2> ring = new ArrayList<>(counterClockwise(ring(p.getInteriorRingN(i))));
      Collections.reverse(ring);
      out.add(List.copyOf(ring));
    }
    return out;
  }

  private static List<Vec2> ring(LinearRing ring) {
    List<Vec2> out = new ArrayList<>();
    for (int i = 0; i < ring.getNumPoints() - 1; i++) {
      out.add(new Vec2(ring.getCoordinateN(i).x, ring.getCoordinateN(i).y));
    }
    return straightened(out);
  }

  /** A ring without the corners that lie on a straight line between their neighbours. */
  static List<Vec2> straightened(List<Vec2> ring) {
    List<Vec2> out = new ArrayList<>();
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      Vec2 before = ring.get((i + n - 1) % n);
      Vec2 after = ring.get((i + 1) % n);
      if (distance(before, after, ring.get(i)) > 2e-6) {
        out.add(ring.get(i));
      }
    }
    return out;
  }

  /** Rectangle from its two extreme corners, counter-clockwise. */
  static List<Vec2> rectangle(double x0, double y0, double x1, double y1) {
    return List.of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1));
  }
}
