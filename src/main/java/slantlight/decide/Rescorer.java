package slantlight.decide;

import java.util.Map;
import java.util.Set;
import slantlight.board.Layout;
import slantlight.scene.House;
import slantlight.score.HouseScore;

/** Scores changed houses with the same physics, on moments chosen beforehand. */
public interface Rescorer {
  /** Computes the light of a house anew. */
  Lit light(House house);

  /** One state of the light, under which boards, joints and sheen may still change. */
  interface Lit {
    /**
     * Scores some surfaces.
     *
     * @param house differs from the lit one in boards, levels and sheen at most
     * @param surfaces ids of the surfaces to score
     * @param layouts layouts that are not to be computed anew, by surface id
     * @param backBlocked surfaces whose butt joints are back-blocked
     */
    HouseScore score(
        House house, Set<String> surfaces, Map<String, Layout> layouts, Set<String> backBlocked);
  }
}
