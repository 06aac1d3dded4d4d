package slantlight.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import slantlight.light.Basis;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.units.Progress;

/** The year's light made ready for all points of a house. */
final class YearScan {
  /** States to a block of the basis: sources and rows of a point then stay in the near caches. */
  private static final int BLOCK = 256;

  private final LightModel light;
  private final LitYear year;
  private final List<Basis.Block> blocks = new ArrayList<>();

  /** Makes the year's ingredients ready. */
  YearScan(LightModel light, LitYear year) {
    this.light = light;
    this.year = year;
    Basis any = light.basis(List.of(), List.of(), Progress.NONE);
    List<LightState> all = year.ingredients();
    for (int from = 0; from < all.size(); from += BLOCK) {
      blocks.add(any.block(all.subList(from, Math.min(from + BLOCK, all.size()))));
    }
  }

  LitYear year() {
    return year;
  }

  /** Finds, with all threads, what points in some rooms will ask for. */
  void enter(Set<String> roomIds) {
    light.findFlecks(year.sunsOfFlecks(), roomIds);
  }

  /** Lets go of what only points in other rooms than some ask for. */
  void keepOnly(Set<String> roomIds) {
    light.keepFlecks(year.sunsOfFlecks(), roomIds);
  }

  /**
   * Follows a point through the year.
   *
   * @param i number of the point among those of its joint, which some eye sees
   * @param kitchen of the point
   * @param showing raised where the point shows more: [level - 3][state]
   * @param own receives the point's largest clear-weather showing at each level
   * @return its worst state and eye at level 4
   */
  PointTrace.Worst follow(
      PointLights lights, int i, Ingredients.Kitchen kitchen, float[][] showing, float[] own) {
    int sample = lights.sample()[i];
    return new PointTrace(lights.points().get(i), lights.beams(), sample, year, kitchen)
        .follow(showing, own);
  }

  /** Rows of a sample of the same light under every ingredient. */
  Ingredients.Kitchen kitchen(Basis basis, int sample) {
    int n = basis.rows(sample);
    float[][] out = new float[year.ingredients().size()][n];
    float[][] block = new float[n][BLOCK];
    int first = 0;
    for (Basis.Block b : blocks) {
      basis.evaluate(sample, b, block);
      for (int r = 0; r < n; r++) {
        for (int m = 0; m < b.size(); m++) {
          out[first + m][r] = block[r][m];
        }
      }
      first += b.size();
    }
    return year.kitchen(out, basis, sample);
  }
}
