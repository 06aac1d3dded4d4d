package slantlight.reference;

import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * A flat plate with holes, for rays. Written apart from the program's own geometry on purpose:
 * crossings are decided by winding angles' signs in the dominant plane, not in the face's frame.
 */
final class Plate {
  final double nx;
  final double ny;
  final double nz;
  private final double offset;
  private final int dropped;
  private final double[][] rings;
  private final double[] bounds;

  Plate(Face face) {
    Vec3 n = face.frame().n();
    nx = n.x();
    ny = n.y();
    nz = n.z();
    Vec3 first = face.frame().toWorld(face.outer().get(0));
    offset = n.dot(first);
    dropped = dominant(n);
    rings = new double[1 + face.holes().size()][];
    rings[0] = projected(face, face.outer());
    for (int i = 1; i < rings.length; i++) {
      rings[i] = projected(face, face.holes().get(i - 1));
    }
    bounds = bounds(rings[0]);
  }

  /**
   * Distance along a ray to the plate, or infinity when it is missed or no farther than {@code
   * near}.
   */
  double distance(
      double ox, double oy, double oz, double dx, double dy, double dz, double near, double far) {
    double facing = nx * dx + ny * dy + nz * dz;
    if (facing == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double t = (offset - nx * ox - ny * oy - nz * oz) / facing;
    if (!(t > near && t < far)) {
      return Double.POSITIVE_INFINITY;
    }
    double px = ox + t * dx;
    double py = oy + t * dy;
    double pz = oz + t * dz;
    double a = dropped == 0 ? py : px;
    double b = dropped == 2 ? py : pz;
    return covers(a, b) ? t : Double.POSITIVE_INFINITY;
  }

  /** Side of the plane on which a point lies: positive on the side of the normal, m. */
  double height(double x, double y, double z) {
    return nx * x + ny * y + nz * z - offset;
  }

  private boolean covers(double a, double b) {
    if (a < bounds[0] || a > bounds[1] || b < bounds[2] || b > bounds[3]) {
      return false;
    }
    boolean in = winds(rings[0], a, b);
    for (int i = 1; in && i < rings.length; i++) {
      in = !winds(rings[i], a, b);
    }
    return in;
  }

  /** Winding number of a ring about a point is not zero. */
  private static boolean winds(double[] ring, double a, double b) {
    int winding = 0;
    int n = ring.length;
    double a0 = ring[n - 2];
    double b0 = ring[n - 1];
    for (int i = 0; i < n; i += 2) {
      double a1 = ring[i];
      double b1 = ring[i + 1];
      double left = (a1 - a0) * (b - b0) - (a - a0) * (b1 - b0);
      if (b0 <= b && b1 > b && left > 0) {
        winding++;
      } else if (b0 > b && b1 <= b && left < 0) {
        winding--;
      }
      a0 = a1;
      b0 = b1;
    }
    return winding != 0;
  }

  private double[] projected(Face face, List<Vec2> ring) {
    double[] out = new double[2 * ring.size()];
    for (int i = 0; i < ring.size(); i++) {
      Vec3 p = face.frame().toWorld(ring.get(i));
      out[2 * i] = dropped == 0 ? p.y() : p.x();
      out[2 * i + 1] = dropped == 2 ? p.y() : p.z();
    }
    return out;
  }

  private static int dominant(Vec3 n) {
    double x = Math.abs(n.x());
    double y = Math.abs(n.y());
    double z = Math.abs(n.z());
    if (x >= y && x >= z) {
      return 0;
    }
    return y >= z ? 1 : 2;
  }

  private static double[] bounds(double[] ring) {
    double[] out = {
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (int i = 0; i < ring.length; i += 2) {
      out[0] = Math.min(out[0], ring[i]);
      out[1] = Math.max(out[1], ring[i]);
      out[2] = Math.min(out[2], ring[i + 1]);
      out[3] = Math.max(out[3], ring[i + 1]);
    }
    return out;
  }
}
