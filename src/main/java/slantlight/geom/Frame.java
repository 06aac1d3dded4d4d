package slantlight.geom;

/**
 * A right-handed orthonormal frame on a plane: n = u x v.
 *
 * <p>For a wall seen from inside its room, u runs to the right, v up and n toward the viewer. For a
 * ceiling n points down, into the room.
 */
public record Frame(Vec3 origin, Vec3 u, Vec3 v, Vec3 n) {
  /** Frame with the given origin, horizontal-most axis u and normal n; u is made square to n. */
  public static Frame of(Vec3 origin, Vec3 uHint, Vec3 normal) {
    Vec3 n = normal.unit();
    Vec3 u = uHint.minus(n.times(uHint.dot(n))).unit();
    return new Frame(origin, u, n.cross(u), n);
  }

  public Vec3 toWorld(Vec2 p) {
    return toWorld(p, 0);
  }

  /** World point of plane point {@code p} lifted by {@code height} metres along n. */
  public Vec3 toWorld(Vec2 p, double height) {
    return new Vec3(
        origin.x() + u.x() * p.x() + v.x() * p.y() + n.x() * height,
        origin.y() + u.y() * p.x() + v.y() * p.y() + n.y() * height,
        origin.z() + u.z() * p.x() + v.z() * p.y() + n.z() * height);
  }

  /** Foot of {@code p} on the plane, in plane coordinates. */
  public Vec2 toPlane(Vec3 p) {
    Vec3 d = p.minus(origin);
    return new Vec2(d.dot(u), d.dot(v));
  }

  /** Signed distance of {@code p} from the plane, metres, positive on the side of n. */
  public double height(Vec3 p) {
    return p.minus(origin).dot(n);
  }

  /** Components (u, v, n) of a world direction. */
  public Vec3 directionToLocal(Vec3 w) {
    return new Vec3(w.dot(u), w.dot(v), w.dot(n));
  }

  public Vec3 directionToWorld(Vec3 local) {
    return u.times(local.x()).plus(v.times(local.y())).plus(n.times(local.z()));
  }

  /**
   * A ring (u and v of each corner in turn) in the world, lifted off the plane.
   *
   * @return x, y and z of each corner in turn
   */
  public double[] toWorld(double[] ring, double height) {
    double[] out = new double[ring.length / 2 * 3];
    for (int i = 0; i < ring.length / 2; i++) {
      Vec3 p = toWorld(new Vec2(ring[2 * i], ring[2 * i + 1]), height);
      out[3 * i] = p.x();
      out[3 * i + 1] = p.y();
      out[3 * i + 2] = p.z();
    }
    return out;
  }
}
