package slantlight.light;

/**
 * The multiply-adds of the light model: sums of scaled arrays.
 *
 * <p>Four arrays are added at a time, and to three sums at a time where there are as many: a load
 * from memory then serves three multiply-adds instead of one, and the sums are read and written a
 * quarter as often. The loops are plain so that the JIT turns them into vector instructions.
 */
final class Product {
  private Product() {}

  /**
   * Adds scaled arrays to sums, places {@code from} to {@code to}.
   *
   * @param sums by row
   * @param terms the arrays
   * @param count how many of {@code terms} count
   * @param factors of term i in row r at {@code start[i] + r}
   */
  static void add(
      float[][] sums,
      int rows,
      float[][] terms,
      int count,
      float[] factors,
      int[] start,
      int from,
      int to) {
    int i = 0;
    for (; i + 4 <= count; i += 4) {
      int r = 0;
      for (; r + 3 <= rows; r += 3) {
        fourToThree(sums, r, terms, i, factors, start, from, to);
      }
      for (; r < rows; r++) {
        four(
            sums[r],
            from,
            to,
            terms[i],
            factors[start[i] + r],
            terms[i + 1],
            factors[start[i + 1] + r],
            terms[i + 2],
            factors[start[i + 2] + r],
            terms[i + 3],
            factors[start[i + 3] + r]);
      }
    }
    for (; i < count; i++) {
      for (int r = 0; r < rows; r++) {
        one(sums[r], from, to, terms[i], factors[start[i] + r]);
      }
    }
  }

  private static void fourToThree(
      float[][] sums,
      int r,
      float[][] terms,
      int i,
      float[] factors,
      int[] start,
      int from,
      int to) {
    float[] s0 = sums[r];
    float[] s1 = sums[r + 1];
    float[] s2 = sums[r + 2];
    float[] a = terms[i];
    float[] b = terms[i + 1];
    float[] c = terms[i + 2];
    float[] d = terms[i + 3];
    int atA = start[i] + r;
    int atB = start[i + 1] + r;
    int atC = start[i + 2] + r;
    int atD = start[i + 3] + r;
    float a0 = factors[atA];
    float a1 = factors[atA + 1];
    float a2 = factors[atA + 2];
    float b0 = factors[atB];
    float b1 = factors[atB + 1];
    float b2 = factors[atB + 2];
    float c0 = factors[atC];
    float c1 = factors[atC + 1];
    float c2 = factors[atC + 2];
    float d0 = factors[atD];
    float d1 = factors[atD + 1];
    float d2 = factors[atD + 2];
    for (int m = from; m < to; m++) {
      float x = a[m];
      float y = b[m];
      float z = c[m];
      float w = d[m];
      s0[m] = Math.fma(a0, x, Math.fma(b0, y, Math.fma(c0, z, Math.fma(d0, w, s0[m]))));
      s1[m] = Math.fma(a1, x, Math.fma(b1, y, Math.fma(c1, z, Math.fma(d1, w, s1[m]))));
      s2[m] = Math.fma(a2, x, Math.fma(b2, y, Math.fma(c2, z, Math.fma(d2, w, s2[m]))));
    }
  }

  private static void four(
      float[] sum,
      int from,
      int to,
      float[] a,
      float ka,
      float[] b,
      float kb,
      float[] c,
      float kc,
      float[] d,
      float kd) {
    for (int m = from; m < to; m++) {
      sum[m] =
          Math.fma(ka, a[m], Math.fma(kb, b[m], Math.fma(kc, c[m], Math.fma(kd, d[m], sum[m]))));
    }
  }

  private static void one(float[] sum, int from, int to, float[] a, float ka) {
    for (int m = from; m < to; m++) {
      sum[m] = Math.fma(ka, a[m], sum[m]);
    }
  }
}
