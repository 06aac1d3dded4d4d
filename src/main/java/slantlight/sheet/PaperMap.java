package slantlight.sheet;

import java.util.List;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * From a surface's plane to paper. A wall is drawn as seen from inside; a ceiling as a reflected
 * plan, the way a mirror on the floor shows it, so that it agrees with a floor plan.
 *
 * @param u what a metre along the plane's first axis is on paper, mm
 * @param v what a metre along its second axis is
 * @param origin where the plane's origin lies
 * @param scale mm of paper a metre
 */
public record PaperMap(Vec2 u, Vec2 v, Vec2 origin, double scale) {
  private static final double LEVEL = 0.5;

  /** True for a ceiling, roof slope or floor, false for a wall. */
  static boolean plan(Frame frame) {
    return Math.abs(frame.n().z()) > LEVEL;
  }

  /** The point of a plane that is not upright, straight above or below a place of the plan. */
  public static Vec2 above(Frame f, Vec2 xy) {
    Vec3 o = f.origin();
    Vec3 n = f.n();
    double z = o.z() - (n.x() * (xy.x() - o.x()) + n.y() * (xy.y() - o.y())) / n.z();
    return f.toPlane(new Vec3(xy.x(), xy.y(), z));
  }

  /** A wall from inside, or a plan turned by quarter turns until north is nearest the top. */
  static PaperMap upright(Frame frame) {
    int[] m = plan(frame) ? northUp(frame) : new int[] {1, 0, 0, -1};
    return new PaperMap(new Vec2(m[0], m[2]), new Vec2(m[1], m[3]), new Vec2(0, 0), 1);
  }

  /** A wall from inside. */
  public static PaperMap elevation(double scale, Vec2 origin) {
    return new PaperMap(new Vec2(scale, 0), new Vec2(0, -scale), origin, scale);
  }

  /**
   * A surface seen square to the ground, north up: slopes are foreshortened, so that all surfaces
   * of a house fit together.
   *
   * @param origin where the world's origin lies on paper
   */
  public static PaperMap plan(Frame frame, double scale, Vec2 origin) {
    return new PaperMap(
        level(frame.u(), scale),
        level(frame.v(), scale),
        origin.plus(level(frame.origin(), scale)),
        scale);
  }

  private static Vec2 level(Vec3 p, double scale) {
    return new Vec2(p.x() * scale, -p.y() * scale);
  }

  /** The same on another scale and elsewhere. */
  PaperMap to(double newScale, Vec2 newOrigin) {
    double k = newScale / scale;
    return new PaperMap(u.times(k), v.times(k), newOrigin, newScale);
  }

  /** The place on paper of a point of the plane. */
  public Vec2 at(Vec2 p) {
    return direction(p).plus(origin);
  }

  public List<Vec2> at(List<Vec2> ring) {
    return ring.stream().map(this::at).toList();
  }

  /** What a vector of the plane is on paper. */
  Vec2 direction(Vec2 p) {
    return u.times(p.x()).plus(v.times(p.y()));
  }

  /** Paper length of a length in metres, mm. */
  public double mm(double metres) {
    return metres * scale;
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
}
