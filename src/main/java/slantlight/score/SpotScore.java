package slantlight.score;

import java.util.List;
import java.util.Optional;

/**
 * The filled fastener spots of one surface over the year.
 *
 * @param count fasteners on the surface
 * @param followed how many of them were followed, spread evenly
 * @param levels scores at levels 3, 4 and 5; length shares are shares of the spots followed
 * @param peak the worst moment of the worst spot at level 4
 */
public record SpotScore(int count, int followed, List<LevelScore> levels, Optional<Peak> peak) {
  public SpotScore {
    levels = List.copyOf(levels);
  }
}
