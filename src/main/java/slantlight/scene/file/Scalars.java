package slantlight.scene.file;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slantlight.geom.Vec3;
import slantlight.scene.OnHours;
import slantlight.units.Length;
import slantlight.units.LengthUnit;

/** Reads single values; each method returns null after adding a fault. */
final class Scalars {
  /** Coordinates farther out than this are a mistake of units, m. */
  private static final double FARTHEST = 20_000;

  private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,59}");
  private static final Pattern SPAN =
      Pattern.compile(
          "(dusk|\\d{1,2}:\\d{2})\\s*(?:to|-|until)\\s*(dawn|\\d{1,2}:\\d{2})( when dark)?");
  private static final List<String> AXES =
      List.of("vertical", "horizontal", "east-west", "north-south");

  private final Faults faults;
  private final LengthUnit units;

  Scalars(Faults faults, LengthUnit units) {
    this.faults = faults;
    this.units = units;
  }

  /** A text that can be shown anywhere: no control character could command a terminal. */
  String text(Node node) {
    if (node instanceof Node.Text t && !t.value().isBlank() && t.value().length() <= 2000) {
      String text = t.value().strip();
      if (text.chars().noneMatch(Character::isISOControl)) {
        return text;
      }
    }
    wrong(node, "a text in quotes, in one line");
    return null;
  }

  Boolean bool(Node node) {
    if (node instanceof Node.Bool b) {
      return b.value();
    }
    wrong(node, "true or false");
    return null;
  }

  Double number(Node node, Key key) {
    String expected = "a number" + span(key.min(), key.max(), v -> trimmed(v));
    if (!(node instanceof Node.Num n)) {
      wrong(node, expected);
      return null;
    }
    if (!Double.isFinite(n.value()) || n.value() < key.min() || n.value() > key.max()) {
      wrong(node, expected);
      return null;
    }
    return n.value();
  }

  Integer integer(Node node, Key key) {
    String expected = "a whole number" + span(key.min(), key.max(), v -> trimmed(v));
    boolean whole =
        node instanceof Node.Num n
            && n.value() == Math.rint(n.value())
            && n.value() >= Math.max(key.min(), Integer.MIN_VALUE)
            && n.value() <= Math.min(key.max(), Integer.MAX_VALUE);
    if (whole) {
      return (int) ((Node.Num) node).value();
    }
    wrong(node, expected);
    return null;
  }

  Length length(Node node, Key key) {
    String expected = Length.FORMS + span(key.min(), key.max(), v -> new Length(v).format(units));
    Optional<Length> read = rawLength(node);
    if (read.isEmpty()) {
      wrong(node, expected);
      return null;
    }
    double m = read.get().metres();
    double slack = 1e-9 * Math.max(1, Math.abs(m));
    if (m < key.min() - slack || m > key.max() + slack) {
      wrong(node, expected);
      return null;
    }
    return read.get();
  }

  private Optional<Length> rawLength(Node node) {
    if (node instanceof Node.Num n && Double.isFinite(n.value())) {
      return Optional.of(new Length(n.value() * units.metres()));
    }
    return node instanceof Node.Text t ? Length.parse(t.value(), units) : Optional.empty();
  }

  <E extends Enum<E>> E word(Node node, Class<E> type) {
    List<String> words = words(type);
    if (node instanceof Node.Text t) {
      String w = t.value().strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
      int i = words.indexOf(w);
      if (i >= 0) {
        return type.getEnumConstants()[i];
      }
    }
    wrong(node, "one of " + String.join(", ", words), nearest(node, words));
    return null;
  }

  /** The words by which the constants of an enum are written in the file. */
  static List<String> words(Class<? extends Enum<?>> type) {
    List<String> words = new ArrayList<>();
    for (Enum<?> e : type.getEnumConstants()) {
      words.add(e.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
    return words;
  }

  Values.Id id(Node node) {
    if (node instanceof Node.Text t && ID.matcher(t.value()).matches()) {
      return new Values.Id(t.value());
    }
    wrong(node, "a short name of letters, digits, '.', '-' and '_', such as great-room");
    return null;
  }

  Values.WallRef wallRef(Node node) {
    if (node instanceof Node.Num n && n.value() >= 1 && n.value() == Math.rint(n.value())) {
      return new Values.WallRef(Integer.toString((int) n.value()));
    }
    if (node instanceof Node.Text t && ID.matcher(t.value()).matches()) {
      return new Values.WallRef(t.value());
    }
    wrong(node, "a wall's side, id or number from 1");
    return null;
  }

  Values.Zone zone(Node node) {
    String expected = "an IANA time zone such as America/Chicago";
    if (!(node instanceof Node.Text t)) {
      wrong(node, expected);
      return null;
    }
    try {
      if (ZoneId.getAvailableZoneIds().contains(t.value())) {
        return new Values.Zone(ZoneId.of(t.value()));
      }
    } catch (DateTimeException e) {
      wrong(node, expected);
      return null;
    }
    wrong(node, expected, nearest(node, List.copyOf(ZoneId.getAvailableZoneIds())));
    return null;
  }

  Values.Monthly monthly(Node node, Key key) {
    if (!(node instanceof Node.Arr a)) {
      Double every = number(node, key);
      return every == null ? null : new Values.Monthly(java.util.Collections.nCopies(12, every));
    }
    if (a.items().size() != 12) {
      wrong(node, "one number, or twelve with January first");
      return null;
    }
    List<Double> out = numbers(a, key);
    return out == null ? null : new Values.Monthly(out);
  }

  Values.Pair pair(Node node, Key key) {
    if (!(node instanceof Node.Arr a) || a.items().size() != 2) {
      wrong(node, "a pair [azimuth, altitude] in degrees");
      return null;
    }
    List<Double> v = numbers(a, key);
    if (v == null) {
      return null;
    }
    if (Math.abs(v.get(0)) > 360 || v.get(1) < -10 || v.get(1) > 90) {
      wrong(node, "a pair [azimuth, altitude] in degrees, altitude from -10 to 90");
      return null;
    }
    return new Values.Pair(v.get(0), v.get(1));
  }

  private List<Double> numbers(Node.Arr a, Key key) {
    List<Double> out = new ArrayList<>();
    boolean sound = true;
    for (Node item : a.items()) {
      Double v = number(item, key);
      sound &= v != null;
      out.add(v);
    }
    return sound ? out : null;
  }

  Values.ByLevel byLevel(Node node, Key key) {
    if (!(node instanceof Node.Obj o)) {
      wrong(node, "an object with the levels \"0\" to \"5\" as keys");
      return null;
    }
    Map<Integer, Double> out = new TreeMap<>();
    for (Node.Member m : o.members()) {
      if (!m.key().matches("[0-5]")) {
        faults.add(m.keyPlace(), "there is no level \"" + m.key() + "\"", "levels are 0 to 5");
        continue;
      }
      Double v = number(m.value(), key);
      if (v != null) {
        out.put(Integer.valueOf(m.key()), v);
      }
    }
    return new Values.ByLevel(out);
  }

  Values.Point point(Node node) {
    String expected = "a point [x, y] or [x, y, z]";
    if (!(node instanceof Node.Arr a) || a.items().size() < 2 || a.items().size() > 3) {
      wrong(node, expected);
      return null;
    }
    double[] p = new double[a.items().size()];
    boolean sound = true;
    for (int i = 0; i < p.length; i++) {
      Node item = a.items().get(i);
      Optional<Length> v = rawLength(item).filter(l -> Math.abs(l.metres()) <= FARTHEST);
      if (v.isEmpty()) {
        wrong(item, Length.FORMS + " within 20 km of the drawing's zero");
        sound = false;
      } else {
        p[i] = v.get().metres();
      }
    }
    if (!sound) {
      return null;
    }
    return new Values.Point(
        p[0], p[1], p.length == 3 ? OptionalDouble.of(p[2]) : OptionalDouble.empty());
  }

  Values.Direction direction(Node node) {
    String expected = "down, up, a compass word or [x, y, z]";
    if (node instanceof Node.Text t) {
      String w = t.value().strip().toLowerCase(Locale.ROOT);
      if (w.equals("down") || w.equals("up")) {
        return new Values.Direction(w.equals("up") ? Vec3.UP : Vec3.DOWN);
      }
      OptionalDouble deg = Compass.degrees(w);
      if (deg.isPresent()) {
        double a = Math.toRadians(deg.getAsDouble());
        return new Values.Direction(new Vec3(Math.sin(a), Math.cos(a), 0));
      }
      List<String> choices = new ArrayList<>(Compass.WINDS);
      choices.addAll(List.of("down", "up"));
      wrong(node, expected, nearest(node, choices));
      return null;
    }
    if (node instanceof Node.Arr a && a.items().size() == 3) {
      double[] v = new double[3];
      for (int i = 0; i < 3; i++) {
        v[i] = a.items().get(i) instanceof Node.Num n ? n.value() : Double.NaN;
      }
      Vec3 d = new Vec3(v[0], v[1], v[2]);
      if (d.length() > 1e-6 && d.length() < 1e6) {
        return new Values.Direction(d.unit());
      }
    }
    wrong(node, expected);
    return null;
  }

  Values.Bearing bearing(Node node) {
    String expected = "a compass word, vertical, horizontal or degrees";
    if (node instanceof Node.Num n && Math.abs(n.value()) <= 360) {
      return new Values.Bearing(OptionalDouble.of(n.value()), false);
    }
    if (node instanceof Node.Text t) {
      String w = t.value().strip().toLowerCase(Locale.ROOT);
      OptionalDouble deg =
          switch (w) {
            case "east-west", "west-east" -> OptionalDouble.of(90);
            case "north-south", "south-north" -> OptionalDouble.of(0);
            default -> Compass.degrees(w);
          };
      if (deg.isPresent() || w.equals("vertical") || w.equals("horizontal")) {
        return new Values.Bearing(deg, w.equals("vertical"));
      }
      List<String> choices = new ArrayList<>(Compass.WINDS);
      choices.addAll(AXES);
      wrong(node, expected, nearest(node, choices));
      return null;
    }
    wrong(node, expected);
    return null;
  }

  Values.Level level(Node node) {
    if (node instanceof Node.Text t && t.value().strip().equalsIgnoreCase("auto")) {
      return new Values.Level(OptionalInt.empty());
    }
    if (node instanceof Node.Num n
        && n.value() >= 0
        && n.value() <= 5
        && n.value() == Math.rint(n.value())) {
      return new Values.Level(OptionalInt.of((int) n.value()));
    }
    wrong(node, "a level 0 to 5, or \"auto\"");
    return null;
  }

  /** Noon stands for "before dusk" and "after dawn": between them the sun decides. */
  Values.Span span(Node node) {
    String expected =
        "always, never, \"dusk to 23:00\", \"06:00 to dawn\", \"dusk to dawn\" or"
            + " \"18:00 to 22:00\"";
    if (!(node instanceof Node.Text t)) {
      wrong(node, expected);
      return null;
    }
    String s = t.value().strip().toLowerCase(Locale.ROOT);
    if (s.equals("never")) {
      return new Values.Span(Optional.empty());
    }
    if (s.equals("always")) {
      return new Values.Span(
          Optional.of(new OnHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT, false)));
    }
    Matcher m = SPAN.matcher(s);
    if (!m.matches()) {
      wrong(node, expected);
      return null;
    }
    try {
      boolean dark = m.group(1).equals("dusk") || m.group(2).equals("dawn") || m.group(3) != null;
      return new Values.Span(Optional.of(new OnHours(clock(m.group(1)), clock(m.group(2)), dark)));
    } catch (DateTimeParseException e) {
      wrong(node, expected);
      return null;
    }
  }

  private static LocalTime clock(String s) {
    if (s.equals("dusk") || s.equals("dawn")) {
      return LocalTime.NOON;
    }
    if (s.equals("24:00")) {
      return LocalTime.MIDNIGHT;
    }
    return LocalTime.parse(s.length() == 4 ? "0" + s : s);
  }

  private static Optional<String> nearest(Node node, List<String> choices) {
    return node instanceof Node.Text t ? Faults.nearest(t.value(), choices) : Optional.empty();
  }

  private void wrong(Node node, String expected) {
    wrong(node, expected, Optional.empty());
  }

  private void wrong(Node node, String expected, Optional<String> nearest) {
    String path = node.place().path();
    String key = path.substring(path.lastIndexOf('.') + 1);
    faults.add(node.place(), key + " is " + node.sort(), "it must be " + expected, nearest);
  }

  private static String span(
      double min, double max, java.util.function.DoubleFunction<String> form) {
    boolean low = Double.isFinite(min);
    boolean high = Double.isFinite(max);
    if (low && high) {
      return " from " + form.apply(min) + " to " + form.apply(max);
    }
    if (low) {
      return " of at least " + form.apply(min);
    }
    return high ? " of at most " + form.apply(max) : "";
  }

  private static String trimmed(double v) {
    return v == Math.rint(v) && Math.abs(v) < 1e15 ? Long.toString((long) v) : Double.toString(v);
  }
}
