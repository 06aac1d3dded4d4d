package slantlight.light;

import java.util.List;

/**
 * The responses of many samples to unit sources; a year of light is its product with the sources.
 */
public interface Basis {
  /** How many samples it holds. */
  int samples();

  /** Rows of a sample, as its kernel said. */
  int rows(int sample);

  /** Prepares the source strengths of some moments (a few hundred at most is fastest). */
  Block block(List<LightState> states);

  /**
   * Values of a sample's rows at the moments of a block.
   *
   * @param out out[row][moment], overwritten
   */
  void evaluate(int sample, Block block, float[][] out);

  /** Source strengths of some moments. */
  interface Block {
    /** How many moments. */
    int size();
  }
}
