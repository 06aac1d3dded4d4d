package slantlight.light;

import java.util.Arrays;

/**
 * Sums bounced light into a sample's rows. Pieces of one patch come one after another and share its
 * response, so their weights are added up first; responses are then added two at a time. What a
 * piece has of the sun's beam above or below its patch's mean is added by part of the patch.
 */
final class BouncedRows {
  private static final int BATCH = 8;

  private final float[][] out;
  private final int firstSun;
  private final float[][] responses = new float[BATCH][];
  private final double[] weights;
  private final float[] factors;
  private final int[] start = new int[BATCH];
  private int held;
  private SunGrain.Grain grain;
  private float[][] byPart = new float[0][];

  /**
   * @param out rows that receive the sums, by column
   * @param firstSun column of the first sun of the grid
   */
  BouncedRows(float[][] out, int firstSun) {
    this.out = out;
    this.firstSun = firstSun;
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
   * Adds what the piece just added has of the sun's beam above its patch's mean.
   *
   * @param of grain of its patch
   * @param parts the parts that the piece covers
   */
  void addGrain(SunGrain.Grain of, int[] parts, double[] byRow, double light) {
    if (!of.equals(grain)) {
      grain = of;
      byPart = new float[of.above().length][];
    }
    for (int q : parts) {
      if (byPart[q] == null) {
        byPart[q] = new float[out.length];
      }
      for (int r = 0; r < out.length; r++) {
        byPart[q][r] += (float) (byRow[r] * light / parts.length);
      }
    }
  }

  /** Adds what is still held back. */
  void finish() {
    settle();
    flush();
  }

  private void settle() {
    for (int r = 0; r < weights.length && held > 0; r++) {
      factors[start[held - 1] + r] = (float) weights[r];
    }
    Arrays.fill(weights, 0);
    if (grain != null) {
      for (int q = 0; q < byPart.length; q++) {
        if (byPart[q] != null) {
          spread(grain.nodes(), grain.above()[q], byPart[q]);
        }
      }
      grain = null;
    }
  }

  private void spread(int[] nodes, float[] above, float[] byRow) {
    for (int r = 0; r < out.length; r++) {
      float[] sums = out[r];
      float factor = byRow[r];
      for (int i = 0; i < nodes.length; i++) {
        sums[firstSun + nodes[i]] += factor * above[i];
      }
    }
  }

  private void flush() {
    Product.add(out, out.length, responses, held, factors, start, out[0].length);
    held = 0;
  }
}
