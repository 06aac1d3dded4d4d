package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import slantlight.geom.Vec2;

/** The line in which a wall meets the ceiling. */
final class WallTop {
  /** How far inside the wall the ceiling is looked for, m. */
  private static final double NUDGE = 1e-4;

  private WallTop() {}

  /**
   * Upper edge of the wall from a to b with the room on its left.
   *
   * @return points (distance from a, height), from a to b, steps as two points at one distance;
   *     empty where no ceiling lies over the wall
   */
  static List<Vec2> along(Vec2 a, Vec2 b, List<RoofFace> roofs) {
    double length = a.distance(b);
    Vec2 d = b.minus(a).unit();
    Vec2 inward = new Vec2(-d.y(), d.x()).times(NUDGE);
    SortedSet<Double> breaks = breaks(a, d, length, roofs);
    List<Vec2> out = new ArrayList<>();
    double from = 0;
    for (double to : breaks) {
      if (to - from < 1e-5) {
        continue;
      }
      Vec2 middle = a.plus(d.times((from + to) / 2)).plus(inward);
      Optional<RoofFace> over =
          roofs.stream().filter(r -> Shell.holds(r.plan(), middle)).findFirst();
      if (over.isEmpty()) {
        return List.of();
      }
      add(out, new Vec2(from, over.get().z(a.plus(d.times(from)))));
      add(out, new Vec2(to, over.get().z(a.plus(d.times(to)))));
      from = to;
    }
    return straight(out);
  }

  private static SortedSet<Double> breaks(Vec2 a, Vec2 d, double length, List<RoofFace> roofs) {
    SortedSet<Double> out = new TreeSet<>();
    out.add(length);
    for (RoofFace r : roofs) {
      List<Vec2> ring = Plan.outer(r.plan());
      for (int i = 0; i < ring.size(); i++) {
        Vec2 p = ring.get(i).minus(a);
        Vec2 q = ring.get((i + 1) % ring.size()).minus(a);
        double hp = d.cross(p);
        double hq = d.cross(q);
        if (Math.abs(hp) < 2 * NUDGE) {
          out.add(p.dot(d));
        }
        if (hp * hq < 0) {
          out.add(p.lerp(q, hp / (hp - hq)).dot(d));
        }
      }
    }
    out.removeIf(t -> t < 1e-5 || t > length - 1e-5);
    out.add(length);
    return out;
  }

  private static void add(List<Vec2> out, Vec2 p) {
    if (out.isEmpty() || out.get(out.size() - 1).distance(p) > 1e-5) {
      out.add(p);
    }
  }

  private static List<Vec2> straight(List<Vec2> line) {
    List<Vec2> out = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      boolean end = i == 0 || i == line.size() - 1;
      if (end || Plan.distance(line.get(i - 1), line.get(i + 1), line.get(i)) > 2e-5) {
        out.add(line.get(i));
      }
    }
    return out;
  }
}
