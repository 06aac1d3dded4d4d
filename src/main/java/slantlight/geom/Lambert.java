package slantlight.geom;

/**
 * Light vector of a polygon of unit luminance by Lambert's formula (Lambert, Photometria, 1760):
 * half the sum over the edges of the angle each subtends times the unit normal of the plane through
 * the edge and the point. Its component along a normal is pi times the configuration factor,
 * provided that the polygon is first clipped to the front of that normal.
 */
public final class Lambert {
  private Lambert() {}

  /**
   * Adds the light vector of one ring, seen from the origin of its coordinates.
   *
   * @param xyz corners relative to the point, x, y, z in turn, counter-clockwise as seen from the
   *     point
   * @param corners how many corners
   * @param out receives the sum, steradians
   */
  public static void add(double[] xyz, int corners, double[] out) {
    int j = 3 * (corners - 1);
    double ax = xyz[j];
    double ay = xyz[j + 1];
    double az = xyz[j + 2];
    double sx = 0;
    double sy = 0;
    double sz = 0;
    for (int i = 0; i < 3 * corners; i += 3) {
      double bx = xyz[i];
      double by = xyz[i + 1];
      double bz = xyz[i + 2];
      double cx = ay * bz - az * by;
      double cy = az * bx - ax * bz;
      double cz = ax * by - ay * bx;
      double s2 = cx * cx + cy * cy + cz * cz;
      double c = ax * bx + ay * by + az * bz;
      double k = angleOverSine(s2, c);
      sx += cx * k;
      sy += cy * k;
      sz += cz * k;
      ax = bx;
      ay = by;
      az = bz;
    }
    // Counter-clockwise from the point means an area normal toward it: the sum points away.
    out[0] -= sx / 2;
    out[1] -= sy / 2;
    out[2] -= sz / 2;
  }

  /** Angle between two vectors over the length of their cross product. */
  private static double angleOverSine(double sine2, double cosine) {
    if (cosine > 0) {
      double r2 = sine2 / (cosine * cosine);
      if (r2 < 0.01) {
        return (1 - r2 * (1.0 / 3 - r2 * (1.0 / 5 - r2 * (1.0 / 7 - r2 / 9)))) / cosine;
      }
    }
    double sine = Math.sqrt(sine2);
    return sine < 1e-300 ? 0 : Math.atan2(sine, cosine) / sine;
  }

  /**
   * Keeps the part of a ring in front of a plane through the origin.
   *
   * @param xyz corners, x, y, z in turn
   * @param corners how many
   * @param out receives the kept corners; room for {@code corners + 1} at least (twice as many for
   *     a ring that is not convex)
   * @return how many corners are left, 0 when nothing lies in front
   */
  public static int clip(double[] xyz, int corners, double nx, double ny, double nz, double[] out) {
    int kept = 0;
    int j = 3 * (corners - 1);
    double dj = xyz[j] * nx + xyz[j + 1] * ny + xyz[j + 2] * nz;
    for (int i = 0; i < 3 * corners; i += 3) {
      double di = xyz[i] * nx + xyz[i + 1] * ny + xyz[i + 2] * nz;
      if ((di > 0) != (dj > 0)) {
        double t = dj / (dj - di);
        out[kept++] = xyz[j] + (xyz[i] - xyz[j]) * t;
        out[kept++] = xyz[j + 1] + (xyz[i + 1] - xyz[j + 1]) * t;
        out[kept++] = xyz[j + 2] + (xyz[i + 2] - xyz[j + 2]) * t;
      }
      if (di > 0) {
        out[kept++] = xyz[i];
        out[kept++] = xyz[i + 1];
        out[kept++] = xyz[i + 2];
      }
      j = i;
      dj = di;
    }
    return kept < 9 ? 0 : kept / 3;
  }
}
