package slantlight.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.Room;
import slantlight.scene.Surface;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;

/**
 * An upright section from the outside through the window to the worst place of a ceiling: how light
 * from the ground slips in under the head and grazes the board, which the sun itself never does.
 */
public final class SectionSheet {
  private static final double PAGE = 184;
  private static final double LEFT = 10;
  private static final double TOP = 14;
  private static final double WIDTH = 164;
  private static final double OUTSIDE = 3.5;
  private static final double STEP = 0.05;
  private static final double UNDER = 10;

  /** Depth of earth that is drawn, mm. */
  private static final double EARTH = 5;

  private final House house;
  private final Opening opening;
  private final Peak peak;
  private final Vec3 along;
  private final Vec3 foot;
  private final double place;
  private final double sill;
  private final double head;
  private final double top;
  private final Vec3 normal;
  private final double depth;
  private final double floor;
  private final double ground;
  private final double ceiling;
  private final int denominator;
  private final List<Vec2> roof = new ArrayList<>();
  private final Paper paper;
  private final Pencil pencil;

  private SectionSheet(House house, Opening opening, Peak peak, Surface surface) {
    this.house = house;
    this.opening = opening;
    this.peak = peak;
    Vec3 inward = opening.face().frame().n();
    along = new Vec3(inward.x(), inward.y(), 0).unit();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Vec3 c : opening.face().corners()) {
      low = Math.min(low, c.z());
      high = Math.max(high, c.z());
    }
    sill = low;
    double from = opening.face().frame().origin().dot(along);
    place = peak.place().dot(along) - from;
    foot = peak.place().minus(along.times(place));
    Room room = house.room(opening.roomId());
    floor = room.floor();
    ground = house.outside().groundZ();
    depth = depth(room);
    ceiling = peak.place().z();
    normal = surface.face().frame().n();
    double plane = ceiling + place * normal.dot(along) / normal.z();
    head = Math.max(low + 1e-3, Math.min(high, plane));
    top = high;
    double[] usual = {20, 25, 33, 50, 75, 100, 150, 200, 500};
    int chosen = (int) usual[usual.length - 1];
    for (int i = usual.length - 1; i >= 0; i--) {
      if ((depth + OUTSIDE) * 1000 / usual[i] <= WIDTH) {
        chosen = (int) usual[i];
      }
    }
    denominator = chosen;
    double scale = 1000.0 / chosen;
    double peakZ = Math.max(ceiling, top);
    for (double t = 0; t < depth - STEP / 2; t += STEP) {
      double z = ceilingAt(t);
      if (!Double.isNaN(z)) {
        roof.add(new Vec2(t, z));
        peakZ = Math.max(peakZ, z);
      }
    }
    if (!roof.isEmpty()) {
      roof.add(new Vec2(depth, roof.get(roof.size() - 1).y()));
    }
    double lowest = Math.min(ground, floor) - EARTH / scale;
    paper = new Paper(LEFT + OUTSIDE * scale, TOP + (peakZ - lowest) * scale, lowest, scale);
    pencil = new Pencil(PAGE, paper.base() + UNDER);
  }

  /**
   * Draws the section to the worst place of a ceiling; empty when the surface is no ceiling or its
   * worst light does not come through an upright window.
   *
   * @param id safe id of the drawing
   */
  public static Optional<Drawing> of(House house, SurfaceScore score, String id) {
    Surface surface = house.surface(score.surfaceId());
    Frame frame = surface.face().frame();
    if (score.worst().isEmpty() || frame.n().z() > -0.5) {
      return Optional.empty();
    }
    Peak peak = score.worst().get();
    return house.openings().stream()
        .filter(o -> o.id().equals(peak.source().via()))
        .filter(o -> Math.abs(o.face().frame().n().z()) < 0.5)
        .map(o -> new SectionSheet(house, o, peak, surface))
        .filter(s -> s.place > STEP)
        .findFirst()
        .map(s -> s.draw(id, surface));
  }

  private Drawing draw(String id, Surface surface) {
    double low = paper.low();
    List<Vec2> earth =
        List.of(
            paper.at(-OUTSIDE, ground),
            paper.at(0, ground),
            paper.at(0, low),
            paper.at(-OUTSIDE, low));
    pencil.on("ground").fill(List.of(earth), Ink.GROUND);
    pencil.on("light");
    Vec2 arrow = light();
    pencil.on("room");
    pencil.run(List.of(paper.at(-OUTSIDE, ground), paper.at(0, ground)), Pen.full(Ink.LINE, 0.4));
    pencil.run(List.of(paper.at(0, floor), paper.at(depth, floor)), Pen.full(Ink.LINE, 0.7));
    if (roof.size() > 1) {
      pencil.run(roof.stream().map(p -> paper.at(p.x(), p.y())).toList(), Pen.full(Ink.LINE, 0.7));
      Vec2 end = roof.get(roof.size() - 1);
      pencil.run(
          List.of(paper.at(end.x(), end.y()), paper.at(depth, floor)), Pen.full(Ink.LINE, 0.7));
      pencil.run(List.of(paper.at(0, top), paper.at(0, roof.get(0).y())), Pen.full(Ink.LINE, 1.2));
    }
    pencil.run(List.of(paper.at(0, low), paper.at(0, sill)), Pen.full(Ink.LINE, 1.2));
    pencil.run(List.of(paper.at(0, sill), paper.at(0, top)), Pen.full(Ink.GLASS_EDGE, 0.8));
    pencil.on("figures");
    figures(arrow);
    String title =
        "Section through the "
            + opening.label()
            + " to the worst place of "
            + surface.label()
            + ", 1:"
            + denominator;
    String description =
        String.format(
            Locale.ROOT,
            "Light from outside enters between sill and head and meets the ceiling %.2f metres in,"
                + " at %.0f to %.0f degrees to the surface.",
            place,
            angle(head),
            angle(sill));
    return pencil.drawing(id, title, description, PAGE, paper.base() + UNDER);
  }

  /**
   * The wedge of directions that reach the worst place through the glass.
   *
   * @return where the arrow in it begins
   */
  private Vec2 light() {
    Vec2 p = paper.at(place, ceiling);
    Vec2 viaHead = outside(head);
    Vec2 viaSill = outside(sill);
    List<Vec2> wedge = new ArrayList<>();
    wedge.add(p);
    wedge.add(paper.at(viaHead.x(), viaHead.y()));
    if (viaSill.x() > viaHead.x()) {
      wedge.add(paper.at(viaHead.x(), ground));
    }
    wedge.add(paper.at(viaSill.x(), viaSill.y()));
    pencil.fill(List.of(wedge), Ink.COVER);
    for (int i = 0; i <= 4; i++) {
      double z = head + (sill - head) * i / 4;
      Vec2 far = outside(z);
      boolean edge = i == 0 || i == 4;
      pencil.run(List.of(paper.at(far.x(), far.y()), p), Pen.full(Ink.LIGHT, edge ? 0.35 : 0.15));
    }
    Vec2 arrow = paper.at(place * 0.55, ceiling - (ceiling - (head + sill) / 2) * 0.55);
    double length = Math.min(10, 0.8 * arrow.distance(p));
    pencil.arrow(
        arrow, arrow.plus(p.minus(arrow).unit().times(length)), 3, Pen.full(Ink.LIGHT, 0.7));
    return arrow;
  }

  /** Where the line from the worst place through a height of the glass ends outside. */
  private Vec2 outside(double z) {
    double slope = (ceiling - z) / place;
    double reach = slope <= 0 ? OUTSIDE : Math.min(OUTSIDE, (z - ground) / slope);
    return new Vec2(-reach, z - slope * reach);
  }

  private void figures(Vec2 arrow) {
    Vec2 p = paper.at(place, ceiling);
    pencil.circle(p.x(), p.y(), 1.2, Optional.of(Ink.PLAIN), Optional.empty());
    pencil.dimension(paper.at(0, floor), paper.at(place, floor), -5, Words.length(place));
    Optional<Eye> eye = house.eyes().stream().filter(e -> e.id().equals(peak.eyeId())).findFirst();
    Optional<Vec2> at =
        eye.map(e -> paper.at(e.position().minus(foot).dot(along), e.position().z()));
    at.ifPresent(
        e -> {
          pencil.run(List.of(e, p), Pen.dashed(Ink.ACCENT, 0.25, 1.2));
          pencil.circle(e.x(), e.y(), 1.4, Optional.of(Ink.ACCENT), Optional.empty());
        });
    pencil.place(
        new Lettering(Words.times(peak.showing()) + " here", 3, Ink.LINE, true).around(p, 1.2));
    grazing(arrow);
    Lettering window = new Lettering(opening.label(), 2.6, Ink.GLASS_EDGE, false);
    List<Mark.Label> places = new ArrayList<>(window.around(paper.at(0, (sill + top) / 2), 0.6));
    places.addAll(
        window.along(paper.at(0, sill), paper.at(0, paper.low()), 0.6, 0.03, 0.1, 0.2, 0.4, 0.6));
    pencil.place(places);
    eye.ifPresent(
        e ->
            pencil.place(
                new Lettering(e.label(), 2.7, Ink.ACCENT, false).around(at.orElseThrow(), 1.4)));
    Extent earth = Extent.of(List.of(paper.at(-OUTSIDE, ground), paper.at(0, paper.low())));
    pencil.place(new Lettering("ground", 2.8, Ink.LINE, false).inside(earth));
  }

  /** The angles of the light, under its lowest ray or else wherever there is room near it. */
  private void grazing(Vec2 arrow) {
    Lettering angles =
        new Lettering(
            String.format(
                Locale.ROOT,
                "grazing %.0f\u00b0 to %.0f\u00b0, on average %s",
                angle(head),
                angle(sill),
                Words.deg(peak)),
            3,
            Ink.LIGHT,
            true);
    List<Mark.Label> places = new ArrayList<>();
    for (double share : new double[] {0.5, 0.25, 0.75, 0}) {
      Vec2 ray = paper.at(place * share, sill + (ceiling - sill) * share);
      places.addAll(angles.around(ray, 1));
    }
    places.addAll(angles.around(arrow, 4));
    pencil.place(places);
  }

  /** Angle between the ceiling and the line to a height of the glass, degrees. */
  private double angle(double z) {
    Vec3 d = along.times(-place).plus(new Vec3(0, 0, z - ceiling)).unit();
    return Math.toDegrees(Math.asin(Math.max(0, Math.min(1, d.dot(normal)))));
  }

  private double depth(Room room) {
    double t = STEP;
    while (t < 100 && inRoom(room, t)) {
      t += STEP;
    }
    return Math.max(t, place + 0.3);
  }

  private boolean inRoom(Room room, double t) {
    Vec3 p = foot.plus(along.times(t));
    return Face.inside(room.outline(), new Vec2(p.x(), p.y()));
  }

  private double ceilingAt(double t) {
    Vec3 p = foot.plus(along.times(t));
    for (Surface s : house.surfaces()) {
      Frame f = s.face().frame();
      if (!s.roomId().equals(opening.roomId()) || f.n().z() > -0.2) {
        continue;
      }
      Vec2 over = PaperMap.above(f, new Vec2(p.x(), p.y()));
      if (Face.inside(s.face().outer(), over)) {
        return f.toWorld(over).z();
      }
    }
    return Double.NaN;
  }

  /** Metres inward and height to paper. */
  private record Paper(double x0, double base, double low, double scale) {
    Vec2 at(double t, double z) {
      return new Vec2(x0 + t * scale, base - (z - low) * scale);
    }
  }
}
