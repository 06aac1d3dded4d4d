package slantlight.sheet;

import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * From a surface's plane to paper. A wall is drawn as seen from inside; a ceiling as a reflected
 * plan, the way a mirror on the floor shows it, so that it agrees with a floor plan; plans are
 * turned by quarter turns until north is nearest the top.
 */
final class PaperMap {
  private static final int[] SCALES = {5, 10, 20, 25, 50, 75, 100, 150, 200, 250, 500, 1000};
  private static final double LEVEL = 0.5;

  private final double scale;
  private final int[] turn;
  private final Vec2 shift;
  private final int denominator;
  private final double width;
  private final double height;

  private PaperMap(int denominator, int[] turn, Vec2 shift, double width, double height) {
    this.denominator = denominator;
    this.scale = 1000.0 / denominator;
    this.turn = turn;
    this.shift = shift;
    this.width = width;
    this.height = height;
  }

  /**
   * The largest usual scale at which the face fits.
   *
   * @param left paper x of the drawing's left edge, mm
   * @param top paper y of its top edge, mm
   * @param maxWidth mm
   * @param maxHeight mm
   */
  static PaperMap of(Face face, double left, double top, double maxWidth, double maxHeight) {
    int[] turn = plan(face.frame()) ? northUp(face.frame()) : new int[] {1, 0, 0, -1};
    double[] box = box(face.outer(), turn);
    double w = box[2] - box[0];
    double h = box[3] - box[1];
    int denominator = SCALES[SCALES.length - 1];
    for (int i = SCALES.length - 1; i >= 0; i--) {
      double s = 1000.0 / SCALES[i];
      if (w * s <= maxWidth && h * s <= maxHeight) {
        denominator = SCALES[i];
      }
    }
    double s = 1000.0 / denominator;
    Vec2 shift = new Vec2(left - box[0] * s, top - box[1] * s);
    return new PaperMap(denominator, turn, shift, w * s, h * s);
  }

  /** True for a ceiling, roof slope or floor, false for a wall. */
  static boolean plan(Frame frame) {
    return Math.abs(frame.n().z()) > LEVEL;
  }

  Vec2 at(Vec2 p) {
    return direction(p).times(scale).plus(shift);
  }

  List<Vec2> at(List<Vec2> ring) {
    return ring.stream().map(this::at).toList();
  }

  /** A plane direction on paper, not scaled. */
  Vec2 direction(Vec2 p) {
    return new Vec2(turn[0] * p.x() + turn[1] * p.y(), turn[2] * p.x() + turn[3] * p.y());
  }

  /** Paper length of a length in metres, mm. */
  double mm(double metres) {
    return metres * scale;
  }

  int denominator() {
    return denominator;
  }

  /** Paper width of the face, mm. */
  double width() {
    return width;
  }

  double height() {
    return height;
  }

  /**
   * Quarter turn of (u, v) that brings north nearest the top. A ceiling is mirrored against its own
   * view from below, a floor is not.
   */
  private static int[] northUp(Frame frame) {
    int mirror = frame.n().z() < 0 ? 1 : -1;
    Vec3 north = frame.directionToLocal(Vec3.NORTH);
    int[] best = null;
    double most = Double.NEGATIVE_INFINITY;
    int a = 1;
    int c = 0;
    for (int i = 0; i < 4; i++) {
      int[] m = {a, -c * mirror, c, a * mirror};
      double up = -(m[2] * north.x() + m[3] * north.y());
      if (up > most + 1e-9) {
        most = up;
        best = m;
      }
      int next = -c;
      c = a;
      a = next;
    }
    return best;
  }

  private static double[] box(List<Vec2> ring, int[] m) {
    double[] box = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (Vec2 p : ring) {
      double x = m[0] * p.x() + m[1] * p.y();
      double y = m[2] * p.x() + m[3] * p.y();
      box[0] = Math.min(box[0], x);
      box[1] = Math.min(box[1], y);
      box[2] = Math.max(box[2], x);
      box[3] = Math.max(box[3], y);
    }
    return box;
  }
}
