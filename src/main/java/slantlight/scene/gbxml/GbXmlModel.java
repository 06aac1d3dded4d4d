package slantlight.scene.gbxml;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Vec3;

/**
 * What a gbXML file says that matters here, in metres.
 *
 * @param notes what was left out or not understood, each with its line
 */
record GbXmlModel(
    String name,
    Optional<Double> latitude,
    Optional<Double> longitude,
    Optional<Double> elevation,
    double north,
    List<Space> spaces,
    List<Wall> surfaces,
    List<String> notes) {

  /** A room. */
  record Space(String id, String name, String type, List<Vec3> floor, int line) {}

  /** A surface between spaces, or a shade; its polygon in the order of the file. */
  record Wall(
      String id,
      String name,
      String type,
      List<String> spaces,
      List<Vec3> polygon,
      List<Hole> holes,
      int line) {}

  /**
   * An opening.
   *
   * @param transmittance visible, if the file tells it
   * @param panes 0 if the file does not tell
   */
  record Hole(
      String id,
      String name,
      String type,
      List<Vec3> polygon,
      Optional<Double> transmittance,
      int panes,
      int line) {}

  private static final Map<String, Double> UNITS =
      Map.of(
          "Kilometers", 1000.0,
          "Meters", 1.0,
          "Centimeters", 0.01,
          "Millimeters", 0.001,
          "Miles", 1609.344,
          "Yards", 0.9144,
          "Feet", 0.3048,
          "Inches", 0.0254);

  /**
   * Reads a file.
   *
   * @throws ImportException if it is no gbXML or has no space
   */
  static GbXmlModel read(Path file) throws ImportException {
    Element root = Element.read(file);
    if (root == null || !root.name().equals("gbXML")) {
      throw new ImportException(file + ": not gbXML: its root element is not gbXML");
    }
    return new Reading(file, root).model();
  }

  private static final class Reading {
    private final Path file;
    private final Element root;
    private final double unit;
    private final List<String> notes = new ArrayList<>();
    private final Map<String, Element> windowTypes = new HashMap<>();

    Reading(Path file, Element root) throws ImportException {
      this.file = file;
      this.root = root;
      String word = root.attribute("lengthUnit");
      if (!word.isEmpty() && !UNITS.containsKey(word)) {
        throw new ImportException(
            file + ":" + root.line() + ": lengthUnit " + word + " is none of " + sorted());
      }
      if (word.isEmpty()) {
        notes.add("lengthUnit is not stated; metres were taken");
      }
      unit = UNITS.getOrDefault(word, 1.0);
      root.all("WindowType").forEach(w -> windowTypes.put(w.attribute("id"), w));
    }

    private static String sorted() {
      return String.join(", ", UNITS.keySet().stream().sorted().toList());
    }

    GbXmlModel model() throws ImportException {
      Element campus =
          root.first("Campus")
              .orElseThrow(() -> new ImportException(file + ": no Campus element, so no rooms"));
      List<Space> spaces = new ArrayList<>();
      campus.all("Building").forEach(b -> b.all("Space").forEach(s -> spaces.add(space(s))));
      if (spaces.isEmpty()) {
        throw new ImportException(file + ": no Space element, so no rooms; export with spaces");
      }
      List<Wall> surfaces = new ArrayList<>();
      campus.all("Surface").forEach(s -> surface(s).ifPresent(surfaces::add));
      Element place = campus.first("Location").orElse(campus);
      return new GbXmlModel(
          name(campus),
          number(place.textOf("Latitude")),
          number(place.textOf("Longitude")),
          number(place.textOf("Elevation")).map(e -> e * unit),
          number(place.textOf("CADModelAzimuth")).orElse(0.0),
          spaces,
          surfaces,
          notes);
    }

    private static String name(Element campus) {
      String building = campus.first("Building").map(b -> b.textOf("Name")).orElse("");
      return building.isEmpty() ? campus.textOf("Name") : building;
    }

    private Space space(Element s) {
      List<Vec3> floor = s.first("PlanarGeometry").map(this::polygon).orElse(List.of());
      return new Space(
          s.attribute("id"), s.textOf("Name"), s.attribute("spaceType"), floor, s.line());
    }

    private Optional<Wall> surface(Element s) {
      String id = s.attribute("id");
      List<Vec3> polygon = s.first("PlanarGeometry").map(this::polygon).orElse(List.of());
      if (polygon.size() < 3) {
        notes.add("line " + s.line() + ": surface " + id + " has no PlanarGeometry; left out");
        return Optional.empty();
      }
      List<Hole> holes = new ArrayList<>();
      s.all("Opening").forEach(o -> hole(o).ifPresent(holes::add));
      return Optional.of(
          new Wall(
              id,
              s.textOf("Name"),
              s.attribute("surfaceType"),
              s.all("AdjacentSpaceId").map(a -> a.attribute("spaceIdRef")).distinct().toList(),
              polygon,
              holes,
              s.line()));
    }

    private Optional<Hole> hole(Element o) {
      List<Vec3> polygon = o.first("PlanarGeometry").map(this::polygon).orElse(List.of());
      if (polygon.size() < 3) {
        notes.add(
            "line "
                + o.line()
                + ": opening "
                + o.attribute("id")
                + " has no PlanarGeometry; left"
                + " out");
        return Optional.empty();
      }
      Optional<Element> type = Optional.ofNullable(windowTypes.get(o.attribute("windowTypeIdRef")));
      Optional<Double> visible =
          type.flatMap(
              t ->
                  t.all("Transmittance")
                      .filter(x -> x.attribute("type").equals("Visible"))
                      .findFirst()
                      .flatMap(Reading::fraction));
      int panes = type.map(t -> (int) Math.min(3, t.all("Glaze").count())).orElse(0);
      return Optional.of(
          new Hole(
              o.attribute("id"),
              o.textOf("Name"),
              o.attribute("openingType"),
              polygon,
              visible,
              panes,
              o.line()));
    }

    private static Optional<Double> fraction(Element t) {
      double scale = t.attribute("unit").equals("Percent") ? 0.01 : 1;
      return number(t.content()).map(v -> v * scale).filter(v -> v >= 0 && v <= 1);
    }

    /** Corners without repeats; empty when a coordinate is missing or no number. */
    private List<Vec3> polygon(Element planar) {
      List<Vec3> out = new ArrayList<>();
      Optional<Element> loop = planar.first("PolyLoop");
      if (loop.isEmpty()) {
        return out;
      }
      for (Element point : loop.get().all("CartesianPoint").toList()) {
        List<Optional<Double>> c = point.all("Coordinate").map(x -> number(x.content())).toList();
        if (c.size() != 3 || c.stream().anyMatch(Optional::isEmpty)) {
          notes.add("line " + point.line() + ": a point without three coordinates");
          return List.of();
        }
        Vec3 p = new Vec3(c.get(0).get() * unit, c.get(1).get() * unit, c.get(2).get() * unit);
        if (out.isEmpty() || out.get(out.size() - 1).distance(p) > 1e-4) {
          out.add(p);
        }
      }
      if (out.size() > 1 && out.get(0).distance(out.get(out.size() - 1)) <= 1e-4) {
        out.remove(out.size() - 1);
      }
      return out;
    }

    private static Optional<Double> number(String text) {
      try {
        double d = Double.parseDouble(text.strip());
        return Double.isFinite(d) && Math.abs(d) < 1e7 ? Optional.of(d) : Optional.empty();
      } catch (NumberFormatException e) {
        return Optional.empty();
      }
    }
  }
}
