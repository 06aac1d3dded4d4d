package slantlight.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Vectors, frames, faces and rings against values that can be worked out by hand. */
class PlanesTest {
  private static final List<Vec2> SQUARE =
      List.of(new Vec2(0, 0), new Vec2(4, 0), new Vec2(4, 4), new Vec2(0, 4));
  private static final List<Vec2> HOLE =
      List.of(new Vec2(1, 1), new Vec2(1, 2), new Vec2(3, 2), new Vec2(3, 1));

  /** An L of area 3: a 2 x 2 square without its upper right quarter. */
  private static final double[] ELL = {0, 0, 2, 0, 2, 1, 1, 1, 1, 2, 0, 2};

  @Test
  void planeVectors() {
    Vec2 a = new Vec2(3, 4);
    Vec2 b = new Vec2(-1, 2);
    assertThat(a.plus(b)).isEqualTo(new Vec2(2, 6));
    assertThat(a.minus(b)).isEqualTo(new Vec2(4, 2));
    assertThat(a.times(2)).isEqualTo(new Vec2(6, 8));
    assertThat(a.dot(b)).isEqualTo(5);
    assertThat(a.cross(b)).isEqualTo(10);
    assertThat(a.length()).isEqualTo(5);
    assertThat(a.distance(new Vec2(0, 0))).isEqualTo(5);
    assertThat(a.lerp(b, 0.25)).isEqualTo(new Vec2(2, 3.5));
    assertThat(a.unit()).isEqualTo(new Vec2(0.6, 0.8));
    assertThatThrownBy(() -> new Vec2(0, 0).unit()).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void spaceVectors() {
    Vec3 a = new Vec3(1, 2, 3);
    Vec3 b = new Vec3(4, -5, 6);
    assertThat(a.plus(b)).isEqualTo(new Vec3(5, -3, 9));
    assertThat(a.minus(b)).isEqualTo(new Vec3(-3, 7, -3));
    assertThat(a.times(-2)).isEqualTo(new Vec3(-2, -4, -6));
    assertThat(a.dot(b)).isEqualTo(12);
    assertThat(a.cross(b)).isEqualTo(new Vec3(27, 6, -13));
    assertThat(new Vec3(2, 3, 6).length()).isEqualTo(7);
    assertThat(new Vec3(2, 3, 6).distance(Vec3.ZERO)).isEqualTo(7);
    assertThat(new Vec3(0, 0, 5).unit()).isEqualTo(Vec3.UP);
    assertThatThrownBy(Vec3.ZERO::unit).isInstanceOf(ArithmeticException.class);
    assertThat(Vec3.EAST.cross(Vec3.NORTH)).isEqualTo(Vec3.UP);
    assertThat(Vec3.UP.times(-1)).isEqualTo(new Vec3(-0.0, -0.0, -1));
    assertThat(Vec3.DOWN.z()).isEqualTo(-1);
  }

  @Test
  void azimuthRunsClockwiseFromNorth() {
    assertThat(Vec3.NORTH.azimuth()).isZero();
    assertThat(Vec3.EAST.azimuth()).isEqualTo(Math.PI / 2);
    assertThat(Vec3.EAST.times(-1).azimuth()).isCloseTo(1.5 * Math.PI, within(1e-15));
    assertThat(Vec3.UP.altitude()).isEqualTo(Math.PI / 2);
    Vec3 d = Vec3.ofAzimuthAltitude(Math.toRadians(210), Math.toRadians(30));
    assertThat(d.x()).isCloseTo(-Math.sqrt(3) / 4, within(1e-15));
    assertThat(d.y()).isCloseTo(-0.75, within(1e-15));
    assertThat(d.z()).isCloseTo(0.5, within(1e-15));
    assertThat(d.azimuth()).isCloseTo(Math.toRadians(210), within(1e-14));
    assertThat(d.altitude()).isCloseTo(Math.toRadians(30), within(1e-14));
  }

  @Test
  void framesGoToTheWorldAndBack() {
    Frame wall = Frame.of(new Vec3(1, 2, 3), new Vec3(-2, 0.5, 0), Vec3.NORTH);
    assertThat(wall.u().distance(new Vec3(-1, 0, 0))).isZero();
    assertThat(wall.v().distance(Vec3.UP)).isZero();
    assertThat(wall.u().cross(wall.v()).distance(wall.n())).isZero();
    assertThat(wall.toWorld(new Vec2(2, 5))).isEqualTo(new Vec3(-1, 2, 8));
    assertThat(wall.toWorld(new Vec2(2, 5), 0.5)).isEqualTo(new Vec3(-1, 2.5, 8));
    assertThat(wall.toPlane(new Vec3(-1, 2.5, 8))).isEqualTo(new Vec2(2, 5));
    assertThat(wall.height(new Vec3(-1, 2.5, 8))).isEqualTo(0.5);
    assertThat(wall.height(new Vec3(9, 1, 9))).isEqualTo(-1);
    Vec3 world = new Vec3(0.3, -0.4, 0.5);
    assertThat(wall.directionToLocal(world)).isEqualTo(new Vec3(-0.3, 0.5, -0.4));
    assertThat(wall.directionToWorld(wall.directionToLocal(world)).distance(world)).isZero();
  }

  @Test
  void facesHaveAreaHolesAndCorners() {
    Face face = new Face(Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.UP), SQUARE, List.of(HOLE));
    assertThat(Face.signedArea(SQUARE)).isEqualTo(16);
    assertThat(Face.signedArea(HOLE)).isEqualTo(-2);
    assertThat(face.area()).isEqualTo(14);
    assertThat(face.contains(new Vec2(0.5, 0.5))).isTrue();
    assertThat(face.contains(new Vec2(2, 1.5))).isFalse();
    assertThat(face.contains(new Vec2(2, 2.5))).isTrue();
    assertThat(face.contains(new Vec2(4.5, 2))).isFalse();
    assertThat(face.contains(new Vec2(2, -0.1))).isFalse();
    assertThat(face.centroid()).isEqualTo(new Vec2(2, 2));
    assertThat(face.corners()).hasSize(4).contains(new Vec3(4, 4, 0));
    assertThatThrownBy(() -> Face.of(face.frame(), SQUARE.subList(0, 2)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void ringsAreClippedExactly() {
    assertThat(Rings.area(ELL)).isEqualTo(3);
    assertThat(Rings.area(Rings.oriented(ELL, false))).isEqualTo(-3);
    assertThat(Rings.oriented(ELL, true)).isSameAs(ELL);
    assertThat(Rings.bounds(ELL)).containsExactly(0, 0, 2, 2);
    assertThat(Rings.middle(new double[] {0, 0, 2, 0, 2, 2, 0, 2})).containsExactly(1, 1);
    assertThat(Rings.area(Rings.clip(ELL, 0.5, 0.5, 1.5, 1.5))).isCloseTo(0.75, within(1e-15));
    assertThat(Rings.area(Rings.clip(ELL, -1, 0, 1.5))).isCloseTo(2.5, within(1e-15));
    assertThat(Rings.clip(ELL, -1, -1, 3, 3)).isSameAs(ELL);
    assertThat(Rings.clip(ELL, 5, 5, 6, 6)).isEmpty();
    double[] triangle = {0, 0, 2, 0, 0, 2};
    assertThat(Rings.area(Rings.clip(new double[] {0, 0, 2, 0, 2, 2, 0, 2}, triangle)))
        .isCloseTo(2, within(1e-15));
    assertThat(Rings.inside(ELL, 0.5, 1.5)).isTrue();
    assertThat(Rings.inside(ELL, 1.5, 1.5)).isFalse();
    assertThat(Rings.inside(ELL, -0.5, 0.5)).isFalse();
    assertThat(Math.abs(Rings.area(Rings.hull(ELL)))).isCloseTo(3.5, within(1e-15));
    assertThat(Rings.array(SQUARE)).containsExactly(0, 0, 4, 0, 4, 4, 0, 4);
  }

  @Test
  void occludersStopRaysAtFacesAndLetThemThroughHoles() {
    Face wall =
        new Face(Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.NORTH.times(-1)), SQUARE, List.of(HOLE));
    Face behind = Face.of(Frame.of(new Vec3(0, 5, 0), Vec3.EAST, Vec3.NORTH.times(-1)), SQUARE);
    Occluders both = Occluders.of(List.of(wall, behind));
    assertThat(both.size()).isEqualTo(2);
    double[] t = new double[1];
    assertThat(both.nearest(0.5, -2, 0.5, 0, 1, 0, 1e-6, 100, t)).isZero();
    assertThat(t[0]).isCloseTo(2, within(1e-12));
    assertThat(both.nearest(2, -2, 1.5, 0, 1, 0, 1e-6, 100, t)).isEqualTo(1);
    assertThat(t[0]).isCloseTo(7, within(1e-12));
    assertThat(both.any(2, -2, 1.5, 0, 1, 0, 1e-6, 6)).isNegative();
    assertThat(both.any(2, -2, 1.5, 0, 1, 0, 1e-6, 8)).isEqualTo(1);
    assertThat(both.any(9, -2, 1.5, 0, 1, 0, 1e-6, 100)).isNegative();
    assertThat(both.between(0.5, -2, 0.5, 0.5, 2, 0.5)).isTrue();
    assertThat(both.between(2, -2, 1.5, 2, 2, 1.5)).isFalse();
    assertThat(both.between(0.5, -2, 0.5, 0.5, -1, 0.5)).isFalse();
  }
}
