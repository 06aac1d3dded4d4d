package slantlight.geom;

/** A point or vector in a plane, metres (or as the user of it says). */
public record Vec2(double x, double y) {
  public Vec2 plus(Vec2 o) {
    return new Vec2(x + o.x, y + o.y);
  }

  public Vec2 minus(Vec2 o) {
    return new Vec2(x - o.x, y - o.y);
  }

  public Vec2 times(double s) {
    return new Vec2(x * s, y * s);
  }

  public double dot(Vec2 o) {
    return x * o.x + y * o.y;
  }

  /** z component of the cross product: positive when {@code o} lies counter-clockwise of this. */
  public double cross(Vec2 o) {
    return x * o.y - y * o.x;
  }

  public double length() {
    return Math.hypot(x, y);
  }

  public double distance(Vec2 o) {
    return Math.hypot(x - o.x, y - o.y);
  }

  /** Point at parameter t of the segment from this (0) to {@code o} (1). */
  public Vec2 lerp(Vec2 o, double t) {
    return new Vec2(x + (o.x - x) * t, y + (o.y - y) * t);
  }

  /**
   * This vector scaled to length 1.
   *
   * @throws ArithmeticException if the length is zero
   */
  public Vec2 unit() {
    double l = length();
    if (l == 0) {
      throw new ArithmeticException("a vector of no length has no direction");
    }
    return new Vec2(x / l, y / l);
  }
}
