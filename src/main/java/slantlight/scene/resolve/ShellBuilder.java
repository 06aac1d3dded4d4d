package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.SurfaceKind;
import slantlight.scene.file.Compass;
import slantlight.scene.file.FinishFile;
import slantlight.scene.file.FinishesFile;
import slantlight.scene.file.RoomFile;
import slantlight.scene.file.Values;

/** Raises a room's floor, walls and ceiling from its outline. */
final class ShellBuilder {
  /** Rooms longer than this are a mistake of units, m. */
  private static final double LONGEST = 1000;

  private final Scope scope;
  private final FinishesFile sceneFinishes;
  private final RoomFile file;
  private final FinishesFile roomFinishes;
  private final double floor;
  private final double height;

  ShellBuilder(Scope scope, FinishesFile sceneFinishes, RoomFile file) {
    this.scope = scope;
    this.sceneFinishes = sceneFinishes;
    this.file = file;
    this.roomFinishes = file.finishes() == null ? FinishesFile.NONE : file.finishes();
    this.floor = file.floor() == null ? 0 : file.floor().metres();
    this.height = file.height().metres();
  }

  /** The room; empty, with faults added, when its outline or ceiling makes no room. */
  Optional<Shell> build() {
    Optional<Polygon> region = region();
    if (region.isEmpty()) {
      return Optional.empty();
    }
    Ceilings ceilings = new Ceilings(scope, file, region.get(), floor, height, this::ceilingFinish);
    if (!ceilings.build()) {
      return Optional.empty();
    }
    List<Shell.Wall> walls = walls(region.get(), ceilings.roofs());
    if (walls.isEmpty()) {
      return Optional.empty();
    }
    Draft floorDraft = floorDraft(region.get());
    Shell shell =
        new Shell(
            file,
            region.get(),
            floor,
            height,
            walls,
            ceilings.roofs(),
            ceilings.drafts(),
            floorDraft,
            new ArrayList<>(),
            new ArrayList<>());
    return Closure.closed(scope, shell) ? Optional.of(shell) : Optional.empty();
  }

  private Optional<Polygon> region() {
    boolean one = file.outline() != null;
    boolean unsound = !one && scope.binder().has(file, "outline");
    unsound |= file.outlines() == null && scope.binder().has(file, "outlines");
    if (unsound) {
      return Optional.empty();
    }
    if (one == (file.outlines() != null)) {
      scope.fault(
          file,
          one ? "the room has outline and outlines" : "the room has no outline",
          "give outline (one list of corners) or outlines (several that join)");
      return Optional.empty();
    }
    String key = one ? "outline" : "outlines";
    List<List<Vec2>> rings = rings(key, one ? List.of(file.outline()) : file.outlines());
    List<List<Vec2>> voids = file.voids() == null ? List.of() : rings("voids", file.voids());
    if (rings == null || voids == null) {
      return Optional.empty();
    }
    Geometry all = Plan.polygon(rings.get(0));
    for (List<Vec2> ring : rings.subList(1, rings.size())) {
      all = Plan.union(all, Plan.polygon(ring));
    }
    for (List<Vec2> ring : voids) {
      all = Plan.difference(all, Plan.polygon(ring));
    }
    List<Polygon> parts = Plan.polygons(all);
    if (parts.size() != 1) {
      scope.fault(
          file,
          key,
          "the outlines make " + parts.size() + " separate pieces",
          "a room is one piece: let them share an edge or overlap, or make two rooms");
      return Optional.empty();
    }
    return Optional.of(one && voids.isEmpty() ? Plan.polygon(rings.get(0)) : parts.get(0));
  }

