package slantlight.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.sky.SunGrid;
import slantlight.units.Progress;
import slantlight.units.Workers;

/**
 * Suns that stand between those of the grid, through a window that is small beside the way that a
 * patch of sun moves from one of them to the next: the basis against light traced for that sun.
 */
class BetweenSunsTest {
  private static final House ROOM = TestHouses.boxRoom(4, 3, 2.5, 1.7, 2.3, 1.2, 1.8, 0.7);
  private static final double LUX = 80_000;

  /** Luminance of a clear sky, cd/m2. */
  private static final double SKY = 3000;

  /** Low on the walls and on the floor's edge, where the sun's patch passes close by. */
  private static final List<SamplePoint> POINTS =
      List.of(
          point(new Vec3(0.001, 1.1, 0.25), Vec3.NORTH, Vec3.EAST),
          point(new Vec3(0.001, 2.2, 0.15), Vec3.NORTH, Vec3.EAST),
          point(new Vec3(1.4, 2.999, 0.2), Vec3.EAST, Vec3.NORTH.times(-1)),
          point(new Vec3(2.3, 2.999, 0.35), Vec3.EAST, Vec3.NORTH.times(-1)),
          point(new Vec3(3.999, 1.6, 0.2), Vec3.NORTH, Vec3.EAST.times(-1)),
          point(new Vec3(2.1, 1.4, 2.499), Vec3.EAST, Vec3.DOWN));

  private static SamplePoint point(Vec3 at, Vec3 u, Vec3 n) {
    return new SamplePoint(Frame.of(at, u, n), "room");
  }

  /** What differs, as shares of the illuminance: illuminance, and both parts along the surface. */
  private record Off(double basis, double mixture) {}

  /**
   * Dark surfaces leave the first bounce alone, and that is followed sun by sun. The rows are
   * weighed as finely as a list of incident light, so that both cut patches alike.
   */
  @Test
  void theFirstBounceIsThatOfTheSunWhereItIs() {
    List<Off> off = off(0.1);
    double[] exact = sorted(off, Off::basis);
    assertThat(share(exact, 0.95)).isLessThan(0.005);
    assertThat(share(exact, 1)).isLessThan(0.02);
    // What is mixed of the four suns of the grid alone is no such thing.
    double[] mixed = sorted(off, Off::mixture);
    assertThat(share(mixed, 0.95)).isGreaterThan(0.05);
    assertThat(share(mixed, 1)).isGreaterThan(0.3);
  }

  /**
   * The second bounce follows the sun by whole groups of patches and later ones are mixed still: in
   * pale rooms that is what is left of the difference, the more the finer the patches.
   */
  @Test
  void laterBouncesOfPaleRoomsAreMixed() {
    List<Off> off = off(0.7);
    double[] exact = sorted(off, Off::basis);
    assertThat(share(exact, 0.5)).isLessThan(0.005);
    assertThat(share(exact, 0.95)).isLessThan(0.03);
    assertThat(share(sorted(off, Off::mixture), 0.95)).isGreaterThan(0.05);
  }

  /** Of the fleck alone there is nothing under a sun of the grid: the mixture holds it whole. */
  @Test
  void underASunOfTheGridTheMixtureIsAll() {
    Transport light = light(0.7);
    Basis basis = basis(light);
    // Nodes moved up to the horizon are mixed as where they were.
    Suns nodes = Suns.of(light.sunGrid().nodes().stream().filter(n -> n.z() > 0).toList());
    double most = 0;
    for (int p = 0; p < POINTS.size(); p++) {
      for (int bundle = 0; bundle < nodes.bundles(); bundle++) {
        int size = nodes.start(bundle + 1) - nodes.start(bundle);
        float[][] more = new float[3][size];
        basis.flecks(p, nodes, bundle, 0, more);
        for (float[] row : more) {
          for (float m : row) {
            most = Math.max(most, Math.abs(m));
          }
        }
      }
    }
    // Per lux of sun: 0.1 lx of 100,000 lx.
    assertThat(most).isLessThan(1e-6);
  }

