package slantlight.light;

import java.util.ArrayDeque;
import java.util.Arrays;
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
     * @param box bounds of the piece of the patch that is meant, in its plane; null for all of it
     * @param dx unit direction
     * @param weight length of its light vector for unit luminance
     */
    void piece(int group, int patch, double[] box, double dx, double dy, double dz, double weight);
  }

  /** Tells how wide an angle, radians, what is seen in a unit direction may take up undivided. */
  interface Spread {
    double at(double dx, double dy, double dz);
  }

  /** A patch is cut in four no more than so many times. */
  private static final int DEPTH = 4;

  private final Mesh mesh;
  private final Interior interior;

  Bounce(Mesh mesh, Interior interior) {
    this.mesh = mesh;
    this.interior = interior;
  }

  void at(int room, Vec3 p, Vec3 n, Spread spread, PatchSink sink) {
    Exchange.Kite kite = new Exchange.Kite();
    Veil veil = new Veil(interior);
    for (int r : interior.near(room)) {
      for (int g : mesh.roomGroups[r]) {
        Vec3 d = mesh.groupCentre[g].minus(p);
        double radius = mesh.groupRadius[g];
        Patch first = mesh.patches.get(mesh.groupStart[g]);
        double height = first.frame().height(p);
        if (height <= 1e-6 || d.dot(n) < -radius) {
          continue;
        }
        veil.draw(room, p, n, r, mesh.groupCorners[g]);
        if (veil.shut()) {
          continue;
        }
        if (mesh.groupEdge[g] < wide(spread, p, mesh.groupCentre[g])) {
          whole(veil, g, p, n, kite, sink);
        } else {
          pieces(veil, g, p, n, spread, kite, sink);
        }
      }
    }
  }

  private void whole(Veil veil, int g, Vec3 p, Vec3 n, Exchange.Kite kite, PatchSink sink) {
    Patch first = mesh.patches.get(mesh.groupStart[g]);
    double[][] outline = mesh.groupOutline[g];
    if (outline != null && veil.clear()) {
      kite.look(outline, first.frame(), p, n);
      tell(g, -1, null, kite, sink);
      return;
    }
    double x = 0;
    double y = 0;
    double z = 0;
    for (int q = mesh.groupStart[g]; q < mesh.groupStart[g + 1]; q++) {
      Patch patch = mesh.patches.get(q);
      if (!veil.hides(patch.centre(), patch.normal())) {
        kite.look(patch.rings(), patch.frame(), p, n);
        x += kite.x;
        y += kite.y;
        z += kite.z;
      }
    }
    kite.x = x;
    kite.y = y;
    kite.z = z;
    tell(g, -1, null, kite, sink);
  }

  private void pieces(
      Veil veil, int g, Vec3 p, Vec3 n, Spread spread, Exchange.Kite kite, PatchSink sink) {
    for (int q = mesh.groupStart[g]; q < mesh.groupStart[g + 1]; q++) {
      Patch patch = mesh.patches.get(q);
      if (patch.edge() < wide(spread, p, patch.centre())) {
        if (!veil.hides(patch.centre(), patch.normal())) {
          kite.look(patch.rings(), patch.frame(), p, n);
          tell(g, q, null, kite, sink);
        }
      } else {
        divide(veil, patch, p, n, spread, kite, sink);
      }
    }
  }

  /**
   * What of a patch lies in a box.
   *
   * @param depth how often it may still be cut
   */
  private record Piece(double[][] rings, double[] box, int depth) {}

  /** Cuts a patch into four again and again until each piece is seen under a small angle. */
  private void divide(
      Veil veil, Patch patch, Vec3 p, Vec3 n, Spread spread, Exchange.Kite kite, PatchSink sink) {
    ArrayDeque<Piece> pending = new ArrayDeque<>();
    pending.push(new Piece(patch.rings(), patch.box(), DEPTH));
    while (!pending.isEmpty()) {
      Piece piece = pending.pop();
      double[] box = piece.box;
      double u = (box[0] + box[2]) / 2;
      double v = (box[1] + box[3]) / 2;
      Vec3 middle = patch.frame().toWorld(middle(patch, piece.rings, u, v));
      double size = Math.max(box[2] - box[0], box[3] - box[1]);
      if (piece.depth > 0 && size >= wide(spread, p, middle)) {
        quarter(patch, piece, u, v, pending);
      } else if (!veil.hides(middle, patch.normal())) {
        kite.look(piece.rings, patch.frame(), p, n);
        tell(patch.group(), patch.index(), box, kite, sink);
      }
    }
  }

  private static void quarter(
      Patch patch, Piece piece, double u, double v, ArrayDeque<Piece> pending) {
    double[] box = piece.box;
    boolean whole = patch.whole();
    for (int k = 3; k >= 0; k--) {
      double[] quarter = {
        (k & 1) == 0 ? box[0] : u,
        (k & 2) == 0 ? box[1] : v,
        (k & 1) == 0 ? u : box[2],
        (k & 2) == 0 ? v : box[3]
      };
      double[][] part = whole ? new double[][] {Rings.round(quarter)} : clip(piece.rings, quarter);
      if (part.length > 0) {
        pending.push(new Piece(part, quarter, piece.depth - 1));
      }
    }
  }

  private static Vec2 middle(Patch patch, double[][] rings, double u, double v) {
    if (patch.whole()) {
      return new Vec2(u, v);
    }
    double[] m = Rings.middle(rings[0]);
    return new Vec2(m[0], m[1]);
  }

  /** Size, m, below which something at a place need not be divided. */
  private static double wide(Spread spread, Vec3 p, Vec3 place) {
    Vec3 d = place.minus(p);
    double distance = d.length();
    return distance == 0
        ? 0
        : distance * spread.at(d.x() / distance, d.y() / distance, d.z() / distance);
  }

  private static double[][] clip(double[][] rings, double[] box) {
    double[][] out = new double[rings.length][];
    int count = 0;
    for (double[] ring : rings) {
      double[] part = Rings.clip(ring, box[0], box[1], box[2], box[3]);
      if (part.length > 0) {
        out[count++] = part;
      }
    }
    return count == out.length ? out : Arrays.copyOf(out, count);
  }

  private static void tell(int g, int patch, double[] box, Exchange.Kite kite, PatchSink sink) {
    double w = Math.sqrt(kite.x * kite.x + kite.y * kite.y + kite.z * kite.z);
    if (w > 1e-12) {
      sink.piece(g, patch, box, kite.x / w, kite.y / w, kite.z / w, w);
    }
  }
}
