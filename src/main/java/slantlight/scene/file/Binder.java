package slantlight.scene.file;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import slantlight.units.Length;
import slantlight.units.LengthUnit;

/**
 * Turns a tree into the records of the scene file by their {@link Key}s, adding a fault for every
 * unknown key, missing key and bad value. A record that lacks something required is left out; the
 * rest goes on, so that one pass tells everything.
 */
public final class Binder {
  private final Faults faults;
  private final Scalars scalars;
  private final LengthUnit units;
  private final IdentityHashMap<Object, Node> nodes = new IdentityHashMap<>();

  public Binder(Faults faults, LengthUnit units) {
    this.faults = faults;
    this.scalars = new Scalars(faults, units);
    this.units = units;
  }

  /** Unit of the file's plain numbers. */
  public LengthUnit units() {
    return units;
  }

  public Faults faults() {
    return faults;
  }

  /** Binds the tree to a scene. */
  public Optional<SceneFile> scene(Node root) {
    return Optional.ofNullable(record(root, SceneFile.class));
  }

  /** Place of a key of a record bound here; of the record itself when the key is not written. */
  public Node.Place place(Object bound, String key) {
    Node node = nodes.get(bound);
    if (node instanceof Node.Obj o) {
      return o.get(key).map(Node::place).orElse(o.place());
    }
    return node == null ? Node.Place.whole(1, 1) : node.place();
  }

  /** Place of a record bound here. */
  public Node.Place place(Object bound) {
    Node node = nodes.get(bound);
    return node == null ? Node.Place.whole(1, 1) : node.place();
  }

  /** True when the key is written in a record bound here, sound or not. */
  public boolean has(Object bound, String key) {
    return nodes.get(bound) instanceof Node.Obj o && o.get(key).isPresent();
  }

  /** The text written under a key of a record bound here, sound or not. */
  public Optional<String> written(Object bound, String key) {
    return nodes.get(bound) instanceof Node.Obj o && o.get(key).orElse(null) instanceof Node.Text t
        ? Optional.of(t.value())
        : Optional.empty();
  }

  private <T> T record(Node node, Class<T> type) {
    if (!(node instanceof Node.Obj object)) {
      String key = node.place().path();
      faults.add(
          node.place(),
          key.substring(key.lastIndexOf('.') + 1) + " is " + node.sort(),
          "it must be an object with the keys " + String.join(", ", keys(type)));
      return null;
    }
    unknownKeys(object, type);
    RecordComponent[] components = type.getRecordComponents();
    Object[] values = new Object[components.length];
    boolean whole = true;
    for (int i = 0; i < components.length; i++) {
      RecordComponent c = components[i];
      Key key = c.getAnnotation(Key.class);
      Optional<Node> value = object.get(c.getName());
      if (value.isPresent()) {
        values[i] = value(value.get(), c.getGenericType(), key);
      } else if (key.required()) {
        faults.add(
            object.place(), "the key " + c.getName() + " is missing", "add it: " + key.value());
      }
      whole &= values[i] != null || !key.required();
    }
    // The scene and its rooms are kept with gaps, so that the rest of them is looked at as well.
    boolean kept = type == SceneFile.class || type == RoomFile.class;
    if (!whole && !kept) {
      return null;
    }
    T made = make(type, components, values);
    nodes.put(made, node);
    return made;
  }

  private static <T> T make(Class<T> type, RecordComponent[] components, Object[] values) {
    try {
      Class<?>[] types =
          Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
      return type.getDeclaredConstructor(types).newInstance(values);
    } catch (NoSuchMethodException
        | InstantiationException
        | IllegalAccessException
        | InvocationTargetException e) {
      throw new IllegalStateException("a record of the scene file cannot be made: " + type, e);
    }
  }

  private void unknownKeys(Node.Obj object, Class<?> type) {
    List<String> known = keys(type);
    for (Node.Member m : object.members()) {
      if (!known.contains(m.key())) {
        faults.add(
            m.keyPlace(),
            "there is no key \"" + shortened(m.key()) + "\" here",
            "the keys are " + String.join(", ", known),
            faults.full() ? Optional.empty() : Faults.nearest(m.key(), known));
      }
    }
  }

  private static String shortened(String key) {
    String plain = key.replaceAll("\\p{Cc}", "?");
    return plain.length() > 40 ? plain.substring(0, 40) + "..." : plain;
  }

  private static List<String> keys(Class<?> type) {
    return Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList();
  }

  private Object value(Node node, Type type, Key key) {
    if (type instanceof ParameterizedType list) {
      return list(node, list.getActualTypeArguments()[0], key);
    }
    Class<?> raw = (Class<?>) type;
    if (raw.isEnum()) {
      return word(node, raw);
    }
    if (raw == String.class) {
      return scalars.text(node);
    }
    if (raw == Boolean.class) {
      return scalars.bool(node);
    }
    if (raw == Double.class) {
      return scalars.number(node, key);
    }
    if (raw == Integer.class) {
      return scalars.integer(node, key);
    }
    if (raw == Length.class) {
      return scalars.length(node, key);
    }
    if (raw.getEnclosingClass() != Values.class) {
      return record(node, raw);
    }
    Object read = special(node, raw, key);
    if (read != null) {
      nodes.put(read, node);
    }
    return read;
  }

  private Object special(Node node, Class<?> raw, Key key) {
    return switch (raw.getSimpleName()) {
      case "Id" -> scalars.id(node);
      case "Zone" -> scalars.zone(node);
      case "Monthly" -> scalars.monthly(node, key);
      case "Pair" -> scalars.pair(node, key);
      case "ByLevel" -> scalars.byLevel(node, key);
      case "Point" -> scalars.point(node);
      case "Direction" -> scalars.direction(node);
      case "WallRef" -> scalars.wallRef(node);
      case "Span" -> scalars.span(node);
      case "Level" -> scalars.level(node);
      case "Bearing" -> scalars.bearing(node);
      default -> throw new IllegalStateException("no reader for " + raw);
    };
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // raw is known to be an enum only at run time
  private Object word(Node node, Class<?> raw) {
    return scalars.word(node, (Class) raw);
  }

  private List<Object> list(Node node, Type item, Key key) {
    if (!(node instanceof Node.Arr array)) {
      String path = node.place().path();
      faults.add(
          node.place(),
          path.substring(path.lastIndexOf('.') + 1) + " is " + node.sort(),
          "it must be a list in [ ]");
      return null;
    }
    boolean inner = item instanceof ParameterizedType;
    int n = array.items().size();
    if (n < key.fewest() || n > key.most()) {
      faults.add(
          node.place(),
          "there are " + n + " items in this list",
          "it must have " + key.fewest() + " to " + key.most());
      return null;
    }
    List<Object> out = new ArrayList<>();
    boolean whole = true;
    for (Node i : array.items()) {
      Object v = inner ? ring(i) : value(i, item, key);
      whole &= v != null;
      if (v != null) {
        out.add(v);
      }
    }
    // A list of points or numbers with a gap is a different shape; a list of objects is not.
    boolean shape = item == Values.Point.class || item == Length.class || inner;
    return whole || !shape ? out : null;
  }

  private List<Object> ring(Node node) {
    if (!(node instanceof Node.Arr array)
        || array.items().size() < 3
        || array.items().size() > 200) {
      faults.add(node.place(), "this is no outline", "it must be a list of 3 to 200 points [x, y]");
      return null;
    }
    List<Object> out = new ArrayList<>();
    for (Node i : array.items()) {
      Values.Point p = scalars.point(i);
      if (p == null) {
        return null;
      }
      nodes.put(p, i);
      out.add(p);
    }
    return out;
  }
}
