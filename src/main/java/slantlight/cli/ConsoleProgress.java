package slantlight.cli;

import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import slantlight.units.Progress;

/** Progress as a bar on standard error, one stage after the other; silent without a terminal. */
final class ConsoleProgress implements Progress, AutoCloseable {
  private static final int STEPS = 1000;

  private final boolean shown;
  private ProgressBar bar;
  private String stage = "";

  ConsoleProgress(boolean shown) {
    this.shown = shown;
  }

  @Override
  public synchronized void at(String name, double share) {
    if (!shown) {
      return;
    }
    if (!name.equals(stage)) {
      close();
      stage = name;
      bar =
          new ProgressBarBuilder()
              .setTaskName(name)
              .setInitialMax(STEPS)
              .setStyle(ProgressBarStyle.ASCII)
              .setUpdateIntervalMillis(200)
              .hideEta()
              .clearDisplayOnFinish()
              .build();
    }
    bar.stepTo(Math.round(STEPS * Math.max(0, Math.min(1, share))));
  }

  /** Clears the bar so that results can be printed. */
  @Override
  public synchronized void close() {
    if (bar != null) {
      bar.close();
      bar = null;
    }
    stage = "";
  }
}
