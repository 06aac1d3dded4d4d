package slantlight.validation;

import static slantlight.validation.Check.fact;
import static slantlight.validation.Check.near;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.Grena3;
import net.e175.klaus.solarpositioning.SolarPosition;
import net.time4j.TemporalType;
import net.time4j.calendar.astro.GeoLocation;
import org.shredzone.commons.suncalc.SunPosition;
import slantlight.geom.Vec3;
import slantlight.sky.Sun;
import slantlight.sky.SunGrid;
import slantlight.sky.SunPath;

/** The sun's place against worked examples, tables, a second library and plain facts. */
final class SunChecks {
  private static final String SUBJECT = "Sun position";
  private static final String SPA =
      "Reda and Andreas, NREL/TP-560-34302 (2008), worked example of 2003-10-17";
  private static final String ASHRAE = "ASHRAE solar position table, 40 N (from memory)";

  private SunChecks() {}

  static List<Check> all() {
    List<Check> out = new ArrayList<>();
    workedExample(out);
    companions(out);
    lowPrecision(out);
    solarTime(out);
    facts(out);
    return out;
  }

  private static void workedExample(List<Check> out) {
    double lat = 39.742476;
    double lon = -105.1786;
    Instant at = Instant.parse("2003-10-17T19:30:30Z");
    SunPath.Air air = new SunPath.Air(820, 11);
    Sun sun = SunPath.at(lat, lon, 1830.14, at, 67, air);
    out.add(
        near(SUBJECT, "topocentric zenith angle, degrees", SPA, 50.11162, zenith(sun), 5e-6, 5));
    out.add(
        near(
            SUBJECT,
            "topocentric azimuth, degrees",
            SPA,
            194.34024,
            Math.toDegrees(sun.azimuth()),
            5e-6,
            5));
    Sun bare = SunPath.at(lat, lon, 1830.14, at, 67, new SunPath.Air(0, 11));
    out.add(
        near(
            SUBJECT,
            "altitude without refraction, degrees",
            SPA,
            39.872046,
            90 - zenith(bare),
            5e-6,
            5));
    double incidence =
        Math.toDegrees(
            Math.acos(
                sun.direction()
                    .dot(Vec3.ofAzimuthAltitude(Math.toRadians(170), Math.toRadians(60)))));
    out.add(
        near(
            SUBJECT,
            "incidence on a surface of slope 30 facing azimuth 170, degrees",
            SPA,
            25.18700,
            incidence,
            5e-6,
            5));
    // The example works by the day of universal time: its sunset is that of the evening before.
    String riseSource = SPA + " (times from memory)";
    for (String event : new String[] {"2003-10-17T13:12:43Z", "2003-10-17T00:20:19Z"}) {
      Sun edge = SunPath.withoutRefraction(lat, lon, 1830.14, Instant.parse(event));
      out.add(
          near(
              SUBJECT,
              "true altitude at the published sunrise or sunset " + event + ", degrees",
              riseSource,
              -0.8333,
              Math.toDegrees(edge.altitude()),
              0.01,
              2));
    }
  }

