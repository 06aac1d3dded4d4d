package slantlight.score;

import java.util.List;
import java.util.NoSuchElementException;
import slantlight.board.CuttingPlan;
import slantlight.scene.House;

/**
 * Every boarded surface of a house, scored over the year.
 *
 * @param surfaces in the order of the house
 * @param year the calendar year computed
 * @param stepMinutes time step
 * @param samples how many points of joints were followed
 * @param moments how many moments had light
 */
public record HouseScore(
    House house, List<SurfaceScore> surfaces, int year, int stepMinutes, int samples, int moments) {
  public HouseScore {
    surfaces = List.copyOf(surfaces);
  }

  /**
   * Score of a surface.
   *
   * @throws NoSuchElementException if the surface is not scored
   */
  public SurfaceScore surface(String id) {
    return surfaces.stream().filter(s -> s.surfaceId().equals(id)).findFirst().orElseThrow();
  }

  /** The boards to buy for all layouts, and what is cut from each. */
  public CuttingPlan cuttingPlan() {
    return CuttingPlan.of(
        surfaces.stream().map(s -> house.surface(s.surfaceId())).toList(),
        surfaces.stream().map(SurfaceScore::layout).toList());
  }
}
