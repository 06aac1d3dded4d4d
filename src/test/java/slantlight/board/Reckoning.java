package slantlight.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import slantlight.geom.Vec2;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;

/**
 * What a layout costs, reckoned a second way: boards are JTS overlays of rectangles, joints are the
 * lines that have board close on both sides. For walls with upright studs and rows across them, so
 * that row coordinates are plane coordinates.
 */
final class Reckoning {
  /** Close beside a joint, m. */
  private static final double BESIDE = 1e-7;

  /** A board this much smaller than its place still fills it, m. */
  static final double FILLS = 1e-3;

  static final GeometryFactory JTS = new GeometryFactory();

  private Reckoning() {}

  /** Rules broken, weighted joint length, row joints at corners, waste, boards. */
  record Sum(long faults, double showing, long corners, double waste, long boards) {
    /** Negative when this is cheaper; sums within rounding of each other tie. */
    int compare(Sum o) {
      if (faults != o.faults) {
        return Long.compare(faults, o.faults);
      }
      if (Math.abs(showing - o.showing) > 2e-5) {
        return Double.compare(showing, o.showing);
      }
      if (corners != o.corners) {
        return Long.compare(corners, o.corners);
      }
      if (Math.abs(waste - o.waste) > 2e-5) {
        return Double.compare(waste, o.waste);
      }
      return Long.compare(boards, o.boards);
    }

    Sum plus(Sum o) {
      return new Sum(
          faults + o.faults,
          showing + o.showing,
          corners + o.corners,
          waste + o.waste,
          boards + o.boards);
    }
  }

  static final Sum NOTHING = new Sum(0, 0, 0, 0, 0);

  /** A row between two heights, cut at some places. */
  record CutRow(double t0, double t1, SortedSet<Double> cuts) {}

  static Geometry polygon(Surface surface) {
    Geometry shell = JTS.createPolygon(ring(surface.face().outer()));
    for (List<Vec2> hole : surface.face().holes()) {
      shell = shell.difference(JTS.createPolygon(ring(hole)));
    }
    return shell;
  }

  static LinearRing ring(List<Vec2> points) {
    Coordinate[] c = new Coordinate[points.size() + 1];
    for (int i = 0; i < c.length; i++) {
      Vec2 p = points.get(i % points.size());
      c[i] = new Coordinate(p.x(), p.y());
    }
    return JTS.createLinearRing(c);
  }

  static Polygon rectangle(double s0, double t0, double s1, double t1) {
    return JTS.createPolygon(
        ring(List.of(new Vec2(s0, t0), new Vec2(s1, t0), new Vec2(s1, t1), new Vec2(s0, t1))));
  }

  static LineString line(double s0, double t0, double s1, double t1) {
    return JTS.createLineString(new Coordinate[] {new Coordinate(s0, t0), new Coordinate(s1, t1)});
  }

  /** Unbroken pieces of the surface in a row. */
  static List<Geometry> runs(Geometry polygon, double t0, double t1) {
    Geometry clipped = polygon.intersection(rectangle(-100, t0, 100, t1));
    List<Geometry> out = new ArrayList<>();
    for (int i = 0; i < clipped.getNumGeometries(); i++) {
      if (clipped.getGeometryN(i).getArea() > 1e-9) {
        out.add(clipped.getGeometryN(i));
      }
    }
    return out;
  }

  /** The rows of boards given by their boxes, from the lowest up. */
  static List<CutRow> rowsOf(List<RowFrame.Box> boards, Geometry polygon) {
    List<CutRow> rows = new ArrayList<>();
    for (RowFrame.Box b : boards) {
      if (rows.stream().noneMatch(r -> Math.abs(r.t0 - b.t0()) < 1e-6)) {
        rows.add(new CutRow(b.t0(), b.t1(), new TreeSet<>()));
      }
    }
    rows.sort(Comparator.comparingDouble(CutRow::t0));
    for (CutRow row : rows) {
      List<Geometry> runs = runs(polygon, row.t0, row.t1);
      for (RowFrame.Box b : boards) {
        boolean inside =
            runs.stream()
                .map(Geometry::getEnvelopeInternal)
                .anyMatch(r -> r.getMinX() < b.s1() - 1e-6 && r.getMaxX() > b.s1() + 1e-6);
        if (inside && Math.abs(row.t0 - b.t0()) < 1e-6) {
          row.cuts.add(b.s1());
        }
      }
    }
    return rows;
  }

