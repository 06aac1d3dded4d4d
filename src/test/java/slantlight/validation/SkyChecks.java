package slantlight.validation;

import static slantlight.validation.Check.near;
import static slantlight.validation.Check.within;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Vec3;
import slantlight.sky.Availability;
import slantlight.sky.CieSky;
import slantlight.sky.SkyState;
import slantlight.sky.SkyZones;
import slantlight.sky.Weather;

/** Amount and pattern of skylight against the standards' formulas. */
final class SkyChecks {
  private static final String SUBJECT = "Sky light";
  private static final String CIE = "ISO 15469:2004 / CIE S 011, by its formula";
  private static final String IES =
      "IES RP-21 availability model, air mass 1/sin (form published, constants from memory)";
  private static final String KASTEN = "Kasten and Young, Applied Optics 28 (1989)";

  private SkyChecks() {}

  static List<Check> all() {
    List<Check> out = new ArrayList<>();
    patterns(out);
    amounts(out);
    zones(out);
    return out;
  }

  private static void patterns(List<Check> out) {
    pattern(out, 1, 45, 2.4495, 0.3792, 0.3792);
    pattern(out, 5, 45, Math.PI, 0.5, 0.5);
    pattern(out, 16, 45, 7 * Math.PI / 9, 0.3962, 0.3962);
    pattern(out, 12, 30, 3.1906, 0.742, 0.346);
    pattern(out, 12, 60, 6.394, 1.235, 0.397);
    pattern(out, 12, 75, 7.205, 1.490, 0.472);
    ratio(out, 1, 45, 90, 0.6652);
    ratio(out, 16, 45, 90, 0.6667);
    double[][] rows = {
      {30, 1.7261, 0.6947, 0.5189}, {60, 13.479, 1.3408, 1.2356}, {75, 8.9384, 1.5940, 1.7358}
    };
    for (double[] row : rows) {
      for (int k = 0; k < 3; k++) {
        ratio(out, 12, row[0], 90 * k, row[k + 1]);
      }
    }
    out.add(
        within(
            SUBJECT,
            "type 12, sun at zenith angle 60: luminance 40 degrees from the sun over that at 80,"
                + " at one height",
            "CIE clear sky of 1973, 0.91 + 10 exp(-3 chi) + 0.45 cos^2 chi (from memory)",
            oldIndicatrix(40) / oldIndicatrix(80),
            indicatrixRatio(40, 80),
            0.01,
            3));
  }

  private static double oldIndicatrix(double deg) {
    double chi = Math.toRadians(deg);
    return 0.91 + 10 * Math.exp(-3 * chi) + 0.45 * Math.cos(chi) * Math.cos(chi);
  }

  private static double indicatrixRatio(double aDeg, double bDeg) {
    // On the circle of the sun's own height the gradation is the same everywhere.
    double zs = Math.toRadians(60);
    CieSky sky = CieSky.ofZenith(12, Vec3.ofAzimuthAltitude(0, Math.PI / 2 - zs), 1);
    double[] l = new double[2];
    for (int i = 0; i < 2; i++) {
      double chi = Math.toRadians(i == 0 ? aDeg : bDeg);
      double turn = 2 * Math.asin(Math.sin(chi / 2) / Math.sin(zs));
      Vec3 d = Vec3.ofAzimuthAltitude(turn, Math.PI / 2 - zs);
      l[i] = sky.toward(d.x(), d.y(), d.z());
    }
    return l[0] / l[1];
  }

  private static void pattern(
      List<Check> out, int type, double zenithDeg, double level, double facing, double away) {
    CieSky sky = sky(type, zenithDeg);
    String at = "type " + type + ", sun at zenith angle " + (int) zenithDeg + ": ";
    double eh = illuminance(sky, Vec3.UP);
    out.add(within(SUBJECT, at + "Eh / Lz", CIE, level, eh, 0.001, 3));
    out.add(
        within(
            SUBJECT,
            at + "Eh / Lz as the program tabulates it",
            CIE,
            level,
            sky.horizontalLux(),
            0.001,
            3));
    out.add(
        within(
            SUBJECT,
            at + "Ev / Eh facing the sun",
            CIE,
            facing,
            illuminance(sky, Vec3.NORTH) / eh,
            0.002,
            3));
    out.add(
        within(
            SUBJECT,
            at + "Ev / Eh away from the sun",
            CIE,
            away,
            illuminance(sky, Vec3.NORTH.times(-1)) / eh,
            0.002,
            3));
  }

