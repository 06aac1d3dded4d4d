package slantlight.sheet;

import java.util.Collection;
import slantlight.geom.Vec2;

/** An upright rectangle of paper, mm, y downward. */
public record Extent(double left, double top, double right, double bottom) {
  /** The least that holds all points. */
  public static Extent of(Collection<Vec2> points) {
    double[] e = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (Vec2 p : points) {
      e[0] = Math.min(e[0], p.x());
      e[1] = Math.min(e[1], p.y());
      e[2] = Math.max(e[2], p.x());
      e[3] = Math.max(e[3], p.y());
    }
    return new Extent(e[0], e[1], e[2], e[3]);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  public Vec2 middle() {
    return new Vec2((left + right) / 2, (top + bottom) / 2);
  }

  /** Grown by that much on every side. */
  Extent grown(double by) {
    return new Extent(left - by, top - by, right + by, bottom + by);
  }

  boolean holds(Extent o) {
    return o.left >= left && o.top >= top && o.right <= right && o.bottom <= bottom;
  }

  boolean touches(Extent o) {
    return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
  }
}
