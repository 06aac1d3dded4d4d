package slantlight.decide;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
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
