package slantlight.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The box tree against asking every face in turn, with plane and ring arithmetic of its own. */
class OccludersTest {
  private static final List<Vec2> PENTAGON =
      List.of(
          new Vec2(-0.9, -0.6),
          new Vec2(0.8, -0.7),
          new Vec2(1, 0.4),
          new Vec2(0.1, 0.1),
          new Vec2(-0.7, 0.9));
  private static final List<Vec2> HOLE =
      List.of(new Vec2(-0.5, -0.4), new Vec2(0.3, -0.5), new Vec2(-0.3, 0.2));

  @Test
  void randomRaysMeetWhatAskingEveryFaceFinds() {
    Random random = new Random(20260101);
    List<Face> faces = scattered(random, 120);
    Occluders tree = Occluders.of(faces);
    double[] t = new double[1];
    int hits = 0;
    for (int i = 0; i < 4000; i++) {
      Vec3 o = inBox(random, 4);
      Vec3 d = inBox(random, 1);
      double t0 = i % 3 == 0 ? 2 * random.nextDouble() : 1e-6;
      double t1 = i % 2 == 0 ? 100 : t0 + 4 * random.nextDouble();
      int slow = nearest(faces, o, d, t0, t1);
      int fast = tree.nearest(o.x(), o.y(), o.z(), d.x(), d.y(), d.z(), t0, t1, t);
      assertThat(fast).as("ray %s", i).isEqualTo(slow);
      assertThat(t[0]).isCloseTo(slow < 0 ? t1 : meet(faces.get(slow), o, d), within(1e-9));
      int any = tree.any(o.x(), o.y(), o.z(), d.x(), d.y(), d.z(), t0, t1);
      assertThat(any >= 0).isEqualTo(slow >= 0);
      if (any >= 0) {
        assertThat(meet(faces.get(any), o, d)).isBetween(t0, t1);
        hits++;
      }
      Vec3 end = o.plus(d.times(3));
      assertThat(tree.between(o.x(), o.y(), o.z(), end.x(), end.y(), end.z()))
          .isEqualTo(nearest(faces, o, d, 3e-6, 3 - 3e-6) >= 0);
    }
    assertThat(hits).isBetween(800, 3500);
  }

  /** Rays along the axes, where a component of the direction is zero or negative zero. */
  @Test
  void raysAlongTheAxesMeetWallsFloorsAndNothingElse() {
    List<Face> faces = new ArrayList<>();
    List<Vec2> square = List.of(new Vec2(-1, -1), new Vec2(1, -1), new Vec2(1, 1), new Vec2(-1, 1));
    Vec3[] axes = {Vec3.EAST, Vec3.NORTH, Vec3.UP};
    for (Vec3 axis : axes) {
      Vec3 u = axis.equals(Vec3.UP) ? Vec3.EAST : Vec3.UP;
      for (int k = -3; k <= 3; k += 2) {
        faces.add(Face.of(Frame.of(axis.times(k), u, axis), square));
      }
    }
    Occluders tree = Occluders.of(faces);
    double[] t = new double[1];
    for (Vec3 axis : axes) {
      for (double sign : new double[] {1, -1}) {
        Vec3 d = axis.times(sign);
        Vec3 side = axis.equals(Vec3.UP) ? Vec3.EAST : Vec3.UP;
        Vec3 o = d.times(-2.5).plus(side.times(0.3)).plus(axis.cross(side).times(0.2));
        int hit = tree.nearest(o.x(), o.y(), o.z(), d.x(), d.y(), d.z(), 1e-6, 100, t);
        assertThat(t[0]).isCloseTo(1.5, within(1e-12));
        assertThat(faces.get(hit).frame().n()).isEqualTo(axis);
        Vec3 far = o.plus(side.times(5)).plus(axis.cross(side).times(5));
        assertThat(tree.any(far.x(), far.y(), far.z(), d.x(), d.y(), d.z(), 0, 100)).isNegative();
      }
    }
  }

