package slantlight.light;

import slantlight.geom.Vec3;

/**
 * What may stand between one place, or the places of one patch, and a polygon: a group of patches
 * or an opening. Most polygons are hidden from a place altogether or not at all, and that is told
 * once for the polygon instead of once for each piece of it.
 */
final class Veil {
  /** From so many faces on the tree of all faces is the quicker way. */
  private static final int MANY = 12;

  private final Interior interior;
  private final int[] faces;
  private final double[] place = new double[3];
  private int count;
  private boolean shut;

  Veil(Interior interior) {
    this.interior = interior;
    this.faces = new int[interior.faces().size()];
  }

  /**
   * Looks from a point, lifted off its surface.
   *
   * @param to corners of a polygon that belongs to the other room, x, y and z of each in turn
   */
  void draw(int room, double px, double py, double pz, int other, double[] to) {
    place[0] = px;
    place[1] = py;
    place[2] = pz;
    shut = room != other && !interior.joined(room, other, px, py, pz, to);
    count = shut || interior.clear(room, other) ? 0 : interior.faces().between(place, to, faces);
  }

  /** Looks from a point just in front of a surface with a normal. */
  void draw(int room, Vec3 p, Vec3 n, int other, double[] to) {
    draw(
        room,
        p.x() + n.x() * Interior.LIFT,
        p.y() + n.y() * Interior.LIFT,
        p.z() + n.z() * Interior.LIFT,
        other,
        to);
  }

  /** True when nothing of the polygon is seen. */
  boolean shut() {
    return shut;
  }

  /** True when all of the polygon is seen. */
  boolean clear() {
    return count == 0 && !shut;
  }

  /** True when a place of the polygon is hidden. */
  boolean hides(double x, double y, double z) {
    if (count == 0) {
      return shut;
    }
    return count < MANY
        ? interior.faces().between(faces, count, place[0], place[1], place[2], x, y, z)
        : interior.blocked(place[0], place[1], place[2], x, y, z);
  }

  /** True when a place just in front of a surface with a normal is hidden. */
  boolean hides(Vec3 q, Vec3 m) {
    return hides(
        q.x() + m.x() * Interior.LIFT,
        q.y() + m.y() * Interior.LIFT,
        q.z() + m.z() * Interior.LIFT);
  }
}
