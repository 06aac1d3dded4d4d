package slantlight.decide;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import slantlight.scene.Attention;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SpotScore;
import slantlight.score.SurfaceScore;

/** What shows on a surface: its joints and its fastener spots together. */
public final class Showing {
  private Showing() {}

  /** Largest showing of the year of any joint or spot at a level from 3 to 5. */
  public static double at(SurfaceScore score, int level) {
    double spots = score.spots().map(s -> s.levels().get(level - 3).peakShowing()).orElse(0.0);
    return Math.max(score.atLevel(level).peakShowing(), spots);
  }

  /**
   * Hours a year, in the weather to be expected, at which some joint or spot shows at or above a
   * band at a level from 3 to 5.
   */
  public static double hours(SurfaceScore score, int level, Band band) {
    double spots =
        score
            .spots()
            .map(s -> s.levels().get(level - 3).expectedHours().get(band.index()))
            .orElse(0.0);
    return Math.max(score.atLevel(level).expectedHours().get(band.index()), spots);
  }

  /** True when a room of that attention can bear what shows at a level from 3 to 5. */
  public static boolean borne(SurfaceScore score, int level, Attention attention) {
    return at(score, level) <= attention.limit()
        || hours(score, level, Band.of(attention.limit())) <= attention.hours();
  }

  /** The worst moment of the surface at level 4; empty when nothing on it can be seen. */
  public static Optional<Peak> worst(SurfaceScore score) {
    return Stream.concat(
            worstJoint(score).flatMap(JointScore::peak).stream(),
            score.spots().flatMap(SpotScore::peak).stream())
        .max(Comparator.comparingDouble(Peak::showing));
  }

  /** The joint that shows most at level 4, if any can be seen. */
  public static Optional<JointScore> worstJoint(SurfaceScore score) {
    return score.joints().stream()
        .filter(j -> j.peak().isPresent())
        .max(Comparator.comparingDouble(j -> j.peak().orElseThrow().showing()));
  }
}
