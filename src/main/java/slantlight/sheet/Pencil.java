package slantlight.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.units.Measures;

/** Collects marks into layers; all coordinates are millimetres of paper, y downward. */
public final class Pencil {
  private final Clearance clearance;
  private final Map<String, List<Mark>> layers = new LinkedHashMap<>();
  private List<Mark> current = new ArrayList<>();

  /** For a sheet of any size. */
  public Pencil() {
    this(1e6, 1e6);
  }

  /** For a sheet of that size, mm; labels that seek their place stay on it. */
  public Pencil(double width, double height) {
    clearance = new Clearance(new Extent(0, 0, width, height).grown(-0.5));
  }

  private Pencil add(Mark mark) {
    current.add(mark);
    clearance.keepOff(mark);
    return this;
  }

  /** Draws on this layer from now on; layers appear in the order first named. */
  public Pencil on(String layer) {
    current = layers.computeIfAbsent(layer, id -> new ArrayList<>());
    return this;
  }

  /** A straight line. */
  public Pencil line(double x0, double y0, double x1, double y1, Pen pen) {
    return run(List.of(new Vec2(x0, y0), new Vec2(x1, y1)), pen);
  }

  /** A run of straight lines. */
  public Pencil run(List<Vec2> points, Pen pen) {
    return run(points, pen, "", "");
  }

  /** A run of straight lines that stands for something. */
  public Pencil run(List<Vec2> points, Pen pen, String hover, String key) {
    return add(
        new Mark.Path(List.of(points), false, Optional.empty(), Optional.of(pen), hover, key));
  }

  /** A filled area. */
  public Pencil fill(List<List<Vec2>> rings, Colour ink) {
    return area(rings, Optional.of(ink), Optional.empty(), "", "");
  }

  /** An outline. */
  public Pencil outline(List<Vec2> ring, Pen pen) {
    return area(List.of(ring), Optional.empty(), Optional.of(pen), "", "");
  }

  /** An area with fill, outline or both. */
  public Pencil area(
      List<List<Vec2>> rings, Optional<Colour> fill, Optional<Pen> pen, String hover, String key) {
    return add(new Mark.Path(rings, true, fill, pen, hover, key));
  }

  /** A filled rectangle. */
  public Pencil box(double x, double y, double w, double h, Ink ink) {
    return fill(List.of(rectangle(x, y, w, h)), ink);
  }

  /** A circle. */
  public Pencil circle(
      double x, double y, double radius, Optional<Colour> fill, Optional<Pen> pen) {
    return area(List.of(round(x, y, radius)), fill, pen, "", "");
  }

  /** Plain text that begins at a point. */
  public Pencil text(double x, double y, String text, double size, Ink ink) {
    return label(x, y, text, size, Mark.Anchor.START, 0, ink, false);
  }

  /** Plain text centred on a point. */
  public Pencil centred(double x, double y, String text, double size, Ink ink) {
    return label(x, y, text, size, Mark.Anchor.MIDDLE, 0, ink, false);
  }

  /** Text of any kind. */
  public Pencil label(
      double x,
      double y,
      String text,
      double size,
      Mark.Anchor anchor,
      double turnDeg,
      Ink ink,
      boolean strong) {
    return add(new Mark.Label(new Vec2(x, y), text, size, anchor, turnDeg, ink, strong, false));
  }

  /**
   * Text at the first of several places that touches nothing drawn so far, else where it crosses
   * the least lines, on a plate of paper that breaks them; never on other text, on a symbol or off
   * the sheet. Where all places are taken it is left out.
   */
  Pencil place(List<Mark.Label> places) {
    clearance.best(places).ifPresent(p -> add(p.crossed() ? p.label().onPlate() : p.label()));
    return this;
  }

  /** Text as by {@link #place(List)}, or only where it stands clear. */
  void place(boolean onlyClear, List<Mark.Label> places) {
    if (onlyClear) {
      placeIfClear(places);
    } else {
      place(places);
    }
  }

  /** Keeps names that are yet to be placed off a convex area. */
  public Pencil keepOff(List<Vec2> area) {
    clearance.keepOff(area);
    return this;
  }

  /**
   * Text at the first of several places that touches nothing drawn so far.
   *
   * @return false when there is none and the text was left out
   */
  boolean placeIfClear(List<Mark.Label> places) {
    Optional<Clearance.Place> clear = clearance.best(places).filter(p -> !p.crossed());
    clear.ifPresent(p -> add(p.label()));
    return clear.isPresent();
  }

  /** A line from one point to another with a head at the second. */
  public Pencil arrow(Vec2 from, Vec2 to, double head, Pen pen) {
    Vec2 d = to.minus(from).unit();
    Vec2 side = new Vec2(-d.y(), d.x()).times(head * 0.38);
    Vec2 neck = to.minus(d.times(head));
    run(List.of(from, to.minus(d.times(head * 0.8))), pen);
    return fill(List.of(List.of(to, neck.plus(side), neck.minus(side))), pen.ink());
  }

