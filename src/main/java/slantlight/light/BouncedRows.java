package slantlight.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Sums bounced light into a sample's rows. Pieces of one patch come one after another and share its
 * response, so their weights are added up first; responses are then added two at a time. The flecks
 * of sun on a patch are not in its response: they are added part by part for the suns of the grid,
 * and the weights of the parts are kept for the suns between.
 */
final class BouncedRows {
  private static final int BATCH = 8;

  private final float[][] out;
  private final FleckTable atNodes;
  private final int firstSun;
  private final float[][] responses = new float[BATCH][];
  private final double[] weights;
  private final float[] factors;
  private final int[] start = new int[BATCH];
  private int held;
  private final List<Near> near = new ArrayList<>();
  private final float[][] flecks;
  private int patch = -1;
  private float[][] byPart = new float[0][];
  private float[] even;

  /**
   * A patch that a sample sees by itself, its weights in the sample's rows.
   *
   * @param parts those of its parts that count, ascending; none when the patch counts as a whole
   * @param factors by place in {@code parts}, then row; by row for the patch as a whole
   */
  record Near(int patch, int[] parts, float[] factors) {
    /**
     * Adds some rows of its flecks.
     *
     * @param rows of the sample
     * @param out [row - firstRow][sun - first]
     */
    void addTo(float[][] out, int first, FleckTable.Lit lit, int firstRow, int rows) {
      float[][] terms = terms(lit.parts(), lit.mean());
      int at = lit.first() - first;
      int r = 0;
      for (; r + 3 <= out.length; r += 3) {
        Product.addShort(out, r, at, terms, factors, firstRow + r, rows);
      }
      for (; r < out.length; r++) {
        Product.addShort(out[r], at, terms, factors, firstRow + r, rows);
      }
    }

    /**
     * Adds all rows of its flecks.
     *
     * @param out by row, then sun
     */
    void addTo(float[][] out, FleckTable.Gathered lit) {
      int rows = out.length;
      float[][] terms = terms(lit.parts(), lit.mean());
      int[] start = new int[terms.length];
      for (int i = 0; i < start.length; i++) {
        start[i] = i * rows;
      }
      int[] sun = lit.sun();
      float[][] own = new float[rows][sun.length];
      Product.add(own, rows, terms, terms.length, factors, start, sun.length);
      for (int r = 0; r < rows; r++) {
        for (int i = 0; i < sun.length; i++) {
          out[r][sun[i]] += own[r][i];
        }
      }
    }

    private float[][] terms(float[][] byPart, float[] mean) {
      if (parts.length == 0) {
        return new float[][] {mean};
      }
      float[][] terms = new float[parts.length][];
      for (int i = 0; i < terms.length; i++) {
        terms[i] = byPart[parts[i]];
      }
      return terms;
    }
  }

  /**
   * How flecks of sun enter a sample's rows.
   *
   * @param near patches on which they lie, those of one surface together
   * @param surfaceStart first in {@code near} of each surface, and their number
   * @param place in {@code atNodes} by sun of the grid, or -1
   * @param atNodes what the rows hold of them: by place, then row
   */
  record FleckRows(List<Near> near, int[] surfaceStart, int[] place, float[] atNodes) {
    /** Of a row that has none. */
    static FleckRows none(int nodes) {
      int[] place = new int[nodes];
      Arrays.fill(place, -1);
      return new FleckRows(List.of(), new int[1], place, new float[0]);
    }
  }

  /**
   * @param out rows that receive the sums, by column
   * @param atNodes flecks of the suns of the grid
   * @param firstSun column of the first sun of the grid
   */
  BouncedRows(float[][] out, FleckTable atNodes, int firstSun) {
    this.out = out;
    this.atNodes = atNodes;
    this.firstSun = firstSun;
    flecks = new float[out.length][atNodes.suns().size()];
    weights = new double[out.length];
    factors = new float[BATCH * out.length];
    for (int i = 0; i < BATCH; i++) {
      start[i] = i * out.length;
    }
  }

  /**
   * Adds a piece.
   *
   * @param response its patch's illuminance by column
   * @param byRow the receiver's weights of its direction
   * @param light multiplies them
   */
  void add(float[] response, double[] byRow, double light) {
    if (held == 0 || responses[held - 1] != response) {
      settle();
      if (held == BATCH) {
        flush();
      }
      responses[held++] = response;
    }
    for (int r = 0; r < weights.length; r++) {
      weights[r] += byRow[r] * light;
    }
  }

  /**
   * Adds the flecks of sun on the piece just added.
   *
   * @param side parts of the patch along each side
   * @param parts the parts that the piece covers; null when it is all of the patch
   */
  void addFlecks(int of, int side, int[] parts, double[] byRow, double light) {
    if (of != patch) {
      keepFlecks();
      patch = of;
      byPart = new float[side * side][];
    }
    if (parts == null) {
      even = new float[out.length];
      addScaled(even, byRow, light);
      return;
    }
    for (int q : parts) {
      if (byPart[q] == null) {
        byPart[q] = new float[out.length];
      }
      addScaled(byPart[q], byRow, light / parts.length);
    }
  }

  private static void addScaled(float[] sums, double[] byRow, double light) {
    for (int r = 0; r < sums.length; r++) {
      sums[r] += (float) (byRow[r] * light);
    }
  }

  /**
   * Adds what is still held back.
   *
   * @return the flecks that count sun by sun
   */
  FleckRows finish() {
    settle();
    flush();
    keepFlecks();
    int nodes = flecks[0].length;
    int[] place = new int[nodes];
    float[] all = new float[nodes * out.length];
    int count = 0;
    for (int k = 0; k < nodes; k++) {
      place[k] = -1;
      for (int r = 0; r < out.length; r++) {
        out[r][firstSun + k] += flecks[r][k];
        all[count * out.length + r] = flecks[r][k];
        place[k] = flecks[r][k] == 0 ? place[k] : count;
      }
      count += place[k] < 0 ? 0 : 1;
    }
    int[] starts =
        IntStream.range(0, near.size() + 1)
            .filter(i -> i == 0 || i == near.size() || surface(i) != surface(i - 1))
            .toArray();
    return new FleckRows(near, starts, place, Arrays.copyOf(all, count * out.length));
  }

  private int surface(int i) {
    return atNodes.surface(near.get(i).patch());
  }

  private void keepFlecks() {
    if (even != null) {
      keep(new Near(patch, new int[0], even));
      even = null;
    }
    int[] parts = new int[byPart.length];
    float[] all = new float[byPart.length * out.length];
    int count = 0;
    for (int q = 0; q < byPart.length; q++) {
      if (byPart[q] != null) {
        System.arraycopy(byPart[q], 0, all, count * out.length, out.length);
        parts[count++] = q;
      }
    }
    if (count > 0) {
      float[] factors = Arrays.copyOf(all, count * out.length);
      keep(new Near(patch, Arrays.copyOf(parts, count), factors));
    }
    byPart = new float[0][];
    patch = -1;
  }

  private void keep(Near of) {
    near.add(of);
    of.addTo(flecks, atNodes.all(of.patch()));
  }

  private void settle() {
    for (int r = 0; r < weights.length && held > 0; r++) {
      factors[start[held - 1] + r] = (float) weights[r];
    }
    Arrays.fill(weights, 0);
  }

  private void flush() {
    Product.add(out, out.length, responses, held, factors, start, out[0].length);
    held = 0;
  }
}
