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
import slantlight.sight.GlossAngle;
import slantlight.sight.GlossLobe;
import slantlight.sky.Fresnel;
import slantlight.sky.GlassPane;
import slantlight.sky.WaterMirror;

/** Reflection and transmission against Fresnel's equations and published tables. */
final class OpticsChecks {
  private static final String SUBJECT = "Glass, water and paint";
  private static final String EQUATIONS = "Fresnel's equations";

  private OpticsChecks() {}

  static List<Check> all() {
    List<Check> out = new ArrayList<>();
    boundaries(out);
    glass(out);
    gloss(out);
    energy(out);
    lightness(out);
    glitter(out);
    return out;
  }

  private static void boundaries(List<Check> out) {
    double[][] binder = {
      {0, 0.0400},
      {45, 0.0502},
      {60, 0.0892},
      {75, 0.2531},
      {80, 0.3877},
      {85, 0.6128},
      {88, 0.8187}
    };
    for (double[] row : binder) {
      out.add(
          near(
              SUBJECT,
              "reflectance, index 1.5, at " + (int) row[0] + " degrees",
              EQUATIONS,
              row[1],
              Fresnel.reflectance(cos(row[0]), 1.5),
              6e-5,
              4));
    }
    out.add(
        near(
            SUBJECT,
            "reflectance, index 1.5, diffuse incidence",
            EQUATIONS,
            0.0918,
            Fresnel.diffuseReflectance(1.5),
            6e-5,
            4));
    double[][] water = {
      {0, 2.0}, {40, 2.4}, {60, 5.9}, {70, 13.3}, {75, 21.2}, {80, 34.9}, {85, 58.3}
    };
    for (double[] row : water) {
      // The sea's index is 1.34, fresh water's 1.333: a quarter of a percentage point.
      out.add(
          near(
              SUBJECT,
              "reflectance of water at " + (int) row[0] + " degrees, %",
              "Jerlov, Marine Optics, table XVI (sea water)",
              row[1],
              100 * Fresnel.reflectance(cos(row[0]), Fresnel.WATER),
              0.3,
              1));
    }
    double[][] black = {{20, 0.0491}, {60, 0.1001}, {85, 0.6191}};
    for (double[] row : black) {
      out.add(
          near(
              SUBJECT,
              "reflectance of polished black glass, index 1.567, at " + (int) row[0] + " degrees",
              "ASTM D523 / ISO 2813 standard by Fresnel's equations (index from memory)",
              row[1],
              Fresnel.reflectance(cos(row[0]), GlossAngle.BLACK_GLASS),
              6e-5,
              4));
    }
  }

  private static void glass(List<Check> out) {
    double[] angles = {0, 40, 50, 60, 70, 80, 85};
    double[][] published = {
      {0.890, 0.878, 0.859, 0.811, 0.695, 0.432, 0.226},
      {0.797, 0.783, 0.761, 0.703, 0.555, 0.274, 0.116}
    };
    for (int panes = 1; panes <= 2; panes++) {
      for (int k = 0; k < angles.length; k++) {
        out.add(
            near(
                SUBJECT,
                (panes == 1 ? "single" : "double") + " glass at " + (int) angles[k] + " degrees",
                "slab formula of Duffie and Beckman, section 5.3, n 1.526, KL 0.03",
                published[panes - 1][k],
                GlassPane.transmittance(cos(angles[k]), panes),
                6e-4,
                3));
      }
    }
    double[][] tables = {
      {40, 0.82 / 0.83, 0.68 / 0.70}, {60, 0.75 / 0.83, 0.58 / 0.70}, {80, 0.39 / 0.83, 0.21 / 0.70}
    };
    for (double[] row : tables) {
      for (int panes = 1; panes <= 2; panes++) {
        out.add(
            near(
                SUBJECT,
                "transmittance over that at 0 degrees, 3 mm clear, "
                    + (panes == 1 ? "single" : "double")
                    + ", at "
                    + (int) row[0]
                    + " degrees",
                "ASHRAE solar transmittance table (from memory; solar, so absorbed more on long ways)",
                row[panes],
                GlassPane.relativeTransmittance(cos(row[0]), panes),
                0.06,
                2));
      }
    }
  }

  private static void gloss(List<Check> out) {
    for (GlossAngle angle : GlossAngle.values()) {
      out.add(
          near(
              SUBJECT,
              "gloss of polished black glass at " + (int) angle.degrees() + " degrees, units",
              "ASTM D523 / ISO 2813: 100 by definition",
              100,
              new GlossLobe(GlossAngle.BLACK_GLASS, GlossLobe.LEAST).gloss(angle),
              1,
              0));
    }
    double[][] classes = {{0, 5}, {0, 10}, {10, 25}, {20, 35}, {35, 70}, {70, 85}, {85, 101}};
    for (Sheen sheen : Sheen.values()) {
      double g = GlossLobe.ofGloss60(sheen.gloss60()).gloss(GlossAngle.SIXTY);
      double[] range = classes[sheen.level() - 1];
      out.add(
          fact(
              SUBJECT,
              "60 degree gloss of " + sheen + " lies in its class G" + sheen.level(),
              "MPI gloss classes",
              String.format(Locale.ROOT, "%.1f units", g),
              g >= range[0] && g <= range[1]));
    }
    grazing(out, Sheen.FLAT, 0, 10);
    grazing(out, Sheen.EGGSHELL, 10, 35);
  }