  /**
   * Like with like: no refraction anywhere, directions compared, not azimuths. Each companion is
   * held to the accuracy that it states of itself.
   */
  private static void companions(List<Check> out) {
    Random random = new Random(20260101);
    long from = Instant.parse("1950-01-01T00:00:00Z").getEpochSecond();
    long to = Instant.parse("2050-01-01T00:00:00Z").getEpochSecond();
    Instant grenaFrom = Instant.parse("2010-01-01T00:00:00Z");
    double library = 0;
    double libraryMean = 0;
    double time4j = 0;
    double meeus = 0;
    double grena = 0;
    for (int i = 0; i < 1000; i++) {
      double lat = Math.toDegrees(Math.asin(2 * random.nextDouble() - 1));
      double lon = 360 * random.nextDouble() - 180;
      Instant at = Instant.ofEpochSecond(from + (long) ((to - from) * random.nextDouble()));
      Vec3 ours = SunPath.withoutRefraction(lat, lon, 0, at).direction();
      double off = apart(ours, bySunCalc(lat, lon, at));
      library = Math.max(library, off);
      libraryMean += off / 1000;
      time4j = Math.max(time4j, apart(ours, byTime4j(lat, lon, at)));
      meeus = Math.max(meeus, apart(ours, byMeeus(lat, lon, at)));
      if (at.isAfter(grenaFrom)) {
        grena = Math.max(grena, apart(ours, byGrena(lat, lon, at)));
      }
    }
    String what = " over 1,000 seeded places and instants of 1950 to 2050, degrees";
    out.add(
        largest(
            "largest angle to a second library" + what,
            "Time4J 5.9.4 (right ascension and declination)",
            time4j,
            0.01));
    out.add(
        largest("mean angle to a third library" + what, "commons-suncalc 3.11", libraryMean, 0.01));
    out.add(
        largest(
            "largest angle to a third library" + what,
            "commons-suncalc 3.11 (its own stated accuracy: about a minute of arc, 0.017)",
            library,
            0.02));
    out.add(
        largest(
            "largest angle to Meeus' short formulas" + what,
            "Meeus, Astronomical Algorithms, chapters 12 and 25 (stated accuracy 0.01)",
            meeus,
            0.01));
    out.add(
        largest(
            "largest angle to Grena's algorithm 3 over those of them after 2010, degrees",
            "Grena, Solar Energy 86 (2012) (stated accuracy 0.01)",
            grena,
            0.01));
  }

  private static Check largest(String what, String source, double angle, double limit) {
    return new Check(
        SUBJECT,
        what,
        source,
        "0",
        String.format(Locale.ROOT, "%.3f", angle),
        "within " + limit,
        angle <= limit);
  }

  private static double apart(Vec3 a, Vec3 b) {
    return Math.toDegrees(2 * Math.asin(a.distance(b) / 2));
  }

  private static Vec3 bySunCalc(double lat, double lon, Instant at) {
    SunPosition p = SunPosition.compute().at(lat, lon).on(Date.from(at)).execute();
    return Vec3.ofAzimuthAltitude(
        Math.toRadians(p.getAzimuth()), Math.toRadians(p.getTrueAltitude()));
  }

  private static Vec3 byGrena(double lat, double lon, Instant at) {
    ZonedDateTime utc = at.atZone(ZoneOffset.UTC);
    SolarPosition p =
        Grena3.calculateSolarPosition(utc, lat, lon, DeltaT.estimate(utc.toLocalDate()));
    return Vec3.ofAzimuthAltitude(
        Math.toRadians(p.azimuth()), Math.toRadians(90 - p.zenithAngle()));
  }

  /** Meeus' low-precision sun, sidereal time with nutation, and the sun's parallax. */
  private static Vec3 byMeeus(double lat, double lon, Instant at) {
    double days = at.getEpochSecond() / 86_400.0 - 10_957.5;
    double deltaT = DeltaT.estimate(at.atZone(ZoneOffset.UTC).toLocalDate());
    double t = (days + deltaT / 86_400) / 36_525;
    double l0 = 280.46646 + 36000.76983 * t + 0.0003032 * t * t;
    double m = Math.toRadians(357.52911 + 35999.05029 * t - 0.0001537 * t * t);
    double c =
        (1.914602 - 0.004817 * t - 0.000014 * t * t) * Math.sin(m)
            + (0.019993 - 0.000101 * t) * Math.sin(2 * m)
            + 0.000289 * Math.sin(3 * m);
    double node = Math.toRadians(125.04 - 1934.136 * t);
    double nutation = -0.00478 * Math.sin(node);
    double lambda = Math.toRadians(l0 + c - 0.00569 + nutation);
    double eps = Math.toRadians(23.4392911 - 0.0130042 * t + 0.00256 * Math.cos(node));
    double rightAscension = Math.atan2(Math.cos(eps) * Math.sin(lambda), Math.cos(lambda));
    double declination = Math.asin(Math.sin(eps) * Math.sin(lambda));
    return placed(lat, lon, days, rightAscension, declination);
  }

  /** Time4J's right ascension and declination of the sun's centre, seen from the earth's centre. */
  private static Vec3 byTime4j(double lat, double lon, Instant at) {
    net.time4j.calendar.astro.SunPosition p =
        net.time4j.calendar.astro.SunPosition.at(
            TemporalType.INSTANT.translate(at), GeoLocation.of(lat, lon, 0));
    double days = at.getEpochSecond() / 86_400.0 - 10_957.5;
    return placed(
        lat, lon, days, Math.toRadians(p.getRightAscension()), Math.toRadians(p.getDeclination()));
  }

