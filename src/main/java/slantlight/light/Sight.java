package slantlight.light;

import java.util.ArrayDeque;
import slantlight.geom.Frame;
import slantlight.geom.Lambert;
import slantlight.geom.Rings;
import slantlight.geom.Vec3;

/**
 * Looks from one point through openings, cone by cone. Each cone is a piece of the opening whose
 * light vector for unit luminance is exact (Lambert's formula), so that any opening behind which
 * the luminance is even gives exact illuminance and light vector. One per thread.
 */
final class Sight {
  /** Hears of the cones. */
  interface ConeSink {
    /**
     * One cone.
     *
     * @param dx unit direction
     * @param weight length of the cone's light vector for unit luminance outside, glass included
     * @param view what lies behind; valid during the call
     */
    void cone(Aperture aperture, double dx, double dy, double dz, double weight, View view);
  }

  /** A mirror is looked at in finer cones: the glitter is narrow. */
  private static final double MIRROR_SHARE = 0.5;

  private final Interior interior;
  private final Outdoors outdoors;
  private final double coneAngle;

  /** Cones cut by an edge inside or outside are divided down to this angle. */
  private final double edgeAngle;

  private final Veil veil;
  private final View view = new View();
  private final double[] vector = new double[3];
  private final double[] t = new double[1];

  /**
   * Rings still to be looked at. Not recursion: the JIT copies a method that calls itself into
   * itself, and this one is long.
   */
  private final ArrayDeque<double[]> pending = new ArrayDeque<>();

  private double px;
  private double py;
  private double pz;
  private double lx;
  private double ly;
  private double lz;
  private Aperture aperture;
  private ConeSink sink;

  Sight(Interior interior, Outdoors outdoors, double coneAngle, double edgeAngle) {
    this.interior = interior;
    this.veil = new Veil(interior);
    this.outdoors = outdoors;
    this.coneAngle = coneAngle;
    this.edgeAngle = edgeAngle;
  }

  /** All cones of light from outside in front of a surface point. */
  void outside(int room, Vec3 p, Vec3 n, ConeSink to) {
    place(p, n);
    sink = to;
    for (Aperture a : interior.reach(room)) {
      if (a.isBlack()) {
        continue;
      }
      double[] ring = front(a, a.seenFrom(px, py, pz), n);
      if (ring.length == 0) {
        continue;
      }
      if (!standBefore(a, room)) {
        continue;
      }
      if (a.cloth != null) {
        divide(ring, true);
        continue;
      }
      // The horizon is where the ground ends: cut there first, exactly.
      Frame f = a.frame;
      double c = f.origin().z() - pz;
      double[] sky = Rings.clip(ring, f.u().z(), f.v().z(), c);
      double[] ground = Rings.clip(ring, -f.u().z(), -f.v().z(), -c);
      if (sky.length > 0) {
        divide(sky, false);
      }
      if (ground.length > 0) {
        divide(ground, false);
      }
    }
  }

  /**
   * Share of a surface point's cosine-weighted hemisphere that is taken by unshaded holes to the
   * outside, 0 to 1.
   */
  double openShare(int room, Vec3 p, Vec3 n) {
    place(p, n);
    double[] sum = new double[1];
    for (Aperture a : interior.reach(room)) {
      if (a.height(px, py, pz) > 1e-6) {
        double[] ring = front(a, a.ring, n);
        if (ring.length > 0 && standBefore(a, room)) {
          openParts(ring, n, sum);
        }
      }
    }
    return sum[0] / Math.PI;
  }

  /** Turns to an opening; false when nothing of it can be seen. */
  private boolean standBefore(Aperture a, int room) {
    aperture = a;
    veil.draw(room, lx, ly, lz, a.room, a.corners());
    return !veil.shut();
  }

  private void openParts(double[] hole, Vec3 n, double[] sum) {
    pending.push(hole);
    while (!pending.isEmpty()) {
      double[] ring = pending.pop();
      double[] cut = halving(ring, 0.4);
      if (cut == null) {
        double[] m = Rings.middle(ring);
        int here = inside(m[0], m[1]);
        boolean mixed = false;
        for (int i = 0; i < ring.length && !mixed; i += 2) {
          mixed = inside(inward(ring[i], m[0]), inward(ring[i + 1], m[1])) != here;
        }
        cut = mixed ? halving(ring, 0.1) : null;
        if (cut == null && here >= 0) {
          lambert(ring);
          sum[0] += Math.max(0, vector[0] * n.x() + vector[1] * n.y() + vector[2] * n.z());
        }
      }
      if (cut != null) {
        halve(ring, cut);
      }
    }
  }

