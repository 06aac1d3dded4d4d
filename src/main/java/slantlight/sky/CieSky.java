package slantlight.sky;

import slantlight.geom.Vec3;

/**
 * Luminance of the CIE Standard General Sky (ISO 15469:2004 / CIE S 011), and of the traditional
 * overcast sky (1 + 2 sin)/3, filed here as type 16.
 *
 * <p>{@code L = scale f(chi) phi(Z)} with the gradation {@code phi = 1 + a exp(b / cos Z)} and the
 * indicatrix {@code f = 1 + c (exp(d chi) - exp(d pi/2)) + e cos^2(chi)}; Z is the angle from the
 * zenith and chi the angle from the sun. Constants from memory, checked by the ratios they give.
 *
 * @param type 1 to 15 of the standard, or 16
 * @param sun unit vector toward the sun
 * @param scale cd/m2, the luminance where both functions are 1
 */
public record CieSky(int type, Vec3 sun, double scale) implements SkyLuminance {
  /** The sky without gradation and without a bright region round the sun. */
  public static final int UNIFORM = 5;

  static final int TYPES = 16;
  private static final double[][] GRADATION = {
    {4.0, -0.70}, {1.1, -0.8}, {0, -1}, {-1, -0.55}, {-1, -0.32}, {-1, -0.15}
  };
  private static final double[][] INDICATRIX = {
    {0, -1, 0}, {2, -1.5, 0.15}, {5, -2.5, 0.30}, {10, -3, 0.45}, {16, -3, 0.30}, {24, -2.8, 0.15}
  };

  /** Gradation group and indicatrix group (from 1) of the types 1 to 15. */
  private static final int[][] GROUPS = {
    {1, 1}, {1, 2}, {2, 1}, {2, 2}, {3, 1}, {3, 2}, {3, 3}, {3, 4}, {4, 2}, {4, 3}, {4, 4}, {5, 4},
    {5, 5}, {6, 5}, {6, 6}
  };

  public CieSky {
    if (type < 1 || type > TYPES) {
      throw new IllegalArgumentException("a CIE sky type is 1 to 16, not " + type);
    }
  }

  /** Sky of a type with a stated luminance at the zenith, cd/m2. */
  public static CieSky ofZenith(int type, Vec3 sun, double zenithLuminance) {
    return new CieSky(type, sun, zenithLuminance / relative(type, 1, sun.z()));
  }

  /** Sky of a type with a stated illuminance on open level ground, lx. */
  public static CieSky ofHorizontal(int type, Vec3 sun, double lux) {
    return new CieSky(type, sun, lux / SkyTables.of(type).horizontal(sun.altitude()));
  }

  /** Illuminance of this sky on open level ground, lx. */
  public double horizontalLux() {
    return scale * SkyTables.of(type).horizontal(sun.altitude());
  }

  @Override
  public double toward(double dx, double dy, double dz) {
    double cosChi = dx * sun.x() + dy * sun.y() + dz * sun.z();
    return scale * relative(type, dz, cosChi);
  }

  private static double relative(int type, double cosZ, double cosChi) {
    return gradation(type, cosZ) * indicatrix(type, Math.max(-1, Math.min(1, cosChi)));
  }

  /** phi: brightness with height, 1 at the horizon for the types of the standard. */
  static double gradation(int type, double cosZ) {
    if (type == TYPES) {
      return (1 + 2 * cosZ) / 3;
    }
    double[] ab = GRADATION[GROUPS[type - 1][0] - 1];
    return 1 + ab[0] * Math.exp(ab[1] / Math.max(1e-9, cosZ));
  }

  /** f: brightness with the angle from the sun. */
  static double indicatrix(int type, double cosChi) {
    if (type == TYPES) {
      return 1;
    }
    double[] cde = INDICATRIX[GROUPS[type - 1][1] - 1];
    double chi = Math.acos(cosChi);
    return 1
        + cde[0] * (Math.exp(cde[1] * chi) - Math.exp(cde[1] * Math.PI / 2))
        + cde[2] * cosChi * cosChi;
  }
}
