package slantlight.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as comma-separated values: RFC 4180 (CRLF line ends, quotes doubled), and no cell that a
 * spreadsheet would run as a formula: text that begins with one of {@code = + - @}, a tab or a line
 * break gets an apostrophe in front.
 */
public final class Csv {
  private final StringBuilder out = new StringBuilder();
  private final int columns;
  private final List<String> row = new ArrayList<>();

  /** A table with these column names. */
  public Csv(String... header) {
    columns = header.length;
    for (String name : header) {
      text(name);
    }
    end();
  }

  /** Adds a cell of text to the row. */
  public Csv text(String value) {
    String safe = looksLikeFormula(value) ? "'" + value : value;
    row.add(needsQuotes(safe) ? '"' + safe.replace("\"", "\"\"") + '"' : safe);
    return this;
  }

  /** Adds a number to the row; one that is not finite leaves the cell empty. */
  public Csv number(double value) {
    row.add(Figures.text(value));
    return this;
  }

  /** Adds a whole number to the row. */
  public Csv number(int value) {
    row.add(Integer.toString(value));
    return this;
  }

  /** Adds an empty cell to the row. */
  public Csv empty() {
    row.add("");
    return this;
  }

  /**
   * Ends the row.
   *
   * @throws IllegalStateException if it does not have a cell for every column
   */
  public Csv end() {
    if (row.size() != columns) {
      throw new IllegalStateException(row.size() + " cells in a row of " + columns + ": " + row);
    }
    out.append(String.join(",", row)).append("\r\n");
    row.clear();
    return this;
  }

  @Override
  public String toString() {
    return out.toString();
  }

  private static boolean looksLikeFormula(String value) {
    String trimmed = value.stripLeading();
    return !value.isEmpty()
        && ("=+-@\t\r\n".indexOf(value.charAt(0)) >= 0
            || (!trimmed.isEmpty()
                && "=+-@\uff1d\uff0b\uff0d\uff20".indexOf(trimmed.charAt(0)) >= 0));
  }

  private static boolean needsQuotes(String value) {
    return value.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n')
        || (!value.isEmpty() && (value.charAt(0) == ' ' || value.endsWith(" ")));
  }
}
