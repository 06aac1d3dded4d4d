package slantlight.light;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slantlight.geom.Vec3;
import slantlight.sky.SkyZones;
import slantlight.sky.WaterMirror;

/**
 * Weights with which the light from outside and from lamps makes up the rows of one receiver: a
 * sample with its kernel, or a patch with its cosine.
 */
final class Exposure {
  /** Exponent of the glitter's Gaussian from which on it is left out. */
  private static final double FAINT = 9;

  private final int rows;
  private final double[] zones;
  private final Map<OutsideCell, double[]> cells = new LinkedHashMap<>();
  private final double[] lamps;
  private final List<Glint> glints = new ArrayList<>();

  /** A cone that meets a mirror: the sun glitters in it when it stands right. */
  private record Glint(
      WaterMirror mirror, GroundCell place, double dx, double dy, double dz, double[] weights) {
    /** Luminance per lx of the sun's beam, 0 where it is a ten-thousandth of its peak or less. */
    double luminance(double sx, double sy, double sz) {
      double hx = sx - dx;
      double hy = sy - dy;
      double hz = sz - dz;
      if (hx * hx + hy * hy > FAINT * mirror.slopeVariance() * hz * hz) {
        return 0;
      }
      return mirror.glitter(sx, sy, sz, -dx, -dy, -dz);
    }
  }

  Exposure(int rows, int lampCount) {
    this.rows = rows;
    zones = new double[SkyZones.COUNT * rows];
    lamps = new double[lampCount * rows];
  }

  /**
   * Adds a cone from outside.
   *
   * @param weights the receiver's weights of a cone from there, by row
   * @param light length of the cone's light vector for unit luminance
   */
  void add(View view, double[] weights, double light) {
    if (view.zone >= 0) {
      for (int r = 0; r < rows; r++) {
        zones[view.zone * rows + r] += weights[r] * light * view.zoneWeight;
      }
    }
    if (view.cell != null && view.cellWeight != 0) {
      addCell(view.cell, weights, light * view.cellWeight);
    }
    if (view.mirrored != null) {
      addCell(view.mirrored, weights, light * view.mirroredWeight);
    }
    if (view.mirror != null) {
      double[] w = new double[rows];
      for (int r = 0; r < rows; r++) {
        w[r] = weights[r] * light;
      }
      glints.add(new Glint(view.mirror, view.place, view.dx, view.dy, view.dz, w));
    }
  }

  private void addCell(OutsideCell cell, double[] weights, double light) {
    double[] sums = cells.computeIfAbsent(cell, c -> new double[rows]);
    for (int r = 0; r < rows; r++) {
      sums[r] += weights[r] * light;
    }
  }

  void addLamp(int lamp, double[] weights, double normalLux) {
    for (int r = 0; r < rows; r++) {
      lamps[lamp * rows + r] += weights[r] * normalLux;
    }
  }

  /** Adds the responses of every row, by column, into {@code out}. */
  void addTo(float[][] out, Columns columns) {
    for (int row = 0; row < rows; row++) {
      for (int z = 0; z < SkyZones.COUNT; z++) {
        out[row][z] += (float) zones[z * rows + row];
      }
      for (int l = 0; l < columns.lamps; l++) {
        out[row][Columns.LAMPS + l] += (float) lamps[l * rows + row];
      }
    }
    for (Map.Entry<OutsideCell, double[]> e : cells.entrySet()) {
      float[] response = e.getKey().response(columns);
      for (int row = 0; row < rows; row++) {
        Product.add(out[row], (float) e.getValue()[row], response);
      }
    }
    int[] lit = new int[columns.nodes.size()];
    float[] luminance = new float[lit.length];
    for (Glint g : glints) {
      addGlint(g, out, columns, lit, luminance);
    }
  }

  /**
   * Adds a glint.
   *
   * @param lit scratch, a place for each sun of the grid; so is {@code luminance}
   */
  private void addGlint(Glint g, float[][] out, Columns columns, int[] lit, float[] luminance) {
    double[] suns = columns.suns;
    int count = 0;
    for (int k = 0; k < lit.length; k++) {
      double l = g.luminance(suns[3 * k], suns[3 * k + 1], suns[3 * k + 2]);
      if (l > 0) {
        l *= g.place.litAt(k, columns);
        if (l > 0) {
          lit[count] = columns.sun(Columns.INSIDE) + k;
          luminance[count++] = (float) l;
        }
      }
    }
    for (int row = 0; row < rows; row++) {
      float weight = (float) g.weights[row];
      float[] sums = out[row];
      for (int i = 0; i < count; i++) {
        sums[lit[i]] += weight * luminance[i];
      }
    }
  }

  /**
   * Adds what one row gets from a sun of unit normal illuminance, its own beam left out.
   *
   * @param cellSun values of {@link OutsideCell#addSun} by cell, kept by the caller for one sun
   */
  void addSun(int row, Vec3 sun, Map<OutsideCell, double[]> cellSun, double[] groups) {
    for (Map.Entry<OutsideCell, double[]> e : cells.entrySet()) {
      double[] v = cellSun.computeIfAbsent(e.getKey(), c -> sunOf(c, sun));
      for (int g = 0; g < Columns.GROUPS; g++) {
        groups[g] += e.getValue()[row] * v[g];
      }
    }
    for (Glint g : glints) {
      double l = g.luminance(sun.x(), sun.y(), sun.z());
      if (l > 0) {
        groups[Columns.INSIDE] += g.weights[row] * l * g.place.lit(sun.x(), sun.y(), sun.z());
      }
    }
  }

  static double[] sunOf(OutsideCell cell, Vec3 sun) {
    double[] groups = new double[Columns.GROUPS];
    cell.addSun(sun.x(), sun.y(), sun.z(), 1, groups);
    return groups;
  }
}
