package slantlight.board;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Framing;
import slantlight.scene.JointKind;
import slantlight.scene.Paint;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/**
 * Processor time to lay out one surface, both directions tried, as the first thing a fresh JVM does and warm,
 * beside a baseline of the same run: sorting 100,000 random numbers, cold or warm as well. Prints
 * the median and the largest of the runs.
 */
public final class LayoutBench {
  private static final double FT = 0.3048;
  private static final int COLD_RUNS = 7;
  private static final int WARM_UP = 60;
  private static final int WARM_RUNS = 41;

  private static final ShowWeight VARIED =
      (p, along, kind) ->
          (kind == JointKind.TAPERED ? 1 : 3)
              * (1 + 0.4 * Math.sin(1.3 * p.x() + 0.4) * Math.cos(0.9 * p.y()));

  private LayoutBench() {}

  /** Without arguments measures all; with one, a name of {@link #work}, does it once, cold. */
  public static void main(String[] args) throws IOException, InterruptedException {
    if (args.length > 0) {
      System.out.println(milliseconds(work(args[0])));
      return;
    }
    double[] coldBase = cold("baseline");
    double[] warmBase = warm("baseline");
    for (String surface : List.of("ceiling", "gable")) {
      for (String weight : List.of("even", "varied")) {
        String name = surface + " " + weight;
        print("cold", name, cold(name), coldBase);
        print("warm", name, warm(name), warmBase);
      }
    }
  }

  /** Surface and weight, such as "gable varied", or "baseline". */
  private static Runnable work(String name) {
    if (name.equals("baseline")) {
      double[] numbers = new Random(1).doubles(100_000).toArray();
      return () -> Arrays.sort(numbers.clone());
    }
    Surface surface = name.startsWith("ceiling") ? largestCeiling() : gable();
    ShowWeight weight = name.endsWith("even") ? ShowWeight.PLAIN : VARIED;
    return () -> LayoutSolver.solve(surface, weight);
  }

  /** Processor time of this thread: other work on the machine does not count. */
  private static double milliseconds(Runnable work) {
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long start = clock.getCurrentThreadCpuTime();
    work.run();
    return (clock.getCurrentThreadCpuTime() - start) / 1e6;
  }

  private static double[] cold(String name) throws IOException, InterruptedException {
    double[] times = new double[COLD_RUNS];
    for (int i = 0; i < times.length; i++) {
      Process fresh =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  LayoutBench.class.getName(),
                  name)
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      String out = new String(fresh.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (fresh.waitFor() != 0) {
        throw new IllegalStateException(name + " failed in a fresh JVM");
      }
      times[i] = Double.parseDouble(out.strip());
    }
    Arrays.sort(times);
    return times;
  }

  private static double[] warm(String name) {
    Runnable work = work(name);
    for (int i = 0; i < WARM_UP; i++) {
      work.run();
    }
    double[] times = new double[WARM_RUNS];
    for (int i = 0; i < times.length; i++) {
      times[i] = milliseconds(work);
    }
    Arrays.sort(times);
    return times;
  }

  private static void print(String how, String name, double[] sorted, double[] base) {
    double median = sorted[sorted.length / 2];
    double unit = base[base.length / 2];
    System.out.printf(
        Locale.ROOT,
        "%s, %s: %.1f ms (largest %.1f), %.2f times the baseline of %.1f ms%n",
        how,
        name,
        median,
        sorted[sorted.length - 1],
        median / unit,
        unit);
  }

  private static Surface largestCeiling() {
    if (!(SceneReader.read(Path.of("scenes", "lake-house.json")) instanceof Read.Ok read)) {
      throw new IllegalStateException("scenes/lake-house.json has faults; run from the project");
    }
    return read.house().surfaces().stream()
        .filter(s -> s.kind() == SurfaceKind.CEILING && s.boarded())
        .max(Comparator.comparingDouble(s -> s.face().area()))
        .orElseThrow();
  }

  /** 12 m wide, 7 m high at the sides, 9 m at the ridge, with six windows. */
  private static Surface gable() {
    List<Vec2> outer =
        List.of(
            new Vec2(0, 0), new Vec2(12, 0), new Vec2(12, 7), new Vec2(5.6, 9), new Vec2(0, 7));
    List<List<Vec2>> holes = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double x = 0.7 + 3.9 * (i % 3);
      double y = i < 3 ? 0.9 : 4.1;
      holes.add(
          List.of(
              new Vec2(x, y), new Vec2(x + 2.1, y), new Vec2(x + 2.1, y + 1.6),
              new Vec2(x, y + 1.6)));
    }
    List<BoardSize> sizes = new ArrayList<>();
    for (double length : new double[] {8, 9, 10, 12, 14, 16}) {
      sizes.add(new BoardSize(4 * FT, length * FT));
      sizes.add(new BoardSize(4.5 * FT, length * FT));
    }
    return new Surface(
        "room/gable",
        "Gable",
        "room",
        SurfaceKind.WALL,
        new Face(Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.NORTH.times(-1)), outer, holes),
        new Paint(0.8, Sheen.FLAT),
        true,
        Optional.of(new Framing(Math.PI / 2, 0.4064, 0)),
        Optional.of(new BoardOffer(sizes, 0.0127, BoardRun.AUTO, Double.POSITIVE_INFINITY)),
        OptionalInt.empty(),
        List.of(),
        List.of());
  }
}
