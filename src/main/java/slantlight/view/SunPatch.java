package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Block;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Surface;

/**
 * A region of a surface that the sun's beam strikes through one opening: the parallel projections
 * of the hole and of the glass set back by the reveal, less those of everything that stands in
 * between. The sun is taken as a point; its half degree would soften the rim.
 *
 * @param region plane coordinates of the surface
 */
record SunPatch(Surface surface, Opening opening, Geometry region) {
  private static final double EPSILON = 1e-6;

  /** Every patch in the house with the sun toward a unit direction. */
  static List<SunPatch> all(House house, Vec3 sun) {
    List<SunPatch> out = new ArrayList<>();
    if (sun.z() <= 0) {
      return out;
    }
    for (Surface s : house.surfaces()) {
      if (sun.dot(s.face().frame().n()) < 1e-4) {
        continue;
      }
      Geometry face = Outlines.of(s.face());
      for (Opening o : house.openings()) {
        Geometry region = through(house, s, face, o, sun);
        if (!Outlines.polygons(region).isEmpty()) {
          out.add(new SunPatch(s, o, region));
        }
      }
    }
    return out;
  }

  private static Geometry through(House house, Surface s, Geometry face, Opening o, Vec3 sun) {
    Frame hole = o.face().frame();
    boolean closed =
        o.kind() == OpeningKind.PASSAGE || o.shade().filter(x -> x.diffusing()).isPresent();
    if (closed || sun.dot(hole.n()) > -EPSILON || o.surfaceId().equals(s.id())) {
      return Outlines.nothing();
    }
    Frame to = s.face().frame();
    Geometry lit = Outlines.common(face, shadow(Outlines.of(o.face()), hole, to, sun));
    if (lit.isEmpty()) {
      return lit;
    }
    Frame glass = moved(hole, hole.n().times(-Math.max(0, o.revealDepth())));
    lit =
        Outlines.common(
            lit, shadow(Outlines.polygon(o.face().outer()).convexHull(), glass, to, sun));
    Frame outside = new Frame(glass.origin(), hole.u(), hole.v(), hole.n().times(-1));
    for (Surface f : house.surfaces()) {
      // What stands inside before the hole, and what of the house stands outside before the glass.
      for (Frame side : List.of(hole, outside)) {
        if (!lit.isEmpty() && !f.id().equals(s.id())) {
          Geometry part = beyond(Outlines.of(f.face()), f.face().frame(), side, EPSILON);
          lit = Outlines.without(lit, shadow(part, f.face().frame(), to, sun));
        }
      }
    }
    for (Block b : house.outside().blocks()) {
      for (Face f : b.faces()) {
        if (!lit.isEmpty()) {
          Geometry part = beyond(Outlines.of(f), f.frame(), outside, EPSILON);
          lit = Outlines.without(lit, shadow(part, f.frame(), to, sun));
        }
      }
    }
    return lit;
  }

  private static Frame moved(Frame f, Vec3 by) {
    return new Frame(f.origin().plus(by), f.u(), f.v(), f.n());
  }

  /** The part of a region of one plane that lies more than a height before another plane. */
  private static Geometry beyond(Geometry region, Frame frame, Frame plane, double height) {
    double a = frame.u().dot(plane.n());
    double b = frame.v().dot(plane.n());
    double c = plane.height(frame.origin()) - height;
    double slope = Math.hypot(a, b);
    if (slope < 1e-9) {
      return c > 0 ? region : Outlines.nothing();
    }
    Vec2 up = new Vec2(a / slope, b / slope);
    Vec2 along = new Vec2(-up.y(), up.x());
    Vec2 edge = up.times(-c / slope);
    double far = 1e4;
    return Outlines.common(
        region,
        Outlines.polygon(
            List.of(
                edge.minus(along.times(far)),
                edge.plus(along.times(far)),
                edge.plus(along.times(far)).plus(up.times(far)),
                edge.minus(along.times(far)).plus(up.times(far)))));
  }

  /** Where a region throws its shadow on a plane; only what stands before the plane does. */
  static Geometry shadow(Geometry region, Frame from, Frame to, Vec3 sun) {
    Geometry front = beyond(region, from, to, EPSILON);
    if (front.isEmpty() || Math.abs(sun.dot(from.n())) < 1e-9) {
      return Outlines.nothing();
    }
    Vec2 o = landing(from.toWorld(new Vec2(0, 0)), to, sun);
    Vec2 u = landing(from.toWorld(new Vec2(1, 0)), to, sun).minus(o);
    Vec2 v = landing(from.toWorld(new Vec2(0, 1)), to, sun).minus(o);
    Geometry cast =
        new AffineTransformation(u.x(), v.x(), o.x(), u.y(), v.y(), o.y()).transform(front);
    return cast.isValid() ? cast : cast.buffer(0);
  }

  private static Vec2 landing(Vec3 p, Frame to, Vec3 sun) {
    return to.toPlane(p.minus(sun.times(to.height(p) / sun.dot(to.n()))));
  }

  /** A point well inside the region. */
  Vec2 inside() {
    Coordinate c = region.getInteriorPoint().getCoordinate();
    return new Vec2(c.x, c.y);
  }
}
