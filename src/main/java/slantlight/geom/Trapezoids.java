package slantlight.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Cuts a region into trapezoids along its corners' heights: between two neighbouring heights it
 * lies between every other pair of the edges that cross there.
 */
final class Trapezoids {
  /** Heights closer than this, m, are one. */
  private static final double ALIKE = 1e-9;

  /** An edge from its lower end to its upper one. */
  private record Edge(double x0, double y0, double x1, double y1) {
    double at(double y) {
      return x0 + (x1 - x0) * (y - y0) / (y1 - y0);
    }
  }

  private record Open(Edge left, Edge right, double from) {
    /** Adds it up to a height, unless its edges lie on each other. */
    void upTo(double y, List<double[]> pieces) {
      double[] ring = {left.at(from), from, right.at(from), from, right.at(y), y, left.at(y), y};
      double[] out = new double[8];
      int n = 0;
      for (int i = 0; i < 8; i += 2) {
        int j = (i + 6) % 8;
        if (Math.abs(ring[i] - ring[j]) > ALIKE || ring[i + 1] != ring[j + 1]) {
          out[n++] = ring[i];
          out[n++] = ring[i + 1];
        }
      }
      if (n >= 6) {
        pieces.add(Arrays.copyOf(out, n));
      }
    }
  }

  private Trapezoids() {}

  /**
   * Convex pieces, counter-clockwise.
   *
   * @param rings outlines and holes, in any order and sense
   */
  static List<double[]> of(List<double[]> rings) {
    if (rings.size() == 1 && isConvex(rings.get(0))) {
      return List.of(Rings.oriented(rings.get(0), true));
    }
    List<Edge> edges = new ArrayList<>();
    for (double[] r : rings) {
      for (int i = 0, j = r.length - 2; i < r.length; j = i, i += 2) {
        if (Math.abs(r[i + 1] - r[j + 1]) > ALIKE) {
          edges.add(
              r[i + 1] > r[j + 1]
                  ? new Edge(r[j], r[j + 1], r[i], r[i + 1])
                  : new Edge(r[i], r[i + 1], r[j], r[j + 1]));
        }
      }
    }
    double[] heights =
        edges.stream().flatMapToDouble(e -> DoubleStream.of(e.y0, e.y1)).sorted().toArray();
    List<double[]> out = new ArrayList<>();
    List<Open> open = List.of();
    for (int i = 1; i < heights.length; i++) {
      double low = heights[i - 1];
      double high = heights[i];
      if (high - low > ALIKE) {
        open = crossing(edges, low, high, open, out);
      }
    }
    open.forEach(o -> o.upTo(heights[heights.length - 1], out));
    return out;
  }

  /** The trapezoids between two heights; adds those that end at the lower one. */
  private static List<Open> crossing(
      List<Edge> edges, double low, double high, List<Open> below, List<double[]> out) {
    double middle = (low + high) / 2;
    List<Edge> across =
        edges.stream()
            .filter(e -> e.y0 < middle && e.y1 > middle)
            .sorted(Comparator.comparingDouble(e -> e.at(middle)))
            .toList();
    List<Open> here = new ArrayList<>();
    for (int i = 0; i + 1 < across.size(); i += 2) {
      Edge left = across.get(i);
      Edge right = across.get(i + 1);
      here.add(
          below.stream()
              .filter(o -> o.left.equals(left) && o.right.equals(right))
              .findAny()
              .orElse(new Open(left, right, low)));
    }
    below.stream().filter(o -> !here.contains(o)).forEach(o -> o.upTo(low, out));
    return here;
  }

  private static boolean isConvex(double[] ring) {
    double[] r = Rings.oriented(ring, true);
    for (int i = 0, n = r.length; i < n; i += 2) {
      int j = (i + 2) % n;
      int k = (i + 4) % n;
      double turn = (r[j] - r[i]) * (r[k + 1] - r[j + 1]) - (r[j + 1] - r[i + 1]) * (r[k] - r[j]);
      if (turn < -ALIKE) {
        return false;
      }
    }
    return true;
  }
}
