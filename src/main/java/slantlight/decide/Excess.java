package slantlight.decide;

import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.LevelScore;
import slantlight.score.SpotScore;
import slantlight.score.SurfaceScore;

/**
 * Weighted showing above the limit: what money is spent to remove.
 *
 * <p>For each joint: the length that can be seen and is above the room's limit at its own worst
 * moment (m), times the excess of the joint's peak over the limit, counted in limits (peak / limit
 * - 1). Dividing by the limit is the weight of attention: one step of showing counts six times as
 * much in a showpiece room (limit 1) as in a service room (limit 6). A fastener spot counts as a
 * joint as long as the spot is wide. The sum is 0 exactly when nothing is above the limit.
 */
public final class Excess {
  /** Width of a filled fastener spot, m (about three passes of a 6 in knife; from memory). */
  private static final double SPOT_WIDTH = 0.05;

  private Excess() {}

  /**
   * The excess of a surface at a finish level, m.
   *
   * @param level 3 to 5
   * @param limit one of the limits of {@link slantlight.scene.Attention}, which are the bands' too
   */
  public static double of(SurfaceScore score, int level, double limit) {
    double sum = 0;
    for (JointScore j : score.joints()) {
      sum += j.visibleLength() * relative(j.atLevel(level), limit);
    }
    if (score.spots().isPresent()) {
      SpotScore spots = score.spots().get();
      sum += spots.count() * SPOT_WIDTH * relative(spots.levels().get(level - 3), limit);
    }
    return sum;
  }

  private static double relative(LevelScore score, double limit) {
    return shareAbove(score, limit) * Math.max(0, score.peakShowing() / limit - 1);
  }

  /** Share of the length in the bands that begin at the limit or above. */
  private static double shareAbove(LevelScore score, double limit) {
    double share = 0;
    int i = 0;
    for (Band band : Band.values()) {
      double inBand = score.lengthShares().get(i++);
      share += band.from() >= limit ? inBand : 0;
    }
    return share;
  }
}