  /** The rings as points, or null after adding faults. */
  private List<List<Vec2>> rings(String key, List<List<Values.Point>> written) {
    List<List<Vec2>> out = new ArrayList<>();
    boolean sound = true;
    for (List<Values.Point> points : written) {
      List<Vec2> ring = new ArrayList<>(points.stream().map(Values.Point::flat).toList());
      if (ring.size() > 3 && ring.get(0).distance(ring.get(ring.size() - 1)) < Plan.SAME) {
        ring.remove(ring.size() - 1);
      }
      Optional<String> fault = Plan.fault(ring);
      if (fault.isPresent()) {
        scope.fault(
            points.get(0),
            "the " + (key.equals("voids") ? "void" : "outline") + " " + fault.get(),
            "list its corners in order, each once, with walls of at least 1 mm");
        sound = false;
      } else if (extent(ring) > LONGEST) {
        scope.fault(
            file,
            key,
            "the room is " + scope.length(extent(ring)) + " long",
            "at most 1 km; are the units right?");
        sound = false;
      }
      out.add(ring);
    }
    return sound ? out : null;
  }

  private static double extent(List<Vec2> ring) {
    double most = 0;
    for (Vec2 p : ring) {
      for (Vec2 q : ring) {
        most = Math.max(most, p.distance(q));
      }
    }
    return most;
  }

  private Draft floorDraft(Polygon region) {
    List<Vec2> outer = Plan.outer(region);
    double x0 = outer.stream().mapToDouble(Vec2::x).min().orElseThrow();
    double y0 = outer.stream().mapToDouble(Vec2::y).min().orElseThrow();
    Frame frame = Frame.of(new Vec3(x0, y0, floor), Vec3.EAST, Vec3.UP);
    Vec2 shift = new Vec2(x0, y0);
    Face face =
        new Face(
            frame,
            outer.stream().map(p -> p.minus(shift)).toList(),
            Plan.holes(region).stream()
                .map(h -> h.stream().map(p -> p.minus(shift)).toList())
                .toList());
    Finish finish =
        Finish.of(scope, SurfaceKind.FLOOR, roomFinishes.floor(), sceneFinishes.floor());
    return new Draft(
        file.id().text() + "/floor",
        label() + " floor",
        file.id().text(),
        SurfaceKind.FLOOR,
        face,
        finish);
  }

  private String label() {
    return file.label() == null ? Shell.labelOf(file.id().text()) : file.label();
  }

  private Finish ceilingFinish(FinishFile own) {
    FinishFile ceiling = file.ceiling() == null ? null : file.ceiling().finish();
    return Finish.of(
        scope, SurfaceKind.CEILING, own, ceiling, roomFinishes.ceiling(), sceneFinishes.ceiling());
  }

  /** One edge of the plan, the room on its left. */
  private record Edge(Vec2 a, Vec2 b, int number, String side) {}

  private List<Edge> edges(Polygon region) {
    List<List<Vec2>> rings = new ArrayList<>();
    rings.add(simple() ? Plan.counterClockwise(written()) : Plan.outer(region));
    rings.addAll(Plan.holes(region));
    boolean reversed = simple() && Face.signedArea(written()) < 0;
    List<Edge> out = new ArrayList<>();
    for (List<Vec2> ring : rings) {
      int n = ring.size();
      int before = out.size();
      for (int i = 0; i < n; i++) {
        Vec2 a = ring.get(i);
        Vec2 b = ring.get((i + 1) % n);
        Vec2 d = b.minus(a);
        int number = reversed ? (n - 2 - i + n) % n + 1 : before + i + 1;
        out.add(new Edge(a, b, number, Compass.word(Math.toDegrees(Math.atan2(d.y(), -d.x())))));
      }
    }
    return out;
  }

  private boolean simple() {
    return file.outline() != null && file.voids() == null;
  }

  private List<Vec2> written() {
    List<Vec2> ring = new ArrayList<>(file.outline().stream().map(Values.Point::flat).toList());
    if (ring.size() > 3 && ring.get(0).distance(ring.get(ring.size() - 1)) < Plan.SAME) {
      ring.remove(ring.size() - 1);
    }
    return ring;
  }

