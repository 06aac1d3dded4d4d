package slantlight.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slantlight.board.PlacedBoard;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Eye;
import slantlight.scene.Framing;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;

/**
 * Surfaces to scale with what is on them: boards, joints, openings, lamps, dimensions and the light
 * of the worst moment; one wall, or ceilings side by side. Names are written last, each where it
 * stands clear.
 */
public final class SurfacePlot {
  /** A lamp is drawn on a wall that it is nearer to than this, m. */
  private static final double NEAR = 0.6;

  private static final int NAMED_LAMPS = 2;

  /** Radius of a lamp's symbol, mm; on small scales that of a real one, m, but never too small. */
  private static final double LAMP = 1.8;

  private static final double REAL_LAMP = 0.2;
  private static final double LEAST_LAMP = 0.9;

  private static final double EYE = 1.5;
  private final House house;
  private final List<Part> parts;
  private final Look look;
  private final Pencil pencil;
  private final boolean plan;
  private final boolean several;
  private final double lampRadius;
  private final PlotOpenings openings;
  private final Optional<Part> worst;

  /** A plot to be drawn with a pencil; at least one part. */
  public SurfacePlot(House house, List<Part> parts, Look look, Pencil pencil) {
    this.house = house;
    this.parts = List.copyOf(parts);
    this.look = look;
    this.pencil = pencil;
    plan = PaperMap.plan(parts.get(0).face().frame());
    several = parts.stream().map(p -> p.surface().roomId()).distinct().count() > 1;
    openings = new PlotOpenings(house, this.parts, several, pencil);
    lampRadius = Math.max(LEAST_LAMP, Math.min(LAMP, parts.get(0).map().mm(REAL_LAMP)));
    worst =
        look.worst()
            ? parts.stream()
                .filter(p -> p.peak().isPresent())
                .max(Comparator.comparingDouble(p -> p.peak().orElseThrow().showing()))
            : Optional.empty();
  }

  /**
   * Draws all of it.
   *
   * @param dimensions distance of the dimension lines from the drawing, mm: that of the height left
   *     of it, then that of the width over it; empty for none
   */
  public void draw(Optional<Vec2> dimensions) {
    pencil.on("surface");
    parts.forEach(p -> pencil.fill(rings(p), look.field(p.surface())));
    pencil.on("boards");
    look.boards().ifPresent(pen -> boards().forEach((b, ring) -> pencil.outline(ring, pen)));
    pencil.on("covered");
    covered().forEach(this::cover);
    pencil.on("openings");
    openings.draw(plan);
    pencil.on("outline");
    for (Part p : parts) {
      pencil.area(rings(p), Optional.empty(), Optional.of(look.outline()), "", "");
    }
    pencil.on("framing");
    parts.forEach(p -> p.surface().framing().ifPresent(f -> framing(p, f)));
    pencil.on("joints");
    List<Placed> joints = joints();
    joints.forEach(this::joint);
    pencil.on("lamps");
    List<Spot> lamps = lamps();
    lamps.forEach(this::lamp);
    pencil.on("people");
    if (look.everyEye() && plan) {
      everyEye();
    }
    List<Spot> eyes = eyes();
    eyes.forEach(this::eye);
    pencil.on("light");
    Optional<Arrow> light = worst.flatMap(this::light);
    light.ifPresent(a -> pencil.arrow(a.tail(), a.tip(), 3.2, Pen.full(Ink.LIGHT, 0.7)));
    pencil.on("dimensions");
    dimensions.ifPresent(this::dimensions);
    pencil.on("names");
    openings.names();
    light.ifPresent(this::lightName);
    eyes.forEach(e -> spotName(e, EYE, 2.6, Ink.ACCENT));
    for (int i = joints.size() - 1; i >= 0; i--) {
      jointName(joints.get(i));
    }
    lamps.stream()
        .filter(l -> l.named() && !several)
        .forEach(l -> spotName(l, lampRadius, 2.4, Ink.LAMP));
    covered().forEach(this::coverName);
    if (look.boards().isPresent()) {
      boards().forEach(this::boardNumber);
    }
  }

