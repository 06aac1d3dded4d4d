package slantlight.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.LightState;
import slantlight.scene.Distribution;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.sky.SkyState;

/** The reference itself, held to closed forms before anything is held to it. */
class PathTracerTest {
  private static final SkyState NIGHT =
      new SkyState(Vec3.DOWN, 0, (x, y, z) -> 0, 0, 0.2, Double.NaN);
  private static final SkyState UNIFORM =
      new SkyState(Vec3.DOWN, 0, (x, y, z) -> 1000, 1000 * Math.PI, 0, 0);

  @Test
  void closedRoomOfOneReflectanceKeepsItsFlux() {
    // Flux balance: the mean illuminance of a closed room is flux / (area (1 - rho)), any shape.
    double rho = 0.6;
    House house =
        new HouseSketch()
            .box("room", 0, 0, 4, 3, 2.5, rho, rho, rho)
            .lamp("room", new Vec3(1, 1, 2), Vec3.DOWN, Distribution.Named.BARE, 1000, 0, 0)
            .house();
    PathTracer tracer = new PathTracer(house, new LightState(NIGHT, List.of(1.0)), false);
    double flux = 0;
    double area = 0;
    double variance = 0;
    int side = 6;
    for (Surface s : house.surfaces()) {
      double w = s.face().outer().get(2).x();
      double h = s.face().outer().get(2).y();
      double cell = w * h / (side * side);
      for (int i = 0; i < side * side; i++) {
        int row = i / side;
        Vec2 at = new Vec2((i % side + 0.5) * w / side, (row + 0.5) * h / side);
        Frame f = s.face().frame();
        Answer a = tracer.at(new Frame(f.toWorld(at), f.u(), f.v(), f.n()), 4, 24, i);
        flux += a.illuminance() * cell;
        variance += a.error() * a.error() * cell * cell;
        area += cell;
      }
    }
    double expected = 1000 / (area * (1 - rho));
    assertThat(Math.sqrt(variance) / flux).isLessThan(0.003);
    assertThat(flux / area).isCloseTo(expected, Offset.offset(0.01 * expected));
  }

  @Test
  void blackRoomUnderAUniformSkyFollowsTheConfigurationFactor() {
    // Element perpendicular to a rectangle, W across, H high, distance S (Howell's catalog B-4).
    House house =
        new HouseSketch()
            .box("room", -5, 0, 10, 6, 3, 0, 0, 0)
            .window(
                "room/south",
                "w",
                new double[] {3, 5},
                new double[] {0, 2},
                HouseSketch.Glazing.bare())
            .house();
    Frame floor = new Frame(new Vec3(0, 2, 0), Vec3.EAST, Vec3.NORTH, Vec3.UP);
    Answer a =
        new PathTracer(house, new LightState(UNIFORM, List.of()), false).at(floor, 16, 128, 1);
    double x = 2.0 / 2;
    double y = 2.0 / 2;
    double factor =
        (Math.atan(x) - Math.atan(x / Math.sqrt(1 + y * y)) / Math.sqrt(1 + y * y)) / 2 / Math.PI;
    // The window is on one side of the element's axis and the sky stands above the horizon only.
    assertThat(a.error() / a.illuminance()).isLessThan(0.002);
    assertThat(a.illuminance()).isCloseTo(1000 * Math.PI * factor, Offset.offset(4 * a.error()));
  }

  @Test
  void inverseSquareUnderASmallLamp() {
    House house =
        new HouseSketch()
            .box("room", 0, 0, 4, 4, 3, 0, 0, 0)
            .lamp(
                "room",
                new Vec3(2, 2, 2.5),
                Vec3.DOWN,
                Distribution.Named.DIFFUSER,
                Math.PI * 100,
                0,
                0)
            .house();
    Frame below = new Frame(new Vec3(2, 2, 0), Vec3.EAST, Vec3.NORTH, Vec3.UP);
    Answer a = new PathTracer(house, new LightState(NIGHT, List.of(1.0)), false).at(below, 2, 4, 1);
    assertThat(a.illuminance()).isCloseTo(100 / (2.5 * 2.5), Offset.offset(1e-9));
  }

  @Test
  void sameSeedSameBits() {
    House house =
        new HouseSketch()
            .box("room", 0, 0, 4, 3, 2.5, 0.3, 0.7, 0.8)
            .window(
                "room/south",
                "w",
                new double[] {1, 3},
                new double[] {0.9, 2.1},
                HouseSketch.Glazing.CLEAR)
            .house();
    Frame f = new Frame(new Vec3(2, 2, 2.5), Vec3.EAST, Vec3.NORTH.times(-1), Vec3.DOWN);
    PathTracer tracer = new PathTracer(house, new LightState(UNIFORM, List.of()), false);
    assertThat(tracer.at(f, 8, 16, 7)).isEqualTo(tracer.at(f, 8, 16, 7));
  }
}
