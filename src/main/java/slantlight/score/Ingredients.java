package slantlight.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import slantlight.geom.Vec3;
import slantlight.light.LightState;
import slantlight.scene.House;
import slantlight.scene.Site;
import slantlight.sky.SkyModel;
import slantlight.sky.SkyState;
import slantlight.sky.SunGrid;
import slantlight.sky.Weather;

/**
 * The few lights of which every light of the year is a sum: the beam and the clear vault for suns
 * on a grid over the year's band of the sky, the overcast vault, and the sets of lamps.
 *
 * <p>Light is linear in its sources, so a moment costs a handful of multiplications once each
 * ingredient is known. The beam and the vault are kept apart because their amounts change with the
 * sun's altitude much faster than their patterns do; only patterns are interpolated. Those of
 * flecks of sun close to a point move too fast for that, and are put right where it matters. Ground
 * reflectance enters linearly too: ingredients are computed for the year's darkest and brightest
 * ground and mixed.
 */
final class Ingredients {
  /** Amount of light of every ingredient, lx. */
  private static final double UNIT = 1000;

  private final List<LightState> states = new ArrayList<>();
  private final SunGrid grid;
  private final double darkest;
  private final double brightest;
  private final int overcast;
  private final int lamps;
  private final List<Double> grounds;
  private final List<List<Double>> lampSets = new ArrayList<>();

  /**
   * @param grid suns whose beam and vault are ingredients
   */
  Ingredients(House house, SkyModel model, SunGrid grid) {
    Site site = house.site();
    this.grid = grid;
    darkest = Collections.min(site.groundReflectance());
    brightest = Collections.max(site.groundReflectance());
    grounds = site.groundReflectance().stream().distinct().toList();
    List<Double> off = Collections.nCopies(house.lamps().size(), 0.0);
    for (double ground : ends()) {
      for (Vec3 sun : grid.nodes()) {
        states.add(new LightState(model.beamOnly(sun, UNIT, ground), off));
      }
      for (Vec3 sun : grid.nodes()) {
        states.add(new LightState(model.vaultOnly(sun, Weather.CLEAR, UNIT, ground), off));
      }
    }
    overcast = states.size();
    for (double ground : ends()) {
      states.add(new LightState(model.vaultOnly(Vec3.UP, Weather.OVERCAST, UNIT, ground), off));
    }
    lamps = states.size();
  }

  private double[] ends() {
    return darkest == brightest ? new double[] {darkest} : new double[] {darkest, brightest};
  }

  /** All ingredients, in order. */
  List<LightState> states() {
    return states;
  }

  /** What a clear sky is made of. */
  Recipe clear(Vec3 sun, SkyModel.Amounts amounts, double beam, double ground) {
    Recipe recipe = new Recipe(grounds.indexOf(ground));
    grid.weights(sun, recipe.node, recipe.beam);
    for (int k = 0; k < 4; k++) {
      recipe.vault[k] = (float) (recipe.beam[k] * amounts.diffuse() / UNIT);
      recipe.beam[k] *= (float) (beam / UNIT);
    }
    return recipe;
  }

  /** What an overcast sky is made of. */
  Recipe overcast(double diffuse, double ground) {
    Recipe recipe = new Recipe(-1);
    double t = share(ground);
    recipe.add(overcast, diffuse / UNIT * (1 - t));
    recipe.add(overcast + ends().length - 1, diffuse / UNIT * t);
    return recipe;
  }

  /** A black sky. */
  Recipe black() {
    return new Recipe(-1);
  }

  /** Adds a set of lamps. */
  void addLamps(Recipe recipe, List<Double> shares) {
    if (shares.stream().allMatch(s -> s == 0)) {
      return;
    }
    int i = lampSets.indexOf(shares);
    if (i < 0) {
      i = lampSets.size();
      lampSets.add(shares);
      SkyState dark = new SkyState(Vec3.DOWN, 0, (x, y, z) -> 0, 0, 0, Double.NaN);
      states.add(new LightState(dark, shares));
    }
    recipe.add(lamps + i, 1);
  }

  /** Share of the brightest ground in a ground. */
  private double share(double ground) {
    return darkest == brightest ? 0 : (ground - darkest) / (brightest - darkest);
  }

