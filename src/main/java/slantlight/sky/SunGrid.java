package slantlight.sky;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Vec3;

/**
 * Places of the sun over a year at one latitude, on a grid of declination and hour angle, for light
 * that changes slowly with the sun's place.
 *
 * <p>Only nodes of cells that the sun crosses above the horizon are kept. A node just below the
 * horizon stands at the horizon instead, so that the light of low sun is not mixed with night. At
 * the poles the hour angle is plain azimuth and nothing is singular.
 */
public final class SunGrid {
  /** Largest declination of the sun, with a margin for refraction, radians. */
  private static final double BAND = Math.toRadians(23.6);

  /** A cell counts as sunlit when a corner rises above this altitude (refraction lifts 0.6). */
  private static final double LOWEST = Math.sin(Math.toRadians(-1.5));

  private final double sinLat;
  private final double cosLat;
  private final int rows;
  private final int columns;
  private final int[] nodeAt;
  private final List<Vec3> nodes;

  private SunGrid(
      double sinLat, double cosLat, int rows, int columns, int[] nodeAt, List<Vec3> nodes) {
    this.sinLat = sinLat;
    this.cosLat = cosLat;
    this.rows = rows;
    this.columns = columns;
    this.nodeAt = nodeAt;
    this.nodes = List.copyOf(nodes);
  }

  /** The year's band at a latitude in steps of about 5 degrees. */
  public static SunGrid of(double latitudeDeg) {
    return of(latitudeDeg, 5);
  }

  /**
   * The year's band at a latitude.
   *
   * @param stepDeg wanted step of declination and hour angle, degrees, 0.5 to 15; rounded to divide
   *     the band and the circle evenly
   */
  public static SunGrid of(double latitudeDeg, double stepDeg) {
    if (!(Math.abs(latitudeDeg) <= 90 && stepDeg >= 0.5 && stepDeg <= 15)) {
      throw new IllegalArgumentException(
          "latitude " + latitudeDeg + " or step " + stepDeg + " is out of range");
    }
    double lat = Math.toRadians(latitudeDeg);
    double sinLat = Math.sin(lat);
    double cosLat = Math.cos(lat);
    int rows = (int) Math.round(2 * Math.toDegrees(BAND) / stepDeg) + 1;
    int columns = (int) Math.round(360 / stepDeg);
    Vec3[] at = new Vec3[rows * columns];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        at[r * columns + c] = direction(lat, declination(r, rows), 2 * Math.PI * c / columns);
      }
    }
    boolean[] kept = new boolean[at.length];
    for (int r = 0; r + 1 < rows; r++) {
      for (int c = 0; c < columns; c++) {
        int[] corners = corners(r, c, columns);
        boolean lit = false;
        for (int k : corners) {
          lit |= at[k].z() > LOWEST;
        }
        for (int k : corners) {
          kept[k] |= lit;
        }
      }
    }
    int[] nodeAt = new int[at.length];
    List<Vec3> nodes = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      nodeAt[i] = kept[i] ? nodes.size() : -1;
      if (kept[i]) {
        nodes.add(at[i].z() >= 0 ? at[i] : new Vec3(at[i].x(), at[i].y(), 0).unit());
      }
    }
    return new SunGrid(sinLat, cosLat, rows, columns, nodeAt, nodes);
  }

  /** A grid of one fixed sun, for prescribed light. */
  public static SunGrid fixed(Vec3 sun) {
    return new SunGrid(0, 1, 0, 0, new int[0], List.of(sun));
  }

  /** Unit vectors toward the nodes, none below the horizon. */
  public List<Vec3> nodes() {
    return nodes;
  }

  /**
   * Nodes round a sun and their bilinear shares, which add up to 1. A sun outside the year's band
   * is taken at the band's edge. A sun so far below the horizon that its cell holds no node gets
   * four zero shares: nothing of it is seen.
   *
   * @param idx4 receives four node indexes
   * @param w4 receives their shares
   */
  public void weights(Vec3 sun, int[] idx4, float[] w4) {
    if (rows == 0) {
      java.util.Arrays.fill(idx4, 0, 4, 0);
      java.util.Arrays.fill(w4, 0, 4, 0);
      w4[0] = 1;
      return;
    }
    double sinDec = sun.z() * sinLat + sun.y() * cosLat;
    double declination = Math.asin(Math.max(-1, Math.min(1, sinDec)));
    double hour = Math.atan2(-sun.x(), sun.z() * cosLat - sun.y() * sinLat);
    double y = (declination + BAND) / (2 * BAND) * (rows - 1);
    y = Math.max(0, Math.min(rows - 1, y));
    int r = Math.min(rows - 2, (int) y);
    double x = (hour < 0 ? hour + 2 * Math.PI : hour) / (2 * Math.PI) * columns;
    int c = (int) x;
    float fx = (float) (x - c);
    float fy = (float) (y - r);
    int[] corners = corners(r, c % columns, columns);
    w4[0] = (1 - fx) * (1 - fy);
    w4[1] = fx * (1 - fy);
    w4[2] = (1 - fx) * fy;
    w4[3] = fx * fy;
    for (int k = 0; k < 4; k++) {
      int node = nodeAt[corners[k]];
      if (node < 0) {
        java.util.Arrays.fill(idx4, 0, 4, 0);
        java.util.Arrays.fill(w4, 0, 4, 0);
        return;
      }
      idx4[k] = node;
    }
  }

  private static double declination(int row, int rows) {
    return -BAND + 2 * BAND * row / (rows - 1);
  }

  private static int[] corners(int row, int column, int columns) {
    int next = (column + 1) % columns;
    return new int[] {
      row * columns + column,
      row * columns + next,
      (row + 1) * columns + column,
      (row + 1) * columns + next
    };
  }

  /**
   * Unit vector toward a place of the sky, all angles in radians.
   *
   * @param hourAngle from the meridian, westward positive
   */
  public static Vec3 direction(double latitude, double declination, double hourAngle) {
    double sinLat = Math.sin(latitude);
    double cosLat = Math.cos(latitude);
    double sinDec = Math.sin(declination);
    double cosDec = Math.cos(declination);
    double across = cosDec * Math.cos(hourAngle);
    return new Vec3(
        -cosDec * Math.sin(hourAngle),
        cosLat * sinDec - sinLat * across,
        sinLat * sinDec + cosLat * across);
  }
}
