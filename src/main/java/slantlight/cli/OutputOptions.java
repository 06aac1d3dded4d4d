package slantlight.cli;

import java.nio.file.Path;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** In what form and where the answer goes; use it as a picocli mixin. */
final class OutputOptions {
  @ArgGroup private Form form;

  private static final class Form {
    @Option(names = "--json", description = "Give everything as JSON.")
    private boolean json;

    @Option(names = "--csv", description = "Give the main table as CSV.")
    private boolean csv;
  }

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write to a file, whole or not at all.")
  private Path out;

  boolean json() {
    return form != null && form.json;
  }

  boolean csv() {
    return form != null && form.csv;
  }

  /** The file, or null for the command's output. */
  Path out() {
    return out;
  }
}
