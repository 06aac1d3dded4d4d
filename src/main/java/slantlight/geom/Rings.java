package slantlight.geom;

import java.util.List;

/** Plane rings as plain arrays x0, y0, x1, y1, ..., for the inner loops of clipping. */
public final class Rings {
  private static final double[] NONE = {};

  /** Edges of less than this squared length, m2, have no direction to speak of. */
  private static final double POINT = 1e-20;

  private Rings() {}

  public static double[] array(List<Vec2> ring) {
    double[] out = new double[2 * ring.size()];
    for (int i = 0; i < ring.size(); i++) {
      out[2 * i] = ring.get(i).x();
      out[2 * i + 1] = ring.get(i).y();
    }
    return out;
  }

  /** The ring run counter-clockwise, or clockwise when {@code ccw} is false. */
  public static double[] oriented(double[] ring, boolean ccw) {
    if ((area(ring) > 0) == ccw) {
      return ring;
    }
    double[] out = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      out[i] = ring[ring.length - 2 - i];
      out[i + 1] = ring[ring.length - 1 - i];
    }
    return out;
  }

  /** Signed area, positive when counter-clockwise. */
  public static double area(double[] ring) {
    double a = 0;
    for (int i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      a += ring[j] * ring[i + 1] - ring[j + 1] * ring[i];
    }
    return a / 2;
  }

  /** Least x, least y, greatest x, greatest y. */
  public static double[] bounds(double[] ring) {
    double[] b = nowhere();
    widen(b, ring);
    return b;
  }

  /** The same of several rings. */
  public static double[] bounds(List<double[]> rings) {
    double[] b = nowhere();
    for (double[] ring : rings) {
      widen(b, ring);
    }
    return b;
  }

  private static double[] nowhere() {
    return new double[] {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
  }

  private static void widen(double[] b, double[] ring) {
    for (int i = 0; i < ring.length; i += 2) {
      b[0] = Math.min(b[0], ring[i]);
      b[1] = Math.min(b[1], ring[i + 1]);
      b[2] = Math.max(b[2], ring[i]);
      b[3] = Math.max(b[3], ring[i + 1]);
    }
  }

  /** True when all of a box lies within a convex counter-clockwise ring. */
  public static boolean holds(double[] ring, double[] box) {
    for (int i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      double ex = ring[i] - ring[j];
      double ey = ring[i + 1] - ring[j + 1];
      // Of the box's corners the one farthest to the right of the edge.
      double x = box[ey > 0 ? 2 : 0] - ring[j];
      double y = box[ex > 0 ? 1 : 3] - ring[j + 1];
      if (ex * y < ey * x) {
        return false;
      }
    }
    return true;
  }

  /** True when two boxes share more than an edge. */
  public static boolean meet(double[] a, double[] b) {
    return a[0] < b[2] && a[2] > b[0] && a[1] < b[3] && a[3] > b[1];
  }

  /** Sum of corner coordinates over corner count: a point inside when the ring is convex. */
  public static double[] middle(double[] ring) {
    double x = 0;
    double y = 0;
    for (int i = 0; i < ring.length; i += 2) {
      x += ring[i];
      y += ring[i + 1];
    }
    return new double[] {2 * x / ring.length, 2 * y / ring.length};
  }

  /**
   * The part of a ring where {@code a x + b y + c >= 0}. A ring that is not convex may come back
   * with edges that run to and fro along the cut; area and contour integrals stay right.
   *
   * @return the kept ring, empty when nothing is left
   */
  public static double[] clip(double[] ring, double a, double b, double c) {
    int inside = 0;
    for (int i = 0; i < ring.length; i += 2) {
      inside += a * ring[i] + b * ring[i + 1] + c > 0 ? 2 : 0;
    }
    if (inside == ring.length) {
      return ring;
    }
    if (inside == 0) {
      return NONE;
    }
    double[] out = new double[2 * ring.length + 2];
    int kept = 0;
    int j = ring.length - 2;
    double dj = a * ring[j] + b * ring[j + 1] + c;
    for (int i = 0; i < ring.length; i += 2) {
      double di = a * ring[i] + b * ring[i + 1] + c;
      if ((di > 0) != (dj > 0)) {
        double t = dj / (dj - di);
        out[kept++] = ring[j] + (ring[i] - ring[j]) * t;
        out[kept++] = ring[j + 1] + (ring[i + 1] - ring[j + 1]) * t;
      }
      if (di > 0) {
        out[kept++] = ring[i];
        out[kept++] = ring[i + 1];
      }
      j = i;
      dj = di;
    }
    return kept < 6 ? NONE : java.util.Arrays.copyOf(out, kept);
  }

  /** A ring round a box (least u, least v, greatest u, greatest v), counter-clockwise. */
  public static double[] round(double[] box) {
    return new double[] {box[0], box[1], box[2], box[1], box[2], box[3], box[0], box[3]};
  }

  /** The part of a ring inside an upright rectangle. */
  public static double[] clip(double[] ring, double x0, double y0, double x1, double y1) {
    return clip(clip(clip(clip(ring, 1, 0, -x0), -1, 0, x1), 0, 1, -y0), 0, -1, y1);
  }

  /** The part of a ring inside a convex counter-clockwise window. */
  public static double[] clip(double[] ring, double[] window) {
    double[] out = ring;
    for (int i = 0, j = window.length - 2; i < window.length; j = i, i += 2) {
      double ex = window[i] - window[j];
      double ey = window[i + 1] - window[j + 1];
      if (ex * ex + ey * ey > POINT) {
        out = clip(out, -ey, ex, ey * window[j] - ex * window[j + 1]);
      }
    }
    return out;
  }

  /**
   * Adds what of a convex ring lies outside a window, in convex pieces.
   *
   * @param window convex, counter-clockwise
   */
  public static void addOutside(double[] ring, double[] window, List<double[]> out) {
    if (apart(ring, window)) {
      out.add(ring);
      return;
    }
    double[] rest = ring;
    for (int i = 0, j = window.length - 2; i < window.length; j = i, i += 2) {
      double ex = window[i] - window[j];
      double ey = window[i + 1] - window[j + 1];
      if (ex * ex + ey * ey > POINT) {
        double c = ey * window[j] - ex * window[j + 1];
        double[] beyond = clip(rest, ey, -ex, -c);
        if (beyond.length > 0) {
          out.add(beyond);
          rest = clip(rest, -ey, ex, c);
        }
      }
    }
  }

  /** True when all of a ring lies beyond one edge of a convex counter-clockwise window. */
  private static boolean apart(double[] ring, double[] window) {
    for (int i = 0, j = window.length - 2; i < window.length; j = i, i += 2) {
      double ex = window[i] - window[j];
      double ey = window[i + 1] - window[j + 1];
      boolean beyond = ex * ex + ey * ey > POINT;
      for (int k = 0; k < ring.length && beyond; k += 2) {
        beyond = ex * (ring[k + 1] - window[j + 1]) <= ey * (ring[k] - window[j]);
      }
      if (beyond) {
        return true;
      }
    }
    return false;
  }

  /** Even-odd test of a point. */
  public static boolean inside(double[] ring, double x, double y) {
    boolean in = false;
    for (int i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      if ((ring[i + 1] > y) != (ring[j + 1] > y)
          && x < (ring[j] - ring[i]) * (y - ring[i + 1]) / (ring[j + 1] - ring[i + 1]) + ring[i]) {
        in = !in;
      }
    }
    return in;
  }

  /** The convex hull of a ring, counter-clockwise (Andrew's monotone chain). */
  public static double[] hull(double[] ring) {
    int n = ring.length / 2;
    int[] order = new int[n];
    for (int i = 0; i < n; i++) {
      int k = i;
      for (; k > 0 && before(ring, i, order[k - 1]); k--) {
        order[k] = order[k - 1];
      }
      order[k] = i;
    }
    double[] h = new double[4 * n + 4];
    int k = 0;
    for (int pass = 0; pass < 2; pass++) {
      int floor = k + 1;
      for (int s = 0; s < n; s++) {
        int p = order[pass == 0 ? s : n - 1 - s];
        while (k > floor && turn(h, k, ring[2 * p], ring[2 * p + 1]) <= 0) {
          k--;
        }
        h[2 * k] = ring[2 * p];
        h[2 * k + 1] = ring[2 * p + 1];
        k++;
      }
      k--;
    }
    return java.util.Arrays.copyOf(h, 2 * k);
  }

  private static boolean before(double[] ring, int p, int q) {
    return ring[2 * p] < ring[2 * q]
        || (ring[2 * p] == ring[2 * q] && ring[2 * p + 1] < ring[2 * q + 1]);
  }

  private static double turn(double[] h, int k, double x, double y) {
    double ax = h[2 * k - 4];
    double ay = h[2 * k - 3];
    double bx = h[2 * k - 2];
    double by = h[2 * k - 1];
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  }
}
