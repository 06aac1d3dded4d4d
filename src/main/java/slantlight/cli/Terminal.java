package slantlight.cli;

import java.io.Console;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;

/** The terminal that the program runs in, if there is one. */
final class Terminal {
  /** Width of help texts, characters. */
  static final int HELP_WIDTH = 100;

  /** Width of tables that go to a file or a pipe, characters. */
  static final int FILE_WIDTH = 120;

  private static final int NARROWEST = 60;

  private Terminal() {}

  /**
   * Characters in a line: the variable COLUMNS, else what the terminal says, else {@link
   * #FILE_WIDTH}.
   */
  static int width() {
    int columns = number(System.getenv("COLUMNS"));
    if (columns == 0 && attached()) {
      columns = asked();
    }
    return columns == 0 ? FILE_WIDTH : Math.max(NARROWEST, columns);
  }

  /** True when a person sits at a terminal: neither input nor output is a file or a pipe. */
  @SuppressWarnings("SystemConsoleNull") // from Java 22 on the console itself is asked
  static boolean attached() {
    Console console = System.console();
    if (console == null || Runtime.version().feature() < 22) {
      return console != null;
    }
    try {
      return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }

  private static int asked() {
    try {
      Process stty =
          new ProcessBuilder("stty", "size").redirectInput(ProcessBuilder.Redirect.INHERIT).start();
      String[] rowsColumns =
          new String(stty.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
              .trim()
              .split(" ", -1);
      stty.waitFor(1, TimeUnit.SECONDS);
      return rowsColumns.length == 2 ? number(rowsColumns[1]) : 0;
    } catch (IOException e) {
      return 0; // no stty here, such as on Windows
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return 0;
    }
  }

  private static int number(String text) {
    if (text == null || !text.matches("[0-9]{1,4}")) {
      return 0;
    }
    return Integer.parseInt(text);
  }
}
