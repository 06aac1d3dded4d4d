package slantlight.light;

/**
 * The multiply-adds of the light model: sums of scaled arrays.
 *
 * <p>Two arrays are added to three sums at a time: a load from memory then serves three
 * multiply-adds, and the sums are read and written half as often. The loops are plain, and no
 * larger than the JIT of Java 17 still turns into vector instructions.
 */
final class Product {
  private Product() {}

  /**
   * Adds scaled arrays to sums.
   *
   * @param sums by row
   * @param terms the arrays
   * @param count how many of {@code terms} count
   * @param factors of term i in row r at {@code start[i] + r}
   * @param size places of the arrays that count
   */
  static void add(
      float[][] sums,
      int rows,
      float[][] terms,
      int count,
      float[] factors,
      int[] start,
      int size) {
    int i = 0;
    for (; i + 2 <= count; i += 2) {
      float[] a = terms[i];
      float[] b = terms[i + 1];
      int atA = start[i];
      int atB = start[i + 1];
      int r = 0;
      for (; r + 3 <= rows; r += 3) {
        two(sums[r], sums[r + 1], sums[r + 2], size, a, b, factors, atA + r, atB + r);
      }
      for (; r < rows; r++) {
        two(sums[r], size, a, factors[atA + r], b, factors[atB + r]);
      }
    }
    for (; i < count; i++) {
      for (int r = 0; r < rows; r++) {
        one(sums[r], size, terms[i], factors[start[i] + r]);
      }
    }
  }

  private static void two(
      float[] s0,
      float[] s1,
      float[] s2,
      int size,
      float[] a,
      float[] b,
      float[] factors,
      int atA,
      int atB) {
    float a0 = factors[atA];
    float a1 = factors[atA + 1];
    float a2 = factors[atA + 2];
    float b0 = factors[atB];
    float b1 = factors[atB + 1];
    float b2 = factors[atB + 2];
    for (int m = 0; m < size; m++) {
      float x = a[m];
      float y = b[m];
      s0[m] = Math.fma(a0, x, Math.fma(b0, y, s0[m]));
      s1[m] = Math.fma(a1, x, Math.fma(b1, y, s1[m]));
      s2[m] = Math.fma(a2, x, Math.fma(b2, y, s2[m]));
    }
  }

  private static void two(float[] sum, int size, float[] a, float ka, float[] b, float kb) {
    for (int m = 0; m < size; m++) {
      sum[m] = Math.fma(ka, a[m], Math.fma(kb, b[m], sum[m]));
    }
  }

  /** Adds a scaled array to a sum as long as it. */
  static void add(float[] sum, float factor, float[] term) {
    one(sum, sum.length, term, factor);
  }

  private static void one(float[] sum, int size, float[] a, float ka) {
    for (int m = 0; m < size; m++) {
      sum[m] = Math.fma(ka, a[m], sum[m]);
    }
  }

  /**
   * Adds four scaled arrays to one sum between two places that may lie close together. Code of its
   * own: the JIT unrolls a loop by the lengths it has seen, and short ones would spoil {@link
   * #add}.
   *
   * @param factors of term k at {@code start[k] + r}
   */
  static void addRun(
      float[] sum, float[][] terms, float[] factors, int[] start, int r, int from, int to) {
    float[] a = terms[0];
    float[] b = terms[1];
    float[] c = terms[2];
    float[] d = terms[3];
    float ka = factors[start[0] + r];
    float kb = factors[start[1] + r];
    float kc = factors[start[2] + r];
    float kd = factors[start[3] + r];
    for (int m = from; m < to; m++) {
      sum[m] =
          Math.fma(ka, a[m], Math.fma(kb, b[m], Math.fma(kc, c[m], Math.fma(kd, d[m], sum[m]))));
    }
  }
}
