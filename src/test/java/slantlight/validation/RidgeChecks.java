package slantlight.validation;

import static slantlight.validation.Check.fact;
import static slantlight.validation.Check.near;
import static slantlight.validation.Check.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slantlight.geom.Vec3;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.sight.Coating;
import slantlight.sight.FlankLight;
import slantlight.sight.JointRidge;
import slantlight.sight.RaisedCosine;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;

/** Relief to contrast against elementary geometry, and ridge sizes against practice. */
final class RidgeChecks {
  private static final String SUBJECT = "Relief and contrast";
  private static final String GEOMETRY = "elementary geometry, Lambert's cosine law";
  private static final String PRACTICE = "common practice, no source";
  private static final Vec3 ABOVE = new Vec3(0, 0, 1);
  private static final Coating MATT = Coating.matt(0.8);

  private RidgeChecks() {}

  static List<Check> all() {
    List<Check> out = new ArrayList<>();
    crowns(out);
    limits(out);
    sizes(out);
    paint(out);
    return out;
  }

  private static void crowns(List<Check> out) {
    double[] grazing = {2, 5, 10, 20, 45};
    // Height and half width, mm.
    double[][] rows = {
      {0.25, 150, 0.0750, 0.0299, 0.0148, 0.0072, 0.0026},
      {0.5, 150, 0.1499, 0.0598, 0.0297, 0.0144, 0.0052},
      {0.8, 300, 0.1200, 0.0479, 0.0238, 0.0115, 0.0042},
      {1.5, 300, 0.2249, 0.0898, 0.0445, 0.0216, 0.0079},
      {0.4, 450, 0.0400, 0.0160, 0.0079, 0.0038, 0.0014}
    };
    for (double[] row : rows) {
      RaisedCosine crown = new RaisedCosine(row[0] / 1000, 2 * row[1] / 1000);
      for (int k = 0; k < grazing.length; k++) {
        double contrast = beam(grazing[k], 0, crown.peakSlope(), 0).michelson();
        out.add(
            near(
                SUBJECT,
                String.format(
                    Locale.ROOT,
                    "contrast of a crown %.2f mm high, %.0f mm wide, beam at %.0f degrees",
                    row[0],
                    2 * row[1],
                    grazing[k]),
                GEOMETRY,
                row[k + 2],
                contrast,
                6e-5,
                4));
      }
    }
  }

  private static void limits(List<Check> out) {
    // Both flanks over the level surface: 2 s cot(g) |cos(psi)| x direct share, psi from across.
    double[][] cases = {{3, 0, 0}, {3, 60, 0}, {10, 30, 1}, {20, 45, 3}};
    for (double[] c : cases) {
      double slope = 1e-4;
      double g = Math.toRadians(c[0]);
      FlankLight light = beam(c[0], c[1], slope, c[2]);
      double first = 2 * slope / Math.tan(g) * Math.cos(Math.toRadians(c[1])) / (1 + c[2]);
      double ours = 2 * light.michelson();
      out.add(
          within(
              SUBJECT,
              String.format(
                  Locale.ROOT,
                  "flank difference per slope, beam at %.0f degrees, %.0f off across, diffuse"
                      + " light %.0f x the beam's",
                  c[0],
                  c[1],
                  c[2]),
              GEOMETRY + ": 2 cot(g) cos(psi) x direct share",
              first / slope,
              ours / slope,
              0.001,
              3));
    }
    double g = Math.toRadians(5);
    double zx = 0.02;
    double exact = (1 + zx / Math.tan(g)) / Math.sqrt(1 + zx * zx);
    out.add(
        within(
            SUBJECT,
            "rising flank of slope 0.02 over level, beam at 5 degrees",
            GEOMETRY + ": (1 + zx cot g)/sqrt(1 + zx^2)",
            exact,
            beam(5, 0, zx, 0).rising() / beam(5, 0, 0, 0).rising(),
            1e-6,
            5));
    out.add(
        fact(
            SUBJECT,
            "a joint along the light stays quiet",
            PRACTICE,
            String.format(Locale.ROOT, "contrast %.6f", beam(3, 90, 0.02, 1).michelson()),
            beam(3, 90, 0.02, 1).michelson() < 1e-9));
    out.add(
        fact(
            SUBJECT,
            "the flank turned away is in its own shadow when steeper than the light",
            GEOMETRY,
            String.format(Locale.ROOT, "luminance %.3f", beam(5, 0, 0.0876, 0).falling()),
            beam(5, 0, 0.0876, 0).falling() == 0 && beam(5, 0, 0.0874, 0).falling() > 0));
    out.add(
        near(
            SUBJECT,
            "shadow of a 1.2 mm crown under a beam at 4 degrees, mm",
            GEOMETRY + ": h / tan g",
            17.16,
            1000 * new RaisedCosine(0.0012, 0.525).shadowLength(Math.toRadians(4)),
            0.005,
            2));
  }

