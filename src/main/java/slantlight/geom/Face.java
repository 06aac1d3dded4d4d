package slantlight.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * A flat region: an outer ring and holes in the plane of a frame, metres. Rings are open (the last
 * point is not the first again) and simple; the outer ring runs counter-clockwise seen from the
 * side of n, holes either way.
 */
public record Face(Frame frame, List<Vec2> outer, List<List<Vec2>> holes) {
  public Face {
    if (outer.size() < 3) {
      throw new IllegalArgumentException(
          "a face needs at least three corners, not " + outer.size());
    }
    outer = List.copyOf(outer);
    holes = holes.stream().map(List::copyOf).toList();
  }

  public static Face of(Frame frame, List<Vec2> outer) {
    return new Face(frame, outer, List.of());
  }

  /** Signed area of a ring, m2, positive when it runs counter-clockwise. */
  public static double signedArea(List<Vec2> ring) {
    double a = 0;
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      a += ring.get(j).cross(ring.get(i));
    }
    return a / 2;
  }

  /** Area without the holes, m2. */
  public double area() {
    double a = Math.abs(signedArea(outer));
    for (List<Vec2> hole : holes) {
      a -= Math.abs(signedArea(hole));
    }
    return a;
  }

  /** True when the plane point lies in the outer ring and in no hole. */
  public boolean contains(Vec2 p) {
    if (!inside(outer, p)) {
      return false;
    }
    for (List<Vec2> hole : holes) {
      if (inside(hole, p)) {
        return false;
      }
    }
    return true;
  }

  /** Even-odd test of a point against one ring. */
  public static boolean inside(List<Vec2> ring, Vec2 p) {
    boolean in = false;
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      Vec2 a = ring.get(i);
      Vec2 b = ring.get(j);
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        in = !in;
      }
    }
    return in;
  }

  /** Convex rings, counter-clockwise, of which the face is made up; plane coordinates. */
  public List<double[]> parts() {
    List<double[]> rings = new ArrayList<>();
    rings.add(Rings.array(outer));
    holes.forEach(h -> rings.add(Rings.array(h)));
    return Trapezoids.of(rings);
  }

  /** Corners of the outer ring in the world. */
  public List<Vec3> corners() {
    List<Vec3> out = new ArrayList<>(outer.size());
    for (Vec2 p : outer) {
      out.add(frame.toWorld(p));
    }
    return out;
  }

  /** Centroid of the outer ring, in plane coordinates. */
  public Vec2 centroid() {
    double a = 0;
    double cx = 0;
    double cy = 0;
    for (int i = 0, j = outer.size() - 1; i < outer.size(); j = i++) {
      Vec2 p = outer.get(j);
      Vec2 q = outer.get(i);
      double c = p.cross(q);
      a += c;
      cx += (p.x() + q.x()) * c;
      cy += (p.y() + q.y()) * c;
    }
    return new Vec2(cx / (3 * a), cy / (3 * a));
  }
}