  /** What all surfaces together cover. */
  public Extent extent() {
    return Extent.of(parts.stream().flatMap(p -> p.map().at(p.face().outer()).stream()).toList());
  }

  private static List<List<Vec2>> rings(Part p) {
    List<List<Vec2>> rings = new ArrayList<>();
    rings.add(p.map().at(p.face().outer()));
    p.face().holes().forEach(h -> rings.add(p.map().at(h)));
    return rings;
  }

  private Map<PlacedBoard, List<Vec2>> boards() {
    Map<PlacedBoard, List<Vec2>> out = new LinkedHashMap<>();
    for (Part p : parts) {
      p.score()
          .ifPresent(s -> s.layout().boards().forEach(b -> out.put(b, p.map().at(b.outline()))));
    }
    return out;
  }

  private void boardNumber(PlacedBoard board, List<Vec2> ring) {
    Extent e = Extent.of(ring);
    Lettering number = new Lettering(Integer.toString(board.number()), 2.2, Ink.SOFT, false);
    List<Mark.Label> places = new ArrayList<>();
    for (double x : new double[] {0, 3, 6, 9}) {
      for (double y : new double[] {e.top() + 3, e.bottom() - 1.2, e.middle().y() + 0.8}) {
        places.add(number.at(new Vec2(e.left() + 1.2 + x, y), Mark.Anchor.START));
        places.add(number.at(new Vec2(e.right() - 1.2 - x, y), Mark.Anchor.END));
      }
    }
    places.removeIf(p -> !e.holds(Extent.of(p.outline(0))));
    pencil.placeIfClear(places);
  }

  private List<List<Vec2>> covered() {
    return parts.stream()
        .flatMap(p -> p.surface().covered().stream().map(ring -> p.map().at(ring)))
        .toList();
  }

  private void cover(List<Vec2> ring) {
    Pen pen = Pen.dashed(Ink.SOFT, 0.2, 1);
    pencil.area(List.of(ring), Optional.of(Ink.COVER), Optional.of(pen), "", "");
  }

  private void coverName(List<Vec2> ring) {
    Lettering name = new Lettering("covered", 2.6, Ink.SOFT, false);
    pencil.placeIfClear(name.inside(Extent.of(ring)));
  }

