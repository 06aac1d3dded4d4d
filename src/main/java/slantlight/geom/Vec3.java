package slantlight.geom;

/** A point or vector in space: x east, y north, z up; metres unless it is a direction. */
public record Vec3(double x, double y, double z) {
  public static final Vec3 ZERO = new Vec3(0, 0, 0);
  public static final Vec3 EAST = new Vec3(1, 0, 0);
  public static final Vec3 NORTH = new Vec3(0, 1, 0);
  public static final Vec3 UP = new Vec3(0, 0, 1);
  public static final Vec3 DOWN = new Vec3(0, 0, -1);

  public Vec3 plus(Vec3 o) {
    return new Vec3(x + o.x, y + o.y, z + o.z);
  }

  public Vec3 minus(Vec3 o) {
    return new Vec3(x - o.x, y - o.y, z - o.z);
  }

  public Vec3 times(double s) {
    return new Vec3(x * s, y * s, z * s);
  }

  public double dot(Vec3 o) {
    return x * o.x + y * o.y + z * o.z;
  }

  public Vec3 cross(Vec3 o) {
    return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  public double length() {
    return Math.sqrt(x * x + y * y + z * z);
  }

  public double distance(Vec3 o) {
    return minus(o).length();
  }

  /**
   * This vector scaled to length 1.
   *
   * @throws ArithmeticException if the length is zero
   */
  public Vec3 unit() {
    double l = length();
    if (l == 0) {
      throw new ArithmeticException("a vector of no length has no direction");
    }
    return new Vec3(x / l, y / l, z / l);
  }

  /**
   * Unit vector toward a point of the sky.
   *
   * @param azimuth radians, clockwise from true north
   * @param altitude radians above the horizon
   */
  public static Vec3 ofAzimuthAltitude(double azimuth, double altitude) {
    double c = Math.cos(altitude);
    return new Vec3(c * Math.sin(azimuth), c * Math.cos(azimuth), Math.sin(altitude));
  }

  /** Azimuth of this direction in radians, clockwise from true north, in [0, 2 pi). */
  public double azimuth() {
    double a = Math.atan2(x, y);
    return a < 0 ? a + 2 * Math.PI : a;
  }

  /** Altitude of this direction above the horizon in radians. */
  public double altitude() {
    return Math.atan2(z, Math.hypot(x, y));
  }
}