  @Test
  void twoThreadsFindTheSameBits() {
    assertThat(inThreads(2)).isEqualTo(inThreads(1));
  }

  /** Light, flecks and all, built and asked for in so many threads: by point, row and sun. */
  private static float[][][] inThreads(int threads) {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(BetweenSunsTest::asked).join();
    } finally {
      pool.shutdown();
    }
  }

  private static float[][][] asked() {
    Basis basis = basis(light(0.7));
    List<Vec3> suns = suns(new Random(32), 70);
    Basis.Block block =
        basis.block(suns.stream().map(s -> LightHouses.sunny(ROOM, s, LUX, SKY)).toList());
    float[][][] out = new float[POINTS.size()][3][suns.size()];
    Workers.each(out.length, p -> basis.evaluate(p, block, out[p]));
    return out;
  }

  private static List<Off> off(double lrv) {
    Transport light = light(lrv);
    Basis basis = basis(light);
    List<Off> off = new ArrayList<>();
    for (int p = 0; p < POINTS.size(); p++) {
      for (Vec3 sun : suns(new Random(31), 40)) {
        off.add(off(light, basis, p, sun));
      }
    }
    return off;
  }

  private static double[] sorted(List<Off> off, ToDoubleFunction<Off> of) {
    return off.stream().mapToDouble(of).sorted().toArray();
  }

  private static double share(double[] sorted, double share) {
    return sorted[(int) (share * (sorted.length - 1))];
  }

  private static Off off(Transport light, Basis basis, int p, Vec3 sun) {
    LightState state = LightHouses.sunny(ROOM, sun, LUX, SKY);
    float[][] all = new float[3][1];
    basis.evaluate(p, basis.block(List.of(state)), all);
    float[][] more = new float[3][1];
    basis.flecks(p, Suns.of(List.of(sun)), 0, 0, more);
    SamplePoint at = POINTS.get(p);
    Vec3 v = at.frame().directionToLocal(bounced(light, at, state));
    double[] truth = {v.z(), v.x(), v.y()};
    double exact = 0;
    double mixture = 0;
    for (int r = 0; r < 3; r++) {
      exact = Math.max(exact, Math.abs(all[r][0] - truth[r]) / v.z());
      double mixed = all[r][0] - LUX * more[r][0];
      mixture = Math.max(mixture, Math.abs(mixed - truth[r]) / v.z());
    }
    return new Off(exact, mixture);
  }

  /** The light vector without the sun's own beam, which is not in a basis. */
  private static Vec3 bounced(Transport light, SamplePoint at, LightState state) {
    return light.incident(at, state).bySource().entrySet().stream()
        .filter(e -> e.getKey().kind() != SourceKind.SUN)
        .map(e -> e.getValue().lightVector())
        .reduce(Vec3.ZERO, Vec3::plus);
  }

  private static Transport light(double lrv) {
    House house = LightHouses.painted(ROOM, lrv);
    return Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
  }

  private static Basis basis(Transport light) {
    List<Kernel> kernels = Collections.nCopies(POINTS.size(), LightHouses.VECTOR);
    return light.basis(POINTS, kernels, Progress.NONE);
  }

  /** Places of the sun in the year's band that shine into the window well. */
  private static List<Vec3> suns(Random random, int count) {
    List<Vec3> out = new ArrayList<>();
    double latitude = Math.toRadians(ROOM.site().latitudeDeg());
    while (out.size() < count) {
      Vec3 sun =
          SunGrid.direction(
              latitude,
              Math.toRadians(46 * random.nextDouble() - 23),
              Math.toRadians(140 * random.nextDouble() - 70));
      if (sun.z() > 0.1 && sun.y() < -0.2) {
        out.add(sun);
      }
    }
    return out;
  }
}
