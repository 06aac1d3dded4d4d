package slantlight.sky;

import slantlight.geom.Vec3;

/**
 * A fixed division of the vault into 145 zones, the basis in which skylight is summed over a year.
 *
 * <p>The subdivision of Tregenza, "Subdivision of the sky hemisphere for luminance measurements",
 * Lighting Research and Technology 19 (1987): bands of 12 degrees with 30, 30, 24, 24, 18, 12 and 6
 * zones and a cap. Zone 0 of each band is centred on north and the rest follow clockwise. A zone's
 * direction stands at the mean sine of its band, so that {@code sum(L cos omega)} is exact for a
 * luminance that is even within the zone.
 */
public final class SkyZones {
  /** How many zones. */
  public static final int COUNT = 145;

  /** Each zone is sampled at three altitudes and three azimuths of equal solid angle. */
  private static final int SIDE = 3;

  private static final int PER_ZONE = SIDE * SIDE;
  static final int SUB_DIRECTIONS = COUNT * PER_ZONE;

  private static final int[] ROWS = {30, 30, 24, 24, 18, 12, 6, 1};
  private static final int[] FIRST = new int[ROWS.length + 1];
  private static final double[] EDGE_SINES = new double[ROWS.length + 1];
  private static final Vec3[] DIRECTIONS = new Vec3[COUNT];
  private static final double[] SOLID_ANGLES = new double[COUNT];
  private static final float[] SUB_X = new float[SUB_DIRECTIONS];
  private static final float[] SUB_Y = new float[SUB_DIRECTIONS];
  private static final float[] SUB_Z = new float[SUB_DIRECTIONS];

  static {
    for (int r = 0; r < ROWS.length; r++) {
      FIRST[r + 1] = FIRST[r] + ROWS[r];
      EDGE_SINES[r] = Math.sin(Math.toRadians(12.0 * r));
    }
    EDGE_SINES[ROWS.length] = 1;
    for (int r = 0; r < ROWS.length; r++) {
      fillRow(r);
    }
  }

  private SkyZones() {}

  private static void fillRow(int r) {
    double low = EDGE_SINES[r];
    double high = EDGE_SINES[r + 1];
    double width = 2 * Math.PI / ROWS[r];
    for (int c = 0; c < ROWS[r]; c++) {
      int zone = FIRST[r] + c;
      SOLID_ANGLES[zone] = width * (high - low);
      DIRECTIONS[zone] =
          r == ROWS.length - 1
              ? Vec3.UP
              : Vec3.ofAzimuthAltitude(c * width, Math.asin((low + high) / 2));
      for (int k = 0; k < PER_ZONE; k++) {
        double z = low + (high - low) * (Math.floorDiv(k, SIDE) + 0.5) / SIDE;
        double azimuth = width * (c + (k % SIDE + 0.5) / SIDE - 0.5);
        Vec3 d = Vec3.ofAzimuthAltitude(azimuth, Math.asin(z));
        SUB_X[zone * PER_ZONE + k] = (float) d.x();
        SUB_Y[zone * PER_ZONE + k] = (float) d.y();
        SUB_Z[zone * PER_ZONE + k] = (float) d.z();
      }
    }
  }

  /** Unit vector to the middle of a zone. */
  public static Vec3 direction(int zone) {
    return DIRECTIONS[zone];
  }

  /** How many directions stand for a zone where its middle alone is too coarse. */
  public static int parts() {
    return PER_ZONE;
  }

  /** Unit vector to the middle of one of the {@link #parts} of a zone, all of equal solid angle. */
  public static Vec3 part(int zone, int k) {
    int i = zone * PER_ZONE + k;
    return new Vec3(SUB_X[i], SUB_Y[i], SUB_Z[i]);
  }

  /** Solid angle of a zone, sr. */
  public static double solidAngle(int zone) {
    return SOLID_ANGLES[zone];
  }

