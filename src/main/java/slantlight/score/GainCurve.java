package slantlight.score;

import slantlight.sight.GainTable;

/**
 * A gain as a function of adaptation luminance, resampled so that looking it up takes no logarithm:
 * eight cells to the octave, addressed by the leading bits of the float, linear inside a cell.
 */
final class GainCurve {
  private static final int SHIFT = 20;
  private static final float MIN = 0.015625f; // 2^-6 cd/m2
  private static final float MAX = 65536f; // 2^16 cd/m2
  private static final int BASE = Float.floatToRawIntBits(MIN) >>> SHIFT;
  private static final int CELLS = (Float.floatToRawIntBits(MAX) >>> SHIFT) - BASE;
  private static final int MASK = (1 << SHIFT) - 1;
  private static final float PER_UNIT = 1f / (1 << SHIFT);

  private final float[] nodes = new float[CELLS + 2];

  /** The largest gain at the nodes up to each. */
  private final float[] most = new float[CELLS + 2];

  /**
   * Resamples a table.
   *
   * @param table gains at the nodes of {@link GainTable}
   */
  GainCurve(double[] table) {
    float largest = 0;
    for (int i = 0; i < nodes.length; i++) {
      float luminance = Float.intBitsToFloat((BASE + Math.min(i, CELLS)) << SHIFT);
      nodes[i] = (float) GainTable.at(table, GainTable.position(luminance));
      largest = Math.max(largest, nodes[i]);
      most[i] = largest;
    }
  }

  /** No less than the largest gain at any luminance up to one, cd/m2. */
  float most(float luminance) {
    return most[cell(bits(luminance)) + 1];
  }

  /** Gain at a luminance, cd/m2; held constant outside 2^-6 to 2^16. */
  float at(float luminance) {
    int bits = bits(luminance);
    int cell = cell(bits);
    float low = nodes[cell];
    return low + (nodes[cell + 1] - low) * ((bits & MASK) * PER_UNIT);
  }

  private static int bits(float luminance) {
    return Float.floatToRawIntBits(luminance < MIN ? MIN : luminance > MAX ? MAX : luminance);
  }

  private static int cell(int bits) {
    return (bits >>> SHIFT) - BASE;
  }
}