  /**
   * A place among the stars as a place in the sky: apparent sidereal time (Meeus, chapter 12) and
   * the sun's parallax.
   *
   * @param days of universal time since 2000-01-01 12h
   */
  private static Vec3 placed(
      double lat, double lon, double days, double rightAscension, double declination) {
    double node = Math.toRadians(125.04 - 1934.136 * days / 36_525);
    double nutation = -0.00478 * Math.sin(node);
    double sidereal =
        280.46061837 + 360.98564736629 * days + nutation * Math.cos(Math.toRadians(23.44));
    Vec3 d =
        SunGrid.direction(
            Math.toRadians(lat), declination, Math.toRadians(sidereal + lon) - rightAscension);
    double parallax = Math.toRadians(8.794 / 3600);
    return Vec3.ofAzimuthAltitude(d.azimuth(), d.altitude() - parallax * Math.cos(d.altitude()));
  }

  private static void lowPrecision(List<Check> out) {
    // Terrestrial time 0h is 59 s of universal time earlier in 1992. Seen from the pole the
    // altitude is the declination, but for the sun's parallax of 0.0024.
    Instant meeus = Instant.parse("1992-10-12T23:59:01Z");
    out.add(
        near(
            SUBJECT,
            "declination, 1992-10-13 0h TD, degrees",
            "Meeus, Astronomical Algorithms, example 25.a (stated accuracy 0.01)",
            -7.78507,
            Math.toDegrees(SunPath.withoutRefraction(90, 0, 0, meeus).altitude()),
            0.01,
            2));
    Instant noaa = Instant.parse("2010-06-21T07:06:00Z");
    Vec3 d = SunPath.withoutRefraction(40, -105, 0, noaa).direction();
    double lat = Math.toRadians(40);
    double sinDec = d.z() * Math.sin(lat) + d.y() * Math.cos(lat);
    double hour = Math.atan2(-d.x(), d.z() * Math.cos(lat) - d.y() * Math.sin(lat));
    String source = "NOAA solar calculation sheet, 2010-06-21 00:06 UTC-7, 40 N 105 W";
    out.add(
        near(
            SUBJECT,
            "declination, degrees",
            source,
            23.438370619,
            Math.toDegrees(Math.asin(sinDec)),
            0.005,
            2));
    // Hour angle = universal time - 12 h + longitude + equation of time.
    double equationMinutes = Math.toDegrees(hour) * 4 - (7.1 * 60 - 720 - 105 * 4);
    equationMinutes -= 1440 * Math.rint(equationMinutes / 1440);
    out.add(
        near(SUBJECT, "equation of time, minutes", source, -1.715367578, equationMinutes, 0.05, 1));
  }

  private static void solarTime(List<Check> out) {
    String[][] table = {
      {"-20.0", "30.0/0 28.4/16.0 23.8/30.9 16.8/44.0 8.1/55.3", "21 January"},
      {"23.45", "73.5/0 69.2/41.9 59.8/65.8 48.8/80.2 37.4/90.7 26.0/99.7 14.8/108.4", "21 June"},
      {"-23.45", "26.6/0 25.0/15.2 20.7/29.4 14.0/41.9 5.5/53.0", "21 December"}
    };
    for (String[] day : table) {
      String[] hours = day[1].split(" ", -1);
      for (int h = 0; h < hours.length; h++) {
        String[] row = hours[h].split("/", -1);
        solar(
            out,
            day[2] + " " + (12 - h) + " h",
            ASHRAE,
            40,
            Double.parseDouble(day[0]),
            -h,
            Double.parseDouble(row[0]),
            0 - Double.parseDouble(row[1]));
      }
    }
    solar(
        out,
        "15 June, 14 h",
        "Kalogirou, Solar Energy Engineering (book from memory)",
        40,
        23.35,
        2,
        59.75,
        65.7);
    String duffie = "Duffie and Beckman, Solar Engineering of Thermal Processes, example 1.6.2";
    solar(out, "13 February, 9:30 h", duffie, 43, -14, -2.5, 90 - 66.5, -40.0);
    solar(out, "1 July, 18:30 h", duffie, 43, 23.1, 6.5, 90 - 79.6, 112.0);
    String exercise = "university exercise, declination by Cooper's formula";
    solar(out, "30 N, 1 March, 10 h", exercise, 30, -8.29, -2, 42.1, -41.8);
    solar(out, "38 N, 1 July, 17 h", exercise, 38, 23.12, 5, 25.4, 100.4);
  }

