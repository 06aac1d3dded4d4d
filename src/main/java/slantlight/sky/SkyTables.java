package slantlight.sky;

import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * What is worked out once for each CIE sky type: the indicatrix by half the angle from the sun, the
 * gradation of the sub-directions of {@link SkyZones}, and the illuminance on level ground by the
 * sun's altitude. Tables keep a year of skies to microseconds a sky.
 */
final class SkyTables {
  private static final AtomicReferenceArray<SkyTables> BY_TYPE =
      new AtomicReferenceArray<>(CieSky.TYPES);
  private static final int STEPS = 4096;
  private static final int DEGREES = 180;

  /** Indicatrix at equal steps of sin(chi/2), in which it is smooth at the sun. */
  private final float[] indicatrix = new float[STEPS + 2];

  /** Gradation of the altitudes of the sub-directions. */
  final float[] gradation = new float[SkyZones.SUB_DIRECTIONS];

  /** Illuminance per unit scale for the sun from the nadir to the zenith in steps of a degree. */
  private final double[] horizontal = new double[DEGREES + 1];

  SkyTables(int type) {
    for (int i = 0; i <= STEPS; i++) {
      double s = (double) i / STEPS;
      indicatrix[i] = (float) CieSky.indicatrix(type, 1 - 2 * s * s);
    }
    indicatrix[STEPS + 1] = indicatrix[STEPS];
    for (int k = 0; k < gradation.length; k++) {
      gradation[k] = (float) CieSky.gradation(type, SkyZones.subZ(k));
    }
    integrate(type);
  }

  static SkyTables of(int type) {
    SkyTables tables = BY_TYPE.get(type - 1);
    if (tables == null) {
      // Two threads may both build one: they build the same.
      tables = new SkyTables(type);
      BY_TYPE.set(type - 1, tables);
    }
    return tables;
  }

  /** Indicatrix at a cosine of the angle from the sun. */
  float indicatrix(float cosChi) {
    float s = (float) Math.sqrt(Math.max(0f, (1 - cosChi) * 0.5f)) * STEPS;
    int i = Math.min(STEPS, (int) s);
    return indicatrix[i] + (indicatrix[i + 1] - indicatrix[i]) * (s - i);
  }

  /** Illuminance on level ground of the vault of unit scale, by the sun's altitude in radians. */
  double horizontal(double altitude) {
    double x = Math.toDegrees(altitude) + 90;
    int i = Math.max(0, Math.min(DEGREES - 1, (int) x));
    return horizontal[i] + (horizontal[i + 1] - horizontal[i]) * (x - i);
  }

  /** Midpoint rule over equal parts of sin^2(altitude) (so of illuminance) and of half azimuth. */
  private void integrate(int type) {
    int rings = 60;
    int parts = 60;
    for (int deg = 0; deg <= DEGREES; deg++) {
      double sunZ = Math.sin(Math.toRadians(deg - 90.0));
      double sunH = Math.sqrt(Math.max(0, 1 - sunZ * sunZ));
      double sum = 0;
      for (int r = 0; r < rings; r++) {
        double z = Math.sqrt((r + 0.5) / rings);
        double h = Math.sqrt(1 - z * z);
        double phi = CieSky.gradation(type, z);
        double ring = 0;
        for (int p = 0; p < parts; p++) {
          double azimuth = Math.PI * (p + 0.5) / parts;
          ring += indicatrix((float) (z * sunZ + h * sunH * Math.cos(azimuth)));
        }
        sum += phi * ring / parts;
      }
      horizontal[deg] = Math.PI * sum / rings;
    }
  }
}
