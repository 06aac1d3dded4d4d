package slantlight.sight;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Rows of a small comma-separated table that ships with the program; no quoting. */
record DataTable(List<String[]> rows) {
  /**
   * Reads a classpath resource beside this class: lines that begin with # and the header are left
   * out.
   *
   * @throws IllegalStateException if a row has another number of fields than the header
   */
  static DataTable read(String name) {
    try (InputStream in = DataTable.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program's own table " + name + " is missing");
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      List<String[]> lines =
          reader
              .lines()
              .filter(l -> !l.isBlank() && !l.startsWith("#"))
              .map(l -> l.split(",", -1))
              .toList();
      int fields = lines.get(0).length;
      for (String[] row : lines) {
        if (row.length != fields) {
          throw new IllegalStateException(name + ": a row has " + row.length + " fields");
        }
      }
      return new DataTable(lines.subList(1, lines.size()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
