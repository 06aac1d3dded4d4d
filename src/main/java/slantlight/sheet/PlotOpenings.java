package slantlight.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;

/** The openings of a plot: those in its surfaces, and on a plan's edge those of the walls. */
final class PlotOpenings {
  /** An opening is drawn on the edge of a ceiling that it is nearer to than this in plan, m. */
  private static final double AT_EDGE = 0.5;

  private static final double EDGE = 1.8;

  /** Openings whose middles are nearer than this share a name, mm and m. */
  private static final double TOGETHER = 8;

  private static final double REALLY_TOGETHER = 0.8;

  private final House house;
  private final List<Part> parts;
  private final boolean several;
  private final Pencil pencil;
  private final Map<Vec2, Edge> edges = new LinkedHashMap<>();

  /** Openings on one stretch of a plan's edge. */
  private record Edge(Vec2 middle, Vec2 away, List<String> names) {}

  /** The openings to be drawn; passages between the parts' rooms are left out of several. */
  PlotOpenings(House house, List<Part> parts, boolean several, Pencil pencil) {
    this.house = house;
    this.parts = parts;
    this.several = several;
    this.pencil = pencil;
  }

  void draw(boolean plan) {
    holes().forEach(o -> opening(o.opening(), o.ring()));
    if (plan) {
      edgeOpenings();
    }
  }

  /** Writes all names, when what they may not stand on has been drawn. */
  void names() {
    openingNames();
    edges.values().forEach(this::edgeName);
  }

  private record Hole(Opening opening, List<Vec2> ring) {
    private Lettering name(double size) {
      return new Lettering(opening.label(), size, Ink.LINE, false);
    }
  }

  private List<Hole> holes() {
    List<Hole> out = new ArrayList<>();
    for (Part p : parts) {
      house.openings().stream()
          .filter(o -> o.surfaceId().equals(p.surface().id()))
          .forEach(o -> out.add(new Hole(o, p.map().at(o.face().outer()))));
    }
    return out;
  }

  private void opening(Opening o, List<Vec2> ring) {
    glass(o, ring, 0.35);
    if (o.kind() != OpeningKind.PASSAGE) {
      Extent e = Extent.of(ring);
      Vec2 corner = new Vec2(e.left(), e.top());
      double d = Math.min(5, 0.4 * Math.min(e.width(), e.height()));
      for (double far : new double[] {d, 0.6 * d}) {
        pencil.run(
            List.of(corner.plus(new Vec2(0.2 * d, far)), corner.plus(new Vec2(far, 0.2 * d))),
            Pen.full(Ink.GLASS_EDGE, 0.15));
      }
    }
  }

  private void glass(Opening o, List<Vec2> ring, double width) {
    pencil.area(
        List.of(ring),
        Optional.of(Ink.GLASS),
        Optional.of(Pen.full(Ink.GLASS_EDGE, width)),
        o.label(),
        o.id());
  }

  /** Names inside the openings where they fit, else beside them, but never in another one. */
  private void openingNames() {
    List<Hole> rest = new ArrayList<>();
    for (Hole o : holes()) {
      List<Mark.Label> places = new ArrayList<>();
      for (double size : new double[] {2.8, 2.4, 2.1}) {
        places.addAll(o.name(size).inside(Extent.of(o.ring())));
      }
      if (!pencil.placeIfClear(places)) {
        rest.add(o);
      }
    }
    holes().forEach(o -> pencil.keepOff(o.ring()));
    for (Hole o : rest) {
      Extent e = Extent.of(o.ring());
      Lettering name = o.name(2.8);
      Vec2 corner = new Vec2(e.left(), e.top());
      List<Mark.Label> places =
          new ArrayList<>(name.along(corner, new Vec2(e.right(), e.top()), 0, 0, 0.5));
      places.addAll(name.around(e.middle(), e.height() / 2));
      places.addAll(name.around(e.middle(), e.width() / 2));
      pencil.place(several, places);
    }
  }

  private void edgeOpenings() {
    for (Opening o : house.openings()) {
      if (!PaperMap.plan(o.face().frame()) && !(several && o.kind() == OpeningKind.PASSAGE)) {
        Vec3 middle = o.face().frame().toWorld(o.face().centroid());
        parts.stream()
            .filter(p -> p.surface().roomId().equals(o.roomId()))
            .filter(p -> toEdge(p.face(), p.above(middle)) < AT_EDGE)
            .min(Comparator.comparingDouble(p -> toEdge(p.face(), p.above(middle))))
            .ifPresent(p -> edgeOpening(p, o));
      }
    }
  }

  private static double toEdge(Face face, Vec2 at) {
    double least = Double.POSITIVE_INFINITY;
    List<Vec2> ring = face.outer();
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      Vec2 d = ring.get(i).minus(ring.get(j));
      double t = at.minus(ring.get(j)).dot(d) / d.dot(d);
      double clamped = Math.max(0, Math.min(1, t));
      least = Math.min(least, ring.get(j).lerp(ring.get(i), clamped).distance(at));
    }
    return least;
  }

  /** An opening of a wall, on the plan's edge; openings above one another share a name. */
  private void edgeOpening(Part p, Opening o) {
    Extent e = Extent.of(o.face().outer());
    Vec2 a = p.map().at(p.above(o.face().frame().toWorld(new Vec2(e.left(), 0))));
    Vec2 b = p.map().at(p.above(o.face().frame().toWorld(new Vec2(e.right(), 0))));
    Vec3 out = p.face().frame().directionToLocal(o.face().frame().n().times(-1));
    Vec2 away = p.map().direction(new Vec2(out.x(), out.y())).unit();
    Vec2 far = away.times(EDGE);
    glass(o, List.of(a, b, b.plus(far), a.plus(far)), 0.3);
    Vec2 middle = a.lerp(b, 0.5);
    edges.keySet().stream()
        .filter(m -> m.distance(middle) < Math.min(TOGETHER, p.map().mm(REALLY_TOGETHER)))
        .findFirst()
        .map(edges::get)
        .orElseGet(() -> edges.computeIfAbsent(middle, m -> new Edge(m, away, new ArrayList<>())))
        .names()
        .add(o.label());
  }

  /** The names outside the opening, in full or shortened, shifted along the edge or a row out. */
  private void edgeName(Edge edge) {
    List<String> names = edge.names();
    List<String> wordings = new ArrayList<>(List.of(String.join(", ", names)));
    if (names.size() > 1) {
      wordings.add(names.get(0) + " and " + (names.size() - 1) + " more");
    }
    Vec2 away = edge.away();
    boolean upright = Math.abs(away.x()) > 0.7;
    double turn = upright ? (away.x() > 0 ? 90 : -90) : 0;
    Vec2 along = new Vec2(Math.abs(away.y()), Math.abs(away.x()));
    boolean baselineFar = !upright && away.y() > 0;
    List<Mark.Label> places = new ArrayList<>();
    for (String text : wordings) {
      Lettering name = new Lettering(text, 2.5, Ink.GLASS_EDGE, false);
      double near =
          EDGE + Lettering.GAP + name.size() * (baselineFar ? Letters.ASCENT : Letters.DESCENT);
      for (double d : new double[] {near, near + 3.2}) {
        for (double shift : new double[] {0, 3, -3, 6, -6}) {
          Vec2 at = edge.middle().plus(away.times(d)).plus(along.times(shift));
          places.add(name.at(at, Mark.Anchor.MIDDLE, turn));
        }
      }
    }
    pencil.place(several, places);
  }
}
