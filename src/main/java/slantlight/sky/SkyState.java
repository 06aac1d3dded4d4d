package slantlight.sky;

import slantlight.geom.Vec3;

/**
 * The light of the sky at one moment, outside and unobstructed.
 *
 * @param sun unit vector toward the sun; below the horizon when it is down
 * @param sunNormalLux illuminance of the beam square to it, lx; 0 when there is no beam
 * @param luminance luminance of the vault
 * @param diffuseHorizontalLux illuminance of the vault alone on level ground, lx
 * @param groundReflectance reflectance of the general ground this month
 * @param groundLuminance luminance of general diffuse ground stated outright, cd/m2, or NaN when it
 *     follows from reflectance x global horizontal / pi
 */
public record SkyState(
    Vec3 sun,
    double sunNormalLux,
    SkyLuminance luminance,
    double diffuseHorizontalLux,
    double groundReflectance,
    double groundLuminance) {
  /** Illuminance of sun and vault together on open level ground, lx. */
  public double globalHorizontalLux() {
    return diffuseHorizontalLux + sunNormalLux * Math.max(0, sun.z());
  }
}