  /** Ticks at the framing members where they meet the outline. */
  private void framing(Part p, Framing f) {
    Vec2 along = new Vec2(Math.cos(f.angle()), Math.sin(f.angle()));
    Vec2 square = new Vec2(-along.y(), along.x());
    List<Vec2> ring = p.face().outer();
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      Vec2 a = ring.get(j);
      Vec2 b = ring.get(i);
      double da = a.dot(square) - f.offset();
      double db = b.dot(square) - f.offset();
      if (Math.abs(db - da) < 1e-6) {
        continue;
      }
      int first = (int) Math.ceil(Math.min(da, db) / f.spacing() - 1e-9);
      int last = (int) Math.floor(Math.max(da, db) / f.spacing() + 1e-9);
      for (int k = first; k <= last; k++) {
        tick(p, a.lerp(b, (k * f.spacing() - da) / (db - da)), along);
      }
    }
  }

  private void tick(Part p, Vec2 at, Vec2 along) {
    double reach = 1.6 / p.map().mm(1);
    for (double way : new double[] {reach, -reach}) {
      Vec2 end = at.plus(along.times(way));
      if (p.face().contains(end)) {
        pencil.run(List.of(p.map().at(at), p.map().at(end)), Pen.full(Ink.SOFT, 0.15));
        return;
      }
    }
  }

  private record Placed(JointScore joint, PaperMap map) {
    private double showing() {
      return joint.atLevel(4).peakShowing();
    }

    private Vec2 at(double share) {
      return map.at(joint.joint().from().lerp(joint.joint().to(), share));
    }
  }

  /** All joints, the quietest first. */
  private List<Placed> joints() {
    return parts.stream()
        .flatMap(
            p ->
                p.score().stream()
                    .flatMap(s -> s.joints().stream())
                    .map(j -> new Placed(j, p.map())))
        .sorted(Comparator.comparingDouble(Placed::showing))
        .toList();
  }

  private void joint(Placed j) {
    String hover = Words.joint(j.joint());
    for (Look.Stretch s : look.stretches(j.joint(), j.map())) {
      pencil.run(List.of(j.at(s.from()), j.at(s.to())), s.pen(), hover, j.joint().joint().id());
    }
  }

  private void jointName(Placed j) {
    String text = look.name(j.joint());
    if (text.isEmpty()) {
      return;
    }
    Band band = Band.of(j.showing());
    Ink ink = band == Band.QUIET ? Ink.SOFT : Ink.LINE;
    Lettering name = new Lettering(text, 2.5, ink, band == Band.LOUD);
    double reach =
        look.stretches(j.joint(), j.map()).stream()
                .mapToDouble(s -> s.pen().width())
                .max()
                .orElse(0)
            / 2;
    Vec2 one = j.at(0);
    Vec2 other = j.at(1);
    boolean ahead = one.x() <= other.x();
    Vec2 a = ahead ? one : other;
    Vec2 b = ahead ? other : one;
    boolean upright = Math.abs(b.y() - a.y()) > Math.abs(b.x() - a.x());
    List<Mark.Label> places =
        upright
            ? name.along(a, b, reach, 0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9)
            : name.along(a, b, reach, 0.06, 0.02, 0.15, 0.25, 0.35, 0.45, 0.55, 0.65, 0.75);
    if (band == Band.QUIET || band == Band.TRACE) {
      pencil.placeIfClear(places);
    } else {
      pencil.place(several, places);
    }
  }

  /** A thing that is a point on the drawing. */
  private record Spot(String id, String label, Vec2 at, boolean named) {}

  private List<Spot> lamps() {
    List<Spot> out = new ArrayList<>();
    for (Lamp lamp : house.lamps()) {
      long inRoom = house.lamps().stream().filter(l -> l.roomId().equals(lamp.roomId())).count();
      parts.stream()
          .filter(p -> p.surface().roomId().equals(lamp.roomId()))
          .filter(p -> plan || p.face().frame().height(lamp.position()) < NEAR)
          .filter(p -> Face.inside(p.face().outer(), on(p, lamp.position())))
          .findFirst()
          .map(p -> p.map().at(on(p, lamp.position())))
          .ifPresent(at -> out.add(new Spot(lamp.id(), lamp.label(), at, inRoom <= NAMED_LAMPS)));
    }
    return out;
  }

  private Vec2 on(Part p, Vec3 place) {
    return plan ? p.above(place) : p.face().frame().toPlane(place);
  }

  private void lamp(Spot lamp) {
    Vec2 c = lamp.at();
    pencil.area(
        List.of(Pencil.round(c.x(), c.y(), lampRadius)),
        Optional.of(Ink.PAPER),
        Optional.of(Pen.full(Ink.LAMP, 0.35)),
        lamp.label(),
        lamp.id());
    double d = lampRadius * Math.sqrt(0.5);
    pencil.line(c.x() - d, c.y() - d, c.x() + d, c.y() + d, Pen.full(Ink.LAMP, 0.3));
    pencil.line(c.x() - d, c.y() + d, c.x() + d, c.y() - d, Pen.full(Ink.LAMP, 0.3));
  }

  /** The eye of the worst moment, on plans. */
  private List<Spot> eyes() {
    return worst.filter(p -> plan).stream()
        .flatMap(
            p ->
                house.eyes().stream()
                    .filter(e -> e.id().equals(p.peak().orElseThrow().eyeId()))
                    .map(e -> eye(p, e)))
        .toList();
  }

  private void everyEye() {
    for (Part p : parts) {
      for (Eye e : house.eyes()) {
        Vec2 at = p.above(e.position());
        if (e.roomId().equals(p.surface().roomId()) && Face.inside(p.face().outer(), at)) {
          Vec2 c = p.map().at(at);
          pencil.circle(
              c.x(), c.y(), 0.55, Optional.of(Ink.PAPER), Optional.of(Pen.full(Ink.SOFT, 0.2)));
        }
      }
    }
  }

  private static Spot eye(Part p, Eye eye) {
    return new Spot(eye.id(), eye.label(), p.map().at(p.above(eye.position())), true);
  }

  private void eye(Spot eye) {
    Part p = worst.orElseThrow();
    Vec2 to = p.map().at(p.face().frame().toPlane(p.peak().orElseThrow().place()));
    if (to.distance(eye.at()) > 4) {
      pencil.run(List.of(eye.at(), to), Pen.dashed(Ink.ACCENT, 0.25, 1.2));
    }
    pencil.circle(eye.at().x(), eye.at().y(), EYE, Optional.of(Ink.ACCENT), Optional.empty());
  }

  private void spotName(Spot spot, double reach, double size, Ink ink) {
    pencil.place(several, new Lettering(spot.label(), size, ink, false).around(spot.at(), reach));
  }

  private record Arrow(Vec2 tail, Vec2 tip, String words) {}

  private Optional<Arrow> light(Part p) {
    Peak peak = p.peak().orElseThrow();
    Frame f = p.face().frame();
    Vec2 place = f.toPlane(peak.place());
    Optional<Vec2> d = origin(peak).map(from -> place.minus(f.toPlane(from)));
    if (d.isEmpty() || d.get().length() < 0.05) {
      return Optional.empty();
    }
    Vec2 toward = p.map().direction(d.get()).unit();
    Vec2 tip = p.map().at(place).minus(toward.times(1.5));
    double length = Math.max(6, Math.min(16, room(tip, toward.times(-1)) - 1));
    return Optional.of(
        new Arrow(tip.minus(toward.times(length)), tip, "light, grazing " + Words.deg(peak)));
  }

  private void lightName(Arrow arrow) {
    Lettering name = new Lettering(arrow.words(), 2.8, Ink.LIGHT, true);
    List<Mark.Label> places = new ArrayList<>(name.around(arrow.tail(), 0.4));
    places.addAll(name.along(arrow.tail(), arrow.tip(), 0.4, 0.2, 0.5, 0.8));
    places.addAll(name.around(arrow.tail(), 3));
    places.addAll(name.around(arrow.tail().lerp(arrow.tip(), 0.5), 2));
    pencil.place(several, places);
  }

  /** Distance on paper from a point to the edge of the drawing in a direction. */
  private double room(Vec2 from, Vec2 d) {
    Extent e = extent();
    double x = ((d.x() > 0 ? e.right() : e.left()) - from.x()) / away(d.x());
    double y = ((d.y() > 0 ? e.bottom() : e.top()) - from.y()) / away(d.y());
    return Math.min(x, y);
  }

  /** Never nought, of the same sign. */
  private static double away(double d) {
    return d > 0 ? Math.max(1e-9, d) : Math.min(-1e-9, d);
  }

  private Optional<Vec3> origin(Peak peak) {
    return Stream.concat(
            house.openings().stream()
                .filter(o -> o.id().equals(peak.source().via()))
                .map(o -> o.face().frame().toWorld(o.face().centroid())),
            house.lamps().stream()
                .filter(l -> l.id().equals(peak.source().via()))
                .map(Lamp::position))
        .findFirst();
  }

  private void dimensions(Vec2 away) {
    Extent e = extent();
    double mm = parts.get(0).map().mm(1);
    Vec2 corner = new Vec2(e.left(), e.top());
    pencil.dimension(corner, new Vec2(e.right(), e.top()), away.y(), Words.length(e.width() / mm));
    pencil.dimension(
        new Vec2(e.left(), e.bottom()), corner, away.x(), Words.length(e.height() / mm));
  }

  /** Which way north is on paper; empty for a wall. */
  public Optional<Vec2> north() {
    Part p = parts.get(0);
    Vec3 local = p.face().frame().directionToLocal(Vec3.NORTH);
    Vec2 d = p.map().direction(new Vec2(local.x(), local.y()));
    return plan && d.length() > 0.1 * p.map().mm(1) ? Optional.of(d.unit()) : Optional.empty();
  }
}
