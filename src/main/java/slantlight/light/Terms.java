package slantlight.light;

/**
 * Many terms of a few numbers each, each term with a factor for every sum. Loops over so few
 * numbers cost more to enter than to run, so four numbers of three sums are held while all terms
 * pass by.
 */
final class Terms {
  /** Numbers that are taken together: those of each term are filled up to a multiple of it. */
  static final int BLOCK = 4;

  /** Terms that are held back. */
  private static final int HELD = 64;

  private final float[] factors;
  private final float[][] sums;
  private final int size;

  /** Of each term held, where its numbers begin, and its factors. */
  private final int[] places = new int[2 * HELD];

  private float[] numbers = {};
  private int count;

  /**
   * No terms yet.
   *
   * @param factors of all terms: of each, those of the sums one after another
   * @param sums by sum, then number; terms are added to them
   * @param size numbers of each sum
   */
  Terms(float[] factors, float[][] sums, int size) {
    this.factors = factors;
    this.sums = sums;
    this.size = size;
  }

  /**
   * Adds a term, or holds it back until {@link #addAll}.
   *
   * @param from holds its numbers
   * @param at where they begin
   * @param factor place of its factor for the first sum
   */
  void add(float[] from, int at, int factor) {
    if (count == HELD || from != numbers) {
      addAll();
      numbers = from;
    }
    places[2 * count] = at;
    places[2 * count + 1] = factor;
    count++;
  }

  /** Adds the terms held back to the sums. */
  void addAll() {
    if (count > 0) {
      for (int m = 0; m < size; m += BLOCK) {
        int r = 0;
        for (; r + 3 <= sums.length; r += 3) {
          addThree(r, m);
        }
        for (; r < sums.length; r++) {
          addOne(r, m);
        }
      }
    }
    count = 0;
  }

  private void addThree(int row, int m) {
    float a0 = 0;
    float a1 = 0;
    float a2 = 0;
    float a3 = 0;
    float b0 = 0;
    float b1 = 0;
    float b2 = 0;
    float b3 = 0;
    float c0 = 0;
    float c1 = 0;
    float c2 = 0;
    float c3 = 0;
    for (int t = 0; t < count; t++) {
      int at = places[2 * t] + m;
      int f = places[2 * t + 1] + row;
      float x0 = numbers[at];
      float x1 = numbers[at + 1];
      float x2 = numbers[at + 2];
      float x3 = numbers[at + 3];
      float a = factors[f];
      float b = factors[f + 1];
      float c = factors[f + 2];
      a0 = Math.fma(a, x0, a0);
      a1 = Math.fma(a, x1, a1);
      a2 = Math.fma(a, x2, a2);
      a3 = Math.fma(a, x3, a3);
      b0 = Math.fma(b, x0, b0);
      b1 = Math.fma(b, x1, b1);
      b2 = Math.fma(b, x2, b2);
      b3 = Math.fma(b, x3, b3);
      c0 = Math.fma(c, x0, c0);
      c1 = Math.fma(c, x1, c1);
      c2 = Math.fma(c, x2, c2);
      c3 = Math.fma(c, x3, c3);
    }
    put(sums[row], m, size, a0, a1, a2, a3);
    put(sums[row + 1], m, size, b0, b1, b2, b3);
    put(sums[row + 2], m, size, c0, c1, c2, c3);
  }

  private void addOne(int row, int m) {
    float a0 = 0;
    float a1 = 0;
    float a2 = 0;
    float a3 = 0;
    for (int t = 0; t < count; t++) {
      int at = places[2 * t] + m;
      float a = factors[places[2 * t + 1] + row];
      a0 = Math.fma(a, numbers[at], a0);
      a1 = Math.fma(a, numbers[at + 1], a1);
      a2 = Math.fma(a, numbers[at + 2], a2);
      a3 = Math.fma(a, numbers[at + 3], a3);
    }
    put(sums[row], m, size, a0, a1, a2, a3);
  }

  private static void put(float[] sum, int m, int size, float a0, float a1, float a2, float a3) {
    sum[m] += a0;
    if (m + 1 < size) {
      sum[m + 1] += a1;
    }
    if (m + 2 < size) {
      sum[m + 2] += a2;
    }
    if (m + 3 < size) {
      sum[m + 3] += a3;
    }
  }
}