  /** Zone of a unit direction, or -1 when it points below the horizon. */
  public static int indexOf(double dx, double dy, double dz) {
    if (dz < 0) {
      return -1;
    }
    int r = 0;
    while (r < ROWS.length - 1 && dz >= EDGE_SINES[r + 1]) {
      r++;
    }
    double turn = Math.atan2(dx, dy) / (2 * Math.PI);
    int c = Math.floorMod((int) Math.floor(turn * ROWS[r] + 0.5), ROWS[r]);
    return FIRST[r] + c;
  }

  /**
   * Mean luminance of every zone over its solid angle, cd/m2, from nine directions in each. About
   * five microseconds for a CIE sky; any other luminance is asked 1,305 times.
   *
   * @param out receives zone i at {@code offset + i * stride}
   */
  public static void luminances(SkyState state, float[] out, int offset, int stride) {
    luminances(state.luminance(), out, offset, stride);
  }

  static void luminances(SkyLuminance luminance, float[] out, int offset, int stride) {
    if (luminance instanceof CieSky sky) {
      cieMeans(sky, null, 0, out, offset, stride);
    } else if (luminance instanceof SkylineSky sky) {
      cieMeans(sky.sky(), sky.skyline(), (float) sky.belowLuminance(), out, offset, stride);
    } else {
      for (int zone = 0; zone < COUNT; zone++) {
        double sum = 0;
        for (int k = zone * PER_ZONE; k < (zone + 1) * PER_ZONE; k++) {
          sum += luminance.toward(SUB_X[k], SUB_Y[k], SUB_Z[k]);
        }
        out[offset + zone * stride] = (float) (sum / PER_ZONE);
      }
    }
  }

  private static void cieMeans(
      CieSky sky, Skyline skyline, float below, float[] out, int offset, int stride) {
    SkyTables tables = SkyTables.of(sky.type());
    float[] gradation = tables.gradation;
    float sx = (float) sky.sun().x();
    float sy = (float) sky.sun().y();
    float sz = (float) sky.sun().z();
    float scale = (float) sky.scale();
    for (int zone = 0; zone < COUNT; zone++) {
      float sum = 0;
      for (int k = zone * PER_ZONE; k < (zone + 1) * PER_ZONE; k++) {
        float l =
            scale * gradation[k] * tables.indicatrix(SUB_X[k] * sx + SUB_Y[k] * sy + SUB_Z[k] * sz);
        sum += skyline == null ? l : below + (l - below) * skyline.clear(k);
      }
      out[offset + zone * stride] = sum / PER_ZONE;
    }
  }

  /** Illuminance on level ground from zone luminances at stride 1, lx. */
  static double horizontalLux(float[] luminances) {
    double sum = 0;
    for (int zone = 0; zone < COUNT; zone++) {
      sum += luminances[zone] * SOLID_ANGLES[zone] * DIRECTIONS[zone].z();
    }
    return sum;
  }

  static double subZ(int k) {
    return SUB_Z[k];
  }

  /**
   * Share of each sub-direction's cell that lies above a skyline.
   *
   * @param altitudeAt skyline altitude by azimuth, both radians
   */
  static float[] clearShares(java.util.function.DoubleUnaryOperator altitudeAt) {
    int fine = 6;
    float[] out = new float[SUB_DIRECTIONS];
    for (int r = 0; r < ROWS.length; r++) {
      double low = EDGE_SINES[r];
      double step = (EDGE_SINES[r + 1] - low) / SIDE;
      double width = 2 * Math.PI / ROWS[r];
      for (int c = 0; c < ROWS[r]; c++) {
        for (int k = 0; k < PER_ZONE; k++) {
          double from = low + step * Math.floorDiv(k, SIDE);
          double share = 0;
          for (int f = 0; f < fine; f++) {
            double azimuth = width * (c + (k % SIDE + (f + 0.5) / fine) / SIDE - 0.5);
            double cut = Math.sin(altitudeAt.applyAsDouble(azimuth));
            share += Math.max(0, Math.min(1, (from + step - cut) / step)) / fine;
          }
          out[(FIRST[r] + c) * PER_ZONE + k] = (float) share;
        }
      }
    }
    return out;
  }
}
