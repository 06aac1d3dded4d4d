package slantlight.sky;

/** Luminance of the sky vault, sun excluded. */
@FunctionalInterface
public interface SkyLuminance {
  /**
   * Luminance toward a unit direction, cd/m2; only directions above the horizon (dz > 0) are asked
   * for.
   */
  double toward(double dx, double dy, double dz);
}
