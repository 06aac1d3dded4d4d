package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import slantlight.geom.Face;
import slantlight.geom.Vec2;

/** Plane regions between our rings and the overlay library's polygons. */
final class Outlines {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Slivers smaller than this, m2, are rounding and are left out. */
  private static final double SLIVER = 1e-9;

  private Outlines() {}

  static Polygon polygon(List<Vec2> outer, List<List<Vec2>> holes) {
    return FACTORY.createPolygon(
        ring(outer), holes.stream().map(Outlines::ring).toArray(LinearRing[]::new));
  }

  static Polygon polygon(List<Vec2> outer) {
    return polygon(outer, List.of());
  }

  /** The face without its holes. A hole that touches the edge is cut out too. */
  static Geometry of(Face face) {
    Geometry g = polygon(face.outer());
    for (List<Vec2> hole : face.holes()) {
      g = without(g, polygon(hole));
    }
    return g;
  }

  static Geometry nothing() {
    return FACTORY.createPolygon();
  }

  static Geometry common(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
  }

  static Geometry without(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
  }

  /** Every polygon of a region that has an area. */
  static List<Polygon> polygons(Geometry g) {
    List<Polygon> out = new ArrayList<>();
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p && p.getArea() > SLIVER) {
        out.add(p);
      }
    }
    return out;
  }

  /** Corners of a ring, the closing one left out. */
  static List<Vec2> ring(LinearRing ring) {
    List<Vec2> out = new ArrayList<>();
    Coordinate[] c = ring.getCoordinates();
    for (int i = 0; i + 1 < c.length; i++) {
      out.add(new Vec2(c[i].x, c[i].y));
    }
    return out;
  }

  static Geometry point(Vec2 p) {
    return FACTORY.createPoint(new Coordinate(p.x(), p.y()));
  }

  /** Cuts a region into triangles, each counter-clockwise. */
  static void triangles(Geometry g, Consumer<Vec2[]> each) {
    for (Polygon p : polygons(g)) {
      Geometry parts = PolygonTriangulator.triangulate(p);
      for (int i = 0; i < parts.getNumGeometries(); i++) {
        Coordinate[] c = parts.getGeometryN(i).getCoordinates();
        Vec2 a = new Vec2(c[0].x, c[0].y);
        Vec2 b = new Vec2(c[1].x, c[1].y);
        Vec2 d = new Vec2(c[2].x, c[2].y);
        boolean left = b.minus(a).cross(d.minus(a)) > 0;
        each.accept(left ? new Vec2[] {a, b, d} : new Vec2[] {a, d, b});
      }
    }
  }

  private static LinearRing ring(List<Vec2> points) {
    Coordinate[] c = new Coordinate[points.size() + 1];
    for (int i = 0; i < points.size(); i++) {
      c[i] = new Coordinate(points.get(i).x(), points.get(i).y());
    }
    c[points.size()] = c[0].copy();
    return FACTORY.createLinearRing(c);
  }
}
