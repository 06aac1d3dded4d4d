package slantlight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.decide.Showing;
import slantlight.decide.Verdict;
import slantlight.report.Csv;
import slantlight.report.Provenance;
import slantlight.score.Band;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;

/**
 * A scene's line in the table of all scenes.
 *
 * @param cells one for each of {@link #COLUMNS}
 */
record BatchRow(List<String> cells) {
  static final List<String> COLUMNS =
      List.of(
          "scene",
          "result",
          "house",
          "surfaces",
          "at level 5",
          "at level 4",
          "below level 4",
          "unsolved",
          "shows most",
          "showing at level 4",
          "band at level 4",
          "scene file",
          "version");

  BatchRow {
    cells = cells.stream().map(BatchRow::oneLine).toList();
    if (cells.size() != COLUMNS.size()) {
      throw new IllegalArgumentException(cells.size() + " cells for " + COLUMNS.size());
    }
  }

  /** Of a scene that was scored. */
  static BatchRow of(String name, HouseScore score, List<Verdict> verdicts, Provenance made) {
    Optional<SurfaceScore> worst =
        score.surfaces().stream().max(Comparator.comparingDouble(s -> Showing.at(s, 4)));
    double most = worst.map(s -> Showing.at(s, 4)).orElse(0.0);
    return new BatchRow(
        List.of(
            name,
            "scored",
            score.house().name(),
            text(score.surfaces().size()),
            text(verdicts.stream().filter(v -> v.level() == 5).count()),
            text(verdicts.stream().filter(v -> v.level() == 4).count()),
            text(verdicts.stream().filter(v -> v.level() < 4).count()),
            text(verdicts.stream().filter(Verdict::unsolved).count()),
            worst.map(SurfaceScore::surfaceId).orElse(""),
            String.format(Locale.ROOT, most < 9.95 ? "%.1f" : "%.0f", most),
            Band.of(most).name().toLowerCase(Locale.ROOT),
            made.sceneHash(),
            made.version()));
  }

  /** Of a scene that could not be scored; why was told before. */
  static BatchRow failed(String name, String result) {
    List<String> cells = new ArrayList<>(List.of(name, result));
    while (cells.size() < COLUMNS.size() - 1) {
      cells.add("");
    }
    cells.add(Provenance.programVersion());
    return new BatchRow(cells);
  }

  /** One line for a person who watches the run. */
  String told() {
    return cells.get(3)
        + (cells.get(3).equals("1") ? " surface, " : " surfaces, ")
        + cells.get(4)
        + " at level 5, "
        + cells.get(8)
        + " shows most: "
        + cells.get(9)
        + " ("
        + cells.get(10)
        + ") at level 4";
  }

  /** The table of these rows for a spreadsheet. */
  static String csv(List<BatchRow> rows) {
    Csv csv = new Csv(COLUMNS.toArray(String[]::new));
    for (BatchRow row : rows) {
      row.cells.forEach(csv::text);
      csv.end();
    }
    return csv.toString();
  }

  /** The table of these rows for a person. */
  static void print(List<BatchRow> rows, PrintWriter out, int width) {
    TextTable table =
        new TextTable(
            TextTable.wrap("scene"),
            TextTable.left("result"),
            TextTable.right("surfaces"),
            TextTable.right("level 5"),
            TextTable.right("level 4"),
            TextTable.right("below"),
            TextTable.wrap("shows most"),
            TextTable.right("at level 4"),
            TextTable.left("band"));
    for (BatchRow row : rows) {
      List<String> c = row.cells;
      table.row(
          c.get(0), c.get(1), c.get(3), c.get(4), c.get(5), c.get(6), c.get(8), c.get(9),
          c.get(10));
    }
    table.print(out, width);
  }

  private static String text(long count) {
    return Long.toString(count);
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\p{Cntrl}+", " ").strip();
  }
}
