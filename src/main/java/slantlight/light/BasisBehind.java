package slantlight.light;

import java.util.List;

/** A basis that answers as another does, in all but what is overridden. */
public abstract class BasisBehind implements Basis {
  private final Basis basis;

  /** Answers as a basis does. */
  protected BasisBehind(Basis basis) {
    this.basis = basis;
  }

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
    basis.flecks(sample, suns, bundle, firstRow, out);
  }

  @Override
  public void evaluate(int sample, Block block, float[][] out) {
    basis.evaluate(sample, block, out);
  }
}
