package slantlight.score;

import java.util.Arrays;

/**
 * What runs of states can show of one point at most, told without following their states.
 *
 * <p>Every state of a run is a sum of its corner lights, each taken in an amount that is not
 * negative. A quotient of two such sums is no larger than the largest quotient of its terms, so
 * change over luminance, and the contrast of the step, are bounded by the corners'. The sun's own
 * beam is not in it.
 */
final class RunBounds {
  /** Corners are summed in another order than states, and pooling is tabulated. */
  static final float ROUNDING = 1.0001f;

  private final PointOptics optics;
  private final int eyes;
  private final int runs;
  private final float[] tilt;
  private final float[] step;
  private final float[] brightest;

  /** By level index, then run and eye. */
  private final float[][] most;

  RunBounds(PointOptics optics, Ingredients.Kitchen kitchen, Ingredients.Menu menu) {
    this.optics = optics;
    eyes = optics.eyes();
    runs = menu.runs();
    tilt = new float[eyes * runs];
    step = new float[tilt.length];
    brightest = new float[tilt.length];
    most = new float[3][tilt.length];
    float[] rows = new float[optics.kernel().judged()];
    for (int run = 0; run < runs; run++) {
      bound(run, kitchen, menu, rows);
    }
  }

  private void bound(int run, Ingredients.Kitchen kitchen, Ingredients.Menu menu, float[] rows) {
    int corners = menu.corners(run);
    for (int c = 0; c < corners; c++) {
      kitchen.corner(menu, run, c, rows);
      for (int eye = 0; eye < eyes; eye++) {
        widen(run, eye, rows);
      }
    }
    for (int eye = 0; eye < eyes; eye++) {
      int i = eyes * run + eye;
      tilt[i] = corners == 0 ? Float.POSITIVE_INFINITY : tilt[i];
      for (int level = 0; level < 3; level++) {
        most[level][i] = most(eye, level, tilt[i], step[i], brightest[i]);
      }
    }
  }

  private void widen(int run, int eye, float[] rows) {
    float luminance = optics.luminance(eye, rows);
    float compound = optics.compound(eye, rows);
    float change = optics.change(eye, rows);
    int i = eyes * run + eye;
    if (luminance > 0 && compound >= 0) {
      tilt[i] = Math.max(tilt[i], change / luminance);
      step[i] = Math.max(step[i], optics.contrast(eye, rows));
      brightest[i] = Math.max(brightest[i], luminance);
    } else if (luminance != 0 || compound != 0 || change != 0) {
      tilt[i] = Float.POSITIVE_INFINITY;
    }
  }

  /** Most that a run can show an eye at a level index (0 = level 3); infinite where unknown. */
  float most(int run, int eye, int level) {
    return most[level][eyes * run + eye];
  }

  private float most(int eye, int level, float tilt, float step, float brightest) {
    float relief = optics.relief(eye, level).most(brightest);
    float mismatch = optics.mismatch(eye, level).most(brightest);
    return ROUNDING * optics.pooled(tilt * relief, step * mismatch);
  }

  /** All runs, the one that can show most at level 4 first; those without a bound come last. */
  int[] mostPromisingFirst() {
    long[] keys = new long[runs];
    for (int run = 0; run < keys.length; run++) {
      float most = 0;
      for (int eye = 0; eye < eyes; eye++) {
        most = Math.max(most, most(run, eye, 1));
      }
      float rank = most < Float.POSITIVE_INFINITY ? most : 0;
      // The bits of floats that are not negative are in the order of the floats.
      keys[run] = (long) -Float.floatToIntBits(rank) << 32 | run;
    }
    Arrays.sort(keys);
    return Arrays.stream(keys).mapToInt(k -> (int) k).toArray();
  }
}
