package slantlight.cli;

import picocli.CommandLine.Option;

/** Options of commands that work for more than a moment; use it as a picocli mixin. */
final class ProgressOptions {
  @Option(
      names = "--no-progress",
      description = "Show no progress bar; there is none anyway unless a terminal is attached.")
  private boolean quiet;

  /** A progress display to be closed when the work is done. */
  ConsoleProgress open() {
    return new ConsoleProgress(!quiet && Terminal.attached());
  }
}
