package slantlight.light;

import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/** The inside surfaces as seen from one point: far groups whole, near patches in pieces. */
final class Bounce {
  /** Hears of what is seen. */
  interface PatchSink {
    /**
     * A patch or a whole group.
     *
     * @param patch its number, or -1 when a whole group is meant
     * @param dx unit direction
     * @param weight length of its light vector for unit luminance
     */
    void piece(int group, int patch, double dx, double dy, double dz, double weight);
  }

  /** Groups and patches seen under a wider angle than this (radians) are divided. */
  private static final double WIDE = 0.35;

  private final Mesh mesh;
  private final Interior interior;

  Bounce(Mesh mesh, Interior interior) {
    this.mesh = mesh;
    this.interior = interior;
  }

  void at(int room, Vec3 p, Vec3 n, PatchSink sink) {
    Exchange.Kite kite = new Exchange.Kite();
    for (int r : interior.near(room)) {
      boolean clear = interior.clear(room, r);
      for (int g : mesh.roomGroups[r]) {
        Vec3 d = mesh.groupCentre[g].minus(p);
        double radius = mesh.groupRadius[g];
        Patch first = mesh.patches.get(mesh.groupStart[g]);
        double height = first.frame().height(p);
        if (height <= 1e-6 || d.dot(n) < -radius) {
          continue;
        }
        double distance = d.length();
        if (2 * radius < WIDE * distance && d.dot(n) > radius) {
          whole(clear, g, p, n, d, distance, height, sink);
        } else {
          pieces(clear, g, p, n, kite, sink);
        }
      }
    }
  }

  private void whole(
      boolean clear,
      int g,
      Vec3 p,
      Vec3 n,
      Vec3 d,
      double distance,
      double height,
      PatchSink sink) {
    double seen = 0;
    for (int q = mesh.groupStart[g]; q < mesh.groupStart[g + 1]; q++) {
      Patch patch = mesh.patches.get(q);
      if (clear || !interior.blockedBetween(p, n, patch.centre(), patch.normal())) {
        seen += patch.area();
      }
    }
    if (seen > 0) {
      double w = seen * height / (distance * distance * distance);
      sink.piece(g, -1, d.x() / distance, d.y() / distance, d.z() / distance, w);
    }
  }

  private void pieces(boolean clear, int g, Vec3 p, Vec3 n, Exchange.Kite kite, PatchSink sink) {
    for (int q = mesh.groupStart[g]; q < mesh.groupStart[g + 1]; q++) {
      Patch patch = mesh.patches.get(q);
      if (patch.rings().length > 1 || patch.edge() < WIDE * patch.centre().distance(p)) {
        if (clear || !interior.blockedBetween(p, n, patch.centre(), patch.normal())) {
          kite.look(patch, p, n);
          tell(g, q, kite, sink);
        }
      } else {
        divide(clear, patch.rings()[0], patch, 3, p, n, kite, sink);
      }
    }
  }

  private void divide(
      boolean clear,
      double[] ring,
      Patch patch,
      int depth,
      Vec3 p,
      Vec3 n,
      Exchange.Kite kite,
      PatchSink sink) {
    double[] b = Rings.bounds(ring);
    double[] m = Rings.middle(ring);
    Frame f = patch.frame();
    Vec3 middle = f.toWorld(new Vec2(m[0], m[1]));
    double size = Math.max(b[2] - b[0], b[3] - b[1]);
    if (depth == 0 || size < WIDE * middle.distance(p)) {
      if (clear || !interior.blockedBetween(p, n, middle, patch.normal())) {
        kite.look(ring, f, p, n);
        tell(patch.group(), patch.index(), kite, sink);
      }
      return;
    }
    double u = (b[0] + b[2]) / 2;
    double v = (b[1] + b[3]) / 2;
    for (int k = 0; k < 4; k++) {
      double su = (k & 1) == 0 ? -1 : 1;
      double sv = (k & 2) == 0 ? -1 : 1;
      double[] part = Rings.clip(Rings.clip(ring, su, 0, -su * u), 0, sv, -sv * v);
      if (part.length > 0) {
        divide(clear, part, patch, depth - 1, p, n, kite, sink);
      }
    }
  }

  private static void tell(int g, int patch, Exchange.Kite kite, PatchSink sink) {
    double w = Math.sqrt(kite.x * kite.x + kite.y * kite.y + kite.z * kite.z);
    if (w > 1e-12) {
      sink.piece(g, patch, kite.x / w, kite.y / w, kite.z / w, w);
    }
  }
}
