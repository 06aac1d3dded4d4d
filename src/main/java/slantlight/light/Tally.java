package slantlight.light;

import java.util.concurrent.atomic.AtomicInteger;
import slantlight.units.Progress;

/** Counts the steps of a parallel stage and tells how far it has come. */
final class Tally {
  private final String stage;
  private final int steps;
  private final int every;
  private final Progress progress;
  private final AtomicInteger done = new AtomicInteger();

  Tally(String stage, int steps, Progress progress) {
    this.stage = stage;
    this.steps = steps;
    this.every = Math.max(1, steps / 100);
    this.progress = progress;
  }

  void one() {
    int n = done.incrementAndGet();
    if (n % every == 0 || n == steps) {
      progress.at(stage, (double) n / steps);
    }
  }
}