  /**
   * Rows of one point under every ingredient, made ready for cooking.
   *
   * @param rows [ingredient][row]
   * @param dapple flecks close to the point
   */
  Kitchen kitchen(float[][] rows, Dapple dapple) {
    int n = rows[0].length;
    int nodes = grid.nodes().size();
    float[][] tables = new float[grounds.size()][];
    for (int g = 0; g < tables.length; g++) {
      float t = (float) share(grounds.get(g));
      int second = ends().length > 1 ? 2 * nodes : 0;
      tables[g] = new float[nodes * 2 * n];
      for (int k = 0; k < nodes; k++) {
        for (int part = 0; part < 2; part++) {
          float[] dark = rows[part * nodes + k];
          float[] bright = rows[second + part * nodes + k];
          int base = (2 * k + part) * n;
          for (int r = 0; r < n; r++) {
            tables[g][base + r] = dark[r] + t * (bright[r] - dark[r]);
          }
        }
      }
    }
    return new Kitchen(tables, rows, dapple);
  }

  /** What one state of light is made of. */
  static final class Recipe implements Comparable<Recipe> {
    private final int ground;
    private final int[] node = new int[4];
    private final float[] beam = new float[4];
    private final float[] vault = new float[4];
    private int[] extra = new int[0];
    private float[] extraAmount = new float[0];

    private Recipe(int ground) {
      this.ground = ground;
    }

    /** A recipe of one ingredient as it is. */
    static Recipe only(int index) {
      Recipe r = new Recipe(-1);
      r.add(index, 1);
      return r;
    }

    private void add(int index, double much) {
      if (much != 0) {
        extra = Arrays.copyOf(extra, extra.length + 1);
        extraAmount = Arrays.copyOf(extraAmount, extra.length);
        extra[extra.length - 1] = index;
        extraAmount[extra.length - 1] = (float) much;
      }
    }

    /** Orders by what is taken, whatever its amount. */
    @Override
    public int compareTo(Recipe o) {
      int c = Integer.compare(ground, o.ground);
      c = c != 0 ? c : Arrays.compare(node, o.node);
      return c != 0 ? c : Arrays.compare(extra, o.extra);
    }
  }

  /**
   * The recipes of many states laid out in flat arrays by ingredient, and the runs of states that
   * take the same ingredients in other amounts: such a run is cooked as one product.
   */
  static final class Menu {
    /** Most states to a run: their rows then stay in the nearest cache. */
    static final int LONGEST = 64;

    /** One state of so many stands for its neighbours, or more than one. */
    private static final int EVERY = 4;

    /** Flecks of so many suns cost no more than those of one. */
    private static final int TOGETHER = 4;

    /** Runs of fewer states are not bounded. */
    private static final int FEW = 1;

    private final List<Recipe> recipes;

    /** Beam at the four nodes, then vault at the four nodes, by state. */
    private final float[][] amount;

    private final float[][] extraAmount;
    private final int[] runStart;

    /** By run: amounts of beam and vault in turn between which those of all its states lie. */
    private final float[][] corners;

    /**
     * Order in which states make few runs: those that take the same ingredients together, a spread
     * of them, its probes, first in each run.
     *
     * @return places in {@code recipes}
     */
    static int[] order(List<Recipe> recipes) {
      int[] sorted =
          IntStream.range(0, recipes.size())
              .boxed()
              .sorted(Comparator.comparing(recipes::get))
              .mapToInt(Integer::intValue)
              .toArray();
      int[] out = new int[sorted.length];
      int from = 0;
      for (int to = 1; to <= out.length; to++) {
        if (to == out.length
            || breaks(recipes.get(sorted[to]), recipes.get(sorted[from]), to - from)) {
          spread(sorted, from, to, out);
          from = to;
        }
      }
      return out;
    }

    private static boolean breaks(Recipe next, Recipe first, int size) {
      return size == LONGEST || next.compareTo(first) != 0;
    }

    /** Puts the probes of a run, evenly spread over it, before the rest. */
    private static void spread(int[] sorted, int from, int to, int[] out) {
      int size = to - from;
      int probes = probes(size);
      int probe = 0;
      int rest = probes;
      for (int i = 0; i < size; i++) {
        boolean here = probe < probes && i == (2 * probe + 1) * size / (2 * probes);
        out[from + (here ? probe++ : rest++)] = sorted[from + i];
      }
    }

