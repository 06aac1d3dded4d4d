package slantlight.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.board.PlacedBoard;
import slantlight.decide.Showing;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Eye;
import slantlight.scene.Framing;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;

/**
 * One surface to scale: a reflected ceiling plan or an elevation seen from inside, with boards,
 * joints by band, openings, lamps, dimensions, north and the light of the worst moment.
 */
public final class SurfaceSheet {
  private static final double PAGE = 184;
  private static final double LEFT = 28;
  private static final double TOP = 22;
  private static final double MAX_WIDTH = 132;
  private static final double MAX_HEIGHT = 150;
  private static final double FOOT = 35;
  private static final double NEAR = 0.6;
  private static final int LONGEST = 95;
  private static final int NAMED_LAMPS = 2;
  private static final double HALF_PLATE = 16;

  /** Width of a letter of a small label, mm. */
  private static final double LETTER = 1.15;

  private final House house;
  private final SurfaceScore score;
  private final Surface surface;
  private final Face face;
  private final PaperMap map;
  private final boolean plan;
  private final Pencil pencil = new Pencil();

  private SurfaceSheet(House house, SurfaceScore score) {
    this.house = house;
    this.score = score;
    surface = house.surface(score.surfaceId());
    face = surface.face();
    plan = PaperMap.plan(face.frame());
    map = PaperMap.of(face, LEFT, TOP, MAX_WIDTH, MAX_HEIGHT);
  }

  /**
   * Draws a surface.
   *
   * @param id safe id of the drawing
   */
  public static Drawing of(House house, SurfaceScore score, String id) {
    return new SurfaceSheet(house, score).draw(id);
  }

  private Drawing draw(String id) {
    pencil.on("surface").area(rings(), Optional.of(Ink.PAPER), Optional.empty(), "", "");
    pencil.on("boards");
    boards();
    pencil.on("covered");
    covered();
    pencil.on("openings");
    openings();
    pencil.on("outline").outline(map.at(face.outer()), Pen.full(Ink.LINE, 0.5));
    pencil.on("framing");
    surface.framing().ifPresent(this::framing);
    pencil.on("joints");
    joints();
    pencil.on("lamps");
    lamps();
    pencil.on("people");
    eyes();
    pencil.on("light");
    Showing.worst(score).ifPresent(this::light);
    pencil.on("dimensions");
    dimensions();
    pencil.on("names");
    jointNames();
    double bottom = TOP + map.height() + 13;
    pencil.on("legend");
    legend(bottom);
    return pencil.drawing(id, title(), description(), PAGE, bottom + FOOT - 13);
  }

  private String title() {
    return (plan ? "Reflected plan: " : "Elevation from inside: ")
        + surface.label()
        + ", 1:"
        + map.denominator();
  }

  private String description() {
    StringBuilder out = new StringBuilder();
    out.append(score.layout().boards().size()).append(" boards and ");
    out.append(score.joints().size()).append(" joints on ").append(surface.label());
    out.append(", drawn 1:").append(map.denominator()).append(". ");
    for (Band band : Band.values()) {
      long count =
          score.joints().stream().filter(j -> Band.of(j.atLevel(4).peakShowing()) == band).count();
      out.append(count).append(' ').append(Words.word(band)).append(band == Band.LOUD ? "." : ", ");
    }
    return out.toString();
  }

  private List<List<Vec2>> rings() {
    List<List<Vec2>> rings = new ArrayList<>();
    rings.add(map.at(face.outer()));
    face.holes().forEach(h -> rings.add(map.at(h)));
    return rings;
  }

  private void boards() {
    for (PlacedBoard b : score.layout().boards()) {
      pencil.outline(map.at(b.outline()), Pen.full(Ink.BOARD, 0.18));
      Vec2 corner = topLeft(map.at(b.outline()));
      pencil.text(corner.x() + 1, corner.y() + 3, Integer.toString(b.number()), 2.2, Ink.SOFT);
    }
  }