  /**
   * A dimension line with ticks and its text above it, or beyond an end of a short one, read from
   * below or from the right.
   *
   * @param offset distance of the dimension line from the points, mm, to the left of from-to
   */
  public Pencil dimension(Vec2 from, Vec2 to, double offset, String text) {
    Vec2 d = to.minus(from).unit();
    Vec2 out = new Vec2(d.y(), -d.x());
    Vec2 a = from.plus(out.times(offset));
    Vec2 b = to.plus(out.times(offset));
    Pen thin = Pen.full(Ink.SOFT, 0.15);
    Vec2 gap = out.times(Math.signum(offset) * Math.min(1.2, Math.abs(offset) / 2));
    Vec2 past = out.times(Math.signum(offset) * 1);
    run(List.of(from.plus(gap), a.plus(past)), thin);
    run(List.of(to.plus(gap), b.plus(past)), thin);
    run(List.of(a, b), thin);
    Vec2 tick = d.plus(out).times(0.9);
    run(List.of(a.minus(tick), a.plus(tick)), Pen.full(Ink.LINE, 0.3));
    run(List.of(b.minus(tick), b.plus(tick)), Pen.full(Ink.LINE, 0.3));
    double turn = Math.toDegrees(Math.atan2(d.y(), d.x()));
    if (turn > 90 || turn < -90) {
      turn += turn > 0 ? -180 : 180;
    }
    double r = Math.toRadians(turn);
    Vec2 lift = new Vec2(Math.sin(r), -Math.cos(r)).times(1);
    Lettering words = new Lettering(text, 2.8, Ink.LINE, false);
    boolean ahead = Math.abs(turn - Math.toDegrees(Math.atan2(d.y(), d.x()))) < 1;
    List<Mark.Label> places = new ArrayList<>();
    places.add(words.at(a.lerp(b, 0.5).plus(lift), Mark.Anchor.MIDDLE, turn));
    for (double row : new double[] {1, 0.2}) {
      Vec2 up = lift.times(row);
      places.add(
          words.at(b.plus(d.times(2)).plus(up), ahead ? Mark.Anchor.START : Mark.Anchor.END, turn));
      places.add(
          words.at(
              a.minus(d.times(2)).plus(up), ahead ? Mark.Anchor.END : Mark.Anchor.START, turn));
    }
    return place(places);
  }

  /** Slanting lines through a rectangle, a millimetre apart. */
  Pencil hatch(Extent e, Pen pen) {
    for (double c = 0.7; c < e.width() + e.height(); c += 1) {
      double in = Math.max(0, c - e.height());
      double out = Math.min(e.width(), c);
      line(e.left() + in, e.top() + c - in, e.left() + out, e.top() + c - out, pen);
    }
    return this;
  }

  /** An arrow in a ring that shows where north is, over {@code at}. */
  public Pencil north(Vec2 at, Vec2 up, double radius) {
    circle(at.x(), at.y(), radius, Optional.empty(), Optional.of(Pen.full(Ink.SOFT, 0.2)));
    arrow(
        at.minus(up.times(radius)),
        at.plus(up.times(radius)),
        radius * 0.8,
        Pen.full(Ink.LINE, 0.4));
    Vec2 n = at.plus(up.times(radius + 2.4));
    return label(n.x(), n.y() + 1.1, "N", 3.2, Mark.Anchor.MIDDLE, 0, Ink.LINE, true);
  }

  /**
   * A bar of a round length, half of it filled, with that length behind it.
   *
   * @param scale mm of paper for a metre
   * @param most longest that it may be where there is a round length so short, mm
   * @return how long it is, mm
   */
  public double scaleBar(Vec2 at, Measures reader, double scale, double most) {
    double length = reader.round(most / scale);
    double mm = length * scale;
    box(at.x(), at.y(), mm / 2, 1, Ink.LINE);
    outline(rectangle(at.x(), at.y(), mm, 1), Pen.full(Ink.LINE, 0.2));
    text(at.x() + mm + 2, at.y() + 1.2, reader.single(length), 2.7, Ink.LINE);
    return mm;
  }

  /** The finished drawing. */
  public Drawing drawing(String id, String title, String description, double width, double height) {
    List<Layer> out = new ArrayList<>();
    layers.forEach((name, marks) -> out.add(new Layer(name, marks)));
    return new Drawing(id, title, description, width, height, out);
  }

  /** Corners of a rectangle. */
  public static List<Vec2> rectangle(double x, double y, double w, double h) {
    return List.of(new Vec2(x, y), new Vec2(x + w, y), new Vec2(x + w, y + h), new Vec2(x, y + h));
  }

  /** A circle as a ring of points. */
  static List<Vec2> round(double x, double y, double radius) {
    List<Vec2> out = new ArrayList<>();
    int corners = 4 * (int) Math.ceil(6 + 2 * Math.sqrt(radius));
    for (int i = 0; i < corners; i++) {
      double a = 2 * Math.PI * i / corners;
      out.add(new Vec2(x + radius * Math.cos(a), y + radius * Math.sin(a)));
    }
    return out;
  }
}
