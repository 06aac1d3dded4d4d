package slantlight.decide;

import java.util.List;
import slantlight.score.HouseScore;

/**
 * What can be done about the surfaces above their limit.
 *
 * @param before the studied surfaces as they are, on the moments of the study
 * @param lines every remedy and combination weighed, by surface; free ones first, then by price,
 *     those without a price last
 * @param menus the choices of the budget plan, the house as it is first
 */
public record RemedyStudy(HouseScore before, List<RemedyLine> lines, List<Menu> menus) {
  public RemedyStudy {
    lines = List.copyOf(lines);
    menus = List.copyOf(menus);
  }

  /** The lines of one surface. */
  public List<RemedyLine> lines(String surfaceId) {
    return lines.stream().filter(l -> l.surfaceId().equals(surfaceId)).toList();
  }
}