  private void covered() {
    for (List<Vec2> ring : surface.covered()) {
      List<Vec2> paper = map.at(ring);
      pencil.area(
          List.of(paper),
          Optional.of(Ink.COVER),
          Optional.of(Pen.dashed(Ink.SOFT, 0.2, 1)),
          "",
          "");
      Vec2 c = middle(paper);
      pencil.centred(c.x(), c.y() + 1, "covered", 2.6, Ink.SOFT);
    }
  }

  private void openings() {
    Map<List<Vec2>, List<String>> onEdges = new LinkedHashMap<>();
    for (Opening o : house.openings()) {
      if (o.surfaceId().equals(surface.id())) {
        opening(o);
      } else if (plan && o.roomId().equals(surface.roomId()) && !PaperMap.plan(o.face().frame())) {
        edgeOpening(o, onEdges);
      }
    }
    onEdges.forEach(this::edgeNames);
  }

  private void opening(Opening o) {
    List<Vec2> ring = map.at(o.face().outer());
    pencil.area(
        List.of(ring),
        Optional.of(Ink.GLASS),
        Optional.of(Pen.full(Ink.GLASS_EDGE, 0.35)),
        o.label(),
        o.id());
    if (ring.size() == 4) {
      pencil.line(
          ring.get(0).x(),
          ring.get(0).y(),
          ring.get(2).x(),
          ring.get(2).y(),
          Pen.full(Ink.GLASS_EDGE, 0.12));
    }
    Vec2 c = middle(ring);
    pencil.centred(c.x(), c.y() + 1, o.label(), 2.8, Ink.LINE);
  }