  /** A whole layout; null when a piece is longer than any board. */
  static Sum cost(Surface surface, Geometry polygon, List<CutRow> rows, ShowWeight weight) {
    Sum sum = NOTHING;
    for (int i = 0; i < rows.size(); i++) {
      Sum row = row(surface, polygon, rows.get(i), weight);
      if (row == null) {
        return null;
      }
      sum = sum.plus(row);
      if (i > 0) {
        sum = sum.plus(between(surface, polygon, rows.get(i - 1), rows.get(i), weight));
      }
    }
    return sum;
  }

  /** What two rows cost because they meet. */
  static Sum between(
      Surface surface, Geometry polygon, CutRow below, CutRow above, ShowWeight weight) {
    BoardOffer offer = surface.boards().orElseThrow();
    Sum stagger = stagger(polygon, below, above, surface.framing().orElseThrow().spacing());
    if (offer.run() != BoardRun.ALONG_FRAMING) {
      return stagger.plus(rowJoint(surface, polygon, above.t0, weight));
    }
    double height = below.t1 - below.t0;
    boolean whole = offer.sizes().stream().anyMatch(b -> Math.abs(b.width() - height) < 3e-3);
    boolean first = below.t0 < polygon.getEnvelopeInternal().getMinY() + 1e-6;
    JointKind kind = first || whole ? JointKind.TAPERED : JointKind.CUT;
    return stagger.plus(rowJoint(surface, polygon, above.t0, kind, weight));
  }

  /** One row by itself; null when a piece is longer than any board. */
  static Sum row(Surface surface, Geometry polygon, CutRow row, ShowWeight weight) {
    Sum sum = NOTHING;
    double height = row.t1 - row.t0;
    double depth = polygon.getEnvelopeInternal().getHeight();
    if (height < LayoutRules.COMMON.minRow() - 1e-6 && depth > LayoutRules.COMMON.minRow() + 1e-6) {
      sum = sum.plus(new Sum(1, 0, 0, 0, 0));
    }
    for (Geometry run : runs(polygon, row.t0, row.t1)) {
      double from = run.getEnvelopeInternal().getMinX();
      double to = run.getEnvelopeInternal().getMaxX();
      double start = from;
      List<Double> ends = new ArrayList<>(row.cuts.subSet(from + 1e-6, to - 1e-6));
      ends.add(to);
      for (double end : ends) {
        Sum piece = piece(surface, run, start, end, row, to - from);
        if (piece == null) {
          return null;
        }
        sum = sum.plus(piece);
        if (end < to) {
          sum = sum.plus(butt(surface, run, end, row, weight));
        }
        start = end;
      }
    }
    return sum;
  }

  private static Sum piece(
      Surface surface, Geometry run, double s0, double s1, CutRow row, double runLength) {
    BoardSize best = null;
    for (BoardSize b : surface.boards().orElseThrow().sizes()) {
      boolean covers = b.length() > s1 - s0 - FILLS && b.width() > row.t1 - row.t0 - FILLS;
      if (covers && (best == null || b.width() * b.length() < best.width() * best.length())) {
        best = b;
      }
    }
    if (best == null) {
      return null;
    }
    double min = LayoutRules.COMMON.minPiece();
    long sliver = s1 - s0 < min - 1e-6 && runLength > min + 1e-6 ? 1 : 0;
    double area = run.intersection(rectangle(s0, row.t0, s1, row.t1)).getArea();
    return new Sum(sliver, 0, 0, best.width() * best.length() - area, 1);
  }

