package slantlight.light;

import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Opening;
import slantlight.sky.GlassPane;

/** An opening to the outside, made ready for looking through. */
final class Aperture {
  final int index;
  final Opening opening;
  final int room;
  final Frame frame;

  /** The hole, counter-clockwise, plane coordinates. */
  final double[] ring;

  /** The same in convex pieces. */
  private final List<double[]> parts;

  /** Convex window of the glass, set back by the reveal. */
  private final double[] glass;

  private final double[] corners;
  final double reveal;
  final double[] box;
  final boolean rectangle;

  /** Cloth behind the glass, or a sheet in its place, or null. */
  final OutsideCell cloth;

  /** Transmittance at normal incidence with frame and film. */
  private final double clear;

  private final int panes;
  private final boolean black;

  Aperture(int index, Opening opening, int room, Outdoors outdoors) {
    this(index, opening, room, outdoors, null);
  }

  /**
   * An opening.
   *
   * @param sheet shuts it, or null
   */
  Aperture(int index, Opening opening, int room, Outdoors outdoors, OutsideCell sheet) {
    this.index = index;
    this.opening = opening;
    this.room = room;
    Face face = opening.face();
    frame = face.frame();
    ring = Rings.oriented(Rings.array(face.outer()), true);
    parts = Face.of(frame, face.outer()).parts();
    glass = Rings.hull(ring);
    box = Rings.bounds(ring);
    corners = frame.toWorld(ring, 0);
    rectangle = ring.length == 8 && isBox();
    reveal = Math.max(0, opening.revealDepth());
    panes = Math.min(2, Math.max(0, opening.panes()));
    double film = opening.shade().map(s -> s.transmittance()).orElse(1.0);
    clear = opening.transmittance() * (1 - opening.frameShare()) * film;
    boolean diffusing = opening.shade().map(s -> s.diffusing()).orElse(false);
    cloth =
        sheet == null && diffusing
            ? new FacingCell(outdoors, frame.n().times(-1), probes(), clear / Math.PI, panes)
            : sheet;
    black = sheet == null && clear <= 0;
  }

  private boolean isBox() {
    for (int i = 0; i < 8; i += 2) {
      boolean u = ring[i] == box[0] || ring[i] == box[2];
      boolean v = ring[i + 1] == box[1] || ring[i + 1] == box[3];
      if (!u || !v) {
        return false;
      }
    }
    return true;
  }

  /** Nine places spread over the glass, outside it. */
  private double[] probes() {
    double[] out = new double[27];
    for (int i = 0; i < 9; i++) {
      int row = i / 3;
      double u = box[0] + (box[2] - box[0]) * (i % 3 + 0.5) / 3;
      double v = box[1] + (box[3] - box[1]) * (row + 0.5) / 3;
      Vec3 p = frame.toWorld(new Vec2(u, v), -reveal - 1e-3);
      out[3 * i] = p.x();
      out[3 * i + 1] = p.y();
      out[3 * i + 2] = p.z();
    }
    return out;
  }

  /** Corners of the hole, x, y and z of each in turn. */
  double[] corners() {
    return corners;
  }

  /** Distance of a point from the hole's bounding rectangle, m. */
  double distance(Vec3 p) {
    double h = height(p.x(), p.y(), p.z());
    double u = footU(p.x(), p.y(), p.z());
    double v = footV(p.x(), p.y(), p.z());
    double du = Math.max(0, Math.max(box[0] - u, u - box[2]));
    double dv = Math.max(0, Math.max(box[1] - v, v - box[3]));
    return Math.sqrt(h * h + du * du + dv * dv);
  }

  double height(double x, double y, double z) {
    Vec3 o = frame.origin();
    Vec3 n = frame.n();
    return (x - o.x()) * n.x() + (y - o.y()) * n.y() + (z - o.z()) * n.z();
  }

  double footU(double x, double y, double z) {
    Vec3 o = frame.origin();
    Vec3 u = frame.u();
    return (x - o.x()) * u.x() + (y - o.y()) * u.y() + (z - o.z()) * u.z();
  }

  double footV(double x, double y, double z) {
    Vec3 o = frame.origin();
    Vec3 v = frame.v();
    return (x - o.x()) * v.x() + (y - o.y()) * v.y() + (z - o.z()) * v.z();
  }

  /** The part of the hole through which a point sees the glass, plane coordinates of the hole. */
  double[] seenFrom(double px, double py, double pz) {
    double h = height(px, py, pz);
    if (h <= 1e-6) {
      return new double[0];
    }
    if (reveal == 0) {
      return ring;
    }
    double k = h / (h + reveal);
    double fu = footU(px, py, pz);
    double fv = footV(px, py, pz);
    double[] shadow = new double[glass.length];
    for (int i = 0; i < glass.length; i += 2) {
      shadow[i] = fu + (glass[i] - fu) * k;
      shadow[i + 1] = fv + (glass[i + 1] - fv) * k;
    }
    return Rings.clip(ring, shadow);
  }

  /**
   * The part of the hole that a beam through the glass fills: convex rings, plane coordinates of
   * the hole.
   *
   * @param dx unit direction toward the sun, outward
   */
  List<double[]> filledBy(double dx, double dy, double dz) {
    if (reveal == 0) {
      return parts;
    }
    Vec3 u = frame.u();
    Vec3 v = frame.v();
    Vec3 n = frame.n();
    double s = -reveal / (dx * n.x() + dy * n.y() + dz * n.z());
    double su = -s * (dx * u.x() + dy * u.y() + dz * u.z());
    double sv = -s * (dx * v.x() + dy * v.y() + dz * v.z());
    double[] shadow = new double[glass.length];
    for (int i = 0; i < glass.length; i += 2) {
      shadow[i] = glass[i] + su;
      shadow[i + 1] = glass[i + 1] + sv;
    }
    return parts.stream().map(p -> Rings.clip(p, shadow)).filter(p -> p.length > 0).toList();
  }

  /**
   * Transmittance toward outside.
   *
   * @param cos cosine of the angle to the glass's normal
   */
  double transmittance(double cos) {
    return clear * GlassPane.relativeTransmittance(cos, panes);
  }

  /** True when no light comes through. */
  boolean isBlack() {
    return black;
  }

  /** Distance along a unit direction pointing outward from the hole to just outside the glass. */
  double depth(double cos) {
    return reveal / cos + 1e-6;
  }

  /**
   * Parameter at which the ray from a point in front meets the hole and then the glass, or -1.
   *
   * @param dx unit direction, outward
   */
  double meets(double px, double py, double pz, double dx, double dy, double dz) {
    Vec3 n = frame.n();
    double cos = -(dx * n.x() + dy * n.y() + dz * n.z());
    double h = height(px, py, pz);
    if (cos <= 1e-9 || h <= 1e-6) {
      return -1;
    }
    double t = h / cos;
    double x = px + t * dx;
    double y = py + t * dy;
    double z = pz + t * dz;
    double u = footU(x, y, z);
    double v = footV(x, y, z);
    if (!holds(ring, u, v)) {
      return -1;
    }
    if (reveal > 0) {
      double s = reveal / cos;
      double gu = footU(x + s * dx, y + s * dy, z + s * dz);
      double gv = footV(x + s * dx, y + s * dy, z + s * dz);
      if (!holds(glass, gu, gv)) {
        return -1;
      }
    }
    return t;
  }

  private boolean holds(double[] polygon, double u, double v) {
    if (u <= box[0] || u >= box[2] || v <= box[1] || v >= box[3]) {
      return false;
    }
    return rectangle || Rings.inside(polygon, u, v);
  }
}
