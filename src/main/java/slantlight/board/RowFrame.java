package slantlight.board;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.scene.BoardRun;
import slantlight.scene.Framing;

/**
 * Coordinates in which rows are level: s runs along the boards, t from row to row. Either
 * handedness.
 */
record RowFrame(Vec2 s, Vec2 t) {
  /** Frame of rows that run this way over the framing. */
  static RowFrame of(Framing framing, BoardRun run) {
    Vec2 across = framing.across();
    Vec2 along = positive(new Vec2(-across.y(), across.x()));
    return run == BoardRun.ACROSS_FRAMING
        ? new RowFrame(across, along)
        : new RowFrame(along, across);
  }

  /** Turned so that it points to the right, or up when square to the right. */
  private static Vec2 positive(Vec2 d) {
    boolean backward = Math.abs(d.x()) < 1e-9 ? d.y() < 0 : d.x() < 0;
    return backward ? d.times(-1) : d;
  }

  Vec2 toRow(Vec2 p) {
    return new Vec2(p.dot(s), p.dot(t));
  }

  Vec2 toPlane(double along, double across) {
    // Adding 0 turns a negative zero into zero.
    return new Vec2(s.x() * along + t.x() * across + 0.0, s.y() * along + t.y() * across + 0.0);
  }

  /** Corners of a rectangle of this frame in plane coordinates, counter-clockwise. */
  List<Vec2> rectangle(double s0, double t0, double s1, double t1) {
    Vec2 a = toPlane(s0, t0);
    Vec2 b = toPlane(s1, t0);
    Vec2 c = toPlane(s1, t1);
    Vec2 d = toPlane(s0, t1);
    return s.cross(t) > 0 ? List.of(a, b, c, d) : List.of(a, d, c, b);
  }

  /** Smallest rectangle of this frame around a ring. */
  Box box(List<Vec2> ring) {
    double s0 = Double.POSITIVE_INFINITY;
    double s1 = Double.NEGATIVE_INFINITY;
    double t0 = Double.POSITIVE_INFINITY;
    double t1 = Double.NEGATIVE_INFINITY;
    for (Vec2 p : ring) {
      Vec2 q = toRow(p);
      s0 = Math.min(s0, q.x());
      s1 = Math.max(s1, q.x());
      t0 = Math.min(t0, q.y());
      t1 = Math.max(t1, q.y());
    }
    return new Box(s0, s1, t0, t1);
  }

  /** A rectangle in row coordinates, m. */
  record Box(double s0, double s1, double t0, double t1) {
    double length() {
      return s1 - s0;
    }

    double width() {
      return t1 - t0;
    }
  }

  /** The sides of every ring of a face. */
  List<Side> sides(Face face) {
    List<Side> out = new ArrayList<>();
    addRing(face.outer(), out);
    for (List<Vec2> hole : face.holes()) {
      addRing(hole, out);
    }
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
