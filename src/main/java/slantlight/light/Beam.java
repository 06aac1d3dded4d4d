package slantlight.light;

import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import slantlight.geom.Vec3;

/** The sun's own beam at surface points. */
final class Beam {
  private final Interior interior;
  private final Outdoors outdoors;

  /** What may ever stand in the sun of an opening. */
  private final ConcurrentMap<Aperture, Shade[]> before = new ConcurrentHashMap<>();

  Beam(Interior interior, Outdoors outdoors) {
    this.interior = interior;
    this.outdoors = outdoors;
  }

  /** The opening through which a point in a room sees a direction of the sky, or null. */
  Aperture through(int room, double px, double py, double pz, double dx, double dy, double dz) {
    if (dz <= 0) {
      return null;
    }
    for (Aperture a : interior.reach(room)) {
      if (a.cloth == null && reaches(a, interior.clear(room, a.room), px, py, pz, dx, dy, dz)) {
        return a;
      }
    }
    return null;
  }

  /**
   * True when a point, lifted off its surface, sees a direction of the sky through an opening.
   *
   * @param clear true when nothing inside can stand before that opening
   */
  boolean reaches(
      Aperture a, boolean clear, double px, double py, double pz, double dx, double dy, double dz) {
    double t = a.meets(px, py, pz, dx, dy, dz);
    return t >= 0 && open(a, clear, t, px, py, pz, dx, dy, dz);
  }

  private boolean open(
      Aperture a,
      boolean clear,
      double t,
      double px,
      double py,
      double pz,
      double dx,
      double dy,
      double dz) {
    if (!clear && interior.faces().any(px, py, pz, dx, dy, dz, 1e-6, t - 1e-6) >= 0) {
      return false;
    }
    double s = t + a.depth(cosine(a, dx, dy, dz));
    return outdoors.open(px + s * dx, py + s * dy, pz + s * dz, dx, dy, dz);
  }

  /** Where on its plane the sun shines through an opening: convex rings without overlap. */
  List<double[]> lit(Aperture a, Vec3 sun) {
    if (a.cloth != null || a.isBlack() || sun.dot(a.frame.n()) >= -1e-9) {
      return List.of();
    }
    double cos = cosine(a, sun.x(), sun.y(), sun.z());
    return Shade.lit(
        a.filledBy(sun.x(), sun.y(), sun.z()),
        before.computeIfAbsent(a, outdoors::before),
        -sun.dot(a.frame.u()) / cos,
        -sun.dot(a.frame.v()) / cos);
  }

  static double cosine(Aperture a, double dx, double dy, double dz) {
    Vec3 n = a.frame.n();
    return Math.max(1e-9, -(dx * n.x() + dy * n.y() + dz * n.z()));
  }
}
