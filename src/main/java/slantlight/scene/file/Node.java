package slantlight.scene.file;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** A value of the file together with its place. */
public sealed interface Node {
  /** Where it stands. */
  Place place();

  /** What a person would call this sort of value. */
  String sort();

  /**
   * A place in the file, as a step from the place above it: a million values deep in long keys
   * share the keys they stand under.
   *
   * @param above the object or list it stands in, null for the whole file
   * @param step such as {@code .id} or {@code [2]}
   */
  record Place(Place above, String step, int line, int column) {
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z_][A-Za-z0-9_]{0,60}");

    /** The place of the file's one value. */
    static Place whole(int line, int column) {
      return new Place(null, "$", line, column);
    }

    /** The way to it, such as {@code $.rooms[2].id}. */
    public String path() {
      return above == null ? step : above.path() + step;
    }

    /** The place of a key of the object here, at another line and column. */
    Place key(String key, int atLine, int atColumn) {
      boolean plain = PLAIN.matcher(key).matches();
      String shown = key.length() > 40 ? key.substring(0, 40) + "..." : key;
      return new Place(
          this,
          plain ? "." + key : "['" + shown.replaceAll("\\p{Cc}", "?") + "']",
          atLine,
          atColumn);
    }

    /** The place of an item of the list here. */
    Place item(int index, int atLine, int atColumn) {
      return new Place(this, "[" + index + "]", atLine, atColumn);
    }

    /** The same step at another line and column, as of a value after its key. */
    Place moved(int atLine, int atColumn) {
      return new Place(above, step, atLine, atColumn);
    }
  }

  /** A key with its value. */
  record Member(String key, Place keyPlace, Node value) {}

  /** An object, keys in the order of the file, repeated keys left out. */
  record Obj(Place place, List<Member> members) implements Node {
    public Obj {
      members = List.copyOf(members);
    }

    /** The value of that key. */
    public Optional<Node> get(String key) {
      return members.stream().filter(m -> m.key().equals(key)).map(Member::value).findFirst();
    }

    @Override
    public String sort() {
      return "an object {...}";
    }
  }

  /** A list. */
  record Arr(Place place, List<Node> items) implements Node {
    public Arr {
      items = List.copyOf(items);
    }

    @Override
    public String sort() {
      return "a list [...]";
    }
  }

  /** A string. */
  record Text(Place place, String value) implements Node {
    @Override
    public String sort() {
      String shown = value.length() > 40 ? value.substring(0, 40) + "..." : value;
      return "\"" + shown.replaceAll("\\p{Cc}", "?") + "\"";
    }
  }

  /** A number; possibly not finite. */
  record Num(Place place, double value) implements Node {
    @Override
    public String sort() {
      return value == Math.rint(value) && Math.abs(value) < 1e15
          ? Long.toString((long) value)
          : Double.toString(value);
    }
  }

  /** true or false. */
  record Bool(Place place, boolean value) implements Node {
    @Override
    public String sort() {
      return Boolean.toString(value);
    }
  }

  /** null. */
  record Nothing(Place place) implements Node {
    @Override
    public String sort() {
      return "null";
    }
  }
}
