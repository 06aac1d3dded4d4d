package slantlight.sky;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the sun stands.
 *
 * <p>Solar Position Algorithm of Reda and Andreas, "Solar position algorithm for solar radiation
 * applications", Solar Energy 76 (2004) and NREL/TP-560-34302, through the solarpositioning
 * library: 0.0003 degrees, years -2000 to 6000. Topocentric, so the sun's parallax is in.
 *
 * <p>Altitudes are apparent: refraction by Saemundsson's formula as SPA prints it, for 10 C and the
 * standard atmosphere's pressure at the site's elevation (about 0.57 degrees at the horizon). The
 * real air near the horizon varies by a tenth of a degree or more; no model of this kind knows it.
 */
public final class SunPath {
  /** Air temperature assumed for refraction, C. */
  public static final double TEMPERATURE_C = 10;

  private SunPath() {}

  /**
   * Air that bends light.
   *
   * @param pressureHpa pressure at the site, hPa
   * @param temperatureC C
   */
  public record Air(double pressureHpa, double temperatureC) {}

  /**
   * Apparent place of the sun's centre. One call costs about 3 microseconds.
   *
   * @param latitudeDeg degrees north, -90 to 90
   * @param longitudeDeg degrees east, -180 to 180
   * @param elevation m above the sea
   * @throws IllegalArgumentException if latitude or longitude is out of range
   */
  public static Sun at(double latitudeDeg, double longitudeDeg, double elevation, Instant instant) {
    double deltaT = DeltaT.estimate(instant.atZone(ZoneOffset.UTC).toLocalDate());
    Air air = new Air(pressure(elevation), TEMPERATURE_C);
    return at(latitudeDeg, longitudeDeg, elevation, instant, deltaT, air);
  }

  /**
   * Apparent place of the sun's centre, everything stated.
   *
   * @param deltaT terrestrial time minus universal time, s
   * @throws IllegalArgumentException if latitude or longitude is out of range
   */
  public static Sun at(
      double latitudeDeg,
      double longitudeDeg,
      double elevation,
      Instant instant,
      double deltaT,
      Air air) {
    return sun(
        SPA.calculateSolarPosition(
            instant.atZone(ZoneOffset.UTC),
            latitudeDeg,
            longitudeDeg,
            elevation,
            deltaT,
            air.pressureHpa(),
            air.temperatureC()));
  }

  /**
   * Place of the sun's centre as it would be seen without air.
   *
   * @throws IllegalArgumentException if latitude or longitude is out of range
   */
  public static Sun withoutRefraction(
      double latitudeDeg, double longitudeDeg, double elevation, Instant instant) {
    ZonedDateTime utc = instant.atZone(ZoneOffset.UTC);
    return sun(
        SPA.calculateSolarPosition(
            utc, latitudeDeg, longitudeDeg, elevation, DeltaT.estimate(utc.toLocalDate())));
  }

  /**
   * Pressure of the standard atmosphere at an elevation, hPa (ISO 2533, troposphere).
   *
   * @param elevation m above the sea
   */
  static double pressure(double elevation) {
    return 1013.25 * Math.pow(1 - 2.25577e-5 * elevation, 5.25588);
  }

  private static Sun sun(SolarPosition p) {
    return new Sun(Math.toRadians(p.azimuth()), Math.toRadians(90 - p.zenithAngle()));
  }
}
