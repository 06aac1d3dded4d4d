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

  /**
   * Prepares the source strengths of some moments (a few hundred at most is fastest). A block
   * serves all bases of one light.
   */
  Block block(List<LightState> states);

  /**
   * By how much flecks of sun on the surfaces that a sample sees, bounced once or passed on by a
   * neighbouring surface, send it more than light that is mixed of the four suns of the grid round
   * each sun. What is mixed changes slowly with the sun but for these flecks.
   *
   * @param bundle of the suns
   * @param firstRow the first row wanted
   * @param out out[row - firstRow][sun - first sun of the bundle], for unit normal illuminance of
   *     the sun; overwritten
   */
  void flecks(int sample, Suns suns, int bundle, int firstRow, float[][] out);

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
