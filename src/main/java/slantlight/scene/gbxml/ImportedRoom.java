package slantlight.scene.gbxml;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.RoomUse;

/** One room of an imported scene. */
final class ImportedRoom {
  private static final double UPRIGHT = 0.35;
  private static final double LEVEL = 0.999;
  private static final double SAME = 5e-3;
  private static final double LEAST = 0.02;

  private final String id;
  private final String label;
  private final RoomUse use;
  private final RoomShape shape;
  private final double floor;
  private final double height;
  private final List<List<Vec3>> ceiling;
  private final List<Hole> holes;

  /** An opening as the scene writes it; lengths in m. */
  private record Hole(
      String id,
      String label,
      String kind,
      int wall,
      double offset,
      double sill,
      double width,
      double height,
      Optional<Vec2> at,
      String to,
      Optional<Double> transmittance,
      int panes) {}

  private ImportedRoom(
      String id,
      String label,
      RoomUse use,
      RoomShape shape,
      double floor,
      double height,
      List<List<Vec3>> ceiling,
      List<Hole> holes) {
    this.id = id;
    this.label = label;
    this.use = use;
    this.shape = shape;
    this.floor = floor;
    this.height = height;
    this.ceiling = ceiling;
    this.holes = holes;
  }

  /** The room of a space; empty, with a note, when it has no floor or no ceiling. */
  static Optional<ImportedRoom> of(
      GbXmlModel.Space space,
      String label,
      Map<String, String> ids,
      GbXmlModel model,
      List<String> notes) {
    return new Maker(space, label, ids, model, notes).room();
  }

  int count(String kind) {
    return (int) holes.stream().filter(h -> h.kind().equals(kind)).count();
  }

