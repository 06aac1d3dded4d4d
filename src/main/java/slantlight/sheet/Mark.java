package slantlight.sheet;

import java.util.List;
import java.util.Optional;
import slantlight.geom.Vec2;

/** One thing drawn, in millimetres of paper, x to the right and y downward. */
public sealed interface Mark {
  /**
   * Lines or areas.
   *
   * @param rings runs of points; an area's later rings are holes (even-odd)
   * @param closed true when each run returns to its first point
   * @param hover what a pointer resting on it is told; empty for nothing
   * @param key id of the thing drawn, such as a joint's; empty for none
   */
  record Path(
      List<List<Vec2>> rings,
      boolean closed,
      Optional<Colour> fill,
      Optional<Pen> pen,
      String hover,
      String key)
      implements Mark {
    public Path {
      rings = rings.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A line of text.
   *
   * @param at where the baseline is anchored
   * @param size em, mm
   * @param turnDeg degrees clockwise about {@code at}
   * @param strong semi-bold
   * @param plated whether paper lies under the text and breaks the lines that run there
   */
  record Label(
      Vec2 at,
      String text,
      double size,
      Anchor anchor,
      double turnDeg,
      Ink ink,
      boolean strong,
      boolean plated)
      implements Mark {
    /** The same text on a plate of paper. */
    Label onPlate() {
      return new Label(at, text, size, anchor, turnDeg, ink, strong, true);
    }

    /** The plate under the text. */
    Path plate() {
      List<List<Vec2>> rings = List.of(outline(Clearance.MARGIN));
      return new Path(rings, true, Optional.of(Ink.PAPER), Optional.empty(), "", "");
    }

    /**
     * The corners of the rectangle that the text covers at most.
     *
     * @param margin grown by that much on every side, mm
     */
    List<Vec2> outline(double margin) {
      double w = Letters.width(text, size, strong);
      double x =
          switch (anchor) {
            case START -> 0;
            case MIDDLE -> -w / 2;
            case END -> -w;
          };
      double y = -Letters.ASCENT * size;
      double h = (Letters.ASCENT + Letters.DESCENT) * size;
      double r = Math.toRadians(turnDeg);
      Vec2 right = new Vec2(Math.cos(r), Math.sin(r));
      Vec2 down = new Vec2(-right.y(), right.x());
      return Pencil.rectangle(x - margin, y - margin, w + 2 * margin, h + 2 * margin).stream()
          .map(p -> at.plus(right.times(p.x())).plus(down.times(p.y())))
          .toList();
    }
  }

  /** Which part of the text stands at its point. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }
}
