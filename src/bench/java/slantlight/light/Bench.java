package slantlight.light;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs {@link TransportBench} and prints what its times mean, as ratios within the same run: against
 * the multiply-add rate that one core reaches in it, and against the smallest number of samples.
 * Arguments are JMH's own, such as {@code -wi 1 -i 1} for a quick look.
 */
public final class Bench {
  private Bench() {}

  /** Runs everything. */
  public static void main(String[] args) throws RunnerException, CommandLineOptionException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .parent(new CommandLineOptions(args))
                    .include(TransportBench.class.getName())
                    .build())
            .run();
    Map<String, Map<Integer, Double>> times = new TreeMap<>();
    for (RunResult r : results) {
      String name = r.getPrimaryResult().getLabel();
      int samples = Integer.parseInt(r.getParams().getParam("samples"));
      times
          .computeIfAbsent(name, k -> new TreeMap<>())
          .put(samples, r.getPrimaryResult().getScore());
    }
    int cores = Runtime.getRuntime().availableProcessors();
    double peak = 1 / times.get("peakMultiplyAdd").values().iterator().next();
    print("%nOn %d cores. One core multiplies and adds %.2f e9 times a second.%n", cores, peak);
    print("%n%8s %14s %14s %22s %12s%n", "samples", "year's product", "share of peak",
        "moments x samples / s", "beams / s");
    TransportBench work = new TransportBench();
    for (int samples : times.get("annualProduct").keySet()) {
      work.samples = samples;
      work.prepare();
      double product = times.get("annualProduct").get(samples) / 1000;
      double beams = times.get("beamTests").get(samples) / 1000;
      double pairs = (double) samples * work.moments();
      print(
          "%8d %12.3f s %13.0f%% %22.3g %12.3g%n",
          samples,
          product,
          100 * work.multiplyAdds() / product / (peak * 1e9 * cores),
          pairs / product,
          pairs / beams);
    }
    print("%nGrowth of time, 1x = %d samples:%n", times.get("basis").keySet().iterator().next());
    for (String name : new String[] {"basis", "annualProduct", "beamTests"}) {
      double first = times.get(name).values().iterator().next();
      StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-14s", name));
      times.get(name).forEach(
          (n, t) -> line.append(String.format(Locale.ROOT, " %5.2f", t / first)));
      print("%s%n", line);
    }
  }

  private static void print(String format, Object... values) {
    System.out.printf(Locale.ROOT, format, values);
  }
}
