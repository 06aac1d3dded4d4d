package slantlight.light;

import java.util.Arrays;

/**
 * Sums bounced light into a sample's rows. Pieces of one patch come one after another and share its
 * response, so their weights are added up first; responses are then added two at a time.
 */
final class BouncedRows {
  private static final int BATCH = 8;

  private final float[][] out;
  private final float[][] responses = new float[BATCH][];
  private final double[] weights;
  private final float[] factors;
  private final int[] start = new int[BATCH];
  private int held;

  /**
   * @param out rows that receive the sums, by column
   */
  BouncedRows(float[][] out) {
    this.out = out;
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

  /** Adds what is still held back. */
  void finish() {
    settle();
    flush();
  }

  private void settle() {
    if (held > 0) {
      int from = start[held - 1];
      for (int r = 0; r < weights.length; r++) {
        factors[from + r] = (float) weights[r];
      }
    }
    Arrays.fill(weights, 0);
  }

  private void flush() {
    Product.add(out, out.length, responses, held, factors, start, out[0].length);
    held = 0;
  }
}
