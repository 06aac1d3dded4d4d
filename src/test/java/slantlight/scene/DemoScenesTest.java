package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/** The scenes that are shipped are sound, and their rooms let light out through openings only. */
class DemoScenesTest {
  @ParameterizedTest
  @ValueSource(strings = {"one-room", "lake-house", "wide-glass", "narrow-glass"})
  void areSound(String name) {
    Read read = SceneReader.read(Path.of("scenes", name + ".json"));
    assertThat(read).isInstanceOf(Read.Ok.class);
    assertThat(((Read.Ok) read).warnings()).isEmpty();
  }

  /** Gauss: the vector areas of a closed surface, openings included, add to nothing. */
  @ParameterizedTest
  @ValueSource(strings = {"one-room", "lake-house", "wide-glass", "narrow-glass"})
  void vectorAreasOfEachRoomAddToNothing(String name) {
    House house = house(name);
    for (Room room : house.rooms()) {
      Vec3 sum = Vec3.ZERO;
      double whole = 0;
      for (Surface s : house.surfaces()) {
        // Stairs are open where they stand on the floor and against walls.
        if (s.roomId().equals(room.id()) && !s.id().contains("/flight")) {
          sum = sum.plus(s.face().frame().n().times(s.face().area()));
          whole += s.face().area();
        }
      }
      for (Opening o : house.openings()) {
        double area = o.face().area();
        if (o.roomId().equals(room.id())) {
          sum = sum.plus(o.face().frame().n().times(area));
        }
        if (o.toRoomId().filter(room.id()::equals).isPresent()) {
          sum = sum.minus(o.face().frame().n().times(area));
        }
      }
      assertThat(sum.length()).as(room.id()).isCloseTo(0, within(1e-6 * whole));
    }
  }

  /** Rays from every eye end on a surface's front or leave through a glazed opening. */
  @ParameterizedTest
  @ValueSource(strings = {"one-room", "lake-house", "wide-glass", "narrow-glass"})
  void raysLeaveThroughOpeningsOnly(String name) {
    House house = house(name);
    Random random = new Random(20260101);
    int left = 0;
    for (Eye eye : house.eyes()) {
      for (int i = 0; i < 400; i++) {
        Vec3 d =
            new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
        double wall = nearestFront(house, eye.position(), d);
        double hole = nearestOpening(house, eye.position(), d);
        assertThat(Math.min(wall, hole)).as("%s %s", eye.id(), d).isFinite();
        left += hole < wall ? 1 : 0;
      }
    }
    assertThat(left).isPositive();
  }

  /** Distance to the first surface; infinite when it is seen from behind, which must not be. */
  private static double nearestFront(House house, Vec3 p, Vec3 d) {
    double best = Double.POSITIVE_INFINITY;
    boolean front = true;
    for (Surface s : house.surfaces()) {
      double t = distance(s.face(), p, d);
      if (t < best) {
        best = t;
        front = d.dot(s.face().frame().n()) < 0;
      }
    }
    return front ? best : Double.POSITIVE_INFINITY;
  }

  private static double nearestOpening(House house, Vec3 p, Vec3 d) {
    return house.openings().stream()
        .filter(o -> o.kind() != OpeningKind.PASSAGE)
        .mapToDouble(o -> distance(o.face(), p, d))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static double distance(Face f, Vec3 p, Vec3 d) {
    double toward = d.dot(f.frame().n());
    if (Math.abs(toward) < 1e-12) {
      return Double.POSITIVE_INFINITY;
    }
    double t = -f.frame().height(p) / toward;
    Vec2 at = f.frame().toPlane(p.plus(d.times(t)));
    return t > 0 && f.contains(at) ? t : Double.POSITIVE_INFINITY;
  }

  @ParameterizedTest
  @ValueSource(strings = {"one-room", "lake-house"})
  void idsAreUniqueAndRefersAreKnown(String name) {
    House house = house(name);
    Set<String> ids = new HashSet<>();
    house.surfaces().forEach(s -> assertThat(ids.add(s.id())).as(s.id()).isTrue());
    Set<String> eyes = new HashSet<>();
    house.eyes().forEach(e -> assertThat(eyes.add(e.id())).as(e.id()).isTrue());
    for (Opening o : house.openings()) {
      Surface in = house.surface(o.surfaceId());
      assertThat(in.face().holes()).contains(o.face().outer());
      assertThat(in.roomId()).isEqualTo(o.roomId());
    }
    for (Surface s : house.surfaces()) {
      assertThat(Face.signedArea(s.face().outer())).as(s.id()).isPositive();
      assertThat(s.framing().isPresent()).as(s.id()).isEqualTo(s.boarded());
      assertThat(s.boards().isPresent()).as(s.id()).isEqualTo(s.boarded());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lake-house"})
  void everyRoomOfTheLakeHouseHasAFewEyes(String name) {
    House house = house(name);
    for (Room room : house.rooms()) {
      List<Eye> eyes = house.eyes().stream().filter(e -> e.roomId().equals(room.id())).toList();
      assertThat(eyes.size()).as(room.id()).isBetween(1, 12);
    }
  }

  private static House house(String name) {
    return ((Read.Ok) SceneReader.read(Path.of("scenes", name + ".json"))).house();
  }
}
