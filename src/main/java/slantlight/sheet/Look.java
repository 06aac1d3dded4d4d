package slantlight.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.JointScore;

/** What differs between a surface on paper and the same surface on a screen. */
public interface Look {
  /** On paper: joints by the band that each piece reaches in the year. */
  Look PAPER = new Look() {};

  /**
   * A piece of a joint.
   *
   * @param from share of the joint's length at which it begins
   * @param to share at which it ends
   */
  record Stretch(double from, double to, Pen pen) {}

  /** The colour of a surface's field. */
  default Colour field(Surface surface) {
    return Ink.PAPER;
  }

  /** The outline of a surface. */
  default Pen outline() {
    return Pen.full(Ink.LINE, 0.5);
  }

  /** The outlines of boards; empty to leave boards out. */
  default Optional<Pen> boards() {
    return Optional.of(Pen.full(Ink.BOARD, 0.18));
  }

  /** The pieces of a joint, from its first point to its last. */
  default List<Stretch> stretches(JointScore j, PaperMap map) {
    List<Double> profile = j.profile();
    if (profile.size() < 2) {
      return List.of(new Stretch(0, 1, Pen.of(Band.of(j.atLevel(4).peakShowing()))));
    }
    List<Stretch> out = new ArrayList<>();
    int steps = profile.size();
    int from = 0;
    for (int i = 1; i <= steps; i++) {
      if (i == steps || Band.of(profile.get(i)) != Band.of(profile.get(from))) {
        double t0 = from == 0 ? 0 : (from - 0.5) / (steps - 1);
        double t1 = i == steps ? 1 : (i - 0.5) / (steps - 1);
        out.add(new Stretch(t0, t1, Pen.of(Band.of(profile.get(from)))));
        from = i;
      }
    }
    return out;
  }

  /** What is written beside a joint; empty for nothing. */
  default String name(JointScore j) {
    double showing = j.atLevel(4).peakShowing();
    String id = Words.shortId(j.joint().id());
    return Band.of(showing) == Band.QUIET ? id : id + " " + Words.times(showing);
  }

  /** Whether every eye is drawn, not only that of the worst moment. */
  default boolean everyEye() {
    return false;
  }

  /** Whether the light and the eye of the year's worst moment are drawn. */
  default boolean worst() {
    return true;
  }
}
