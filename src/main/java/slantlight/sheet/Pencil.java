package slantlight.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Vec2;

/** Collects marks into layers; all coordinates are millimetres of paper, y downward. */
public final class Pencil {
  private static final int CIRCLE = 40;

  private final Map<String, List<Mark>> layers = new LinkedHashMap<>();
  private List<Mark> current = new ArrayList<>();

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
    current.add(
        new Mark.Path(List.of(points), false, Optional.empty(), Optional.of(pen), hover, key));
    return this;
  }

  /** A filled area. */
  public Pencil fill(List<List<Vec2>> rings, Ink ink) {
    return area(rings, Optional.of(ink), Optional.empty(), "", "");
  }

  /** An outline. */
  public Pencil outline(List<Vec2> ring, Pen pen) {
    return area(List.of(ring), Optional.empty(), Optional.of(pen), "", "");
  }

  /** An area with fill, outline or both. */
  public Pencil area(
      List<List<Vec2>> rings, Optional<Ink> fill, Optional<Pen> pen, String hover, String key) {
    current.add(new Mark.Path(rings, true, fill, pen, hover, key));
    return this;
  }

  /** A filled rectangle. */
  public Pencil box(double x, double y, double w, double h, Ink ink) {
    return fill(List.of(rectangle(x, y, w, h)), ink);
  }

  /** A circle. */
  public Pencil circle(double x, double y, double radius, Optional<Ink> fill, Optional<Pen> pen) {
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
    current.add(new Mark.Label(new Vec2(x, y), text, size, anchor, turnDeg, ink, strong));
    return this;
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
   * A dimension line with ticks and its text above, read from below or from the right.
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
    Vec2 at = a.lerp(b, 0.5).plus(lift);
    return label(at.x(), at.y(), text, 2.8, Mark.Anchor.MIDDLE, turn, Ink.LINE, false);
  }

  /** Text on a plate of paper, so that lines below do not cross it. */
  public Pencil plate(
      double x, double y, String text, double size, Mark.Anchor anchor, Ink ink, boolean strong) {
    double w = text.length() * size * 0.5 + 1;
    double x0 =
        switch (anchor) {
          case START -> x - 0.5;
          case MIDDLE -> x - w / 2;
          case END -> x - w + 0.5;
        };
    box(x0, y - size * 0.8, w, size * 1.1, Ink.PAPER);
    return label(x, y, text, size, anchor, 0, ink, strong);
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
    for (int i = 0; i < CIRCLE; i++) {
      double a = 2 * Math.PI * i / CIRCLE;
      out.add(new Vec2(x + radius * Math.cos(a), y + radius * Math.sin(a)));
    }
    return out;
  }
}
