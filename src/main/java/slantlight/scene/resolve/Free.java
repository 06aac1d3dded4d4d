package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.file.RoomFile;
import slantlight.scene.file.Values;

/** Flat faces from corners in space. */
final class Free {
  /** How far a corner may stand off the plane of the others, m. */
  private static final double FLATNESS = 0.002;

  private Free() {}

  /** Face of a free polygon of the file; empty after adding faults. */
  static Optional<Face> face(Scope scope, RoomFile.SurfaceFile s) {
    return face(scope, s, "points", s.points());
  }

  /** Face of corners listed counter-clockwise seen from its front; empty after adding faults. */
  static Optional<Face> face(Scope scope, Object record, String key, List<Values.Point> points) {
    for (Values.Point p : points) {
      if (p.z().isEmpty()) {
        scope.fault(p, "this corner has no height", "give [x, y, z]");
        return Optional.empty();
      }
    }
    List<Vec3> corners = points.stream().map(p -> p.at(0)).toList();
    Vec3 normal = newell(corners);
    if (normal.length() < 1e-4) {
      scope.fault(record, key, "the polygon encloses no area", "list its corners in order");
      return Optional.empty();
    }
    Frame frame = Frame.of(corners.get(0), longest(corners), normal);
    List<Vec2> ring = new ArrayList<>();
    for (Vec3 c : corners) {
      double off = Math.abs(frame.height(c));
      if (off > FLATNESS) {
        scope.fault(
            record,
            key,
            "the polygon is not flat: a corner stands " + scope.length(off) + " off its plane",
            "move the corner or split the polygon");
        return Optional.empty();
      }
      ring.add(frame.toPlane(c));
    }
    Optional<String> fault = Plan.fault(ring);
    if (fault.isPresent()) {
      scope.fault(
          record, key, "the polygon " + fault.get(), "list its corners in order, each once");
      return Optional.empty();
    }
    return Optional.of(Face.of(frame, ring));
  }

  /** Twice the vector area of a polygon (Newell's method). */
  static Vec3 newell(List<Vec3> corners) {
    Vec3 sum = Vec3.ZERO;
    Vec3 o = corners.get(0);
    for (int i = 1; i + 1 < corners.size(); i++) {
      sum = sum.plus(corners.get(i).minus(o).cross(corners.get(i + 1).minus(o)));
    }
    return sum;
  }

  private static Vec3 longest(List<Vec3> corners) {
    Vec3 best = Vec3.EAST;
    double most = 0;
    for (int i = 0; i < corners.size(); i++) {
      Vec3 d = corners.get((i + 1) % corners.size()).minus(corners.get(i));
      // Level edges first, so that u lies level where it can.
      double weight = d.length() * (Math.abs(d.z()) < 1e-6 ? 1000 : 1);
      if (weight > most * (1 + 1e-9)) {
        most = weight;
        best = d;
      }
    }
    return best;
  }

  /** The six faces of an upright box, outward. Order: bottom, top, south, east, north, west. */
  static List<Face> box(Vec3 a, Vec3 b) {
    double w = b.x() - a.x();
    double d = b.y() - a.y();
    double h = b.z() - a.z();
    return List.of(
        rectangle(new Vec3(a.x(), b.y(), a.z()), Vec3.EAST, Vec3.DOWN, w, d),
        rectangle(new Vec3(a.x(), a.y(), b.z()), Vec3.EAST, Vec3.UP, w, d),
        rectangle(a, Vec3.EAST, Vec3.NORTH.times(-1), w, h),
        rectangle(new Vec3(b.x(), a.y(), a.z()), Vec3.NORTH, Vec3.EAST, d, h),
        rectangle(new Vec3(b.x(), b.y(), a.z()), Vec3.EAST.times(-1), Vec3.NORTH, w, h),
        rectangle(new Vec3(a.x(), b.y(), a.z()), Vec3.NORTH.times(-1), Vec3.EAST.times(-1), d, h));
  }

  private static Face rectangle(Vec3 origin, Vec3 u, Vec3 normal, double w, double h) {
    return Face.of(Frame.of(origin, u, normal), Plan.rectangle(0, 0, w, h));
  }
}
