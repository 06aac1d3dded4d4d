package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import slantlight.geom.Rings;
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

  /**
   * True when nothing but the outline of an opening can keep the beam of a sun from a point before
   * it.
   *
   * @param clear true when nothing inside can stand before that opening
   */
  boolean open(Aperture a, boolean clear, Vec3 p, Vec3 sun) {
    double t = a.height(p.x(), p.y(), p.z()) / cosine(a, sun.x(), sun.y(), sun.z());
    return open(a, clear, t, p.x(), p.y(), p.z(), sun.x(), sun.y(), sun.z());
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

  /**
   * Boxes on the plane of an opening beyond which nothing outside stands between it and a sun that
   * shines in: least u, least v, greatest u, greatest v of each.
   */
  List<double[]> shades(Aperture a, Vec3 sun) {
    double cos = cosine(a, sun.x(), sun.y(), sun.z());
    double slipU = -sun.dot(a.frame.u()) / cos;
    double slipV = -sun.dot(a.frame.v()) / cos;
    List<double[]> out = new ArrayList<>();
    for (Shade shade : before.computeIfAbsent(a, outdoors::before)) {
      double[] box = shade.thrown(slipU, slipV);
      if (Rings.meet(box, a.box)) {
        out.add(box);
      }
    }
    return out;
  }

  static double cosine(Aperture a, double dx, double dy, double dz) {
    Vec3 n = a.frame.n();
    return Math.max(1e-9, -(dx * n.x() + dy * n.y() + dz * n.z()));
  }
}
