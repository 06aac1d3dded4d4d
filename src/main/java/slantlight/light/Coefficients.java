package slantlight.light;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slantlight.geom.Vec3;
import slantlight.sky.SkyState;

/**
 * A {@link Basis} held as plain arrays: the year of a sample is a dense product over sky, ground
 * and lamps, a four-point gather over the sun's grid, and the flecks of sun close by.
 */
final class Coefficients implements Basis {
  private final Columns columns;
  private final SunFlecks flecks;
  private final Sample[] samples;
  private volatile FleckTable last;

  /**
   * Coefficients of one sample.
   *
   * @param used dense columns that matter, ascending
   * @param dense by used column, then row
   * @param sun by group, then node, then row; null for a group that sends nothing
   * @param flecks of sun on patches that it sees by themselves
   */
  record Sample(int rows, int[] used, float[] dense, float[][] sun, NearFlecks flecks) {
    static Sample of(float[][] rows, NearFlecks flecks, Columns columns) {
      int[] used = new int[columns.dense];
      int n = 0;
      for (int c = 0; c < columns.dense; c++) {
        if (matters(rows, c, c + 1)) {
          used[n++] = c;
        }
      }
      used = Arrays.copyOf(used, n);
      float[] dense = new float[n * rows.length];
      for (int i = 0; i < n; i++) {
        for (int r = 0; r < rows.length; r++) {
          dense[i * rows.length + r] = rows[r][used[i]];
        }
      }
      float[][] sun = new float[Columns.GROUPS][];
      for (int g = 0; g < Columns.GROUPS; g++) {
        int from = columns.sun(g);
        if (matters(rows, from, from + columns.nodes.size())) {
          sun[g] = new float[columns.nodes.size() * rows.length];
          for (int r = 0; r < rows.length; r++) {
            for (int k = 0; k < columns.nodes.size(); k++) {
              sun[g][k * rows.length + r] = rows[r][from + k];
            }
          }
        }
      }
      return new Sample(rows.length, used, dense, sun, flecks);
    }

    private static boolean matters(float[][] rows, int from, int to) {
      for (float[] row : rows) {
        for (int c = from; c < to; c++) {
          if (row[c] != 0) {
            return true;
          }
        }
      }
      return false;
    }
  }

