package slantlight.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import slantlight.board.RowFrame.Side;

/**
 * The sides of a face sorted once for all its rows: between one corner and the next, in s, the same
 * sides lie above one another. Row coordinates, m.
 */
final class Columns {
  private final double[] corners;
  private final Side[][] sides;

  /** Sides neither level nor square to the rows. */
  private final List<Side> slopes = new ArrayList<>();

  Columns(List<Side> all) {
    SortedSet<Double> places = new TreeSet<>();
    for (Side e : all) {
      places.add(e.s0());
      places.add(e.s1());
      if (e.s0() < e.s1() && e.t0() != e.t1()) {
        slopes.add(e);
      }
    }
    corners = Ground.array(places);
    sides = new Side[Math.max(0, corners.length - 1)][];
    for (int i = 0; i < sides.length; i++) {
      sides[i] = crossing(all, (corners[i] + corners[i + 1]) / 2);
    }
  }

  /** The sides at a place, from the lowest up. */
  private static Side[] crossing(List<Side> all, double at) {
    List<Side> out = new ArrayList<>();
    for (Side e : all) {
      if (e.s0() < at && e.s1() > at) {
        int rank = out.size();
        while (rank > 0 && out.get(rank - 1).tAt(at) > e.tAt(at)) {
          rank--;
        }
        out.add(rank, e);
      }
    }
    return out.toArray(new Side[0]);
  }

  /** The sides at a place between two corners, from the lowest up: the face lies between pairs. */
  Side[] at(double s) {
    int i = Arrays.binarySearch(corners, s);
    return sides[i < 0 ? -2 - i : i];
  }

  /** Every s at which the outline of a row may change direction, rising. */
  double[] cuts(double t0, double t1) {
    double[] all = Arrays.copyOf(corners, corners.length + 2 * slopes.size());
    int n = corners.length;
    for (Side e : slopes) {
      for (double t : new double[] {t0, t1}) {
        if ((e.t0() - t) * (e.t1() - t) < 0) {
          all[n++] = e.s0() + (e.s1() - e.s0()) * (t - e.t0()) / (e.t1() - e.t0());
        }
      }
    }
    Arrays.sort(all, 0, n);
    int kept = 0;
    for (int i = 0; i < n; i++) {
      if (kept == 0 || all[i] - all[kept - 1] > Run.SAME) {
        all[kept++] = all[i];
      }
    }
    return Arrays.copyOf(all, kept);
  }
}
