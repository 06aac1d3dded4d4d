package slantlight.score;

import java.util.List;
import java.util.Optional;
import slantlight.board.Layout;

/**
 * One surface over the year.
 *
 * @param levels length-weighted summary at levels 3, 4 and 5; the peak is the largest of any joint
 * @param worst the joint score with the largest peak at level 4; empty when the surface has no
 *     visible joint
 * @param spots the fastener spots; empty when the layout has none
 */
public record SurfaceScore(
    String surfaceId,
    Layout layout,
    List<JointScore> joints,
    List<LevelScore> levels,
    Optional<Peak> worst,
    Calendar calendar,
    Optional<SpotScore> spots) {
  public SurfaceScore {
    joints = List.copyOf(joints);
    levels = List.copyOf(levels);
  }

  /** Score at a finish level from 3 to 5. */
  public LevelScore atLevel(int level) {
    return levels.get(level - 3);
  }
}
