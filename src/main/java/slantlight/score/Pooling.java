package slantlight.score;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Quick's pooling of two independent signals, {@code (a^p + b^p)^(1/p)}, tabulated by their ratio:
 * a year asks for it often enough that powers would cost more than all else.
 */
final class Pooling {
  private static final int CELLS = 256;
  private static final Map<Double, Pooling> BY_EXPONENT = new ConcurrentHashMap<>();

  /** Pooled over the larger signal, by the ratio of the smaller to the larger. */
  private final float[] gain = new float[CELLS + 2];

  private Pooling(double exponent) {
    for (int i = 0; i < gain.length; i++) {
      double ratio = Math.min(1, (double) i / CELLS);
      gain[i] = (float) Math.pow(1 + Math.pow(ratio, exponent), 1 / exponent);
    }
  }

  /**
   * Pooling by an exponent.
   *
   * @param exponent 1 or more
   */
  static Pooling of(double exponent) {
    return BY_EXPONENT.computeIfAbsent(exponent, Pooling::new);
  }

  /** Two signals together; neither is negative. */
  float of(float a, float b) {
    float high = Math.max(a, b);
    if (high == 0) {
      return 0;
    }
    float x = Math.min(a, b) / high * CELLS;
    int i = (int) x;
    return high * (gain[i] + (gain[i + 1] - gain[i]) * (x - i));
  }
}