  private List<Shell.Wall> walls(Polygon region, List<RoofFace> roofs) {
    List<Edge> edges = edges(region);
    Map<String, Integer> count = new HashMap<>();
    edges.forEach(e -> count.merge(e.side(), 1, Integer::sum));
    Map<String, Integer> met = new HashMap<>();
    List<Edge> ordered =
        edges.stream().sorted(java.util.Comparator.comparingInt(Edge::number)).toList();
    Map<Edge, List<String>> names = new HashMap<>();
    for (Edge e : ordered) {
      int k = met.merge(e.side(), 1, Integer::sum);
      String name = count.get(e.side()) > 1 ? e.side() + "-" + k : e.side();
      names.put(e, List.of("wall-" + name, name, "wall-" + e.number(), "" + e.number()));
    }
    Map<Edge, RoomFile.WallFile> own = ownWalls(edges, names);
    List<Shell.Wall> out = new ArrayList<>();
    for (Edge e : ordered) {
      Optional<Shell.Wall> wall = wall(e, names.get(e), own.get(e), roofs);
      if (wall.isEmpty()) {
        return List.of();
      }
      out.add(wall.get());
    }
    return out;
  }

  private Map<Edge, RoomFile.WallFile> ownWalls(List<Edge> edges, Map<Edge, List<String>> names) {
    Map<Edge, RoomFile.WallFile> own = new HashMap<>();
    Set<String> ids = new HashSet<>();
    for (RoomFile.WallFile w : file.walls() == null ? List.<RoomFile.WallFile>of() : file.walls()) {
      Optional<Edge> edge =
          edges.stream().filter(e -> names.get(e).contains(w.wall().text())).findFirst();
      if (edge.isEmpty()) {
        List<String> known = edges.stream().map(e -> names.get(e).get(1)).toList();
        scope.unknown(w, "wall", "there is no wall \"" + w.wall().text() + "\"", known);
      } else if (own.putIfAbsent(edge.get(), w) != null) {
        scope.fault(w, "wall", "this wall is described twice", "put both into one entry");
      }
      if (w.id() != null && !ids.add(w.id().text())) {
        scope.fault(w, "id", "the id \"" + w.id().text() + "\" is used twice", "give another");
      }
    }
    return own;
  }

  private Optional<Shell.Wall> wall(
      Edge e, List<String> names, RoomFile.WallFile own, List<RoofFace> roofs) {
    double length = e.a().distance(e.b());
    List<Vec2> top = WallTop.along(e.a(), e.b(), roofs);
    boolean low = top.stream().anyMatch(p -> p.y() - floor < 0.05);
    if (top.isEmpty() || low) {
      scope.fault(
          file,
          "ceiling",
          low
              ? "the ceiling comes down to the floor at " + names.get(0)
              : "no ceiling lies over " + names.get(0),
          "keep it at least " + scope.length(0.05) + " above the floor, over the whole room");
      return Optional.empty();
    }
    List<Vec2> ring = new ArrayList<>(List.of(new Vec2(0, 0), new Vec2(length, 0)));
    top.forEach(p -> ring.add(new Vec2(length - p.x(), p.y() - floor)));
    Vec2 right = e.a().minus(e.b()).unit();
    Vec2 inward = new Vec2(right.y(), -right.x());
    Frame frame =
        Frame.of(
            new Vec3(e.b().x(), e.b().y(), floor),
            new Vec3(right.x(), right.y(), 0),
            new Vec3(inward.x(), inward.y(), 0));
    Finish finish =
        Finish.of(
            scope,
            SurfaceKind.WALL,
            own == null ? null : own.finish(),
            roomFinishes.walls(),
            sceneFinishes.walls());
    List<String> all = new ArrayList<>();
    String id = names.get(0);
    if (own != null && own.id() != null) {
      id = own.id().text();
      all.add(id);
    }
    all.addAll(names);
    String label =
        own != null && own.label() != null
            ? own.label()
            : own != null && own.id() != null
                ? label() + " " + id.replace('-', ' ')
                : label() + " " + names.get(1).replaceFirst("-(\\d+)$", " $1") + " wall";
    Draft draft =
        new Draft(
            file.id().text() + "/" + id,
            label,
            file.id().text(),
            SurfaceKind.WALL,
            Face.of(frame, ring),
            finish);
    if (own != null) {
      new Marks(scope, Marks.ON_WALL).add(draft, own.covered(), own.joints());
    }
    return Optional.of(new Shell.Wall(e.a(), e.b(), e.number(), all, draft));
  }
}
