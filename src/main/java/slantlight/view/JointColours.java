package slantlight.view;

import java.util.List;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.view.draw.Palette;

/** Which colour a joint has along its length, by the measure chosen. */
final class JointColours {
  /** Hours a year at or above "plain" that are coloured like the top of each band. */
  private static final double HOURS_PER_SHOWING = 60;

  private static final int PLAIN = List.of(Band.values()).indexOf(Band.PLAIN);

  private final Stage.Measure measure;
  private final MomentShowing moment;

  /** Showing of joints at the moment set. */
  @FunctionalInterface
  interface MomentShowing {
    /** Largest showing at equal steps along a joint, or an empty list when it is not known yet. */
    List<Double> along(JointScore joint);
  }

  JointColours(Stage.Measure measure, MomentShowing moment) {
    this.measure = measure;
    this.moment = moment;
  }

  /**
   * Colour at a place of a joint.
   *
   * @param t from 0 at its first point to 1 at its last
   */
  int at(JointScore joint, double t) {
    return Palette.ofShowing(showing(joint, t));
  }

  private double showing(JointScore joint, double t) {
    return switch (measure) {
      case YEAR -> along(joint.profile(), t);
      case MOMENT -> along(moment.along(joint), t);
      case HOURS -> joint.atLevel(4).expectedHours().get(PLAIN) / HOURS_PER_SHOWING;
    };
  }

  private static double along(List<Double> profile, double t) {
    if (profile.isEmpty()) {
      return 0;
    }
    double x = t * (profile.size() - 1);
    int i = (int) Math.max(0, Math.min(profile.size() - 2, Math.floor(x)));
    if (profile.size() == 1) {
      return profile.get(0);
    }
    return profile.get(i) + (profile.get(i + 1) - profile.get(i)) * (x - i);
  }
}
