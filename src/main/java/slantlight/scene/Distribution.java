package slantlight.scene;

/** How a lamp spreads its light. */
public sealed interface Distribution {
  /**
   * Luminous intensity per lumen of the lamp, cd/lm.
   *
   * @param gamma angle from the aim (nadir of the photometric solid), radians, 0 to pi
   * @param c angle about the aim, counter-clockwise from the lamp's C0 plane, radians
   */
  double intensityPerLumen(double gamma, double c);

  /** Simple distributions known by name, each integrating to 1 lm. */
  enum Named implements Distribution {
    /** Equal in all directions: 1/(4 pi). */
    BARE,
    /** Cosine lobe about the aim: cos/pi. */
    DIFFUSER,
    /** Narrow lobe, cos^n with a half-intensity half-angle of 20 degrees. */
    SPOT,
    /** Medium lobe, cos^n with a half-intensity half-angle of 40 degrees. */
    DOWNLIGHT,
    /** Half up, half down, nothing sideways: |cos|^3 in both hemispheres. */
    UP_DOWN;

    private static final double SPOT_EXPONENT =
        Math.log(0.5) / Math.log(Math.cos(Math.toRadians(20)));
    private static final double DOWN_EXPONENT =
        Math.log(0.5) / Math.log(Math.cos(Math.toRadians(40)));

    @Override
    public double intensityPerLumen(double gamma, double c) {
      double cos = Math.cos(gamma);
      return switch (this) {
        case BARE -> 1 / (4 * Math.PI);
        case DIFFUSER -> cos <= 0 ? 0 : cos / Math.PI;
        case SPOT -> lobe(cos, SPOT_EXPONENT);
        case DOWNLIGHT -> lobe(cos, DOWN_EXPONENT);
        case UP_DOWN -> lobe(Math.abs(cos), 3) / 2;
      };
    }

    private static double lobe(double cos, double exponent) {
      return cos <= 0 ? 0 : Math.pow(cos, exponent) * (exponent + 1) / (2 * Math.PI);
    }
  }

  /** A measured distribution read from an LM-63 file. */
  record Measured(Photometry photometry) implements Distribution {
    @Override
    public double intensityPerLumen(double gamma, double c) {
      return photometry.candela(gamma, c) / photometry.lumens();
    }
  }
}