  void write(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", id);
    json.writeStringField("label", label);
    json.writeStringField("use", use.name().toLowerCase(Locale.ROOT));
    GbXmlImport.number(json, "floor", floor);
    GbXmlImport.number(json, "height", height);
    ring(json, "outline", shape.outline());
    if (!shape.voids().isEmpty()) {
      json.writeArrayFieldStart("voids");
      for (List<Vec2> v : shape.voids()) {
        json.writeStartArray();
        for (Vec2 p : v) {
          GbXmlImport.point(json, p);
        }
        json.writeEndArray();
      }
      json.writeEndArray();
    }
    if (!ceiling.isEmpty()) {
      ceiling(json);
    }
    if (!holes.isEmpty()) {
      json.writeArrayFieldStart("openings");
      for (Hole h : holes) {
        hole(json, h);
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private void ceiling(JsonGenerator json) throws IOException {
    json.writeObjectFieldStart("ceiling");
    json.writeStringField("kind", "polygons");
    json.writeArrayFieldStart("polygons");
    for (int i = 0; i < ceiling.size(); i++) {
      json.writeStartObject();
      json.writeStringField("id", "ceiling-" + (i + 1));
      json.writeArrayFieldStart("points");
      for (Vec3 p : ceiling.get(i)) {
        GbXmlImport.point(json, p);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void ring(JsonGenerator json, String name, List<Vec2> ring) throws IOException {
    json.writeArrayFieldStart(name);
    for (Vec2 p : ring) {
      GbXmlImport.point(json, p);
    }
    json.writeEndArray();
  }

  private static void hole(JsonGenerator json, Hole h) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", h.id());
    json.writeStringField("label", h.label());
    json.writeStringField("kind", h.kind());
    if (h.at().isPresent()) {
      json.writeFieldName("at");
      GbXmlImport.point(json, h.at().get());
      GbXmlImport.number(json, "width", h.width());
      GbXmlImport.number(json, "depth", h.height());
    } else {
      json.writeNumberField("wall", h.wall() + 1);
      GbXmlImport.number(json, "offset", h.offset());
      GbXmlImport.number(json, "sill", h.sill());
      GbXmlImport.number(json, "width", h.width());
      GbXmlImport.number(json, "height", h.height());
    }
    if (!h.to().isEmpty()) {
      json.writeStringField("to", h.to());
    }
    if (h.transmittance().isPresent()) {
      GbXmlImport.number(json, "transmittance", h.transmittance().get());
    }
    if (h.panes() > 0) {
      json.writeNumberField("panes", h.panes());
    }
    json.writeEndObject();
  }

  /** Makes one room. */
  private static final class Maker {
    private final GbXmlModel.Space space;
    private final String label;
    private final Map<String, String> ids;
    private final List<String> notes;
    private final List<GbXmlModel.Wall> around;
    private final List<Hole> holes = new ArrayList<>();
    private RoomShape shape;
    private double floor;
    private double height;

    Maker(
        GbXmlModel.Space space,
        String label,
        Map<String, String> ids,
        GbXmlModel model,
        List<String> notes) {
      this.space = space;
      this.label = label;
      this.ids = ids;
      this.notes = notes;
      around = model.surfaces().stream().filter(s -> s.spaces().contains(space.id())).toList();
    }

    Optional<ImportedRoom> room() {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (GbXmlModel.Wall s : around) {
        for (Vec3 p : s.polygon()) {
          low = Math.min(low, p.z());
          high = Math.max(high, p.z());
        }
      }
      List<List<Vec3>> floors = new ArrayList<>();
      List<List<Vec3>> tops = new ArrayList<>();
      for (GbXmlModel.Wall s : around) {
        double nz = normal(s.polygon()).z();
        if (Math.abs(nz) >= UPRIGHT) {
          boolean below = Math.abs(nz) > LEVEL && meanZ(s.polygon()) < (low + high) / 2;
          (below ? floors : tops).add(s.polygon());
        }
      }
      if (floors.isEmpty() && space.floor().size() >= 3) {
        floors.add(space.floor());
      }
      if (floors.isEmpty() || tops.isEmpty()) {
        note(
            space.line(),
            "space "
                + label
                + " has no "
                + (floors.isEmpty() ? "floor" : "ceiling")
                + "; left out");
        return Optional.empty();
      }
      floor = floors.stream().mapToDouble(Maker::meanZ).min().orElseThrow();
      if (floors.stream().anyMatch(f -> Math.abs(meanZ(f) - floor) > SAME)) {
        note(space.line(), "space " + label + ": steps in the floor were levelled to the lowest");
      }
      shape = RoomShape.of(floors);
      if (shape.outline().size() < 3) {
        note(space.line(), "space " + label + ": its floor has no area; left out");
        return Optional.empty();
      }
      if (shape.pieces() > 1) {
        note(space.line(), "space " + label + ": floor in pieces; only the largest was taken");
      }
      double lowest = tops.stream().flatMap(List::stream).mapToDouble(Vec3::z).min().orElseThrow();
      boolean flat =
          tops.stream().flatMap(List::stream).allMatch(p -> Math.abs(p.z() - lowest) < SAME);
      height = lowest - floor;
      if (height < 0.3) {
        note(space.line(), "space " + label + ": lower than 0.3 m; left out");
        return Optional.empty();
      }
      around.forEach(this::openings);
      List<List<Vec3>> ceiling = flat ? List.of() : tops.stream().map(Maker::downward).toList();
      return Optional.of(
          new ImportedRoom(
              ids.get(space.id()), label, use(), shape, floor, height, ceiling, holes));
    }

    private void openings(GbXmlModel.Wall s) {
      boolean upright = Math.abs(normal(s.polygon()).z()) < UPRIGHT;
      boolean between = s.spaces().size() > 1;
      if (s.type().equals("Air") && between && upright) {
        passage(s, s.id(), s.name(), s.polygon(), s.line());
        return;
      }
      for (GbXmlModel.Hole h : s.holes()) {
        if (!upright) {
          skylight(h);
        } else if (h.type().equals("Air") && between) {
          passage(s, h.id(), h.name(), h.polygon(), h.line());
        } else if (h.type().endsWith("Door") || h.type().endsWith("Window")) {
          boolean solid = h.type().equals("NonSlidingDoor");
          wall(h.id(), h.name(), solid ? "door" : "window", h.polygon(), "", h, h.line());
          if (h.type().equals("SlidingDoor")) {
            note(h.line(), "sliding door " + name(h.name(), h.id()) + " was taken as glass");
          }
        } else {
          note(
              h.line(),
              "opening " + h.id() + " of type \"" + h.type() + "\" was not understood; left out");
        }
      }
    }

    /** An open way; written once, for the space that the surface names first. */
    private void passage(GbXmlModel.Wall s, String id, String name, List<Vec3> polygon, int line) {
      if (s.spaces().get(0).equals(space.id()) && ids.containsKey(s.spaces().get(1))) {
        wall(id, name, "passage", polygon, ids.get(s.spaces().get(1)), null, line);
      }
    }

    private void wall(
        String key,
        String name,
        String kind,
        List<Vec3> polygon,
        String to,
        GbXmlModel.Hole glass,
        int line) {
      Optional<Integer> edge = GbXmlImport.edgeOf(shape.outline(), polygon);
      if (edge.isEmpty()) {
        note(line, "opening " + name(name, key) + " lies along no wall of " + label + "; left out");
        return;
      }
      List<Vec2> outline = shape.outline();
      Vec2 left = outline.get((edge.get() + 1) % outline.size());
      Vec2 right = outline.get(edge.get());
      double length = left.distance(right);
      Vec2 along = right.minus(left).unit();
      double from = Double.POSITIVE_INFINITY;
      double to2 = Double.NEGATIVE_INFINITY;
      double sill = Double.POSITIVE_INFINITY;
      double head = Double.NEGATIVE_INFINITY;
      for (Vec3 p : polygon) {
        double t = new Vec2(p.x(), p.y()).minus(left).dot(along);
        from = Math.min(from, t);
        to2 = Math.max(to2, t);
        sill = Math.min(sill, p.z() - floor);
        head = Math.max(head, p.z() - floor);
      }
      from = Math.max(0, from);
      to2 = Math.min(length, to2);
      sill = Math.max(0, sill);
      if (to2 - from < LEAST || head - sill < LEAST) {
        note(line, "opening " + name(name, key) + " is narrower than 2 cm; left out");
        return;
      }
      double area = Math.abs(area(polygon));
      if (Math.abs(area - (to2 - from) * (head - sill)) > 0.02 * area + 1e-3) {
        note(line, "opening " + name(name, key) + " is no upright rectangle; its frame was taken");
      }
      holes.add(
          new Hole(
              holeId(name, key),
              name(name, key),
              kind,
              edge.get(),
              from,
              sill,
              to2 - from,
              head - sill,
              Optional.empty(),
              to,
              glass == null || kind.equals("door") ? Optional.empty() : glass.transmittance(),
              glass == null || kind.equals("door") ? 0 : glass.panes()));
    }

    private void skylight(GbXmlModel.Hole h) {
      double x0 = Double.POSITIVE_INFINITY;
      double y0 = Double.POSITIVE_INFINITY;
      double x1 = Double.NEGATIVE_INFINITY;
      double y1 = Double.NEGATIVE_INFINITY;
      for (Vec3 p : h.polygon()) {
        x0 = Math.min(x0, p.x());
        x1 = Math.max(x1, p.x());
        y0 = Math.min(y0, p.y());
        y1 = Math.max(y1, p.y());
      }
      if (meanZ(h.polygon()) < floor + height / 2) {
        note(h.line(), "opening " + name(h.name(), h.id()) + " is in a floor; left out");
        return;
      }
      holes.add(
          new Hole(
              holeId(h.name(), h.id()),
              name(h.name(), h.id()),
              "skylight",
              0,
              0,
              0,
              x1 - x0,
              y1 - y0,
              Optional.of(new Vec2((x0 + x1) / 2, (y0 + y1) / 2)),
              "",
              h.transmittance(),
              h.panes()));
    }

    private String holeId(String name, String key) {
      return GbXmlImport.id(name(name, key), holes.stream().map(Hole::id).toList());
    }

    private static String name(String name, String id) {
      return name.isBlank() ? id : name;
    }

    private RoomUse use() {
      String words = (label + " " + space.type()).toLowerCase(Locale.ROOT);
      Map<String, RoomUse> known =
          Map.ofEntries(
              Map.entry("kitchen", RoomUse.KITCHEN), Map.entry("bed", RoomUse.BEDROOM),
              Map.entry("study", RoomUse.STUDY), Map.entry("office", RoomUse.STUDY),
              Map.entry("hall", RoomUse.HALL), Map.entry("corridor", RoomUse.HALL),
              Map.entry("stair", RoomUse.STAIR), Map.entry("bath", RoomUse.BATH),
              Map.entry("restroom", RoomUse.BATH), Map.entry("laundry", RoomUse.LAUNDRY),
              Map.entry("closet", RoomUse.CLOSET), Map.entry("garage", RoomUse.GARAGE),
              Map.entry("storage", RoomUse.STORAGE), Map.entry("attic", RoomUse.ATTIC),
              Map.entry("plenum", RoomUse.PLENUM), Map.entry("living", RoomUse.LIVING));
      return known.entrySet().stream()
          .filter(e -> words.contains(e.getKey()))
          .sorted(Map.Entry.comparingByKey())
          .map(Map.Entry::getValue)
          .findFirst()
          .orElseGet(
              () -> {
                note(space.line(), "space " + label + ": use not told by its name; living taken");
                return RoomUse.LIVING;
              });
    }

    private void note(int line, String text) {
      notes.add("line " + line + ": " + text);
    }

    private static double meanZ(List<Vec3> polygon) {
      return polygon.stream().mapToDouble(Vec3::z).average().orElseThrow();
    }

    private static List<Vec3> downward(List<Vec3> polygon) {
      if (normal(polygon).z() < 0) {
        return polygon;
      }
      List<Vec3> out = new ArrayList<>(polygon);
      java.util.Collections.reverse(out);
      return out;
    }

    /** Newell's normal, of unit length. */
    private static Vec3 normal(List<Vec3> polygon) {
      Vec3 n = newell(polygon);
      return n.length() == 0 ? Vec3.UP : n.unit();
    }

    private static double area(List<Vec3> polygon) {
      return newell(polygon).length() / 2;
    }

    private static Vec3 newell(List<Vec3> polygon) {
      Vec3 n = Vec3.ZERO;
      for (int i = 0; i < polygon.size(); i++) {
        n = n.plus(polygon.get(i).cross(polygon.get((i + 1) % polygon.size())));
      }
      return n;
    }
  }
}
