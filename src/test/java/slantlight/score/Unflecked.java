package slantlight.score;

import java.util.Arrays;
import java.util.List;
import slantlight.light.Basis;
import slantlight.light.LightState;
import slantlight.light.Suns;

/** A basis of which only the mixture of the grid's suns is told, no fleck put right. */
record Unflecked(Basis basis) implements Basis {
  @Override
  public int samples() {
    return basis.samples();
  }

  @Override
  public int rows(int sample) {
    return basis.rows(sample);
  }

  @Override
  public Block block(List<LightState> states) {
    return basis.block(states);
  }

  @Override
  public void flecks(int sample, Suns suns, int bundle, int firstRow, float[][] out) {
    for (float[] row : out) {
      Arrays.fill(row, 0);
    }
  }

  @Override
  public void evaluate(int sample, Block block, float[][] out) {
    basis.evaluate(sample, block, out);
  }
}
