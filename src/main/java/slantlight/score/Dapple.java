package slantlight.score;

import java.util.Arrays;
import slantlight.light.Basis;

/** Flecks of sun close to a point under the suns of the year's states. */
final class Dapple {
  private final Basis basis;
  private final int sample;
  private final LitYear year;
  private final float[][] more;

  Dapple(Basis basis, int sample, LitYear year) {
    this.basis = basis;
    this.sample = sample;
    this.year = year;
    more = new float[basis.rows(sample)][Ingredients.Menu.LONGEST];
  }

  /**
   * Adds what the flecks of the states of a run bring beyond the mixture of the grid's suns.
   *
   * @param out [row][state - first state of the run]
   * @param first the first row wanted
   * @param end the row after the last
   */
  void addTo(float[][] out, int run, int first, int end) {
    int from = year.menu().start(run);
    int size = year.menu().start(run + 1) - from;
    float[][] rows = Arrays.copyOf(more, end - first);
    basis.flecks(sample, year.sunsOfFlecks(), run, first, rows);
    for (int m = 0; m < size; m++) {
      int i = year.fleck(from + m);
      float lux = (float) year.beam(from + m);
      for (int r = first; r < end && i >= 0; r++) {
        out[r][m] += lux * rows[r - first][i];
      }
    }
  }
}
