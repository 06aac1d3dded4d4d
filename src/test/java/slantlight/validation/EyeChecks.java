package slantlight.validation;

import static slantlight.validation.Check.near;

import java.util.ArrayList;
import java.util.List;
import slantlight.sight.Barten;
import slantlight.sight.EyeModel;
import slantlight.sight.RaisedCosine;

/** What the eye can see, against Barten's formula and a hand calculation. */
final class EyeChecks {
  private static final String SUBJECT = "Eye";
  private static final String BARTEN =
      "Barten, Proc. SPIE 5294 (2003) p. 231, by its formula, field 60 degrees";

  private EyeChecks() {}

  static List<Check> all() {
    List<Check> out = new ArrayList<>();
    sensitivities(out);
    frequencies(out);
    handCheck(out);
    return out;
  }

  private static void sensitivities(List<Check> out) {
    double[] u = {0.25, 0.5, 1, 2, 4, 8, 16};
    double[][] rows = {
      {1, 170.3, 292.3, 375.7, 311.5, 182.8, 86.2, 28.0},
      {10, 175.8, 327.6, 517.7, 575.6, 416.8, 216.6, 76.7},
      {100, 176.7, 334.0, 556.1, 717.7, 671.9, 433.2, 170.1}
    };
    double[][] peaks = {{1, 376, 1.06}, {10, 584, 1.7}, {100, 729, 2.5}};
    for (double[] row : rows) {
      for (int k = 0; k < u.length; k++) {
        out.add(
            near(
                SUBJECT,
                "sensitivity at " + u[k] + " cycles per degree, " + (int) row[0] + " cd/m2",
                BARTEN,
                row[k + 1],
                Barten.sensitivity(u[k], row[0], 60),
                0.06,
                1));
      }
    }
    for (double[] row : peaks) {
      double best = 0;
      double at = 0;
      for (double f = 0.5; f < 6; f += 0.01) {
        double s = Barten.sensitivity(f, row[0], 60);
        if (s > best) {
          best = s;
          at = f;
        }
      }
      String where = "peak at " + (int) row[0] + " cd/m2: ";
      out.add(near(SUBJECT, where + "sensitivity", BARTEN, row[1], best, 0.6, 0));
      out.add(near(SUBJECT, where + "cycles per degree", BARTEN, row[2], at, 0.06, 2));
    }
  }

  private static void frequencies(List<Check> out) {
    out.add(
        near(
            SUBJECT,
            "frequency of a 300 mm period from 2 m, cycles per degree",
            "geometry",
            0.116,
            EyeModel.frequency(0.3, 2, 1),
            0.0005,
            3));
    out.add(
        near(
            SUBJECT,
            "frequency of a 50 mm period from 3 m, cycles per degree",
            "geometry",
            1.05,
            EyeModel.frequency(0.05, 3, 1),
            0.005,
            2));
  }

  /** A ceiling joint across the light of a tall window; light by numerical integration. */
  private static void handCheck(List<Check> out) {
    String source = "hand calculation: window light by quadrature, first-order relief, Barten 2003";
    double[][] light = {{1, 2690, 2900}, {3, 860, 1960}, {7, 130, 630}};
    double[][] edge4 = {{0.98, 2.3}, {1.39, 3.3}, {0.80, 1.9}};
    double[][] edge5 = {{0.22, 0.39}, {0.31, 0.56}, {0.18, 0.32}};
    double[][] crown4 = {{0.60, 0.14}, {0.85, 0.20}, {0.49, 0.12}};
    for (int i = 0; i < light.length; i++) {
      double total = light[i][1] + 800;
      double slant = light[i][2] / total;
      double luminance = 0.85 * total / Math.PI;
      String at = (int) light[i][0] + " m from the glass, ";
      hand(out, at + "edge 0.15 over 40 mm", source, 0.00015, 0.04, slant, luminance, edge4[i], 1);
      hand(out, at + "edge 0.05 over 60 mm", source, 0.00005, 0.06, slant, luminance, edge5[i], 2);
      hand(
          out, at + "crown 1.2 over 525 mm", source, 0.0012, 0.525, slant, luminance, crown4[i], 2);
    }
  }

  private static void hand(
      List<Check> out,
      String what,
      String source,
      double height,
      double width,
      double slant,
      double luminance,
      double[] published,
      int digits) {
    double contrast = new RaisedCosine(height, width).peakSlope() * slant;
    EyeModel eye = EyeModel.STANDARD;
    double showing = contrast * eye.gain(EyeModel.frequency(width, 2.5, 1), luminance);
    out.add(near(SUBJECT, what + ": contrast, %", source, published[0], 100 * contrast, 0.006, 2));
    double tolerance = digits == 1 ? 0.06 : 0.011;
    out.add(near(SUBJECT, what + ": showing", source, published[1], showing, tolerance, digits));
  }
}
