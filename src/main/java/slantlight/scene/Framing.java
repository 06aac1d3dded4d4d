package slantlight.scene;

/**
 * Parallel framing members behind a surface.
 *
 * @param angle direction along the members in the surface's own plane, radians from u toward v
 * @param spacing distance from centre to centre, m
 * @param offset position of one member's centre, measured square to the members from the plane's
 *     origin, m
 */
public record Framing(double angle, double spacing, double offset) {}
