package slantlight.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import slantlight.board.CuttingPlan;
import slantlight.decide.FinishLevel;
import slantlight.decide.RegionalScale;
import slantlight.decide.Schedule;
import slantlight.decide.ScheduleRow;
import slantlight.report.Cautions;
import slantlight.report.DecisionCsv;
import slantlight.report.DecisionJson;
import slantlight.scene.BoardRun;
import slantlight.scene.House;
import slantlight.units.Measures;

/** The schedule for the trades, by room. */
record ScheduleAnswer(SceneFile file, House house, List<ScheduleRow> rows, CuttingPlan plan)
    implements Answer {

  @Override
  public void print(PrintWriter out, int width) {
    out.println(house.name() + ": finish schedule, " + RegionalScale.title(house.scale()));
    out.println();
    Map<String, TextTable> rooms = new LinkedHashMap<>();
    for (ScheduleRow r : rows) {
      rooms.computeIfAbsent(r.room(), room -> table()).row(cells(r));
    }
    rooms.forEach(
        (room, table) -> {
          out.println(room);
          table.print(out, width);
          out.println();
        });
    out.println("Levels");
    for (int level : rows.stream().map(ScheduleRow::level).distinct().sorted().toList()) {
      Words.paragraph(out, width, 0, "Level " + level + ": " + FinishLevel.of(level).work() + ".");
    }
    Words.paragraph(out, width, 0, Schedule.PRIMER);
    out.println();
    Words.paragraph(
        out,
        width,
        0,
        "Boards: "
            + boards()
            + "; what one leaves serves other pieces (boards prints the cut list).");
    out.println();
    Cautions.ALL.forEach(c -> Words.paragraph(out, width, 0, c));
  }

  private static TextTable table() {
    return new TextTable(
        TextTable.wrap("surface"),
        TextTable.left("level"),
        TextTable.right("ft2"),
        TextTable.right("m2"),
        TextTable.right("tapered"),
        TextTable.right("butt"),
        TextTable.left("boards run"),
        TextTable.wrap("notes"));
  }

  private String[] cells(ScheduleRow r) {
    Measures reader = Measures.typed(house.units());
    boolean own = r.regional().equals("Level " + r.level());
    return new String[] {
      r.label(),
      own ? Integer.toString(r.level()) : r.level() + " / " + r.regional(),
      String.format(Locale.ROOT, "%.0f", r.area() / Measures.SQUARE_FOOT),
      String.format(Locale.ROOT, "%.1f", r.area()),
      reader.total(r.tapered()),
      reader.total(r.butt()),
      r.boards().isEmpty()
          ? "-"
          : r.run() == BoardRun.ALONG_FRAMING ? "along framing" : "across framing",
      String.join("; ", r.notes())
    };
  }

  private String boards() {
    return plan.order().entrySet().stream()
        .map(e -> e.getValue() + " of " + e.getKey().name())
        .collect(Collectors.joining("; "));
  }

  @Override
  public String json() {
    return DecisionJson.schedule(rows, plan, file.provenance());
  }

  @Override
  public String csv() {
    return DecisionCsv.schedule(rows);
  }
}