  Coefficients(Columns columns, SunFlecks flecks, Sample[] samples) {
    this.columns = columns;
    this.flecks = flecks;
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

  /**
   * States made ready.
   *
   * @param dense by column, then state; null for a column that is dark throughout
   * @param node four nodes round the sun of each state: node k of state m at {@code k * size + m}
   * @param weight by node k, then state: its share of the sun's illuminance, lx
   * @param general reflectance of general ground by state
   * @param fixed 1 by state, or 0 where the luminance of ground is stated
   * @param runEnd state after the last of each run of states that share nodes and ground
   * @param suns that stand between those of the grid; none is null
   * @param sunOf by state: its place in {@code suns}, or -1
   * @param lux illuminance of each state's sun, square to it
   */
  private record Sources(
      int size,
      float[][] dense,
      int[] node,
      float[][] weight,
      float[] general,
      float[] fixed,
      int[] runEnd,
      Suns suns,
      int[] sunOf,
      float[] lux)
      implements Block {}

  @Override
  public Block block(List<LightState> states) {
    int n = states.size();
    float[] byColumn = new float[columns.dense * n];
    int[] node = new int[4 * n];
    float[][] weight = new float[4][n];
    float[] general = new float[n];
    float[] fixed = new float[n];
    float[] lux = new float[n];
    int[] sunOf = new int[n];
    Map<Vec3, Integer> places = new LinkedHashMap<>();
    int[] idx = new int[4];
    float[] w = new float[4];
    for (int m = 0; m < n; m++) {
      LightState state = states.get(m);
      columns.fill(state, byColumn, m, n);
      SkyState sky = state.sky();
      general[m] = (float) Columns.generalFactor(sky);
      fixed[m] = (float) Columns.fixedFactor(sky);
      lux[m] = (float) sky.sunNormalLux();
      sunOf[m] = -1;
      if (sky.sunNormalLux() > 0 && sky.sun().z() > 0) {
        if (!columns.standing.contains(sky.sun())) {
          sunOf[m] = places.computeIfAbsent(sky.sun(), k -> places.size());
        }
        columns.grid.weights(sky.sun(), idx, w);
        for (int k = 0; k < 4; k++) {
          node[k * n + m] = idx[k];
          weight[k][m] = (float) (w[k] * sky.sunNormalLux());
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
    int[] runEnd = runs(n, node, general, fixed);
    Suns between = places.isEmpty() ? null : Suns.of(places.keySet());
    return new Sources(n, dense, node, weight, general, fixed, runEnd, between, sunOf, lux);
  }

  private static int[] runs(int n, int[] node, float[] general, float[] fixed) {
    int[] ends = new int[n];
    int count = 0;
    for (int m = 1; m <= n; m++) {
      boolean on = m < n && general[m] == general[m - 1] && fixed[m] == fixed[m - 1];
      for (int k = 0; k < 4 && on; k++) {
        on = node[k * n + m] == node[k * n + m - 1];
      }
      if (!on) {
        ends[count++] = m;
      }
    }
    return Arrays.copyOf(ends, count);
  }

  @Override
  public void evaluate(int sample, Block block, float[][] out) {
    Sources s = (Sources) block;
    Sample c = samples[sample];
    for (int r = 0; r < c.rows; r++) {
      Arrays.fill(out[r], 0, s.size, 0);
    }
    dense(c, s, out);
    sun(c, s, out);
    if (s.suns != null) {
      addBetween(sample, s, out);
    }
  }

  /** Adds what flecks bring under suns that do not stand in the grid. */
  private void addBetween(int sample, Sources s, float[][] out) {
    for (int bundle = 0; bundle < s.suns.bundles(); bundle++) {
      int from = s.suns.start(bundle);
      int to = s.suns.start(bundle + 1);
      float[][] more = new float[samples[sample].rows][to - from];
      flecks(sample, s.suns, bundle, 0, more);
      for (int m = 0; m < s.size; m++) {
        int sun = s.sunOf[m];
        for (int r = 0; r < more.length && sun >= from && sun < to; r++) {
          out[r][m] += s.lux[m] * more[r][sun - from];
        }
      }
    }
  }

  @Override
  public void flecks(int sample, Suns suns, int bundle, int firstRow, float[][] out) {
    samples[sample].flecks.beyondMixture(table(suns), bundle, firstRow, out);
  }

  /** The flecks of some suns: most often those asked for before. */
  private FleckTable table(Suns suns) {
    FleckTable table = last;
    if (table == null || !table.suns().equals(suns)) {
      table = flecks.under(suns);
      last = table;
    }
    return table;
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
    Product.add(out, c.rows, in, n, c.dense, at, s.size);
  }

  /** The sun's part: states whose suns stand among the same four nodes are taken together. */
  private static void sun(Sample c, Sources s, float[][] out) {
    float[] mix = null;
    int[] start = new int[4];
    int from = 0;
    for (int end : s.runEnd) {
      if (mix == null
          || s.general[from] != s.general[from - 1]
          || s.fixed[from] != s.fixed[from - 1]) {
        mix = mix(c.sun, s.general[from], s.fixed[from]);
        if (mix == null) {
          return;
        }
      }
      for (int k = 0; k < 4; k++) {
        start[k] = s.node[k * s.size + from] * c.rows;
      }
      for (int r = 0; r < c.rows; r++) {
        Product.addRun(out[r], s.weight, mix, start, r, from, end);
      }
      from = end;
    }
  }

  /** Responses to a unit sun by node, then row, the ground as bright as it is; or null if none. */
  private static float[] mix(float[][] sun, float general, float fixed) {
    float[] shares = {1, general, fixed};
    float[] mix = null;
    for (int g = 0; g < Columns.GROUPS; g++) {
      if (sun[g] != null) {
        if (mix == null) {
          mix = new float[sun[g].length];
        }
        Product.add(mix, shares[g], sun[g]);
      }
    }
    return mix;
  }
}
