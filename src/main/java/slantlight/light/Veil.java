package slantlight.light;

import slantlight.geom.Vec3;

/**
 * What may stand between one point and the patches of one group. Most groups are seen by nothing or
 * by all of a point, and that is told once for the group instead of once for each piece of it.
 */
final class Veil {
  /** From so many faces on the tree of all faces is the quicker way. */
  private static final int MANY = 12;

  private final Interior interior;
  private final Mesh mesh;
  private final int[] faces;
  private int count;
  private boolean shut;
  private double px;
  private double py;
  private double pz;

  Veil(Interior interior, Mesh mesh) {
    this.interior = interior;
    this.mesh = mesh;
    this.faces = new int[interior.faces().size()];
  }

  /**
   * Looks from a point of a surface at a group.
   *
   * @param n normal at the point
   */
  void draw(int room, Vec3 p, Vec3 n, int group) {
    px = p.x() + n.x() * Interior.LIFT;
    py = p.y() + n.y() * Interior.LIFT;
    pz = p.z() + n.z() * Interior.LIFT;
    int other = mesh.patches.get(mesh.groupStart[group]).room();
    double[] corners = mesh.groupCorners[group];
    shut = false;
    count = 0;
    if (interior.clear(room, other)) {
      return;
    }
    shut = room != other && !interior.joined(room, other, px, py, pz, corners);
    if (!shut) {
      count = interior.faces().between(px, py, pz, corners, faces);
    }
  }

  /** True when nothing of the group is seen. */
  boolean shut() {
    return shut;
  }

  /**
   * True when a place of the group is hidden.
   *
   * @param q a place of the group
   * @param m the group's normal
   */
  boolean hides(Vec3 q, Vec3 m) {
    if (count == 0 || shut) {
      return shut;
    }
    double x = q.x() + m.x() * Interior.LIFT;
    double y = q.y() + m.y() * Interior.LIFT;
    double z = q.z() + m.z() * Interior.LIFT;
    return count < MANY
        ? interior.faces().between(faces, count, px, py, pz, x, y, z)
        : interior.blocked(px, py, pz, x, y, z);
  }
}
