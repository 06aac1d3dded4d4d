package slantlight.sky;

/**
 * A sky with its lower part hidden by a far skyline.
 *
 * @param belowLuminance luminance of what stands below the skyline, cd/m2
 */
record SkylineSky(CieSky sky, Skyline skyline, double belowLuminance) implements SkyLuminance {
  @Override
  public double toward(double dx, double dy, double dz) {
    return skyline.isAbove(dx, dy, dz) ? sky.toward(dx, dy, dz) : belowLuminance;
  }
}
