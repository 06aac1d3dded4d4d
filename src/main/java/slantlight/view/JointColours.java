package slantlight.view;

import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.score.Band;
import slantlight.score.Calendar;
import slantlight.score.JointScore;
import slantlight.view.draw.Palette;

/** Which colour a joint has along its length, by the measure chosen. */
final class JointColours {
  /** Hours a year at or above "plain" that are coloured like the top of each band. */
  private static final double HOURS_PER_SHOWING = 60;

  private static final int PLAIN = List.of(Band.values()).indexOf(Band.PLAIN);

  private final Stage.Measure measure;
  private final ViewModel model;
  private final ZonedDateTime at;
  private final Optional<JointsThen> then;

  /** By surface, filled as it is asked for. */
  private final Map<String, Float> atMost = new HashMap<>();

  /**
   * Colours for a stage.
   *
   * @param model holds the scores
   * @param then the joints at a moment; used when that is the moment set
   */
  JointColours(ViewModel model, Stage stage, Optional<JointsThen> then) {
    this.model = model;
    measure = stage.measure;
    at = stage.time;
    this.then = then.filter(t -> t.is(stage));
  }

  /** What shows most on a surface at a moment, by its calendar. */
  private static float showing(Calendar calendar, ZonedDateTime at) {
    int row = Almanac.row(calendar, at.getDayOfYear());
    int minute = at.toLocalTime().toSecondOfDay() / 60;
    int column = Math.min(calendar.columns() - 1, minute / calendar.stepMinutes());
    return row < 0 ? 0 : calendar.showing(row, column);
  }

  /**
   * Colour at a place of a joint.
   *
   * @param t from 0 at its first point to 1 at its last
   */
  int at(JointScore joint, double t) {
    return Palette.ofShowing(showing(joint, t));
  }

  /** The measure in words: whether joints are as they are or no more than this. */
  String words() {
    return measure == Stage.Measure.MOMENT && then.isEmpty()
        ? measure.words + ", at most"
        : measure.words;
  }

  /** The showing that colours a place of a joint. */
  double showing(JointScore joint, double t) {
    return switch (measure) {
      case YEAR -> along(joint.profile(), t);
      case MOMENT ->
          then.map(x -> along(x.showing().getOrDefault(joint.joint().id(), List.of()), t))
              .orElseGet(() -> atMost(joint, t));
      case HOURS -> joint.atLevel(4).expectedHours().get(PLAIN) / HOURS_PER_SHOWING;
    };
  }

  /** No joint shows more than its own worst nor than the surface does at the moment. */
  private double atMost(JointScore joint, double t) {
    return Math.min(
        along(joint.profile(), t),
        atMost.computeIfAbsent(
            ViewModel.surfaceOf(joint.joint().id()),
            id -> model.score(id).map(s -> showing(s.calendar(), at)).orElse(0f)));
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
