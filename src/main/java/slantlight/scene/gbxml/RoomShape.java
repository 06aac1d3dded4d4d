package slantlight.scene.gbxml;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * The plan of a room from its floor polygons.
 *
 * @param outline counter-clockwise, no corner on a straight line
 * @param voids outlines of solids inside
 * @param pieces separate parts that the floor fell into; more than one cannot be one room
 */
record RoomShape(List<Vec2> outline, List<List<Vec2>> voids, int pieces) {
  private static final double STRAIGHT = 2e-3;

  /** Gaps and overlaps of up to this much between floor polygons are closed, 1/m. */
  private static final GeometryFactory MILLIMETRES = new GeometryFactory(new PrecisionModel(1000));

  /** Joins floor polygons; the largest piece is the room. */
  static RoomShape of(List<List<Vec3>> floors) {
    List<Geometry> shapes = new ArrayList<>();
    for (List<Vec3> floor : floors) {
      Coordinate[] ring = new Coordinate[floor.size() + 1];
      for (int i = 0; i < floor.size(); i++) {
        ring[i] = new Coordinate(rounded(floor.get(i).x()), rounded(floor.get(i).y()));
      }
      ring[floor.size()] = ring[0];
      Geometry shape = MILLIMETRES.createPolygon(ring);
      shapes.add(shape.isValid() ? shape : shape.buffer(0));
    }
    Geometry union = UnaryUnionOp.union(shapes);
    Polygon largest = null;
    int pieces = 0;
    for (int i = 0; i < union.getNumGeometries(); i++) {
      if (union.getGeometryN(i) instanceof Polygon p && p.getArea() > 1e-4) {
        pieces++;
        largest = largest == null || p.getArea() > largest.getArea() ? p : largest;
      }
    }
    if (largest == null) {
      return new RoomShape(List.of(), List.of(), 0);
    }
    List<List<Vec2>> voids = new ArrayList<>();
    for (int i = 0; i < largest.getNumInteriorRing(); i++) {
      voids.add(ring(largest.getInteriorRingN(i)));
    }
    return new RoomShape(ring(largest.getExteriorRing()), voids, pieces);
  }

  private static double rounded(double metres) {
    return Math.rint(metres * 1000) / 1000;
  }

  private static List<Vec2> ring(LinearRing ring) {
    List<Vec2> out = new ArrayList<>();
    Coordinate[] c = ring.getCoordinates();
    for (int i = 0; i < c.length - 1; i++) {
      out.add(new Vec2(c[i].x, c[i].y));
    }
    if (Face.signedArea(out) < 0) {
      java.util.Collections.reverse(out);
    }
    for (int i = 0; i < out.size() && out.size() > 3; ) {
      Vec2 a = out.get((i + out.size() - 1) % out.size());
      Vec2 b = out.get((i + 1) % out.size());
      Vec2 d = b.minus(a);
      double off = d.length() == 0 ? 0 : Math.abs(d.cross(out.get(i).minus(a))) / d.length();
      if (off < STRAIGHT) {
        out.remove(i);
        i = Math.max(0, i - 1);
      } else {
        i++;
      }
    }
    return out;
  }
}