  /** An opening of a wall, on the plan's edge; openings above one another share a name plate. */
  private void edgeOpening(Opening o, Map<List<Vec2>, List<String>> onEdges) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Vec2 p : o.face().outer()) {
      low = Math.min(low, p.x());
      high = Math.max(high, p.x());
    }
    Vec2 a = above(o.face().frame().toWorld(new Vec2(low, 0)));
    Vec2 b = above(o.face().frame().toWorld(new Vec2(high, 0)));
    Vec3 out = face.frame().directionToLocal(o.face().frame().n().times(-1));
    Vec2 away = map.direction(new Vec2(out.x(), out.y())).unit();
    Vec2 far = away.times(1.8);
    pencil.area(
        List.of(List.of(a, b, b.plus(far), a.plus(far))),
        Optional.of(Ink.GLASS),
        Optional.of(Pen.full(Ink.GLASS_EDGE, 0.3)),
        o.label(),
        o.id());
    for (Map.Entry<List<Vec2>, List<String>> e : onEdges.entrySet()) {
      if (e.getKey().get(0).distance(a.lerp(b, 0.5)) < 8) {
        e.getValue().add(o.label());
        return;
      }
    }
    Vec2 size = new Vec2(a.distance(b), 0);
    onEdges.put(List.of(a.lerp(b, 0.5), away, size), new ArrayList<>(List.of(o.label())));
  }

  private void edgeNames(List<Vec2> place, List<String> names) {
    Vec2 away = place.get(1);
    Vec2 at = place.get(0).plus(away.times(away.y() > 0.5 ? 4.6 : 2.8));
    boolean upright = Math.abs(away.x()) > 0.7;
    String all = String.join(", ", names);
    boolean fits = all.length() * LETTER < Math.max(30, place.get(2).x() + 6);
    String text = fits ? all : names.get(0) + " and " + (names.size() - 1) + " more";
    pencil.label(
        at.x(),
        at.y(),
        text,
        2.5,
        Mark.Anchor.MIDDLE,
        upright ? (away.x() > 0 ? 90 : -90) : 0,
        Ink.GLASS_EDGE,
        false);
  }

  /** Paper place of the point of this surface straight above or below a world point. */
  private Vec2 above(Vec3 p) {
    Frame f = face.frame();
    double z =
        f.origin().z()
            - ((p.x() - f.origin().x()) * f.n().x() + (p.y() - f.origin().y()) * f.n().y())
                / f.n().z();
    return map.at(f.toPlane(new Vec3(p.x(), p.y(), z)));
  }

  /** Ticks at the framing members where they meet the outline. */
  private void framing(Framing f) {
    Vec2 along = new Vec2(Math.cos(f.angle()), Math.sin(f.angle()));
    Vec2 square = new Vec2(-along.y(), along.x());
    List<Vec2> ring = face.outer();
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
        tick(a.lerp(b, (k * f.spacing() - da) / (db - da)), along);
      }
    }
  }

  private void tick(Vec2 at, Vec2 along) {
    double reach = 1.6 / map.mm(1);
    Vec2 inward = face.contains(at.plus(along.times(reach))) ? along : along.times(-1);
    Vec2 p = map.at(at);
    Vec2 q = map.at(at.plus(inward.times(reach)));
    pencil.line(p.x(), p.y(), q.x(), q.y(), Pen.full(Ink.SOFT, 0.15));
  }

  private void joints() {
    List<JointScore> sorted = new ArrayList<>(score.joints());
    sorted.sort((a, b) -> Double.compare(a.atLevel(4).peakShowing(), b.atLevel(4).peakShowing()));
    for (JointScore j : sorted) {
      joint(j);
    }
  }

  /** Draws a joint piece by piece in the band that each piece reaches in the year. */
  private void joint(JointScore j) {
    String hover = Words.joint(j);
    List<Double> profile = j.profile();
    if (profile.size() < 2) {
      Band band = Band.of(j.atLevel(4).peakShowing());
      piece(j, 0, 1, band, hover);
      return;
    }
    int steps = profile.size();
    int from = 0;
    for (int i = 1; i <= steps; i++) {
      if (i == steps || Band.of(profile.get(i)) != Band.of(profile.get(from))) {
        double t0 = from == 0 ? 0 : (from - 0.5) / (steps - 1);
        double t1 = i == steps ? 1 : (i - 0.5) / (steps - 1);
        piece(j, t0, t1, Band.of(profile.get(from)), hover);
        from = i;
      }
    }
  }

  private void piece(JointScore j, double t0, double t1, Band band, String hover) {
    Vec2 a = map.at(j.joint().from().lerp(j.joint().to(), t0));
    Vec2 b = map.at(j.joint().from().lerp(j.joint().to(), t1));
    pencil.run(List.of(a, b), Pen.of(band), hover, j.joint().id());
  }

  private void jointNames() {
    List<Vec2> taken = new ArrayList<>();
    List<JointScore> sorted = new ArrayList<>(score.joints());
    sorted.sort((a, b) -> Double.compare(b.atLevel(4).peakShowing(), a.atLevel(4).peakShowing()));
    for (JointScore j : sorted) {
      Vec2 one = map.at(j.joint().from());
      Vec2 other = map.at(j.joint().to());
      Vec2 a = one.x() <= other.x() ? one : other;
      Vec2 b = one.x() <= other.x() ? other : one;
      boolean upright = Math.abs(b.y() - a.y()) > Math.abs(b.x() - a.x());
      Vec2 at = a.lerp(b, upright ? 0.5 : 0.06).plus(upright ? new Vec2(1.2, 1) : new Vec2(0, -1));
      if (taken.stream()
          .anyMatch(t -> Math.abs(t.x() - at.x()) < 7 && Math.abs(t.y() - at.y()) < 3)) {
        continue;
      }
      taken.add(at);
      double showing = j.atLevel(4).peakShowing();
      String text = Words.shortId(j.joint().id());
      boolean shows = Band.of(showing) != Band.QUIET;
      pencil.label(
          at.x(),
          at.y(),
          shows ? text + " " + Words.times(showing) : text,
          2.5,
          Mark.Anchor.START,
          0,
          shows ? Ink.LINE : Ink.SOFT,
          Band.of(showing) == Band.LOUD);
    }
  }

  private void lamps() {
    long inRoom = house.lamps().stream().filter(l -> l.roomId().equals(surface.roomId())).count();
    for (Lamp lamp : house.lamps()) {
      if (!lamp.roomId().equals(surface.roomId())) {
        continue;
      }
      double height = face.frame().height(lamp.position());
      Vec2 p = face.frame().toPlane(lamp.position());
      if ((plan || height < NEAR) && Face.inside(face.outer(), p)) {
        Vec2 c = plan ? above(lamp.position()) : map.at(p);
        pencil.area(
            List.of(Pencil.round(c.x(), c.y(), 1.8)),
            Optional.of(Ink.PAPER),
            Optional.of(Pen.full(Ink.LAMP, 0.35)),
            lamp.label(),
            lamp.id());
        pencil.line(
            c.x() - 1.27, c.y() - 1.27, c.x() + 1.27, c.y() + 1.27, Pen.full(Ink.LAMP, 0.3));
        pencil.line(
            c.x() - 1.27, c.y() + 1.27, c.x() + 1.27, c.y() - 1.27, Pen.full(Ink.LAMP, 0.3));
        if (inRoom <= NAMED_LAMPS) {
          boolean leftward = c.x() > LEFT + map.width() / 2;
          pencil.plate(
              c.x() + (leftward ? -2.6 : 2.6),
              c.y() + 0.9,
              lamp.label(),
              2.4,
              leftward ? Mark.Anchor.END : Mark.Anchor.START,
              Ink.LAMP,
              false);
        }
      }
    }
  }

  /** The eye of the worst moment, on plans. */
  private void eyes() {
    Optional<Peak> worst = Showing.worst(score);
    if (!plan || worst.isEmpty()) {
      return;
    }
    for (Eye eye : house.eyes()) {
      if (eye.id().equals(worst.get().eyeId())) {
        Vec2 c = above(eye.position());
        Vec2 to = map.at(face.frame().toPlane(worst.get().place()));
        if (to.distance(c) > 4) {
          pencil.run(List.of(c, to), Pen.dashed(Ink.ACCENT, 0.25, 1.2));
        }
        pencil.circle(c.x(), c.y(), 1.5, Optional.of(Ink.ACCENT), Optional.empty());
        boolean leftward = c.x() > LEFT + map.width() / 2;
        pencil.plate(
            c.x() + (leftward ? -2.2 : 2.2),
            c.y() + 1,
            eye.label(),
            2.6,
            leftward ? Mark.Anchor.END : Mark.Anchor.START,
            Ink.ACCENT,
            false);
      }
    }
  }

  private void light(Peak peak) {
    Optional<Vec3> from = origin(peak);
    if (from.isEmpty()) {
      return;
    }
    Vec2 place = face.frame().toPlane(peak.place());
    Vec2 d = place.minus(face.frame().toPlane(from.get()));
    if (d.length() < 0.05) {
      return;
    }
    Vec2 paper = map.direction(d.unit());
    Vec2 tip = map.at(place).minus(paper.times(1.5));
    double length = Math.max(6, Math.min(16, room(tip, paper.times(-1)) - 1));
    Vec2 tail = tip.minus(paper.times(length));
    pencil.arrow(tail, tip, 3.2, Pen.full(Ink.LIGHT, 0.7));
    boolean steep = Math.abs(paper.y()) > 0.5;
    double x = steep ? tail.x() : tail.lerp(tip, 0.5).x();
    double y = steep ? tail.y() + (paper.y() < 0 ? 3.2 : -1.4) : Math.min(tail.y(), tip.y()) - 2.4;
    pencil.plate(
        clamp(x, LEFT + HALF_PLATE, LEFT + map.width() - HALF_PLATE),
        clamp(y, TOP + 3, TOP + map.height() - 1),
        "light, grazing " + Words.deg(peak),
        2.8,
        Mark.Anchor.MIDDLE,
        Ink.LIGHT,
        true);
  }

  /** Distance on paper from a point to the edge of the drawing in a direction. */
  private double room(Vec2 from, Vec2 d) {
    double x =
        d.x() > 0
            ? (LEFT + map.width() - from.x()) / d.x()
            : (LEFT - from.x()) / Math.min(-1e-9, d.x());
    double y =
        d.y() > 0
            ? (TOP + map.height() - from.y()) / d.y()
            : (TOP - from.y()) / Math.min(-1e-9, d.y());
    return Math.min(x, y);
  }

  private static double clamp(double v, double low, double high) {
    return high < low ? (low + high) / 2 : Math.max(low, Math.min(high, v));
  }

  private Optional<Vec3> origin(Peak peak) {
    for (Opening o : house.openings()) {
      if (o.id().equals(peak.source().via())) {
        return Optional.of(o.face().frame().toWorld(o.face().centroid()));
      }
    }
    return house.lamps().stream()
        .filter(l -> l.id().equals(peak.source().via()))
        .map(Lamp::position)
        .findFirst();
  }

  private void dimensions() {
    double right = LEFT + map.width();
    double bottom = TOP + map.height();
    double w = map.width() / map.mm(1);
    double h = map.height() / map.mm(1);
    pencil.dimension(new Vec2(LEFT, TOP), new Vec2(right, TOP), 12, Words.length(w));
    pencil.dimension(new Vec2(LEFT, bottom), new Vec2(LEFT, TOP), 14, Words.length(h));
    if (plan) {
      north(right + 13, TOP + 7);
    }
  }

  private void north(double x, double y) {
    Vec3 local = face.frame().directionToLocal(Vec3.NORTH);
    Vec2 d = map.direction(new Vec2(local.x(), local.y()));
    if (d.length() < 0.1) {
      return;
    }
    Vec2 c = new Vec2(x, y);
    Vec2 up = d.unit();
    pencil.circle(x, y, 5, Optional.empty(), Optional.of(Pen.full(Ink.SOFT, 0.2)));
    pencil.arrow(c.minus(up.times(5)), c.plus(up.times(5)), 4, Pen.full(Ink.LINE, 0.4));
    Vec2 n = c.plus(up.times(7.4));
    pencil.label(n.x(), n.y() + 1.1, "N", 3.2, Mark.Anchor.MIDDLE, 0, Ink.LINE, true);
  }

  private void legend(double top) {
    double x = LEFT;
    double y = top + 2;
    for (Band band : Band.values()) {
      pencil.line(x, y, x + 11, y, Pen.of(band));
      pencil.text(x + 12.5, y + 1, Words.word(band) + range(band), 2.7, Ink.LINE);
      x += 37;
    }
    double metre = map.denominator() >= 100 ? 5 : map.denominator() >= 40 ? 2 : 1;
    double bar = map.mm(metre);
    double by = y + 8;
    pencil.box(LEFT, by, bar / 2, 1, Ink.LINE);
    pencil.area(
        List.of(Pencil.rectangle(LEFT + bar / 2, by, bar / 2, 1)),
        Optional.empty(),
        Optional.of(Pen.full(Ink.LINE, 0.2)),
        "",
        "");
    pencil.text(LEFT + bar + 2, by + 1.2, (int) metre + " m", 2.7, Ink.LINE);
    pencil.text(
        LEFT + bar + 14,
        by + 1.2,
        "1:" + map.denominator() + " on paper; figures: showing at level 4, worst of the year",
        2.7,
        Ink.SOFT);
    pencil.label(LEFT, by + 6.5, shortened(title()), 2.9, Mark.Anchor.START, 0, Ink.LINE, true);
  }

  /** At most as long as the sheet is wide. */
  private static String shortened(String text) {
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "\u2026";
  }

  private static String range(Band band) {
    return switch (band) {
      case QUIET -> " under 1\u00d7";
      case TRACE -> " from 1\u00d7";
      case PLAIN -> " from 2.5\u00d7";
      case LOUD -> " from 6\u00d7";
    };
  }

  private static Vec2 topLeft(List<Vec2> ring) {
    double x = Double.POSITIVE_INFINITY;
    double y = Double.POSITIVE_INFINITY;
    for (Vec2 p : ring) {
      x = Math.min(x, p.x());
      y = Math.min(y, p.y());
    }
    return new Vec2(x, y);
  }

  private static Vec2 middle(List<Vec2> ring) {
    double x = 0;
    double y = 0;
    for (Vec2 p : ring) {
      x += p.x();
      y += p.y();
    }
    return new Vec2(x / ring.size(), y / ring.size());
  }
}
