package slantlight.board;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Vec2;

/**
 * Coordinates in which rows are level: s runs along the boards, t from row to row. Either
 * handedness.
 */
record RowFrame(Vec2 s, Vec2 t) {
  Vec2 toRow(Vec2 p) {
    return new Vec2(p.dot(s), p.dot(t));
  }

  Vec2 toPlane(double along, double across) {
    // Adding 0 turns a negative zero into zero.
    Vec2 p = s.times(along).plus(t.times(across));
    return new Vec2(p.x() + 0.0, p.y() + 0.0);
  }

  /** Corners of a rectangle of this frame in plane coordinates, counter-clockwise. */
  List<Vec2> rectangle(double s0, double t0, double s1, double t1) {
    Vec2 a = toPlane(s0, t0);
    Vec2 b = toPlane(s1, t0);
    Vec2 c = toPlane(s1, t1);
    Vec2 d = toPlane(s0, t1);
    return s.cross(t) > 0 ? List.of(a, b, c, d) : List.of(a, d, c, b);
  }

  /** The sides of every ring of a face. */
  List<Side> sides(Face face) {
    List<Side> out = new ArrayList<>();
    addRing(face.outer(), out);
    face.holes().forEach(hole -> addRing(hole, out));
    return out;
  }

  private void addRing(List<Vec2> ring, List<Side> out) {
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      Vec2 p = toRow(ring.get(j));
      Vec2 q = toRow(ring.get(i));
      out.add(
          p.x() <= q.x()
              ? new Side(p.x(), p.y(), q.x(), q.y())
              : new Side(q.x(), q.y(), p.x(), p.y()));
    }
  }

  /** One side of a ring, s0 at most s1. */
  record Side(double s0, double t0, double s1, double t1) {
    double tAt(double at) {
      return s1 == s0 ? t0 : t0 + (t1 - t0) * (at - s0) / (s1 - s0);
    }
  }
}