  /** Altitude and azimuth (from south, westward) at a solar hour after noon. */
  private static void solar(
      List<Check> out,
      String when,
      String source,
      double latDeg,
      double decDeg,
      double hours,
      double altitude,
      double azimuth) {
    Vec3 d =
        SunGrid.direction(
            Math.toRadians(latDeg), Math.toRadians(decDeg), Math.toRadians(15 * hours));
    String place = when + " solar, declination " + decDeg + ": ";
    out.add(
        near(
            SUBJECT,
            place + "altitude, degrees",
            source,
            altitude,
            Math.toDegrees(d.altitude()),
            0.11,
            1));
    double ours = hours == 0 ? 0 : Math.toDegrees(d.azimuth()) - 180;
    out.add(
        near(
            SUBJECT,
            place + "azimuth from south, west +, degrees",
            source,
            azimuth,
            ours,
            0.11,
            1));
  }

  private static void facts(List<Check> out) {
    String memory = "almanac, from memory";
    Sun equinox = SunPath.withoutRefraction(90, 0, 0, Instant.parse("2026-03-20T14:46:00Z"));
    out.add(
        near(
            SUBJECT,
            "declination at the March equinox, 2026-03-20 14:46 UTC, degrees",
            memory,
            0,
            Math.toDegrees(equinox.altitude()),
            0.01,
            2));
    out.add(
        near(
            SUBJECT,
            "noon altitude at 45 N on 2026-06-21, degrees: 90 - 45 + 23.44",
            memory,
            68.44,
            extreme(45, "2026-06-21T00:00:00Z", true),
            0.02,
            2));
    out.add(
        near(
            SUBJECT,
            "noon altitude at 45 N on 2026-12-21, degrees: 90 - 45 - 23.44",
            memory,
            21.56,
            extreme(45, "2026-12-21T00:00:00Z", true),
            0.05,
            2));
    polar(out, 70, "2026-06-21T00:00:00Z", true, "midnight sun at 70 N on 21 June");
    polar(out, 70, "2026-12-21T00:00:00Z", false, "polar night at 70 N on 21 December");
    polar(out, -80, "2026-12-21T00:00:00Z", true, "midnight sun at 80 S on 21 December");
    polar(out, -80, "2026-06-21T00:00:00Z", false, "polar night at 80 S on 21 June");
    Sun sydneyNoon = SunPath.at(-33.87, 151.21, 0, Instant.parse("2026-06-21T01:57:00Z"));
    out.add(
        near(
            SUBJECT,
            "the noon sun of 34 S in June stands in the north, degrees from north",
            "common knowledge, no source",
            0,
            Math.toDegrees(Math.IEEEremainder(sydneyNoon.azimuth(), 2 * Math.PI)),
            1,
            0));
  }

  private static void polar(List<Check> out, double lat, String day, boolean up, String what) {
    double edge = extreme(lat, day, !up);
    out.add(
        fact(
            SUBJECT,
            what,
            "common knowledge, no source",
            String.format(Locale.ROOT, up ? "lowest altitude %.1f" : "highest altitude %.1f", edge),
            up ? edge > 0 : edge < 0));
  }

  /** Highest or lowest apparent altitude over 24 hours, degrees. */
  private static double extreme(double lat, String day, boolean highest) {
    Instant start = Instant.parse(day);
    double out = highest ? -90 : 90;
    for (int minute = 0; minute < 1440; minute++) {
      double a =
          Math.toDegrees(SunPath.at(lat, 0, 0, start.plus(Duration.ofMinutes(minute))).altitude());
      out = highest ? Math.max(out, a) : Math.min(out, a);
    }
    return out;
  }

  private static double zenith(Sun sun) {
    return 90 - Math.toDegrees(sun.altitude());
  }
}
