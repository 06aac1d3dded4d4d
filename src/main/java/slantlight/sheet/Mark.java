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
      Optional<Ink> fill,
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
   * @param size height from ascender to descender, mm
   * @param turnDeg degrees clockwise about {@code at}
   * @param strong semi-bold
   */
  record Label(
      Vec2 at, String text, double size, Anchor anchor, double turnDeg, Ink ink, boolean strong)
      implements Mark {}

  /** Which part of the text stands at its point. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }
}