  /** Flat boxes have sides in the ray's own plane, where 0 x infinity lies in wait. */
  @Test
  void raysSquareToFlatBoxesAreNotLost() {
    List<Face> faces = new ArrayList<>();
    List<Vec2> square = List.of(new Vec2(0, 0), new Vec2(1, 0), new Vec2(1, 1), new Vec2(0, 1));
    for (int i = 0; i < 6; i++) {
      faces.add(Face.of(Frame.of(new Vec3(0, i, 0), Vec3.EAST, Vec3.NORTH), square));
    }
    Occluders tree = Occluders.of(faces);
    double[] t = new double[1];
    // Seen along north the faces hang from z = 0 down to -1.
    assertThat(tree.nearest(0.5, -1, -1e-9, 0, 1, 0, 0, 100, t)).isZero();
    assertThat(tree.nearest(0.5, 10, -0.5, 0, -1, 0, 0, 100, t)).isEqualTo(5);
    // A ray in the plane of a face passes it.
    assertThat(tree.any(0.5, 0, 5, 0, 0, -1, 0, 100)).isNegative();
  }

  /**
   * Between two polygons: exactly the faces of which a plane parts two of their corners and whose
   * box meets that of both polygons, and so all that any way from the one to the other meets.
   */
  @Test
  void facesBetweenTwoPolygonsAreThoseThatPartThem() {
    Random random = new Random(20261128);
    List<Face> faces = scattered(random, 120);
    Occluders tree = Occluders.of(faces);
    int[] some = new int[tree.size()];
    int stopped = 0;
    for (int i = 0; i < 400; i++) {
      Vec3[] from = triangle(random);
      Vec3[] to = triangle(random);
      int count = tree.between(corners(from), corners(to), some);
      Set<Integer> found = new TreeSet<>();
      for (int k = 0; k < count; k++) {
        found.add(some[k]);
      }
      Set<Integer> wanted = new TreeSet<>();
      for (int f = 0; f < faces.size(); f++) {
        Face face = faces.get(f);
        boolean parted =
            Stream.of(from).anyMatch(a -> Stream.of(to).anyMatch(b -> heights(face, a, b) < 0));
        if (parted && boxesMeet(face, from, to)) {
          wanted.add(f);
        }
      }
      // The tree asks for boxes of leaves, so that it may find a few more, but none less.
      assertThat(found).containsAll(wanted);
      for (int f : found) {
        Face face = faces.get(f);
        assertThat(Stream.of(from))
            .anyMatch(a -> Stream.of(to).anyMatch(b -> heights(face, a, b) < 0));
      }
      assertThat(count).as("of %s faces", faces.size()).isLessThan(faces.size());
      for (int way = 0; way < 20; way++) {
        Vec3 a = inside(random, from);
        Vec3 b = inside(random, to);
        boolean met = nearest(faces, a, b.minus(a), 1e-6, 1 - 1e-6) >= 0;
        assertThat(tree.between(some, count, a.x(), a.y(), a.z(), b.x(), b.y(), b.z()))
            .isEqualTo(met);
        stopped += met ? 1 : 0;
      }
    }
    assertThat(stopped).isBetween(1000, 7000);
  }

  private static double heights(Face face, Vec3 a, Vec3 b) {
    Vec3 n = face.frame().n();
    return n.dot(a.minus(face.frame().origin())) * n.dot(b.minus(face.frame().origin()));
  }

  private static boolean boxesMeet(Face face, Vec3[] from, Vec3[] to) {
    List<Vec3> ends = Stream.concat(Stream.of(from), Stream.of(to)).toList();
    List<ToDoubleFunction<Vec3>> axes = List.of(Vec3::x, Vec3::y, Vec3::z);
    return axes.stream()
        .allMatch(
            axis -> {
              DoubleSummaryStatistics a =
                  face.corners().stream().mapToDouble(axis).summaryStatistics();
              DoubleSummaryStatistics b = ends.stream().mapToDouble(axis).summaryStatistics();
              return a.getMin() <= b.getMax() && b.getMin() <= a.getMax();
            });
  }

