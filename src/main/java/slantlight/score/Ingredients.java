package slantlight.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
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
 * sun's altitude much faster than their patterns do; only patterns are interpolated. Ground
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

  Ingredients(House house, SkyModel model) {
    Site site = house.site();
    grid = SunGrid.of(site.latitudeDeg());
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
   */
  Kitchen kitchen(float[][] rows) {
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
    return new Kitchen(tables, rows);
  }

  /** What one state of light is made of. */
  static final class Recipe {
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
  }

  /**
   * The recipes of many states laid out in flat arrays: a year is read from front to back for every
   * point, and following references would cost more than the arithmetic.
   */
  static final class Menu {
    private final int[] ground;
    private final int[] node;
    private final float[] amount;
    private final int[][] extra;
    private final float[][] extraAmount;

    Menu(List<Recipe> recipes) {
      int n = recipes.size();
      ground = new int[n];
      node = new int[4 * n];
      amount = new float[8 * n];
      extra = new int[n][];
      extraAmount = new float[n][];
      for (int i = 0; i < n; i++) {
        Recipe r = recipes.get(i);
        ground[i] = r.ground;
        System.arraycopy(r.node, 0, node, 4 * i, 4);
        System.arraycopy(r.beam, 0, amount, 8 * i, 4);
        System.arraycopy(r.vault, 0, amount, 8 * i + 4, 4);
        extra[i] = r.extra;
        extraAmount[i] = r.extraAmount;
      }
    }
  }

  /** One point's rows: by ground, a table of beam rows and vault rows for each node of the grid. */
  static final class Kitchen {
    private final float[][] tables;
    private final float[][] rows;

    private Kitchen(float[][] tables, float[][] rows) {
      this.tables = tables;
      this.rows = rows;
    }

    /** A kitchen without a grid, for recipes of whole ingredients. */
    static Kitchen plain(float[][] rows) {
      return new Kitchen(new float[0][], rows);
    }

    /**
     * The first rows under the recipe of a state.
     *
     * @param count how many rows are wanted
     */
    void cook(Menu menu, int state, float[] out, int count) {
      if (menu.ground[state] >= 0) {
        grid(menu, state, tables[menu.ground[state]], rows[0].length, out, count);
      } else {
        Arrays.fill(out, 0, count, 0);
      }
      int[] extra = menu.extra[state];
      for (int k = 0; k < extra.length; k++) {
        float a = menu.extraAmount[state][k];
        float[] r = rows[extra[k]];
        for (int i = 0; i < count; i++) {
          out[i] += a * r[i];
        }
      }
    }

    private static void grid(Menu menu, int state, float[] t, int n, float[] out, int count) {
      int b0 = 2 * n * menu.node[4 * state];
      int b1 = 2 * n * menu.node[4 * state + 1];
      int b2 = 2 * n * menu.node[4 * state + 2];
      int b3 = 2 * n * menu.node[4 * state + 3];
      float s0 = menu.amount[8 * state];
      float s1 = menu.amount[8 * state + 1];
      float s2 = menu.amount[8 * state + 2];
      float s3 = menu.amount[8 * state + 3];
      float v0 = menu.amount[8 * state + 4];
      float v1 = menu.amount[8 * state + 5];
      float v2 = menu.amount[8 * state + 6];
      float v3 = menu.amount[8 * state + 7];
      for (int i = 0; i < count; i++) {
        out[i] =
            (s0 * t[b0 + i] + s1 * t[b1 + i] + (s2 * t[b2 + i] + s3 * t[b3 + i]))
                + (v0 * t[b0 + n + i]
                    + v1 * t[b1 + n + i]
                    + (v2 * t[b2 + n + i] + v3 * t[b3 + n + i]));
      }
    }
  }
}
