package slantlight.decide;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import slantlight.board.Joint;
import slantlight.light.SourceKind;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;

/** Says in plain English what a score found. */
final class Wording {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** Steepest angle to the surface that is called grazing. */
  private static final double GRAZING_DEG = 25;

  private final House house;

  Wording(House house) {
    this.house = house;
  }

  /** What shows, when, from where, through which opening, and what the chosen level makes of it. */
  String reason(SurfaceScore score, int level, double limit) {
    Optional<Peak> worst = Showing.worst(score);
    if (worst.isEmpty()) {
      return score.joints().isEmpty()
          ? "No board joint falls on it."
          : "No joint on it can be seen from any eye point.";
    }
    Peak peak = worst.get();
    String when = peak.source().kind() == SourceKind.LAMP ? "when it is lit" : when(peak.at());
    StringBuilder out = new StringBuilder(256);
    out.append(subject(score, peak)).append(String.format(Locale.ROOT, ", %.1f", peak.showing()));
    out.append(" times the noticeable at level 4 ").append(when);
    out.append(", seen from ").append(eye(peak.eyeId())).append(": ").append(light(peak));
    double left = Showing.at(score, Math.max(3, level));
    if (level == 3 || level == 5) {
      String verb = level == 5 ? " leaves " : " gives ";
      out.append(String.format(Locale.ROOT, "; level %d%s%.1f", level, verb, left));
    }
    if (level >= 3 && left > limit) {
      double hours = Showing.hours(score, Math.max(3, level), Band.of(limit));
      out.append(String.format(Locale.ROOT, ", above the room's limit of %.1f", limit));
      out.append(
          hours < 1
              ? " for minutes a year"
              : String.format(Locale.ROOT, " for %,d hours a year", twoFigures(hours)));
    }
    return out.append('.').toString();
  }

  /** Rounded to two figures: the model carries no more. */
  private static long twoFigures(double hours) {
    double unit = Math.pow(10, Math.max(0, Math.floor(Math.log10(hours)) - 1));
    return (long) (Math.round(hours / unit) * unit);
  }

  private static String subject(SurfaceScore score, Peak peak) {
    Optional<JointScore> joint =
        Showing.worstJoint(score).filter(j -> j.peak().orElseThrow().equals(peak));
    String one =
        switch (Band.of(peak.showing())) {
          case QUIET -> " stays quiet";
          case TRACE -> " shows a trace";
          case PLAIN -> " shows plainly";
          case LOUD -> " shows loudly";
        };
    return joint.isPresent()
        ? capitalised(jointName(joint.get().joint())) + one
        : "A fastener spot" + one;
  }

  /** Such as "butt joint B3". */
  static String jointName(Joint joint) {
    String kind =
        switch (joint.kind()) {
          case TAPERED -> "tapered joint ";
          case BUTT -> "butt joint ";
          case CUT -> "cut joint ";
          case SPOT -> "fastener spot ";
        };
    return kind + Joint.name(joint.id());
  }

  /** Such as "on 21 December at 15:10". */
  static String when(ZonedDateTime at) {
    return "on " + DAY.format(at) + " at " + HOUR.format(at);
  }

  /**
   * Such as "ground light through the south slider grazes it at 8 degrees". Light that comes in
   * more steeply is not called grazing: it shows a joint by the paint's sheen or by its own
   * strength.
   */
  static String light(Peak peak) {
    double degrees = Math.toDegrees(peak.grazing());
    String verb = degrees <= GRAZING_DEG ? " grazes it at " : " meets it at ";
    String at = verb + String.format(Locale.ROOT, "%.0f degrees", degrees);
    return peak.source().kind() == SourceKind.BOUNCE
        ? "light bounced by the room"
        : peak.source().label() + at;
  }

  String eye(String id) {
    return house.eyes().stream()
        .filter(e -> e.id().equals(id))
        .map(Eye::label)
        .findFirst()
        .orElse(id);
  }

  private static String capitalised(String s) {
    return s.substring(0, 1).toUpperCase(Locale.ENGLISH) + s.substring(1);
  }
}
