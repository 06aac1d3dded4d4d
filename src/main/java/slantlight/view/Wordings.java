package slantlight.view;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.board.Joint;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Rates;
import slantlight.scene.Sheen;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.sky.Sun;
import slantlight.sky.Weather;
import slantlight.units.Measures;

/** How the viewer says things. */
final class Wordings {
  private static final String[] WINDS = {
    "north", "north-northeast", "northeast", "east-northeast",
    "east", "east-southeast", "southeast", "south-southeast",
    "south", "south-southwest", "southwest", "west-southwest",
    "west", "west-northwest", "northwest", "north-northwest"
  };

  private Wordings() {}

  /** One label and what belongs to it. */
  record Fact(String label, String value) {}

  static String date(ZonedDateTime at) {
    return at.getDayOfMonth()
        + " "
        + at.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
        + " "
        + at.getYear();
  }

  static String shortDate(ZonedDateTime at) {
    return at.getDayOfMonth() + " " + at.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }

  static String clock(ZonedDateTime at) {
    return at.format(DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT));
  }

  static String wind(double azimuth) {
    return WINDS[(int) Math.floorMod(Math.round(azimuth / (Math.PI / 8)), 16L)];
  }

  static String degrees(double radians) {
    return Math.round(Math.toDegrees(radians)) + "°";
  }

  static String sun(Sun sun) {
    return sun.altitude() > 0
        ? "sun " + degrees(sun.altitude()) + " high, " + wind(sun.azimuth())
        : "sun down";
  }

  static String weather(Weather weather) {
    return weather.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static String band(Band band) {
    return band.name().toLowerCase(Locale.ROOT);
  }

  /** A showing in words and number: "plain, 3.1 × threshold". */
  static String showing(double showing) {
    return band(Band.of(showing)) + ", " + times(showing) + " threshold";
  }

  static String times(double showing) {
    return String.format(Locale.ROOT, showing < 10 ? "%.1f ×" : "%.0f ×", showing);
  }

  static Measures measures(House house) {
    return Measures.printed(house.units());
  }

  static String kind(JointKind kind) {
    return switch (kind) {
      case TAPERED -> "Tapered joint";
      case BUTT -> "Butt joint";
      case CUT -> "Cut joint";
      case SPOT -> "Fastener spot";
    };
  }

  /** "Butt joint B3". */
  static String joint(JointScore j) {
    return kind(j.joint().kind()) + " " + Joint.name(j.joint().id());
  }

  static String sheen(Sheen sheen) {
    return sheen.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Why a joint shows, from its score alone. */
  static List<Fact> reasons(House house, JointScore j) {
    Measures in = measures(house);
    List<Fact> out = new ArrayList<>();
    out.add(
        new Fact(
            "length",
            in.length(j.joint().length()) + ", " + in.length(j.visibleLength()) + " in view"));
    if (j.peak().isEmpty()) {
      out.add(new Fact("showing", "nobody sees it or nothing lights it"));
      return out;
    }
    Peak p = j.peak().get();
    out.add(
        new Fact("when", shortDate(p.at()) + " at " + clock(p.at()) + ", " + weather(p.weather())));
    String eye =
        house.eyes().stream()
            .filter(e -> e.id().equals(p.eyeId()))
            .map(e -> e.label())
            .findFirst()
            .orElse(p.eyeId());
    out.add(new Fact("seen from", eye + ", " + in.distance(p.eyeDistance()) + " off"));
    out.add(
        new Fact(
            "light",
            p.source().label() + ", " + Math.round(100 * p.sourceShare()) + " % of the slant"));
    out.add(
        new Fact(
            "grazing",
            degrees(p.grazing())
                + " to the surface; "
                + (Double.isNaN(p.shadowLength())
                    ? "no beam, so no cast shadow"
                    : "shadow " + in.gap(p.shadowLength()) + " long")));
    out.add(new Fact("cured by", cure(house, j)));
    cost(house, j).ifPresent(c -> out.add(new Fact("costs", c)));
    return out;
  }

  /** The lowest level that keeps the joint under its room's limit. */
  private static String cure(House house, JointScore j) {
    double limit = limit(house, j);
    for (int level = 3; level <= 5; level++) {
      double s = j.atLevel(level).peakShowing();
      if (s < limit) {
        return "level " + level + " (" + showing(s) + ")";
      }
    }
    return "no level; still " + showing(j.atLevel(5).peakShowing()) + " at level 5";
  }

  private static double limit(House house, JointScore j) {
    String room = house.surface(ViewModel.surfaceOf(j.joint().id())).roomId();
    return house.room(room).attention().limit();
  }

  /** Extra cost of level 5 over level 4 for the surface, by the user's own rates. */
  private static Optional<String> cost(House house, JointScore j) {
    if (house.rates().isEmpty()) {
      return Optional.empty();
    }
    Rates r = house.rates().get();
    Double four = r.perAreaByLevel().get(4);
    Double five = r.perAreaByLevel().get(5);
    if (four == null || five == null) {
      return Optional.empty();
    }
    double area = house.surface(ViewModel.surfaceOf(j.joint().id())).face().area();
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%s %.0f more for level 5 on the surface, at your rates",
            r.currency(),
            (five - four) * area));
  }
}