    private static int probes(int size) {
      int blocks = (size + EVERY * TOGETHER - 1) / (EVERY * TOGETHER);
      return Math.min(size, blocks * TOGETHER);
    }

    /**
     * Lays out recipes.
     *
     * @param recipes in their order, alike ones together
     */
    Menu(List<Recipe> recipes) {
      int n = recipes.size();
      this.recipes = recipes;
      amount = new float[8][n];
      extraAmount = new float[recipes.stream().mapToInt(r -> r.extra.length).max().orElse(0)][n];
      int[] starts = new int[n + 1];
      int runs = 0;
      for (int i = 0; i < n; i++) {
        Recipe r = recipes.get(i);
        for (int k = 0; k < 4; k++) {
          amount[k][i] = r.beam[k];
          amount[4 + k][i] = r.vault[k];
        }
        for (int k = 0; k < r.extra.length; k++) {
          extraAmount[k][i] = r.extraAmount[k];
        }
        if (i == 0 || breaks(r, recipes.get(starts[runs - 1]), i - starts[runs - 1])) {
          starts[runs++] = i;
        }
      }
      starts[runs] = n;
      runStart = Arrays.copyOf(starts, runs + 1);
      corners = new float[runs][];
      for (int i = 0; i < runs; i++) {
        corners[i] = corners(starts[i], starts[i + 1]);
      }
    }

    /**
     * Corners of a quadrilateral of amounts that holds those of all states of a run: least and most
     * vault, each with least and most beam for its vault. None where the states are too few to be
     * worth it, or mix other things than a sky and lamps that burn alike.
     */
    private float[] corners(int from, int to) {
      Recipe recipe = recipes.get(from);
      boolean plain = recipe.ground >= 0 && to - from >= FEW;
      float least = Float.POSITIVE_INFINITY;
      float most = 0;
      float leastRatio = Float.POSITIVE_INFINITY;
      float mostRatio = 0;
      for (int s = from; s < to && plain; s++) {
        float beam = amount[0][s] + amount[1][s] + amount[2][s] + amount[3][s];
        float vault = amount[4][s] + amount[5][s] + amount[6][s] + amount[7][s];
        least = Math.min(least, vault);
        most = Math.max(most, vault);
        leastRatio = Math.min(leastRatio, beam / vault);
        mostRatio = Math.max(mostRatio, beam / vault);
        plain = vault > 0 && Arrays.equals(recipes.get(s).extraAmount, recipe.extraAmount);
      }
      if (!plain) {
        return new float[0];
      }
      // Without lamps showing does not depend on the amount of light but by the eye's adaptation.
      return recipe.extra.length == 0
          ? new float[] {most * leastRatio, most, most * mostRatio, most}
          : new float[] {
            least * leastRatio, least, least * mostRatio, least,
            most * leastRatio, most, most * mostRatio, most
          };
    }

    /** The run of a state. */
    int runOf(int state) {
      int i = Arrays.binarySearch(runStart, state);
      return i < 0 ? -i - 2 : i;
    }

    int runs() {
      return runStart.length - 1;
    }

    /**
     * Corner lights of a run: every state of it is a sum of shares of these, or nothing of the sort
     * is known when there are none.
     */
    int corners(int run) {
      return 2 * corners[run].length;
    }

    /** The state after the probes of a run, which are its first states. */
    int probed(int run) {
      return runStart[run] + probes(runStart[run + 1] - runStart[run]);
    }

    /** First state of a run; of the number of runs, the number of states. */
    int start(int run) {
      return runStart[run];
    }
  }

  /** One point's rows: by ground, a table of beam rows and vault rows for each node of the grid. */
  static final class Kitchen {
    private final float[][] tables;
    private final float[][] rows;
    private final Dapple dapple;

    private Kitchen(float[][] tables, float[][] rows, Dapple dapple) {
      this.tables = tables;
      this.rows = rows;
      this.dapple = dapple;
    }

    /** A kitchen without a grid, for recipes of whole ingredients. */
    static Kitchen plain(float[][] rows) {
      return new Kitchen(new float[0][], rows, null);
    }

