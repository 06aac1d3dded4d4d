package slantlight.score;

import java.util.Arrays;
import slantlight.light.Basis;
import slantlight.light.BasisBehind;
import slantlight.light.Suns;

/** A basis of which only the mixture of the grid's suns is told, no fleck put right. */
final class Unflecked extends BasisBehind {
  Unflecked(Basis basis) {
    super(basis);
  }

  @Override
  public void flecks(int sample, Suns suns, int bundle, int firstRow, float[][] out) {
    for (float[] row : out) {
      Arrays.fill(row, 0);
    }
  }
}