  private static void grazing(List<Check> out, Sheen sheen, double low, double high) {
    double g = GlossLobe.ofGloss60(sheen.gloss60()).gloss(GlossAngle.EIGHTY_FIVE);
    out.add(
        fact(
            SUBJECT,
            "85 degree sheen of " + sheen + ", which was not fitted, lies in its class",
            "MPI gloss classes",
            String.format(Locale.ROOT, "%.0f units", g),
            g >= low && g <= high));
  }

  private static void energy(List<Check> out) {
    double worst = 0;
    for (double roughness : new double[] {0.01, 0.03, 0.1, 0.3, 0.6, 1}) {
      GlossLobe mirror = new GlossLobe(1e7, roughness);
      for (double c : new double[] {1, 0.7, 0.4, 0.2, 0.1, 0.05}) {
        worst = Math.max(worst, mirror.albedo(c));
      }
    }
    out.add(
        fact(
            SUBJECT,
            "a GGX lobe of perfect facets never gives back more than arrives",
            "conservation of energy; Heitz, JCGT 3 (2014)",
            String.format(Locale.ROOT, "largest albedo %.3f", worst),
            worst <= 1.0005));
    double most = 0;
    for (Sheen sheen : Sheen.values()) {
      Coating white = Coating.of(new Paint(1, sheen));
      for (double c = 0.01; c <= 1; c += 0.01) {
        most = Math.max(most, white.directionalAlbedo(c));
      }
    }
    out.add(
        fact(
            SUBJECT,
            "white paint of any sheen never gives back more than arrives",
            "conservation of energy",
            String.format(Locale.ROOT, "largest albedo %.3f", most),
            most <= 1.0005));
  }

  private static void lightness(List<Check> out) {
    double[][] rows = {{100, 100}, {50, 18.42}, {90, 76.30}, {20, 2.99}};
    for (double[] row : rows) {
      out.add(
          near(
              SUBJECT,
              "light reflectance value of L* " + (int) row[0],
              "CIE 1976 L*, BS 8493: Y = 100 ((L* + 16)/116)^3",
              row[1],
              100 * Paint.lrvOfLightness(row[0]),
              0.006,
              2));
    }
  }

  private static void glitter(List<Check> out) {
    for (double altDeg : new double[] {15, 30, 60}) {
      Vec3 sun = Vec3.ofAzimuthAltitude(Math.PI, Math.toRadians(altDeg));
      out.add(
          within(
              SUBJECT,
              "light sent up by near-calm water over the beam on it, sun at altitude "
                  + (int) altDeg,
              EQUATIONS + "; conservation of energy",
              Fresnel.reflectance(sun.z(), Fresnel.WATER),
              sentUp(new WaterMirror(Fresnel.WATER, 1e-4), sun),
              0.012,
              4));
    }
    for (double wind : new double[] {0, 10}) {
      out.add(
          within(
              SUBJECT,
              "mean square slope of water under wind of " + (int) wind + " m/s",
              "Cox and Munk, JOSA 44 (1954), clean surface: 0.003 + 0.00512 W",
              0.003 + 0.00512 * wind,
              meanSquareSlope(WaterMirror.water(wind)),
              0.02,
              4));
    }
  }

  /** Upward flux over incident flux on level water, by quadrature over facets. */
  private static double sentUp(WaterMirror water, Vec3 sun) {
    return overFacets(water, sun, 0) / sun.z();
  }

  /** Second moment of slopes as the glitter of an overhead sun shows them. */
  private static double meanSquareSlope(WaterMirror water) {
    return overFacets(water, Vec3.UP, 1) / overFacets(water, Vec3.UP, 0);
  }

  /** Integral of glitter x slope^(2 power) x out.z over outgoing directions, facet by facet. */
  private static double overFacets(WaterMirror water, Vec3 sun, int power) {
    double reach = 5 * Math.sqrt(water.slopeVariance());
    int n = 300;
    double step = 2 * reach / n;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        double zx = (i + 0.5) * step - reach;
        double zy = (k + 0.5) * step - reach;
        Vec3 normal = new Vec3(-zx, -zy, 1).unit();
        double cosOmega = normal.dot(sun);
        Vec3 up = normal.times(2 * cosOmega).minus(sun);
        if (cosOmega > 0 && up.z() > 0) {
          double solid = 4 * cosOmega * Math.pow(normal.z(), 3) * step * step;
          sum += water.glitter(sun, up) * up.z() * solid * Math.pow(zx * zx + zy * zy, power);
        }
      }
    }
    return sum;
  }

  private static double cos(double deg) {
    return Math.cos(Math.toRadians(deg));
  }
}
