package slantlight.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slantlight.light.Basis;
import slantlight.light.LightState;
import slantlight.light.SunBeams;

/** The year's light made ready, and the points' places in its basis. */
final class YearScan {
  /** States to a block of the basis: sources and rows of a point then stay in the near caches. */
  private static final int BLOCK = 256;

  private final Basis basis;
  private final SunBeams beams;
  private final Map<PointOptics, Integer> places;
  private final LitYear year;
  private final List<Basis.Block> blocks = new ArrayList<>();

  /**
   * Makes the year's ingredients ready for a basis.
   *
   * @param places index in the basis of every point that some eye sees, by identity
   */
  YearScan(Basis basis, SunBeams beams, Map<PointOptics, Integer> places, LitYear year) {
    this.basis = basis;
    this.beams = beams;
    this.places = places;
    this.year = year;
    List<LightState> all = year.ingredients();
    for (int from = 0; from < all.size(); from += BLOCK) {
      List<LightState> part = all.subList(from, Math.min(from + BLOCK, all.size()));
      blocks.add(basis.block(part));
    }
  }

  LitYear year() {
    return year;
  }

  int place(PointOptics point) {
    return places.get(point);
  }

  /**
   * Follows a point through the year.
   *
   * @param kitchen of the point
   * @param showing raised where the point shows more: [level - 3][state]
   * @param own receives the point's largest clear-weather showing at each level
   * @return its worst state and eye at level 4
   */
  PointTrace.Worst follow(
      PointOptics point, Ingredients.Kitchen kitchen, float[][] showing, float[] own) {
    return new PointTrace(point, beams, place(point), year, kitchen).follow(showing, own);
  }

  /** Rows of a sample under every ingredient. */
  Ingredients.Kitchen kitchen(int sample) {
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
