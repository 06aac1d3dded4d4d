package slantlight.score;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slantlight.light.RowHouses;
import slantlight.scene.House;
import slantlight.units.Progress;

/**
 * Scores generated buildings of 25, 50, 100 and 200 rooms in one run and prints what each costs and
 * how that grows: the exponent p of cost ~ rooms^p between neighbouring sizes. Compare processor time
 * when the machine is shared; peak heap holds garbage not yet collected. Arguments: days (follow
 * every n-th; default 1), step in minutes
 * (default 10), then sizes in multiples of 5.
 */
public final class BuildingBench {
  private static final int COLUMNS = 5;

  private BuildingBench() {}

  private record Cost(int rooms, double wall, double cpu, double peakHeap) {}

  /** Runs every size, after a small one that warms the compiler. */
  public static void main(String[] args) {
    int days = args.length > 0 ? Integer.parseInt(args[0]) : 1;
    int step = args.length > 1 ? Integer.parseInt(args[1]) : 10;
    List<Integer> sizes = new ArrayList<>();
    for (int i = 2; i < args.length; i++) {
      sizes.add(Integer.parseInt(args[i]));
    }
    if (sizes.isEmpty()) {
      sizes = List.of(25, 50, 100, 200);
    }
    ScoreOptions options =
        ScoreOptions.standard()
            .withYear(
                ScoreOptions.DEFAULT_YEAR, ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, days))
            .withStep(step);
    print(
        "Every %d. day, %d-minute steps, %d threads, heap of %.1f GB at most%n%n",
        days, step, options.threads(), Runtime.getRuntime().maxMemory() / 1e9);
    cost(COLUMNS, options);
    print(
        "%6s %10s %10s %12s %10s %10s%n",
        "rooms", "time", "processor", "peak heap", "time ~ n^", "proc. ~ n^");
    Cost before = null;
    for (int rooms : sizes) {
      Cost now = cost(rooms, options);
      print(
          "%6d %8.1f s %8.1f s %9.0f MB", now.rooms, now.wall, now.cpu, now.peakHeap / 1e6);
      if (before != null) {
        double grown = Math.log((double) now.rooms / before.rooms);
        print(
            " %10.2f %10.2f",
            Math.log(now.wall / before.wall) / grown, Math.log(now.cpu / before.cpu) / grown);
      }
      print("%n");
      before = now;
    }
  }

  private static Cost cost(int rooms, ScoreOptions options) {
    House house = RowHouses.boarded(RowHouses.grid(COLUMNS, rooms / COLUMNS));
    List<MemoryPoolMXBean> heap =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(p -> p.getType() == MemoryType.HEAP)
            .toList();
    System.gc();
    heap.forEach(MemoryPoolMXBean::resetPeakUsage);
    double cpu = cpu();
    long start = System.nanoTime();
    HouseScore score = Scorer.score(house, options, Progress.NONE);
    double wall = (System.nanoTime() - start) * 1e-9;
    double used = cpu() - cpu;
    double peak = heap.stream().mapToDouble(p -> p.getPeakUsage().getUsed()).sum();
    if (score.surfaces().size() != 5 * rooms) {
      throw new IllegalStateException("not every wall and ceiling was scored");
    }
    return new Cost(rooms, wall, used, peak);
  }

  /** Processor time of this process so far, s. */
  private static double cpu() {
    return 1e-9
        * ((com.sun.management.OperatingSystemMXBean)
                ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime();
  }

  private static void print(String format, Object... values) {
    System.out.printf(Locale.ROOT, format, values);
    System.out.flush();
  }
}
