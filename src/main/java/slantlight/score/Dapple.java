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
    addToProbes(out, run, first, end);
    add(out, run, 1, year.menu().probed(run), year.menu().start(run + 1), first, end);
  }

  /** The same for the probes of a run alone. */
  void addToProbes(float[][] out, int run, int first, int end) {
    add(out, run, 0, year.menu().start(run), year.menu().probed(run), first, end);
  }

  private void add(float[][] out, int run, int part, int from, int to, int first, int end) {
    if (from == to) {
      return;
    }
    float[][] rows = Arrays.copyOf(more, end - first);
    basis.flecks(sample, year.sunsOfFlecks(), 2 * run + part, first, rows);
    int start = year.menu().start(run);
    for (int s = from; s < to; s++) {
      int i = year.fleck(s);
      float lux = (float) year.beam(s);
      if (i >= 0) {
        for (int r = first; r < end; r++) {
          out[r][s - start] += lux * rows[r - first][i];
        }
      }
    }
  }
}