  private static void ratio(
      List<Check> out, int type, double zenithDeg, double turnDeg, double published) {
    Vec3 d = Vec3.ofAzimuthAltitude(Math.toRadians(turnDeg), Math.toRadians(30));
    out.add(
        within(
            SUBJECT,
            "type "
                + type
                + ", sun at zenith angle "
                + (int) zenithDeg
                + ": L / Lz at zenith angle 60, "
                + (int) turnDeg
                + " from the sun's azimuth",
            CIE,
            published,
            sky(type, zenithDeg).toward(d.x(), d.y(), d.z()),
            0.0005,
            4));
  }

  private static CieSky sky(int type, double zenithDeg) {
    return CieSky.ofZenith(type, Vec3.ofAzimuthAltitude(0, Math.toRadians(90 - zenithDeg)), 1);
  }

  /** Midpoint quadrature over the vault. */
  private static double illuminance(CieSky sky, Vec3 normal) {
    int rings = 400;
    int parts = 800;
    double sum = 0;
    for (int r = 0; r < rings; r++) {
      double z = (r + 0.5) / rings;
      double h = Math.sqrt(1 - z * z);
      for (int p = 0; p < parts; p++) {
        double a = 2 * Math.PI * (p + 0.5) / parts;
        Vec3 d = new Vec3(h * Math.sin(a), h * Math.cos(a), z);
        double cos = d.dot(normal);
        if (cos > 0) {
          sum += sky.toward(d.x(), d.y(), d.z()) * cos;
        }
      }
    }
    return sum * 2 * Math.PI / (rings * parts);
  }

  private static void amounts(List<Check> out) {
    amount(out, Weather.CLEAR, 81, 10, 38.32, 7.26);
    amount(out, Weather.CLEAR, 172, 60, 96.72, 15.22);
    amount(out, Weather.PARTLY_CLOUDY, 81, 10, 1.28, 8.11);
    amount(out, Weather.PARTLY_CLOUDY, 172, 60, 48.94, 39.27);
    amount(out, Weather.OVERCAST, 81, 10, 0, 3.95);
    amount(out, Weather.OVERCAST, 172, 60, 0, 18.49);
    double[][] masses = {{5, 10.306}, {10, 5.586}, {30, 1.994}};
    for (double[] row : masses) {
      out.add(
          near(
              SUBJECT,
              "air mass at altitude " + (int) row[0],
              KASTEN,
              row[1],
              Availability.airMass(Math.toRadians(row[0])),
              0.001,
              3));
    }
  }

  private static void amount(
      List<Check> out, Weather weather, int day, double altDeg, double edn, double ekh) {
    Availability model = Availability.of(weather, 0.21);
    double alt = Math.toRadians(altDeg);
    String at = weather + ", day " + day + ", altitude " + (int) altDeg + ": ";
    double direct =
        model.directNormal(Availability.extraterrestrial(day), 1 / Math.sin(alt)) / 1000;
    out.add(near(SUBJECT, at + "Edn, klx", IES, edn, direct, 0.006, 2));
    out.add(near(SUBJECT, at + "Ekh, klx", IES, ekh, model.horizontal(alt) / 1000, 0.006, 2));
  }

  private static void zones(List<Check> out) {
    for (double altDeg : new double[] {20, 40, 60}) {
      CieSky sky =
          CieSky.ofHorizontal(12, Vec3.ofAzimuthAltitude(2, Math.toRadians(altDeg)), 15_000);
      SkyState state = new SkyState(sky.sun(), 0, sky, 15_000, 0.2, Double.NaN);
      float[] l = new float[SkyZones.COUNT];
      SkyZones.luminances(state, l, 0, 1);
      double sum = 0;
      for (int i = 0; i < SkyZones.COUNT; i++) {
        sum += l[i] * SkyZones.direction(i).z() * SkyZones.solidAngle(i);
      }
      out.add(
          within(
              SUBJECT,
              "sum of the 145 zones of a clear sky on level ground, sun at altitude "
                  + (int) altDeg
                  + ", lx",
              "conservation; zones of Tregenza, Lighting Research and Technology 19 (1987)",
              15_000,
              sum,
              0.01,
              0));
    }
  }
}