  /** Leaves the halves of a ring to be looked at, the lower one first. */
  private void halve(double[] ring, double[] cut) {
    double[] high = Rings.clip(ring, cut[0], cut[1], -cut[2]);
    if (high.length > 0) {
      pending.push(high);
    }
    double[] low = Rings.clip(ring, -cut[0], -cut[1], cut[2]);
    if (low.length > 0) {
      pending.push(low);
    }
  }

  private int inside(double u, double v) {
    Frame f = aperture.frame;
    return veil.hides(worldX(f, u, v), worldY(f, u, v), worldZ(f, u, v)) ? -1 : 0;
  }

  private void place(Vec3 p, Vec3 n) {
    px = p.x();
    py = p.y();
    pz = p.z();
    lx = px + n.x() * Interior.LIFT;
    ly = py + n.y() * Interior.LIFT;
    lz = pz + n.z() * Interior.LIFT;
  }

  /** The part of a ring of an opening that lies in front of the receiving surface. */
  private double[] front(Aperture a, double[] ring, Vec3 n) {
    if (ring.length == 0) {
      return ring;
    }
    Frame f = a.frame;
    return Rings.clip(
        ring,
        n.dot(f.u()),
        n.dot(f.v()),
        n.x() * (f.origin().x() - px)
            + n.y() * (f.origin().y() - py)
            + n.z() * (f.origin().z() - pz));
  }

  private void divide(double[] part, boolean cloth) {
    pending.push(part);
    while (!pending.isEmpty()) {
      double[] ring = pending.pop();
      double[] cut = halving(ring, coneAngle);
      if (cut == null) {
        cut = looked(ring, cloth);
      }
      if (cut != null) {
        halve(ring, cut);
      }
    }
  }

  /** Tells what is seen in a ring, unless it must be cut: then the cut. */
  private double[] looked(double[] ring, boolean cloth) {
    double[] m = Rings.middle(ring);
    int here = mark(m[0], m[1], cloth);
    boolean mixed = false;
    boolean mirror = outdoors.isMirror(here);
    for (int i = 0; i < ring.length && !mixed; i += 2) {
      int there = mark(inward(ring[i], m[0]), inward(ring[i + 1], m[1]), cloth);
      mixed = there != here;
      mirror |= outdoors.isMirror(there);
    }
    double limit = mirror ? coneAngle * MIRROR_SHARE : coneAngle;
    if (mixed) {
      limit = Math.min(limit, edgeAngle);
    }
    double[] finer = limit < coneAngle ? halving(ring, limit) : null;
    if (finer == null && mixed) {
      emitMixed(ring, m, cloth);
    } else if (finer == null && here >= 0) {
      emit(ring, m, 1, cloth);
    }
    return finer;
  }

  /** A cone still cut by an edge: shared out evenly among its middle and corners. */
  private void emitMixed(double[] ring, double[] m, boolean cloth) {
    double share = 2.0 / (ring.length + 2);
    for (int i = 0; i <= ring.length; i += 2) {
      double[] at =
          i == ring.length ? m : new double[] {(ring[i] + m[0]) / 2, (ring[i + 1] + m[1]) / 2};
      if (inside(at[0], at[1]) >= 0) {
        emit(ring, at, share, cloth);
      }
    }
  }

  /** A place near a corner, pulled a little toward the middle. */
  private static double inward(double corner, double middle) {
    return corner + (middle - corner) * 0.02;
  }

  /** The cut (a, b, c: a u + b v = c) that halves a ring seen under too wide an angle, or null. */
  private double[] halving(double[] ring, double limit) {
    double[] b = Rings.bounds(ring);
    double mu = (b[0] + b[2]) / 2;
    double mv = (b[1] + b[3]) / 2;
    double wide = angle(b[0], mv, b[2], mv);
    double high = angle(mu, b[1], mu, b[3]);
    if (Math.max(wide, high) <= limit) {
      return null;
    }
    return wide >= high ? new double[] {1, 0, mu} : new double[] {0, 1, mv};
  }

