package slantlight.sky;

/**
 * How much light sun and vault give, by the daylight-availability model of the Illuminating
 * Engineering Society (RP-21 and Lighting Handbook; form published, constants from memory).
 *
 * <p>{@code Edn = Ext exp(-c m)}, {@code Ext = Esc [1 + 0.034 cos(2 pi (J-2)/365)]}, {@code Ekh = A
 * + B sin^C(altitude)}, Esc = 127.5 klx.
 *
 * <p>The handbook takes m = 1/sin(altitude). Here m is Kasten and Young's (Applied Optics 28, 1989)
 * at every altitude: 1/sin grows without bound below 10 degrees, which are the very hours of raking
 * light; the two agree within 0.4 % above 30 degrees, and one law leaves no step at a seam.
 *
 * @param c extinction per air mass; infinite when the sun is hidden
 * @param a Ekh at the horizon, lx
 * @param b growth of Ekh, lx
 * @param exponent power of the sine
 */
public record Availability(double c, double a, double b, double exponent) {
  private static final double SOLAR_CONSTANT = 127_500;

  /** Civil twilight ends when the sun is this far down. */
  private static final double TWILIGHT_END = Math.toRadians(-6);

  /** Horizontal illuminance at the end of civil twilight, lx (common value, from memory). */
  private static final double TWILIGHT_LUX = 3.4;

  /**
   * Constants of a kind of weather.
   *
   * @param haze c of the clear sky, 0.21 typical
   */
  public static Availability of(Weather weather, double haze) {
    return switch (weather) {
      case CLEAR -> new Availability(haze, 800, 15_500, 0.5);
      // Cloud never clears the air: a hazier site keeps its haze.
      case PARTLY_CLOUDY -> new Availability(Math.max(0.80, haze), 300, 45_000, 1);
      case OVERCAST -> new Availability(Double.POSITIVE_INFINITY, 300, 21_000, 1);
    };
  }

  /** Illuminance square to the sun above the air on a day of the year, lx. */
  public static double extraterrestrial(int dayOfYear) {
    return SOLAR_CONSTANT * (1 + 0.034 * Math.cos(2 * Math.PI * (dayOfYear - 2) / 365));
  }

  /**
   * Relative optical air mass, 1 at the zenith (Kasten and Young 1989).
   *
   * @param altitude radians, 0 or more
   */
  public static double airMass(double altitude) {
    double deg = Math.toDegrees(altitude);
    return 1 / (Math.sin(altitude) + 0.50572 * Math.pow(deg + 6.07995, -1.6364));
  }

  /** Illuminance of the sun's beam square to it, lx, through an air mass. */
  public double directNormal(double extraterrestrial, double airMass) {
    return Double.isInfinite(c) ? 0 : extraterrestrial * Math.exp(-c * airMass);
  }

  /**
   * Illuminance of the vault on open level ground, lx. Below the horizon it falls evenly in its
   * logarithm to 3.4 lx at the end of civil twilight (sun 6 degrees down) and is 0 from there on.
   *
   * @param altitude of the sun, radians
   */
  public double horizontal(double altitude) {
    if (altitude >= 0) {
      return a + b * Math.pow(Math.sin(altitude), exponent);
    }
    if (altitude < TWILIGHT_END) {
      return 0;
    }
    return a * Math.pow(TWILIGHT_LUX / a, altitude / TWILIGHT_END);
  }
}
