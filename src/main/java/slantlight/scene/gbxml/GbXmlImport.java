package slantlight.scene.gbxml;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * Makes a scene from a gbXML file: a room a space, its outline from the floor, its ceiling flat or
 * as the roof's polygons, windows, doors, skylights and open passages where they lie, shades as
 * outside blocks. Everything that was left out, guessed or not understood is told.
 */
public final class GbXmlImport {
  private final Path file;
  private final GbXmlModel model;
  private final List<String> notes;
  private final Map<String, String> ids = new LinkedHashMap<>();
  private int windows;
  private int doors;
  private int passages;

  private GbXmlImport(Path file, GbXmlModel model) {
    this.file = file;
    this.model = model;
    this.notes = new ArrayList<>(model.notes());
  }

  /**
   * Reads a gbXML file.
   *
   * @throws ImportException if no room can be made of it
   */
  public static Imported read(Path file) throws ImportException {
    return new GbXmlImport(file, GbXmlModel.read(file)).scene();
  }

  private Imported scene() throws ImportException {
    Map<String, ImportedRoom> rooms = new LinkedHashMap<>();
    for (GbXmlModel.Space space : model.spaces()) {
      ids.put(space.id(), id(label(space), ids.values().stream().toList()));
    }
    for (GbXmlModel.Space space : model.spaces()) {
      ImportedRoom.of(space, label(space), ids, model, notes)
          .ifPresent(r -> rooms.put(space.id(), r));
    }
    if (rooms.isEmpty()) {
      throw new ImportException(
          file + ": none of its spaces has a floor and a ceiling; " + String.join("; ", notes));
    }
    for (ImportedRoom r : rooms.values()) {
      windows += r.count("window") + r.count("skylight");
      doors += r.count("door");
      passages += r.count("passage");
    }
    notes.add(
        "sizes are those of the file's surfaces; where these run along the middle of walls, rooms"
            + " come out larger by half a wall on each side");
    notes.add(
        "paint, framing, boards, eyes and lamps are not in gbXML: the program's defaults stand"
            + " until you state them");
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(new DefaultPrettyPrinter());
      write(json, new ArrayList<>(rooms.values()));
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return new Imported(out + "\n", rooms.size(), windows, doors, passages, notes);
  }

  private void write(JsonGenerator json, List<ImportedRoom> rooms) throws IOException {
    json.writeStartObject();
    json.writeNumberField("slantlight", 1);
    json.writeStringField("name", model.name().isBlank() ? "Imported house" : model.name());
    json.writeStringField("note", "Read from gbXML; check sizes, finishes and site.");
    json.writeStringField("units", "m");
    if (model.north() != 0) {
      number(json, "north", model.north());
    }
    site(json);
    shades(json);
    json.writeArrayFieldStart("rooms");
    for (ImportedRoom room : rooms) {
      room.write(json);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void site(JsonGenerator json) throws IOException {
    double latitude = model.latitude().filter(v -> Math.abs(v) <= 90).orElse(45.0);
    double longitude = model.longitude().filter(v -> Math.abs(v) <= 180).orElse(0.0);
    if (model.latitude().isEmpty() || model.longitude().isEmpty()) {
      notes.add("the file has no place; latitude 45, longitude 0 were taken: correct them");
    }
    int hours = (int) Math.round(longitude / 15);
    String zone = hours == 0 ? "UTC" : "Etc/GMT" + (hours > 0 ? "-" : "+") + Math.abs(hours);
    notes.add(
        "gbXML has no time zone: "
            + zone
            + " follows from the longitude, without summer time; put your own, such as"
            + " America/Chicago");
    json.writeObjectFieldStart("site");
    number(json, "latitude", latitude);
    number(json, "longitude", longitude);
    json.writeStringField("zone", zone);
    if (model.elevation().filter(e -> e > -500 && e < 9000).isPresent()) {
      number(json, "elevation", model.elevation().get());
    }
    json.writeEndObject();
  }

  private void shades(JsonGenerator json) throws IOException {
    List<GbXmlModel.Wall> shades =
        model.surfaces().stream().filter(s -> s.type().equals("Shade")).limit(200).toList();
    if (shades.isEmpty()) {
      return;
    }
    json.writeObjectFieldStart("outside");
    json.writeArrayFieldStart("blocks");
    List<String> taken = new ArrayList<>();
    for (GbXmlModel.Wall shade : shades) {
      String id = id(shade.name().isBlank() ? shade.id() : shade.name(), taken);
      taken.add(id);
      json.writeStartObject();
      json.writeStringField("id", id);
      json.writeStringField("label", shade.name().isBlank() ? "shade " + id : shade.name());
      json.writeArrayFieldStart("polygons");
      json.writeStartArray();
      for (Vec3 p : shade.polygon()) {
        point(json, p);
      }
      json.writeEndArray();
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static String label(GbXmlModel.Space space) {
    return space.name().isBlank() ? space.id() : space.name();
  }

  /** A short name of a scene from any text, different from those taken. */
  static String id(String text, List<String> taken) {
    String base =
        java.text.Normalizer.normalize(text, java.text.Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^[-0-9]+|-+$", "");
    String name = base.isEmpty() ? "item" : base.substring(0, Math.min(40, base.length()));
    String free = name;
    for (int i = 2; taken.contains(free); i++) {
      free = name + "-" + i;
    }
    return free;
  }

  /** A number to the tenth of a millimetre or of a millionth of a degree. */
  static void number(JsonGenerator json, String name, double value) throws IOException {
    json.writeNumberField(name, decimal(value, 6));
  }

  static void point(JsonGenerator json, Vec3 p) throws IOException {
    json.writeStartArray();
    json.writeNumber(decimal(p.x(), 4));
    json.writeNumber(decimal(p.y(), 4));
    json.writeNumber(decimal(p.z(), 4));
    json.writeEndArray();
  }

  static void point(JsonGenerator json, Vec2 p) throws IOException {
    json.writeStartArray();
    json.writeNumber(decimal(p.x(), 4));
    json.writeNumber(decimal(p.y(), 4));
    json.writeEndArray();
  }

  static BigDecimal decimal(double value, int digits) {
    BigDecimal d = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN);
    d = d.signum() == 0 ? BigDecimal.ZERO : d.stripTrailingZeros();
    return d.scale() < 0 ? d.setScale(0) : d;
  }

  /** The wall of an outline that an upright polygon lies along; 0-based edge number. */
  static Optional<Integer> edgeOf(List<Vec2> outline, List<Vec3> polygon) {
    Vec2 middle = new Vec2(0, 0);
    for (Vec3 p : polygon) {
      middle = middle.plus(new Vec2(p.x(), p.y()).times(1.0 / polygon.size()));
    }
    Optional<Integer> best = Optional.empty();
    double nearest = 0.5;
    for (int i = 0; i < outline.size(); i++) {
      Vec2 a = outline.get(i);
      Vec2 d = outline.get((i + 1) % outline.size()).minus(a);
      double length = d.length();
      Vec2 along = d.unit();
      double t = middle.minus(a).dot(along);
      double off = Math.abs(along.cross(middle.minus(a)));
      boolean parallel =
          polygon.stream()
              .allMatch(p -> Math.abs(along.cross(new Vec2(p.x(), p.y()).minus(a))) < off + 0.02);
      if (t > 0 && t < length && off < nearest && parallel) {
        nearest = off;
        best = Optional.of(i);
      }
    }
    return best;
  }
}
