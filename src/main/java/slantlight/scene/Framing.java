package slantlight.scene;

import slantlight.geom.Vec2;

/**
 * Parallel framing members behind a surface.
 *
 * @param angle direction along the members in the surface's own plane, radians from u toward v
 * @param spacing distance from centre to centre, m
 * @param offset position of one member's centre, measured square to the members from the plane's
 *     origin along {@link #across}, m
 */
public record Framing(double angle, double spacing, double offset) {
  /** Unit vector square to the members that points to the right, or up when they run along u. */
  public Vec2 across() {
    Vec2 d = new Vec2(snapped(Math.sin(angle)), snapped(-Math.cos(angle)));
    boolean backward = Math.abs(d.x()) < 1e-9 ? d.y() < 0 : d.x() < 0;
    return backward ? d.times(-1) : d;
  }

  /** Members meant to be level or upright are exactly so, whatever the rounding of pi. */
  private static double snapped(double component) {
    return Math.abs(component) < 1e-12 ? 0 : component;
  }
}
