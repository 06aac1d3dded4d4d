package slantlight.geom;

/** How much of each cell of a lattice polygons cover: exact areas, summed edge by edge. */
public final class Coverage {
  private final double u0;
  private final double v0;
  private final double perU;
  private final double perV;
  private final int side;
  private final double[] shares;

  /**
   * A lattice over a box, nothing covered yet.
   *
   * @param box least u, least v, greatest u, greatest v
   * @param side cells along each side
   */
  public Coverage(double[] box, int side) {
    u0 = box[0];
    v0 = box[1];
    perU = side / (box[2] - box[0]);
    perV = side / (box[3] - box[1]);
    this.side = side;
    shares = new double[side * side];
  }

  /** Share of a cell that is covered; cells run along u first. */
  public double share(int cell) {
    return shares[cell];
  }

  /**
   * Adds a ring, counter-clockwise; a clockwise one is taken away. A cell gains from each edge what
   * of it lies to the edge's left, times the edge's rise within the cell's row (Green's theorem).
   */
  public void add(double[] ring) {
    int j = ring.length - 2;
    for (int i = 0; i < ring.length; j = i, i += 2) {
      edge(
          (ring[j] - u0) * perU,
          (ring[j + 1] - v0) * perV,
          (ring[i] - u0) * perU,
          (ring[i + 1] - v0) * perV);
    }
  }

  private void edge(double x0, double y0, double x1, double y1) {
    double low = Math.max(0, Math.min(y0, y1));
    double high = Math.min(side, Math.max(y0, y1));
    if (!(low < high)) {
      return;
    }
    double slope = (x1 - x0) / (y1 - y0);
    double sign = y1 > y0 ? 1 : -1;
    for (int row = (int) low; row < high; row++) {
      double from = Math.max(low, row);
      double to = Math.min(high, row + 1);
      double a = x0 + (from - y0) * slope;
      double b = x0 + (to - y0) * slope;
      double rise = sign * (to - from);
      for (int column = 0; column < side && column < Math.max(a, b); column++) {
        shares[row * side + column] += rise * left(a - column, b - column);
      }
    }
  }

  /** Mean over an edge from a to b of what of the cell from 0 to 1 lies to the left of it. */
  private static double left(double a, double b) {
    double width = b - a;
    return Math.abs(width) < 1e-9
        ? Math.max(0, Math.min(1, (a + b) / 2))
        : (area(b) - area(a)) / width;
  }

  /** Integral of x clamped to 0 and 1. */
  private static double area(double x) {
    return x <= 0 ? 0 : x < 1 ? x * x / 2 : x - 0.5;
  }
}
