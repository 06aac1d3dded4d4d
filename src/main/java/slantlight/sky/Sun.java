package slantlight.sky;

import slantlight.geom.Vec3;

/**
 * Place of the sun's centre in the sky.
 *
 * @param azimuth radians, clockwise from true north
 * @param altitude apparent altitude (refraction included), radians
 */
public record Sun(double azimuth, double altitude) {
  /** Unit vector toward the sun. */
  public Vec3 direction() {
    return Vec3.ofAzimuthAltitude(azimuth, altitude);
  }
}
