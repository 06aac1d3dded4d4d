package slantlight.score;

import java.util.List;
import java.util.Optional;
import slantlight.board.Joint;

/**
 * One joint over the year.
 *
 * @param visibleLength length not covered and in some eye's view, m
 * @param levels scores at levels 3, 4 and 5, in that order
 * @param peak the worst moment at level 4; empty when nobody can see the joint or nothing lights it
 * @param profile largest showing of the year at level 4 at equal steps along the joint, from its
 *     first point to its last
 */
public record JointScore(
    Joint joint,
    double visibleLength,
    List<LevelScore> levels,
    Optional<Peak> peak,
    List<Double> profile) {
  public JointScore {
    levels = List.copyOf(levels);
    profile = List.copyOf(profile);
  }

  /** Score at a finish level from 3 to 5. */
  public LevelScore atLevel(int level) {
    return levels.get(level - 3);
  }
}