  private static Vec3[] triangle(Random random) {
    Vec3 at = inBox(random, 3);
    return new Vec3[] {
      at, at.plus(inBox(random, 0.5)), at.plus(inBox(random, 0.5)),
    };
  }

  private static double[] corners(Vec3[] points) {
    return Stream.of(points).flatMapToDouble(p -> DoubleStream.of(p.x(), p.y(), p.z())).toArray();
  }

  private static Vec3 inside(Random random, Vec3[] triangle) {
    double u = random.nextDouble();
    double v = random.nextDouble() * (1 - u);
    return triangle[0].times(1 - u - v).plus(triangle[1].times(u)).plus(triangle[2].times(v));
  }

  @Test
  void noFacesStopNothing() {
    Occluders none = Occluders.of(List.of());
    assertThat(none.size()).isZero();
    assertThat(none.between(0, 0, 0, 1, 1, 1)).isFalse();
    double[] t = new double[1];
    assertThat(none.nearest(0, 0, 0, 1, 0, 0, 0, 7, t)).isEqualTo(-1);
    assertThat(t[0]).isEqualTo(7);
  }

  @Test
  void theEndsOfAWayDoNotStopIt() {
    List<Vec2> square = List.of(new Vec2(-1, -1), new Vec2(1, -1), new Vec2(1, 1), new Vec2(-1, 1));
    Occluders floor =
        Occluders.of(List.of(Face.of(Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.UP), square)));
    assertThat(floor.between(0.1, 0.2, 0, 0.1, 0.2, 3)).isFalse();
    assertThat(floor.between(0.1, 0.2, 3, 0.1, 0.2, 0)).isFalse();
    assertThat(floor.between(0.1, 0.2, 3, 0.1, 0.2, -1e-5)).isTrue();
    assertThat(floor.between(0.1, 0.2, 1e-5, 0.1, 0.2, -3)).isTrue();
  }

  private static List<Face> scattered(Random random, int count) {
    List<Face> faces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Frame frame = Frame.of(inBox(random, 3), inBox(random, 1), inBox(random, 1));
      faces.add(new Face(frame, PENTAGON, i % 2 == 0 ? List.of() : List.of(HOLE)));
    }
    return faces;
  }

  private static Vec3 inBox(Random random, double half) {
    return new Vec3(
        half * (2 * random.nextDouble() - 1),
        half * (2 * random.nextDouble() - 1),
        half * (2 * random.nextDouble() - 1));
  }

  private static int nearest(List<Face> faces, Vec3 o, Vec3 d, double t0, double t1) {
    int found = -1;
    double best = t1;
    for (int i = 0; i < faces.size(); i++) {
      double t = meet(faces.get(i), o, d);
      if (t > t0 && t < best) {
        best = t;
        found = i;
      }
    }
    return found;
  }

  /** Where a ray meets a face, or NaN: winding number of the foot, not crossings of a line. */
  private static double meet(Face face, Vec3 o, Vec3 d) {
    Frame f = face.frame();
    double t = -f.height(o) / d.dot(f.n());
    Vec2 p = f.toPlane(o.plus(d.times(t)));
    boolean in = winds(face.outer(), p) && face.holes().stream().noneMatch(h -> winds(h, p));
    return in ? t : Double.NaN;
  }

  private static boolean winds(List<Vec2> ring, Vec2 p) {
    double turn = 0;
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      Vec2 a = ring.get(j).minus(p);
      Vec2 b = ring.get(i).minus(p);
      turn += Math.atan2(a.cross(b), a.dot(b));
    }
    return Math.abs(turn) > Math.PI;
  }
}
