package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/** What a sun throws on planes, as shapes of the JTS topology library. */
final class FleckShapes {
  static final GeometryFactory JTS = new GeometryFactory();

  /** Shapes are laid on each other with corners to the nanometre, which never fails. */
  private static final PrecisionModel NANOMETRES = new PrecisionModel(1e9);

  private FleckShapes() {}

  /** Anywhere that shines through a window to the south. */
  static Vec3 sun(Random random) {
    double azimuth = Math.toRadians(110 + 140 * random.nextDouble());
    return Vec3.ofAzimuthAltitude(azimuth, Math.toRadians(4 + 60 * random.nextDouble()));
  }

  /** A rectangle that stands on its edge, facing south or north. */
  static List<Vec3> upright(double x0, double x1, double z0, double z1, double y) {
    return List.of(
        new Vec3(x0, y, z0), new Vec3(x1, y, z0), new Vec3(x1, y, z1), new Vec3(x0, y, z1));
  }

  /** The face inside a ring that runs counter-clockwise seen from its front. */
  static Face face(List<Vec3> ring) {
    Vec3 along = ring.get(1).minus(ring.get(0));
    Frame frame = Frame.of(ring.get(0), along, along.cross(ring.get(2).minus(ring.get(1))));
    return Face.of(frame, ring.stream().map(frame::toPlane).toList());
  }

  /**
   * Six sides of something with two alike ends, seen from outside.
   *
   * @param end convex, counter-clockwise seen from its front
   * @param along from it to the other end, away from its front
   */
  static List<Face> prism(List<Vec3> end, Vec3 along) {
    List<Face> out = new ArrayList<>();
    List<Vec3> other = new ArrayList<>();
    for (int i = 0, j = end.size() - 1; i < end.size(); j = i++) {
      Vec3 a = end.get(j);
      Vec3 b = end.get(i);
      out.add(face(List.of(b, a, a.plus(along), b.plus(along))));
      other.add(0, b.plus(along));
    }
    out.add(face(end));
    out.add(face(other));
    return out;
  }

  /** A ring moved along the beam onto a plane. */
  static Geometry thrown(Frame plane, List<Vec3> ring, Vec3 sun) {
    double cos = sun.dot(plane.n());
    return polygon(
        ring.stream()
            .map(p -> p.minus(sun.times(p.minus(plane.origin()).dot(plane.n()) / cos)))
            .map(plane::toPlane)
            .toList());
  }

  /** What comes on a plane through an opening to the south, its glass set back by a reveal. */
  static Geometry through(Frame plane, List<Vec3> window, double reveal, Vec3 sun) {
    List<Vec3> glass = window.stream().map(p -> p.minus(new Vec3(0, reveal, 0))).toList();
    return both(thrown(plane, window, sun), thrown(plane, glass, sun));
  }

  /** All that some rings throw on a plane. */
  static Geometry shadow(Frame plane, List<List<Vec3>> rings, Vec3 sun) {
    List<Geometry> shadows = rings.stream().map(r -> thrown(plane, r, sun)).toList();
    return UnaryUnionNG.union(shadows, JTS, NANOMETRES);
  }

  static Geometry both(Geometry a, Geometry b) {
    return overlay(a, b, OverlayNG.INTERSECTION);
  }

  static Geometry either(Geometry a, Geometry b) {
    return overlay(a, b, OverlayNG.UNION);
  }

  static Geometry without(Geometry a, Geometry b) {
    return overlay(a, b, OverlayNG.DIFFERENCE);
  }

  private static Geometry overlay(Geometry a, Geometry b, int operation) {
    OverlayNG overlay = new OverlayNG(a, b, NANOMETRES, operation);
    overlay.setStrictMode(true);
    return overlay.getResult();
  }

  static Geometry shape(Patch patch) {
    Geometry out = JTS.createPolygon();
    for (double[] ring : patch.rings()) {
      List<Vec2> corners = new ArrayList<>();
      for (int i = 0; i < ring.length; i += 2) {
        corners.add(new Vec2(ring[i], ring[i + 1]));
      }
      Geometry polygon = polygon(corners);
      out = Rings.area(ring) > 0 ? out.union(polygon) : out.difference(polygon);
    }
    return out;
  }

  private static Geometry polygon(List<Vec2> ring) {
    Coordinate[] c = new Coordinate[ring.size() + 1];
    for (int i = 0; i < c.length; i++) {
      Vec2 p = ring.get(i % ring.size());
      c[i] = new Coordinate(p.x(), p.y());
    }
    return JTS.createPolygon(c);
  }
}