  /** Chord of the unit directions to two places of the opening: nearly the angle between them. */
  private double angle(double u0, double v0, double u1, double v1) {
    Frame f = aperture.frame;
    double ax = worldX(f, u0, v0) - px;
    double ay = worldY(f, u0, v0) - py;
    double az = worldZ(f, u0, v0) - pz;
    double bx = worldX(f, u1, v1) - px;
    double by = worldY(f, u1, v1) - py;
    double bz = worldZ(f, u1, v1) - pz;
    double dot = ax * bx + ay * by + az * bz;
    double lengths = Math.sqrt((ax * ax + ay * ay + az * az) * (bx * bx + by * by + bz * bz));
    return lengths == 0 ? 0 : Math.sqrt(Math.max(0, 2 - 2 * dot / lengths));
  }

  private static double worldX(Frame f, double u, double v) {
    return f.origin().x() + f.u().x() * u + f.v().x() * v;
  }

  private static double worldY(Frame f, double u, double v) {
    return f.origin().y() + f.u().y() * u + f.v().y() * v;
  }

  private static double worldZ(Frame f, double u, double v) {
    return f.origin().z() + f.u().z() * u + f.v().z() * v;
  }

  /** -1 when hidden inside, else a mark of what lies outside. */
  private int mark(double u, double v, boolean cloth) {
    Frame f = aperture.frame;
    double x = worldX(f, u, v);
    double y = worldY(f, u, v);
    double z = worldZ(f, u, v);
    if (veil.hides(x, y, z)) {
      return -1;
    }
    if (cloth) {
      return 0;
    }
    double dx = x - px;
    double dy = y - py;
    double dz = z - pz;
    double k = 1 / Math.sqrt(dx * dx + dy * dy + dz * dz);
    dx *= k;
    dy *= k;
    dz *= k;
    double s = glassAt(dx, dy, dz);
    return outdoors.mark(x + s * dx, y + s * dy, z + s * dz, dx, dy, dz, t);
  }

  private double glassAt(double dx, double dy, double dz) {
    return aperture.depth(cosine(dx, dy, dz));
  }

  private double cosine(double dx, double dy, double dz) {
    Vec3 n = aperture.frame.n();
    return Math.max(1e-6, -(dx * n.x() + dy * n.y() + dz * n.z()));
  }

  private double lambert(double[] ring) {
    int corners = ring.length / 2;
    double[] xyz = new double[3 * corners];
    Frame f = aperture.frame;
    for (int i = 0; i < corners; i++) {
      xyz[3 * i] = worldX(f, ring[2 * i], ring[2 * i + 1]) - px;
      xyz[3 * i + 1] = worldY(f, ring[2 * i], ring[2 * i + 1]) - py;
      xyz[3 * i + 2] = worldZ(f, ring[2 * i], ring[2 * i + 1]) - pz;
    }
    vector[0] = 0;
    vector[1] = 0;
    vector[2] = 0;
    Lambert.add(xyz, corners, vector);
    return Math.sqrt(vector[0] * vector[0] + vector[1] * vector[1] + vector[2] * vector[2]);
  }

  private void emit(double[] ring, double[] middle, double share, boolean cloth) {
    double weight = lambert(ring);
    if (!(weight > 1e-12)) {
      return;
    }
    double dx = vector[0] / weight;
    double dy = vector[1] / weight;
    double dz = vector[2] / weight;
    if (cloth) {
      view.clear();
      view.kind = SourceKind.SKY;
      view.cell = aperture.cloth;
      view.cellWeight = 1;
      sink.cone(aperture, dx, dy, dz, share * weight, view);
      return;
    }
    Frame f = aperture.frame;
    double x = worldX(f, middle[0], middle[1]);
    double y = worldY(f, middle[0], middle[1]);
    double z = worldZ(f, middle[0], middle[1]);
    double ex = x - px;
    double ey = y - py;
    double ez = z - pz;
    double k = 1 / Math.sqrt(ex * ex + ey * ey + ez * ez);
    ex *= k;
    ey *= k;
    ez *= k;
    double s = glassAt(ex, ey, ez);
    outdoors.look(x + s * ex, y + s * ey, z + s * ez, ex, ey, ez, view);
    sink.cone(
        aperture, dx, dy, dz, share * weight * aperture.transmittance(cosine(dx, dy, dz)), view);
  }
}
