package slantlight.board;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Surface;

/**
 * Lengths of the corners between boarded surfaces of the same room. A corner that two surfaces
 * share counts half on each, so that sums over surfaces are right.
 */
final class Corners {
  /** Surfaces this close meet, m. */
  private static final double TOUCH = 2e-3;

  private final Map<String, double[]> lengths = new HashMap<>();

  private Corners() {}

  static Corners of(House house) {
    Corners corners = new Corners();
    List<Surface> boarded = house.surfaces().stream().filter(Surface::boarded).toList();
    for (Surface a : boarded) {
      List<Surface> others =
          boarded.stream()
              .filter(b -> b.roomId().equals(a.roomId()) && !b.id().equals(a.id()))
              .toList();
      for (Side side : sides(a.face())) {
        corners.measure(a, side, others);
      }
    }
    return corners;
  }

  /** Inside corners and flat seams with other surfaces: taped, m. */
  double inside(String surfaceId) {
    return lengths.getOrDefault(surfaceId, new double[2])[0];
  }

  /** Outside corners: beaded, m. */
  double outside(String surfaceId) {
    return lengths.getOrDefault(surfaceId, new double[2])[1];
  }

  /** A side of a face's outer ring in the world; inward points into the face. */
  private record Side(Vec3 from, Vec3 to, Vec3 inward) {
    double length() {
      return from.distance(to);
    }
  }

  private static List<Side> sides(Face face) {
    List<Side> out = new ArrayList<>();
    List<Vec2> ring = face.outer();
    double turn = Math.signum(Face.signedArea(ring));
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      Vec2 p = ring.get(j);
      Vec2 q = ring.get(i);
      if (p.distance(q) > TOUCH) {
        Vec2 d = q.minus(p).unit();
        Frame f = face.frame();
        Vec3 inward = f.directionToWorld(new Vec3(-d.y() * turn, d.x() * turn, 0));
        out.add(new Side(f.toWorld(p), f.toWorld(q), inward));
      }
    }
    return out;
  }

  private void measure(Surface a, Side side, List<Surface> others) {
    double shared = 0;
    for (Surface b : others) {
      for (Side s : sides(b.face())) {
        double length = overlap(side, s);
        if (length > TOUCH) {
          shared += length;
          add(a.id(), s.inward.dot(a.face().frame().n()), length / 2);
        }
      }
    }
    if (shared < TOUCH) {
      measureAgainstFields(a, side, others);
    }
  }

  /** A side that ends on the middle of another surface, such as a soffit's on a ceiling. */
  private void measureAgainstFields(Surface a, Side side, List<Surface> others) {
    Vec3 middle = side.from.plus(side.to).times(0.5);
    for (Surface b : others) {
      Frame f = b.face().frame();
      boolean lies =
          Math.abs(f.height(side.from)) < TOUCH
              && Math.abs(f.height(side.to)) < TOUCH
              && b.face().contains(f.toPlane(middle));
      if (lies) {
        add(a.id(), side.inward.dot(f.n()), side.length());
        return;
      }
    }
  }

  private void add(String surfaceId, double rise, double length) {
    double[] l = lengths.computeIfAbsent(surfaceId, k -> new double[2]);
    l[rise < -1e-6 ? 1 : 0] += length;
  }

  /** Length that two sides have in common, m. */
  private static double overlap(Side a, Side b) {
    Vec3 d = a.to.minus(a.from).unit();
    double p = b.from.minus(a.from).dot(d);
    double q = b.to.minus(a.from).dot(d);
    boolean onLine =
        b.from.distance(a.from.plus(d.times(p))) < TOUCH
            && b.to.distance(a.from.plus(d.times(q))) < TOUCH;
    return onLine ? Math.min(a.length(), Math.max(p, q)) - Math.max(0, Math.min(p, q)) : 0;
  }
}