  private static void sizes(List<Check> out) {
    RidgeTable table = RidgeTable.standard();
    double[][] spans = {{3, 0.5, 0.8, 1.2, 2.0}, {4, 0.2, 0.5, 0.8, 1.5}, {5, 0.1, 0.3, 0.4, 0.8}};
    for (double[] span : spans) {
      int level = (int) span[0];
      inSpan(out, "tapered joint", table.ridge(RidgeKind.TAPERED, level), level, span[1], span[2]);
      inSpan(out, "butt joint", table.ridge(RidgeKind.BUTT, level), level, span[3], span[4]);
    }
    double edge = 1000 * table.ridge(RidgeKind.BUTT, 1).edge().height();
    out.add(
        fact(
            SUBJECT,
            "the edge at level 1 is at least the paper tape's own thickness, 0.3 mm at most",
            "ASTM C475 (from memory)",
            String.format(Locale.ROOT, "%.2f mm", edge),
            edge >= 0.3));
  }

  private static void inSpan(
      List<Check> out, String what, JointRidge ridge, int level, double low, double high) {
    double mm = 1000 * ridge.crown().height();
    out.add(
        fact(
            SUBJECT,
            String.format(
                Locale.ROOT,
                "crown of a %s at level %d lies in the trade's %.1f to %.1f mm",
                what,
                level,
                low,
                high),
            PRACTICE,
            String.format(Locale.ROOT, "%.2f mm", mm),
            mm >= low && mm <= high));
  }

  /** A low window ahead and even fill; the eye looks down at 46 degrees toward the window. */
  private static void paint(List<Check> out) {
    Vec3 eye = new Vec3(Math.cos(0.8), 0, Math.sin(0.8));
    double pale = underWindow(Coating.of(new Paint(0.85, Sheen.FLAT)), eye);
    double dark = underWindow(Coating.of(new Paint(0.06, Sheen.FLAT)), eye);
    double satin = underWindow(Coating.of(new Paint(0.85, Sheen.SATIN)), new Vec3(0.9, 0, 0.436));
    double flat = underWindow(Coating.of(new Paint(0.85, Sheen.FLAT)), new Vec3(0.9, 0, 0.436));
    out.add(
        fact(
            SUBJECT,
            "under one light, charcoal flat paint shows more than white flat paint",
            PRACTICE,
            String.format(Locale.ROOT, "contrast %.3f against %.3f", dark, pale),
            dark > 1.5 * pale));
    out.add(
        fact(
            SUBJECT,
            "toward the light, satin shows more than flat paint of the same white",
            PRACTICE,
            String.format(Locale.ROOT, "contrast %.3f against %.3f", satin, flat),
            satin > 1.3 * flat));
  }

  private static double underWindow(Coating coating, Vec3 eye) {
    int fill = 64;
    double[] directions = new double[3 * (fill + 1)];
    double[] lux = new double[fill + 1];
    directions[0] = -Math.cos(0.15);
    directions[2] = Math.sin(0.15);
    lux[0] = 5000;
    for (int i = 0; i < fill; i++) {
      double z = Math.sqrt((i + 0.5) / fill);
      double s = Math.sqrt(1 - z * z);
      directions[3 * (i + 1)] = s * Math.cos(i * 2.399963);
      directions[3 * (i + 1) + 1] = s * Math.sin(i * 2.399963);
      directions[3 * (i + 1) + 2] = z;
      lux[i + 1] = 20;
    }
    return FlankLight.of(directions, lux, 0.01, coating, eye).michelson();
  }

  /** A beam and even diffuse light on the flanks; diffuse given as a multiple of the beam's lux. */
  private static FlankLight beam(double grazingDeg, double offDeg, double slope, double diffuse) {
    double g = Math.toRadians(grazingDeg);
    double psi = Math.toRadians(offDeg);
    int n = diffuse > 0 ? 4000 : 0;
    double[] directions = new double[3 * (n + 1)];
    double[] lux = new double[n + 1];
    directions[0] = -Math.cos(g) * Math.cos(psi);
    directions[1] = -Math.cos(g) * Math.sin(psi);
    directions[2] = Math.sin(g);
    lux[0] = 1000;
    for (int i = 0; i < n; i += 2) {
      // Pairs opposite in azimuth, equal shares of illuminance: no slant of their own.
      double z = Math.sqrt((i + 1.0) / n);
      double s = Math.sqrt(1 - z * z);
      double a = i * 2.399963;
      for (int k = 0; k < 2; k++) {
        int at = 3 * (i + k + 1);
        directions[at] = s * Math.cos(a + k * Math.PI);
        directions[at + 1] = s * Math.sin(a + k * Math.PI);
        directions[at + 2] = z;
        lux[i + k + 1] = diffuse * 1000 * Math.sin(g) / n / z;
      }
    }
    return FlankLight.of(directions, lux, slope, MATT, ABOVE);
  }
}
