package slantlight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** A table in plain text: columns aligned, long cells wrapped at spaces to keep to a width. */
final class TextTable {
  private static final String GAP = "  ";
  private static final int NARROWEST_WRAPPED = 12;

  private final List<Column> columns;
  private final List<List<String>> rows = new ArrayList<>();

  /** How a column is set. */
  enum Set {
    /** Flush left, never broken. */
    LEFT,
    /** Flush right, for numbers. */
    RIGHT,
    /** Flush left and broken at spaces when the line would be too long. */
    WRAP
  }

  /** A column and its heading. */
  record Column(String heading, Set set) {}

  TextTable(Column... columns) {
    this.columns = List.of(columns);
  }

  static Column left(String heading) {
    return new Column(heading, Set.LEFT);
  }

  static Column right(String heading) {
    return new Column(heading, Set.RIGHT);
  }

  static Column wrap(String heading) {
    return new Column(heading, Set.WRAP);
  }

  /** Adds a row; one cell per column. */
  TextTable row(String... cells) {
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException(cells.length + " cells for " + columns.size());
    }
    rows.add(List.of(cells));
    return this;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** Prints headings and rows in lines of at most {@code width} characters where cells allow. */
  void print(PrintWriter out, int width) {
    List<String> headings = columns.stream().map(Column::heading).toList();
    int[] widths = widths(headings, width);
    printRow(out, headings, widths);
    for (List<String> row : rows) {
      printRow(out, row, widths);
    }
  }

  private int[] widths(List<String> headings, int width) {
    int[] widths = new int[columns.size()];
    int total = GAP.length() * (columns.size() - 1);
    for (int c = 0; c < widths.length; c++) {
      widths[c] = length(headings.get(c));
      for (List<String> row : rows) {
        widths[c] = Math.max(widths[c], length(row.get(c)));
      }
      total += widths[c];
    }
    while (total > width) {
      int widest = widestWrapped(widths);
      if (widest < 0) {
        break;
      }
      widths[widest]--;
      total--;
    }
    return widths;
  }

  private int widestWrapped(int[] widths) {
    int widest = -1;
    for (int c = 0; c < widths.length; c++) {
      if (columns.get(c).set() == Set.WRAP
          && widths[c] > NARROWEST_WRAPPED
          && (widest < 0 || widths[c] > widths[widest])) {
        widest = c;
      }
    }
    return widest;
  }

  private void printRow(PrintWriter out, List<String> cells, int[] widths) {
    List<List<String>> lines = new ArrayList<>();
    int height = 1;
    for (int c = 0; c < widths.length; c++) {
      List<String> wrapped = wrapped(cells.get(c), widths[c]);
      lines.add(wrapped);
      height = Math.max(height, wrapped.size());
    }
    for (int i = 0; i < height; i++) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < widths.length; c++) {
        String text = i < lines.get(c).size() ? lines.get(c).get(i) : "";
        String pad = " ".repeat(Math.max(0, widths[c] - length(text)));
        line.append(c == 0 ? "" : GAP);
        line.append(columns.get(c).set() == Set.RIGHT ? pad + text : text + pad);
      }
      out.println(line.toString().stripTrailing());
    }
  }

  /** Breaks a text at spaces into lines of at most {@code width} characters; words stay whole. */
  static List<String> wrapped(String text, int width) {
    if (length(text) <= width) {
      return List.of(text);
    }
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.trim().split("\\s+", -1)) {
      if (line.length() > 0 && length(line) + 1 + length(word) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private static int length(CharSequence text) {
    return (int) text.codePoints().count();
  }
}
