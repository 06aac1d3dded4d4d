package slantlight.light;

import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Rings;
import slantlight.geom.Vec3;

/**
 * A passage as a pyramid to look through.
 *
 * @param thickness how far its sides reach behind its plane, m
 * @param corners of its convex hull, x, y and z of each in turn
 * @param middle of the corners
 */
record Door(Aperture aperture, double thickness, double[] corners, Vec3 middle) {
  /** Slack, m, of what counts as within the wall. */
  private static final double SLACK = 1e-3;

  /**
   * A passage.
   *
   * @param faces of the room to which its sides belong
   */
  static Door of(Aperture aperture, List<Face> faces) {
    double[] corners = aperture.frame.toWorld(Rings.hull(aperture.ring), 0);
    Vec3 sum = Vec3.ZERO;
    for (int i = 0; i < corners.length; i += 3) {
      sum = sum.plus(new Vec3(corners[i], corners[i + 1], corners[i + 2]));
    }
    double thickness =
        faces.stream()
            .filter(f -> f.corners().stream().allMatch(p -> behind(aperture, p)))
            .flatMap(f -> f.corners().stream())
            .mapToDouble(p -> -aperture.height(p.x(), p.y(), p.z()))
            .max()
            .orElse(0);
    return new Door(aperture, thickness, corners, sum.times(3.0 / corners.length));
  }

  /** True when a corner lies in the hole or straight behind it. */
  private static boolean behind(Aperture hole, Vec3 p) {
    double u = hole.footU(p.x(), p.y(), p.z());
    double v = hole.footV(p.x(), p.y(), p.z());
    return hole.height(p.x(), p.y(), p.z()) < SLACK
        && u > hole.box[0] - SLACK
        && u < hole.box[2] + SLACK
        && v > hole.box[1] - SLACK
        && v < hole.box[3] + SLACK;
  }

  /**
   * False when a line of sight from a point to a polygon cannot lead through the passage: then the
   * polygon lies wholly outside one side of the pyramid. What lies within the wall, as the sides of
   * the passage do, may see through.
   *
   * @param polygon corners, x, y and z of each in turn
   */
  boolean passes(double px, double py, double pz, double[] polygon) {
    if (within(px, py, pz) || within(polygon)) {
      return true;
    }
    double mx = middle.x() - px;
    double my = middle.y() - py;
    double mz = middle.z() - pz;
    for (int i = 0, j = corners.length - 3; i < corners.length; j = i, i += 3) {
      double ax = corners[j] - px;
      double ay = corners[j + 1] - py;
      double az = corners[j + 2] - pz;
      double bx = corners[i] - px;
      double by = corners[i + 1] - py;
      double bz = corners[i + 2] - pz;
      double x = ay * bz - az * by;
      double y = az * bx - ax * bz;
      double z = ax * by - ay * bx;
      double inward = x * mx + y * my + z * mz;
      boolean outside = inward != 0;
      for (int c = 0; c < polygon.length && outside; c += 3) {
        double side = x * (polygon[c] - px) + y * (polygon[c + 1] - py) + z * (polygon[c + 2] - pz);
        outside = side * inward < 0;
      }
      if (outside) {
        return false;
      }
    }
    return true;
  }

  private boolean within(double x, double y, double z) {
    double h = aperture.height(x, y, z);
    return h <= SLACK && h >= -thickness - SLACK;
  }

  /**
   * True when a polygon, x, y and z of each corner in turn, lies within the passage's thickness.
   */
  boolean within(double[] polygon) {
    for (int c = 0; c < polygon.length; c += 3) {
      if (!within(polygon[c], polygon[c + 1], polygon[c + 2])) {
        return false;
      }
    }
    return true;
  }
}
