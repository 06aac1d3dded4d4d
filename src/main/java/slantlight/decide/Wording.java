package slantlight.decide;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
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

  private final House house;

  Wording(House house) {
    this.house = house;
  }

  /** What shows, when, from where, through which opening, and what the chosen level makes of it. */
  String reason(SurfaceScore score, int level, double limit) {
    Optional<JointScore> worst = worst(score);
    if (worst.isEmpty()) {
      return score.joints().isEmpty()
          ? "No board joint falls on it."
          : "No joint on it can be seen from any eye point.";
    }
    Peak peak = worst.get().peak().orElseThrow();
    StringBuilder out = new StringBuilder();
    out.append(capitalised(jointName(worst.get().joint())));
    out.append(verb(peak.showing())).append(times(peak.showing())).append(" at level 4 ");
    out.append(when(peak)).append(", seen from ").append(eye(peak.eyeId()));
    out.append(": ").append(light(peak));
    double left = score.atLevel(Math.max(3, level)).peakShowing();
    if (level == 3 || level == 5) {
      out.append("; level ").append(level).append(level == 5 ? " leaves " : " gives ");
      out.append(String.format(Locale.ROOT, "%.1f", left));
    }
    if (level >= 3 && left > limit) {
      out.append(String.format(Locale.ROOT, ", above the room's limit of %.1f", limit));
    }
    return out.append('.').toString();
  }

  /** The joint that shows most at level 4, if any can be seen. */
  static Optional<JointScore> worst(SurfaceScore score) {
    return score.joints().stream()
        .filter(j -> j.peak().isPresent())
        .max(Comparator.comparingDouble(j -> j.peak().orElseThrow().showing()));
  }

  /** Such as "butt joint B3". */
  static String jointName(Joint joint) {
    String kind =
        switch (joint.kind()) {
          case TAPERED -> "tapered joint ";
          case BUTT -> "butt joint ";
          case CUT -> "cut joint ";
        };
    return kind + joint.id().substring(joint.id().indexOf('#') + 1);
  }

  /** Such as "on 21 December at 15:10", or for a lamp only the fact that it is on. */
  static String when(Peak peak) {
    return peak.source().kind() == SourceKind.LAMP ? "when it is lit" : when(peak.at());
  }

  static String when(ZonedDateTime at) {
    return "on " + DAY.format(at) + " at " + HOUR.format(at);
  }

  /** Such as "ground light through the south slider grazes it at 8 degrees". */
  static String light(Peak peak) {
    String at =
        String.format(Locale.ROOT, " grazes it at %.0f degrees", Math.toDegrees(peak.grazing()));
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

  private static String verb(double showing) {
    return switch (Band.of(showing)) {
      case QUIET -> " stays quiet, ";
      case TRACE -> " shows a trace, ";
      case PLAIN -> " shows plainly, ";
      case LOUD -> " shows loudly, ";
    };
  }

  private static String times(double showing) {
    return String.format(Locale.ROOT, "%.1f times the noticeable", showing);
  }

  private static String capitalised(String s) {
    return s.substring(0, 1).toUpperCase(Locale.ENGLISH) + s.substring(1);
  }
}
