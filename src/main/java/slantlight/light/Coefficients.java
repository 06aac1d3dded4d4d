package slantlight.light;

import java.util.Arrays;
import java.util.List;
import slantlight.sky.SkyState;

/**
 * A {@link Basis} held as plain arrays: the year of a sample is a dense product over sky, ground
 * and lamps, and a four-point gather over the sun's grid.
 */
final class Coefficients implements Basis {
  private final Columns columns;
  private final Sample[] samples;

  /**
   * Coefficients of one sample.
   *
   * @param used dense columns that matter, ascending
   * @param dense by used column, then row
   * @param sun by group, then row, then node
   */
  record Sample(int rows, int[] used, float[] dense, float[][][] sun) {
    static Sample of(float[][] rows, Columns columns) {
      int[] used = new int[columns.dense];
      int n = 0;
      for (int c = 0; c < columns.dense; c++) {
        boolean any = false;
        for (float[] row : rows) {
          any |= row[c] != 0;
        }
        if (any) {
          used[n++] = c;
        }
      }
      used = Arrays.copyOf(used, n);
      float[] dense = new float[n * rows.length];
      float[][][] sun = new float[Columns.GROUPS][][];
      for (int i = 0; i < n; i++) {
        for (int r = 0; r < rows.length; r++) {
          dense[i * rows.length + r] = rows[r][used[i]];
        }
      }
      for (int g = 0; g < Columns.GROUPS; g++) {
        sun[g] = new float[rows.length][];
        for (int r = 0; r < rows.length; r++) {
          int from = columns.sun(g);
          float[] part = Arrays.copyOfRange(rows[r], from, from + columns.nodes.size());
          for (float v : part) {
            if (v != 0) {
              sun[g][r] = part;
              break;
            }
          }
        }
      }
      return new Sample(rows.length, used, dense, sun);
    }
  }

  Coefficients(Columns columns, Sample[] samples) {
    this.columns = columns;
    this.samples = samples;
  }

  @Override
  public int samples() {
    return samples.length;
  }

  @Override
  public int rows(int sample) {
    return samples[sample].rows;
  }

  /** Multiply-adds of the dense part for one sample and one moment; benchmarks count by it. */
  int multiplyAdds(int sample) {
    return samples[sample].rows * samples[sample].used.length;
  }

  private record Sources(
      int size, float[][] dense, int[] node, float[] weight, float[] general, float[] fixed)
      implements Block {}

  @Override
  public Block block(List<LightState> states) {
    int n = states.size();
    float[] byColumn = new float[columns.dense * n];
    int[] node = new int[4 * n];
    float[] weight = new float[4 * n];
    float[] general = new float[n];
    float[] fixed = new float[n];
    int[] idx = new int[4];
    float[] w = new float[4];
    for (int m = 0; m < n; m++) {
      LightState state = states.get(m);
      columns.fill(state, byColumn, m, n);
      SkyState sky = state.sky();
      general[m] = (float) Columns.generalFactor(sky);
      fixed[m] = (float) Columns.fixedFactor(sky);
      if (sky.sunNormalLux() > 0 && sky.sun().z() > 0) {
        columns.grid.weights(sky.sun(), idx, w);
        for (int k = 0; k < 4; k++) {
          node[k * n + m] = idx[k];
          weight[k * n + m] = (float) (w[k] * sky.sunNormalLux());
        }
      }
    }
    float[][] dense = new float[columns.dense][];
    for (int c = 0; c < columns.dense; c++) {
      float[] part = Arrays.copyOfRange(byColumn, c * n, (c + 1) * n);
      for (float v : part) {
        if (v != 0) {
          dense[c] = part;
          break;
        }
      }
    }
    return new Sources(n, dense, node, weight, general, fixed);
  }

  @Override
  public void evaluate(int sample, Block block, float[][] out) {
    Sources s = (Sources) block;
    Sample c = samples[sample];
    for (int r = 0; r < c.rows; r++) {
      Arrays.fill(out[r], 0, s.size, 0);
    }
    dense(c, s, out);
    for (int r = 0; r < c.rows; r++) {
      sun(c, r, s, out[r]);
    }
  }

  private static void dense(Sample c, Sources s, float[][] out) {
    float[][] in = new float[c.used.length][];
    int[] at = new int[c.used.length];
    int n = 0;
    for (int i = 0; i < c.used.length; i++) {
      if (s.dense[c.used[i]] != null) {
        in[n] = s.dense[c.used[i]];
        at[n++] = i * c.rows;
      }
    }
    int i = 0;
    for (; i + 4 <= n; i += 4) {
      for (int r = 0; r < c.rows; r++) {
        four(
            out[r],
            s.size,
            in[i],
            c.dense[at[i] + r],
            in[i + 1],
            c.dense[at[i + 1] + r],
            in[i + 2],
            c.dense[at[i + 2] + r],
            in[i + 3],
            c.dense[at[i + 3] + r]);
      }
    }
    for (; i < n; i++) {
      for (int r = 0; r < c.rows; r++) {
        one(out[r], s.size, in[i], c.dense[at[i] + r]);
      }
    }
  }

  private static void four(
      float[] out,
      int n,
      float[] a,
      float ka,
      float[] b,
      float kb,
      float[] c,
      float kc,
      float[] d,
      float kd) {
    for (int m = 0; m < n; m++) {
      out[m] =
          Math.fma(ka, a[m], Math.fma(kb, b[m], Math.fma(kc, c[m], Math.fma(kd, d[m], out[m]))));
    }
  }

  private static void one(float[] out, int n, float[] a, float ka) {
    for (int m = 0; m < n; m++) {
      out[m] = Math.fma(ka, a[m], out[m]);
    }
  }

  private void sun(Sample c, int row, Sources s, float[] out) {
    float[] inside = c.sun[Columns.INSIDE][row];
    float[] general = c.sun[Columns.GENERAL][row];
    float[] fixed = c.sun[Columns.FIXED][row];
    if (inside == null && general == null && fixed == null) {
      return;
    }
    float[] mix = new float[columns.nodes.size()];
    int n = s.size;
    for (int m = 0; m < n; ) {
      float kg = s.general[m];
      float kf = s.fixed[m];
      int end = m + 1;
      while (end < n && s.general[end] == kg && s.fixed[end] == kf) {
        end++;
      }
      Arrays.fill(mix, 0);
      mixIn(mix, inside, 1);
      mixIn(mix, general, kg);
      mixIn(mix, fixed, kf);
      for (; m < end; m++) {
        out[m] +=
            s.weight[m] * mix[s.node[m]]
                + s.weight[n + m] * mix[s.node[n + m]]
                + s.weight[2 * n + m] * mix[s.node[2 * n + m]]
                + s.weight[3 * n + m] * mix[s.node[3 * n + m]];
      }
    }
  }

  private static void mixIn(float[] mix, float[] part, float factor) {
    if (part != null && factor != 0) {
      Exposure.addScaled(mix, factor, part);
    }
  }
}
