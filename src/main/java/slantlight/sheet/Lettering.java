package slantlight.sheet;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Vec2;

/**
 * A text that is still to find its place.
 *
 * @param size em, mm
 * @param strong semi-bold
 */
record Lettering(String text, double size, Ink ink, boolean strong) {
  /** Free space between a thing and its name, mm. */
  static final double GAP = 0.9;

  /** The text at a place, level. */
  Mark.Label at(Vec2 place, Mark.Anchor anchor) {
    return at(place, anchor, 0);
  }

  Mark.Label at(Vec2 place, Mark.Anchor anchor, double turnDeg) {
    return new Mark.Label(place, text, size, anchor, turnDeg, ink, strong, false);
  }

  /** The text with its middle on a place. */
  Mark.Label over(Vec2 place) {
    return at(new Vec2(place.x(), place.y() + rise()), Mark.Anchor.MIDDLE);
  }

  /** From the baseline up to the middle of small letters and capitals. */
  private double rise() {
    return size * (Letters.ASCENT - Letters.DESCENT) / 2;
  }

  /**
   * Places round a thing, the nearest first: right, left, above, below, then the corners.
   *
   * @param reach how far the thing reaches from its middle, mm
   */
  List<Mark.Label> around(Vec2 thing, double reach) {
    List<Mark.Label> out = new ArrayList<>();
    for (double r : new double[] {reach, reach + 1.4 * size}) {
      double d = r + GAP;
      double up = -d - Letters.DESCENT * size;
      double down = d + Letters.ASCENT * size;
      add(out, thing, d, rise(), Mark.Anchor.START);
      add(out, thing, -d, rise(), Mark.Anchor.END);
      add(out, thing, 0, up, Mark.Anchor.MIDDLE);
      add(out, thing, 0, down, Mark.Anchor.MIDDLE);
      for (double y : new double[] {up, down}) {
        add(out, thing, 0, y, Mark.Anchor.START);
        add(out, thing, 0, y, Mark.Anchor.END);
      }
    }
    return out;
  }

  private void add(List<Mark.Label> out, Vec2 from, double x, double y, Mark.Anchor anchor) {
    out.add(at(from.plus(new Vec2(x, y)), anchor));
  }

  /**
   * Places beside a line, from its first point on: above and below it, or right and left of it when
   * it runs more upright than level.
   *
   * @param reach how far the line's pen reaches from its middle, mm
   * @param shares of the line's length at which to begin
   */
  List<Mark.Label> along(Vec2 a, Vec2 b, double reach, double... shares) {
    List<Mark.Label> out = new ArrayList<>();
    boolean upright = Math.abs(b.y() - a.y()) > Math.abs(b.x() - a.x());
    double d = reach + GAP;
    for (double share : shares) {
      Vec2 p = a.lerp(b, share);
      if (upright) {
        add(out, p, d, rise(), Mark.Anchor.START);
        add(out, p, -d, rise(), Mark.Anchor.END);
      } else {
        add(out, p, 0, -d - Letters.DESCENT * size, Mark.Anchor.START);
        add(out, p, 0, d + Letters.ASCENT * size, Mark.Anchor.START);
      }
    }
    return out;
  }

  /** Places inside a box, from its middle outward: level, then upright; none where none fits. */
  List<Mark.Label> inside(Extent box) {
    List<Mark.Label> out = new ArrayList<>();
    double w = Letters.width(text, size, strong);
    double h = size * (Letters.ASCENT + Letters.DESCENT);
    for (boolean level : new boolean[] {true, false}) {
      double dx = (box.width() - (level ? w : h) - GAP) / 2;
      double dy = (box.height() - (level ? h : w) - GAP) / 2;
      if (dx >= 0 && dy >= 0) {
        for (double y : new double[] {0, -0.5, 0.5, -1, 1}) {
          for (double x : new double[] {0, -0.5, 0.5, -1, 1}) {
            Vec2 p = box.middle().plus(new Vec2(x * dx, y * dy));
            Vec2 aside = new Vec2(p.x() + rise(), p.y());
            out.add(level ? over(p) : at(aside, Mark.Anchor.MIDDLE, -90));
          }
        }
      }
    }
    return out;
  }
}
