package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Room;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/** Steps of a person through the house: walls stop, passages let through. */
final class Walker {
  /** Height of a standing eye, m. */
  static final double EYE = 1.6;

  /** Nearest that a wall is come to, m. */
  private static final double ELBOW = 0.22;

  private final House house;
  private final List<Vec2[]> walls = new ArrayList<>();

  Walker(House house) {
    this.house = house;
    for (Surface s : house.surfaces()) {
      if (s.kind() == SurfaceKind.WALL) {
        wall(s);
      }
    }
  }

  /** Adds the solid parts of a wall's foot, seen from above. */
  private void wall(Surface s) {
    Face face = s.face();
    double low = face.outer().stream().mapToDouble(Vec2::x).min().orElseThrow();
    double high = face.outer().stream().mapToDouble(Vec2::x).max().orElseThrow();
    List<double[]> gaps = new ArrayList<>();
    for (List<Vec2> hole : face.holes()) {
      if (passage(s, hole)) {
        gaps.add(
            new double[] {
              hole.stream().mapToDouble(Vec2::x).min().orElseThrow(),
              hole.stream().mapToDouble(Vec2::x).max().orElseThrow()
            });
      }
    }
    gaps.sort((a, b) -> Double.compare(a[0], b[0]));
    double from = low;
    for (double[] gap : gaps) {
      solid(face.frame(), from, gap[0]);
      from = Math.max(from, gap[1]);
    }
    solid(face.frame(), from, high);
  }

  /** A hole that is no window or outside door on this surface is a way through. */
  private boolean passage(Surface s, List<Vec2> hole) {
    Vec2 middle = Face.of(s.face().frame(), hole).centroid();
    for (Opening o : house.openings()) {
      if (o.surfaceId().equals(s.id())
          && o.kind() != OpeningKind.PASSAGE
          && o.face().contains(o.face().frame().toPlane(s.face().frame().toWorld(middle)))) {
        return false;
      }
    }
    return true;
  }

  private void solid(Frame f, double from, double to) {
    if (to - from > 1e-6) {
      Vec3 a = f.toWorld(new Vec2(from, 0));
      Vec3 b = f.toWorld(new Vec2(to, 0));
      walls.add(new Vec2[] {new Vec2(a.x(), a.y()), new Vec2(b.x(), b.y())});
    }
  }

  /**
   * Where a step ends: all of it, or what of it slides along the wall it meets.
   *
   * @param step on the floor, m
   */
  Vec3 step(Vec3 eye, Vec2 step) {
    Vec2 at = new Vec2(eye.x(), eye.y());
    for (Vec2 way : List.of(step, new Vec2(step.x(), 0), new Vec2(0, step.y()))) {
      Vec2 to = at.plus(way);
      if (free(at, to)) {
        double z = room(to).map(r -> r.floor() + EYE).orElse(eye.z());
        return new Vec3(to.x(), to.y(), z);
      }
    }
    return eye;
  }

  private boolean free(Vec2 from, Vec2 to) {
    for (Vec2[] wall : walls) {
      double before = HouseShape.distance(from, wall[0], wall[1]);
      double after = HouseShape.distance(to, wall[0], wall[1]);
      if (crosses(from, to, wall[0], wall[1]) || (after < ELBOW && after < before)) {
        return false;
      }
    }
    return true;
  }

  private static boolean crosses(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    double s = b.minus(a).cross(c.minus(a)) * b.minus(a).cross(d.minus(a));
    double t = d.minus(c).cross(a.minus(c)) * d.minus(c).cross(b.minus(c));
    return s < 0 && t < 0;
  }

  /** The room over a point of the plan. */
  Optional<Room> room(Vec2 at) {
    return house.rooms().stream().filter(r -> Face.inside(r.outline(), at)).findFirst();
  }

  Optional<Room> room(Vec3 at) {
    return room(new Vec2(at.x(), at.y()))
        .filter(r -> at.z() > r.floor() - 0.5 && at.z() < r.floor() + r.height() + 3);
  }
}