    /**
     * Some rows under some states of one run.
     *
     * @param from the first state
     * @param to the state after the last
     * @param out receives [row][state - from]
     * @param first the first row wanted
     * @param end the row after the last
     */
    void cook(Menu menu, int from, int to, float[][] out, int first, int end) {
      Recipe recipe = menu.recipes.get(from);
      int size = to - from;
      if (recipe.ground >= 0) {
        float[] t = tables[recipe.ground];
        int n = rows[0].length;
        for (int r = first; r < end; r++) {
          grid(menu.amount, from, t, n, recipe.node, r, out[r], size);
        }
      } else {
        for (int r = first; r < end; r++) {
          Arrays.fill(out[r], 0, size, 0);
        }
      }
      for (int k = 0; k < recipe.extra.length; k++) {
        float[] of = rows[recipe.extra[k]];
        for (int r = first; r < end; r++) {
          add(out[r], of[r], menu.extraAmount[k], from, size);
        }
      }
    }

    /**
     * Puts the flecks close by where the sun of each probe of a run makes them. To be called after
     * these were cooked.
     *
     * @param out [row][state - first state of the run]
     * @param first the first row wanted
     * @param end the row after the last
     */
    void sharpenProbes(Menu menu, int run, float[][] out, int first, int end) {
      if (menu.recipes.get(menu.start(run)).ground >= 0) {
        dapple.addToProbes(out, run, first, end);
      }
    }

    /**
     * The same for all states of a run.
     *
     * @param out [row][state - first state of the run]
     * @param first the first row wanted
     * @param end the row after the last
     */
    void sharpen(Menu menu, int run, float[][] out, int first, int end) {
      if (menu.recipes.get(menu.start(run)).ground >= 0) {
        dapple.addTo(out, run, first, end);
      }
    }

    /**
     * The first rows under a corner light of a run.
     *
     * @param corner less than {@link Menu#corners(int)}
     * @param out receives as many rows as it has places
     */
    void corner(Menu menu, int run, int corner, float[] out) {
      Recipe recipe = menu.recipes.get(menu.start(run));
      float[] t = tables[recipe.ground];
      int n = rows[0].length;
      int at = 2 * n * recipe.node[corner & 3];
      float beam = menu.corners[run][2 * (corner >> 2)];
      float vault = menu.corners[run][2 * (corner >> 2) + 1];
      for (int r = 0; r < out.length; r++) {
        out[r] = beam * t[at + r] + vault * t[at + n + r];
      }
      for (int k = 0; k < recipe.extra.length; k++) {
        add(out, recipe.extraAmount[k], rows[recipe.extra[k]], 0, out.length);
      }
    }

    /** The sum over beam and vault at four nodes. */
    private static void grid(
        float[][] amount, int from, float[] t, int n, int[] node, int row, float[] out, int size) {
      float s0 = t[2 * n * node[0] + row];
      float s1 = t[2 * n * node[1] + row];
      float s2 = t[2 * n * node[2] + row];
      float s3 = t[2 * n * node[3] + row];
      float v0 = t[2 * n * node[0] + n + row];
      float v1 = t[2 * n * node[1] + n + row];
      float v2 = t[2 * n * node[2] + n + row];
      float v3 = t[2 * n * node[3] + n + row];
      Arrays.fill(out, 0, size, 0);
      add(out, size, amount, 0, from, s0, s1, s2, s3);
      add(out, size, amount, 4, from, v0, v1, v2, v3);
    }

    private static void add(
        float[] out,
        int size,
        float[][] amount,
        int first,
        int from,
        float k0,
        float k1,
        float k2,
        float k3) {
      float[] a = amount[first];
      float[] b = amount[first + 1];
      float[] c = amount[first + 2];
      float[] d = amount[first + 3];
      for (int m = 0; m < size; m++) {
        out[m] += (k0 * a[from + m] + k1 * b[from + m]) + (k2 * c[from + m] + k3 * d[from + m]);
      }
    }

    private static void add(float[] out, float factor, float[] amount, int from, int size) {
      for (int m = 0; m < size; m++) {
        out[m] += factor * amount[from + m];
      }
    }
  }
}
