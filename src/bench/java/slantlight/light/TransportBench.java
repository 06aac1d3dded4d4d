package slantlight.light;

import static java.lang.Math.fma;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slantlight.geom.Frame;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.sky.SkyModel;
import slantlight.sky.SkyState;
import slantlight.sky.SunGrid;
import slantlight.sky.Weather;
import slantlight.units.Progress;

/** Speed of the light model on the lake house: building, the year's product, the sun's beam. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class TransportBench {
  private static final int BLOCK = 512;
  private static final int PEAK_BLOCK = 1024;
  private static final int ROWS = 12;
  private static final int MULTIPLY_ADDS = 15 * (1 << 22);

  /** 1x, 2x, 4x and 8x samples: how time and memory grow. */
  @Param({"190", "380", "760", "1520"})
  int samples;

  private House house;
  private Transport transport;
  private List<SamplePoint> points;
  private Basis basis;
  private List<Basis.Block> blocks;
  private SunBeams beams;
  private double[] suns;

  @Setup
  public void prepare() {
    if (!(SceneReader.read(Path.of("scenes", "lake-house.json")) instanceof Read.Ok read)) {
      throw new IllegalStateException("scenes/lake-house.json has faults; run from the project");
    }
    house = read.house();
    transport = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    points = points();
    basis = transport.basis(points, Collections.nCopies(samples, kernel()), Progress.NONE);
    List<LightState> states = bySun(year());
    blocks = new ArrayList<>();
    for (int i = 0; i < states.size(); i += BLOCK) {
      blocks.add(basis.block(states.subList(i, Math.min(states.size(), i + BLOCK))));
    }
    beams = transport.beams(points);
    suns =
        states.stream()
            .map(s -> s.sky().sun())
            .flatMapToDouble(d -> java.util.stream.DoubleStream.of(d.x(), d.y(), d.z()))
            .toArray();
  }

  /** Sample points spread evenly over the patches of boarded surfaces. */
  private List<SamplePoint> points() {
    List<Patch> patches =
        transport.roomLight().patches().stream()
            .filter(p -> house.surfaces().get(p.surface()).boarded())
            .toList();
    List<SamplePoint> out = new ArrayList<>();
    for (int i = 0; i < samples; i++) {
      Patch p = patches.get((int) ((long) i * patches.size() / samples));
      Frame f = p.frame();
      out.add(
          new SamplePoint(
              new Frame(p.centre(), f.u(), f.v(), f.n()), house.rooms().get(p.room()).id()));
    }
    return out;
  }

  private static Kernel kernel() {
    return new Kernel() {
      @Override
      public int rows() {
        return ROWS;
      }

      @Override
      public void weigh(double wu, double wv, double wn, double[] out) {
        for (int r = 0; r < ROWS; r++) {
          out[r] = Math.max(0, wn + 0.01 * r * wu);
        }
      }
    };
  }

  /** All daylight of a year in steps of ten minutes. */
  private List<LightState> year() {
    SkyModel sky = SkyModel.of(house.site());
    List<Double> dark = Collections.nCopies(house.lamps().size(), 0.0);
    ZonedDateTime start = ZonedDateTime.of(2025, 1, 1, 0, 0, 0, 0, house.site().zone());
    List<LightState> out = new ArrayList<>();
    for (int i = 0; i < 365 * 144; i++) {
      SkyState s = sky.at(start.plusMinutes(10L * i), Weather.CLEAR);
      if (s.sun().z() > 0) {
        out.add(new LightState(s, dark));
      }
    }
    return out;
  }

  /** States whose suns stand in one cell of the grid one after another: they share their nodes. */
  private List<LightState> bySun(List<LightState> states) {
    SunGrid grid = SunGrid.of(house.site().latitudeDeg());
    int[] node = new int[4];
    float[] share = new float[4];
    return states.stream()
        .sorted(
            Comparator.comparingInt(
                s -> {
                  grid.weights(s.sky().sun(), node, share);
                  return node[0];
                }))
        .toList();
  }

  /** The model of the house, from nothing. */
  @Benchmark
  public Transport build() {
    return Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
  }

  /** Responses of the samples to every unit source. */
  @Benchmark
  public Basis basis() {
    return transport.basis(points, Collections.nCopies(samples, kernel()), Progress.NONE);
  }

  /** Twelve rows of every sample at every daylight moment of the year, on all cores. */
  @Benchmark
  public double annualProduct() {
    double[] sums = new double[blocks.size()];
    IntStream.range(0, blocks.size())
        .parallel()
        .forEach(
            k -> {
              float[][] out = new float[ROWS][BLOCK];
              for (int s = 0; s < samples; s++) {
                basis.evaluate(s, blocks.get(k), out);
                sums[k] += out[ROWS - 1][0];
              }
            });
    double sum = 0;
    for (double v : sums) {
      sum += v;
    }
    return sum;
  }

  /** The sun's beam at every sample and moment, on one core: time for the lot. */
  @Benchmark
  public double beamTests() {
    double sum = 0;
    for (int s = 0; s < samples; s++) {
      for (int m = 0; m < suns.length; m += 3) {
        sum += beams.transmittance(s, suns[m], suns[m + 1], suns[m + 2]);
      }
    }
    return sum;
  }

  /** How many moments a year has. */
  int moments() {
    return suns.length / 3;
  }

  /** Multiply-adds of the year's product, its dense part. */
  double multiplyAdds() {
    double sum = 0;
    for (int s = 0; s < samples; s++) {
      sum += (double) ((Coefficients) basis).multiplyAdds(s) * moments();
    }
    return sum;
  }

  /**
   * What one core can do: fused multiply-adds on arrays that stay in the nearest cache, five to each
   * of three sums, so that loads and stores do not hold them up.
   */
  @Benchmark
  @OperationsPerInvocation(MULTIPLY_ADDS)
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public float peakMultiplyAdd() {
    float[] a = new float[PEAK_BLOCK];
    float[] b = new float[PEAK_BLOCK];
    float[] c = new float[PEAK_BLOCK];
    float[] in = new float[PEAK_BLOCK];
    Arrays.fill(in, 0.5f);
    for (int k = 0; k < MULTIPLY_ADDS / PEAK_BLOCK / 15; k++) {
      fifteen(a, b, c, in);
    }
    return a[0] + b[0] + c[0];
  }

  private static void fifteen(float[] a, float[] b, float[] c, float[] in) {
    for (int i = 0; i < in.length; i++) {
      float x = in[i];
      a[i] = fma(0.1f, x, fma(0.2f, x, fma(0.3f, x, fma(0.4f, x, fma(0.5f, x, a[i])))));
      b[i] = fma(0.6f, x, fma(0.7f, x, fma(0.8f, x, fma(0.9f, x, fma(0.11f, x, b[i])))));
      c[i] = fma(0.12f, x, fma(0.13f, x, fma(0.14f, x, fma(0.15f, x, fma(0.16f, x, c[i])))));
    }
  }
}
