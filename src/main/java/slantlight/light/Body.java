package slantlight.light;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;

/**
 * Opaque faces that belong together.
 *
 * @param parts convex rings of which they are made up
 * @param convex true when they close up a convex body, whose shadow is that of its corners' hull
 */
record Body(List<List<Vec3>> parts, boolean convex) {
  /** Corners closer than this, m, are one. */
  private static final double ALIKE = 1e-6;

  static Body of(List<Face> faces) {
    List<List<Vec3>> parts = new ArrayList<>();
    for (Face f : faces) {
      for (double[] ring : f.parts()) {
        double[] xyz = f.frame().toWorld(ring, 0);
        parts.add(
            IntStream.range(0, xyz.length / 3)
                .mapToObj(i -> new Vec3(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]))
                .toList());
      }
    }
    return new Body(parts, isClosed(faces) && isConvex(faces));
  }

  /**
   * What of it may cast shadows on a plane, if anything.
   *
   * @param side 1 when the sun stands on the side of the frame's normal, -1 on the other
   * @param heights linear in place; only what has all of them positive stands in the way
   */
  @SafeVarargs
  final List<Shade> shades(Frame plane, double side, ToDoubleFunction<Vec3>... heights) {
    List<List<Vec3>> left = parts;
    for (ToDoubleFunction<Vec3> height : heights) {
      left = left.stream().map(p -> Shade.above(p, height)).filter(p -> !p.isEmpty()).toList();
    }
    if (!convex) {
      return left.stream().map(p -> Shade.of(plane, side, p, false)).toList();
    }
    List<Vec3> corners = left.stream().flatMap(List::stream).distinct().toList();
    return corners.isEmpty() ? List.of() : List.of(Shade.of(plane, side, corners, true));
  }

  private static boolean isConvex(List<Face> faces) {
    for (Face f : faces) {
      boolean before = false;
      boolean behind = false;
      for (Face g : faces) {
        for (Vec3 p : g.corners()) {
          double h = f.frame().height(p);
          before |= h > ALIKE;
          behind |= h < -ALIKE;
        }
      }
      if (before && behind) {
        return false;
      }
    }
    return true;
  }

  /** True when every edge belongs to two faces. */
  private static boolean isClosed(List<Face> faces) {
    Map<Set<List<Long>>, Integer> edges = new HashMap<>();
    for (Face f : faces) {
      List<Vec3> ring = f.corners();
      for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        edges.merge(
            new HashSet<>(List.of(place(ring.get(j)), place(ring.get(i)))), 1, Integer::sum);
      }
    }
    return edges.values().stream().allMatch(n -> n == 2);
  }

  private static List<Long> place(Vec3 p) {
    return List.of(Math.round(p.x() / ALIKE), Math.round(p.y() / ALIKE), Math.round(p.z() / ALIKE));
  }
}