  private static Sum butt(Surface surface, Geometry run, double s, CutRow row, ShowWeight weight) {
    Geometry left = run.intersection(line(s - BESIDE, row.t0, s - BESIDE, row.t1));
    Geometry right = run.intersection(line(s + BESIDE, row.t0, s + BESIDE, row.t1));
    return joint(surface, common(left, right, true, s), JointKind.BUTT, weight);
  }

  /** The row joint between two rows. */
  static Sum rowJoint(Surface surface, Geometry polygon, double t, ShowWeight weight) {
    Sum s = rowJoint(surface, polygon, t, JointKind.TAPERED, weight);
    return new Sum(0, s.showing, s.faults, 0, 0);
  }

  /** The row joint between two rows along the framing: at a corner it breaks a rule. */
  static Sum rowJoint(
      Surface surface, Geometry polygon, double t, JointKind kind, ShowWeight weight) {
    Geometry below = polygon.intersection(line(-100, t - BESIDE, 100, t - BESIDE));
    Geometry above = polygon.intersection(line(-100, t + BESIDE, 100, t + BESIDE));
    return joint(surface, common(below, above, false, t), kind, weight);
  }

  /** Stretches that two lines beside a joint have in common, laid on the joint. */
  private static List<LineString> common(Geometry a, Geometry b, boolean upright, double at) {
    List<LineString> out = new ArrayList<>();
    for (int i = 0; i < a.getNumGeometries(); i++) {
      for (int j = 0; j < b.getNumGeometries(); j++) {
        Envelope x = a.getGeometryN(i).getEnvelopeInternal();
        Envelope y = b.getGeometryN(j).getEnvelopeInternal();
        double lo =
            upright ? Math.max(x.getMinY(), y.getMinY()) : Math.max(x.getMinX(), y.getMinX());
        double hi =
            upright ? Math.min(x.getMaxY(), y.getMaxY()) : Math.min(x.getMaxX(), y.getMaxX());
        if (hi - lo > 1e-6) {
          out.add(upright ? line(at, lo, at, hi) : line(lo, at, hi, at));
        }
      }
    }
    return out;
  }

  private static Sum joint(
      Surface surface, List<LineString> meeting, JointKind kind, ShowWeight weight) {
    double showing = 0;
    long corners = 0;
    for (LineString l : meeting) {
      Vec2 a = new Vec2(l.getStartPoint().getX(), l.getStartPoint().getY());
      Vec2 b = new Vec2(l.getEndPoint().getX(), l.getEndPoint().getY());
      // Two-point Gauss rule: exact for the weights of these tests, linear along a joint.
      double g = 0.5 - 0.5 / Math.sqrt(3);
      Vec2 along = b.minus(a).unit();
      showing +=
          l.getLength()
              * (weight.at(a.lerp(b, g), along, kind) + weight.at(b.lerp(a, g), along, kind))
              / 2;
      corners += cornersNear(surface, l);
    }
    return new Sum(corners, showing, 0, 0, 0);
  }

  static long cornersNear(Surface surface, LineString joint) {
    long n = 0;
    for (List<Vec2> hole : surface.face().holes()) {
      for (Vec2 c : hole) {
        double d = joint.distance(JTS.createPoint(new Coordinate(c.x(), c.y())));
        n += d < LayoutRules.COMMON.cornerClearance() - 1e-6 ? 1 : 0;
      }
    }
    return n;
  }

  /** Butt joints that stand in line across the edge between two rows. */
  static Sum stagger(Geometry polygon, CutRow below, CutRow above, double bay) {
    long n = 0;
    for (double a : above.cuts) {
      for (double b : below.cuts) {
        if (Math.abs(a - b) < bay - 1e-6
            && reaches(polygon, below, b, below.t1)
            && reaches(polygon, above, a, above.t0)) {
          n++;
          break;
        }
      }
    }
    return new Sum(n * Cost.HARD, 0, 0, 0, 0);
  }

  private static boolean reaches(Geometry polygon, CutRow row, double s, double t) {
    double in = t == row.t0 ? t + 1e-4 : t - 1e-4;
    return polygon.contains(JTS.createPoint(new Coordinate(s, in)));
  }
}
