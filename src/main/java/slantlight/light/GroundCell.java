package slantlight.light;

import java.util.Arrays;
import slantlight.geom.Occluders;
import slantlight.geom.Vec3;
import slantlight.sky.SkyZones;

/** A square of level diffuse ground, partly in the shade of the house and of blocks. */
final class GroundCell extends OutsideCell {
  private static final double FAR = 1e5;

  private final Occluders shell;
  private final double[] points;
  private final boolean general;
  private final double reflectance;
  private volatile float[] litNodes;

  /**
   * @param points places at which shade is tested, x, y, z in turn; none for ground beyond all
   *     shade
   * @param general true for the general ground, whose reflectance is a source
   */
  GroundCell(Occluders shell, double[] points, boolean general, double reflectance) {
    this.shell = shell;
    this.points = points;
    this.general = general;
    this.reflectance = general ? 1 : reflectance;
  }

  @Override
  void fillDense(float[] out) {
    double[] seen = new double[Columns.LUMPS];
    double[] whole = new double[Columns.LUMPS];
    for (int z = 0; z < SkyZones.COUNT; z++) {
      double omega = SkyZones.solidAngle(z) / SkyZones.parts();
      for (int k = 0; k < SkyZones.parts(); k++) {
        Vec3 d = SkyZones.part(z, k);
        whole[Columns.lumpOf(z)] += d.z() * omega;
        seen[Columns.lumpOf(z)] += d.z() * omega * openAt(z + k, d);
      }
    }
    double k = reflectance / Math.PI;
    int lumps = general ? Columns.LUMP_GENERAL : Columns.LUMP_FIXED;
    for (int i = 0; i < Columns.LUMPS; i++) {
      out[lumps + i] = (float) (k * seen[i] / whole[i]);
    }
    out[general ? Columns.OPEN_GENERAL : Columns.OPEN_FIXED] = (float) k;
    out[Columns.STATED] = 1;
  }

  @Override
  void addSun(double dx, double dy, double dz, double weight, double[] groups) {
    if (dz > 0 && points.length > 0) {
      add(dz, lit(dx, dy, dz), weight, groups);
    }
  }

  @Override
  void addNode(int node, Columns columns, double weight, double[] groups) {
    double dz = columns.nodes.get(node).z();
    if (dz > 0 && points.length > 0) {
      add(dz, litAt(node, columns), weight, groups);
    }
  }

  private void add(double dz, double lit, double weight, double[] groups) {
    groups[general ? Columns.GENERAL : Columns.FIXED] -=
        weight * reflectance / Math.PI * dz * (1 - lit);
  }

  /** Share of the cell that the sun of a node of the grid reaches. */
  double litAt(int node, Columns columns) {
    float[] lit = litNodes;
    if (lit == null) {
      lit = new float[columns.nodes.size()];
      Arrays.fill(lit, Float.NaN);
      litNodes = lit;
    }
    // Threads that meet here at once may work out the same value twice, never different ones.
    if (Float.isNaN(lit[node])) {
      Vec3 s = columns.nodes.get(node);
      lit[node] = (float) lit(s.x(), s.y(), s.z());
    }
    return lit[node];
  }

  /** 1 when one of the places, taken in turn, sees a direction of the sky, else 0. */
  private int openAt(int turn, Vec3 d) {
    if (points.length == 0) {
      return 1;
    }
    int i = 3 * (turn % (points.length / 3));
    return shell.any(points[i], points[i + 1], points[i + 2], d.x(), d.y(), d.z(), 1e-4, FAR) < 0
        ? 1
        : 0;
  }

  /** Share of the cell that a direction of the sky reaches. */
  double lit(double dx, double dy, double dz) {
    if (points.length == 0) {
      return 1;
    }
    int open = 0;
    for (int i = 0; i < points.length; i += 3) {
      if (shell.any(points[i], points[i + 1], points[i + 2], dx, dy, dz, 1e-4, FAR) < 0) {
        open++;
      }
    }
    return open / (points.length / 3.0);
  }
}
