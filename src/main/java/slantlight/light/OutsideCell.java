package slantlight.light;

/**
 * A piece of something outside that sends light back, evenly in all directions: ground, a side of a
 * block, a cloth shade. Its luminance is linear in the sources.
 */
abstract class OutsideCell {
  private volatile float[] response;

  /** Luminance for unit sources, by column, cd/m2. */
  final float[] response(Columns columns) {
    float[] r = response;
    if (r == null) {
      synchronized (this) {
        r = response;
        if (r == null) {
          r = new float[columns.total];
          fillDense(r);
          double[] groups = new double[Columns.GROUPS];
          for (int k = 0; k < columns.nodes.size(); k++) {
            java.util.Arrays.fill(groups, 0);
            addNode(k, columns, 1, groups);
            for (int g = 0; g < Columns.GROUPS; g++) {
              r[columns.sun(g) + k] = (float) groups[g];
            }
          }
          response = r;
        }
      }
    }
    return r;
  }

  /** Fills the dense columns. */
  abstract void fillDense(float[] out);

  /** The same as {@link #addSun} for the sun of a node of the grid. */
  void addNode(int node, Columns columns, double weight, double[] groups) {
    var d = columns.nodes.get(node);
    addSun(d.x(), d.y(), d.z(), weight, groups);
  }

  /**
   * Adds the luminance under a sun of unit normal illuminance toward a direction.
   *
   * @param weight multiplies what is added
   * @param groups receives the sums by group of {@link Columns}
   */
  abstract void addSun(double dx, double dy, double dz, double weight, double[] groups);
}
