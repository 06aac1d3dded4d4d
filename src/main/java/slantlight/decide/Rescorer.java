package slantlight.decide;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slantlight.board.Layout;
import slantlight.scene.House;
import slantlight.score.SurfaceScore;

/** Scores changed houses with the same physics, on moments chosen beforehand. */
public interface Rescorer {
  /** Computes the light of a house anew. */
  Lit light(House house);

  /** One state of the light, under which boards, joints and sheen may still change. */
  interface Lit {
    /**
     * Scores some surfaces, in the house's order.
     *
     * @param house differs from the lit one in boards, levels and sheen at most
     * @param surfaces ids of the surfaces to score
     * @param layouts layouts that are not to be computed anew, by surface id
     * @param backBlocked surfaces whose butt joints are back-blocked
     */
    List<SurfaceScore> score(
        House house, Set<String> surfaces, Map<String, Layout> layouts, Set<String> backBlocked);

    /**
     * The surfaces to which this light brings something else than the house as drawn; all of them
     * where that is not known.
     *
     * @param scores of surfaces of the house as drawn
     */
    default Set<String> reached(List<SurfaceScore> scores) {
      Set<String> out = new LinkedHashSet<>();
      scores.forEach(s -> out.add(s.surfaceId()));
      return out;
    }
  }
}
