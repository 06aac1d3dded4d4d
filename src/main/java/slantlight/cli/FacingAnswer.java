package slantlight.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import slantlight.decide.Facing;
import slantlight.report.Cautions;
import slantlight.report.DecisionCsv;
import slantlight.report.DecisionJson;

/** Which turn of the house is kindest. */
record FacingAnswer(SceneFile file, List<Facing> sweep) implements Answer {
  private static final int BAR = 30;

  @Override
  public void print(PrintWriter out, int width) {
    double most = sweep.stream().mapToDouble(Facing::excess).max().orElse(0);
    TextTable table =
        new TextTable(
            TextTable.right("turn"),
            TextTable.right("excess"),
            TextTable.right("above limit"),
            TextTable.right("worst"),
            TextTable.wrap("where"),
            TextTable.left(""));
    for (Facing f : sweep) {
      int bar = most == 0 ? 0 : (int) Math.round(BAR * f.excess() / most);
      table.row(
          String.format(Locale.ROOT, "%.0f", f.turnDeg()),
          String.format(Locale.ROOT, "%.1f", f.excess()),
          Integer.toString(f.above()),
          Words.showing(f.worst()),
          label(f),
          "#".repeat(bar));
    }
    table.print(out, width);
    out.println();
    Facing kindest = Facing.kindest(sweep);
    Facing harshest = Facing.harshest(sweep);
    Words.paragraph(
        out,
        width,
        0,
        String.format(
            Locale.ROOT,
            "Kindest: turned %.0f degrees clockwise (excess %.1f, %d surfaces above their limit);"
                + " as drawn %.1f, %d; harshest at %.0f degrees, %.1f.",
            kindest.turnDeg(),
            kindest.excess(),
            kindest.above(),
            sweep.get(0).excess(),
            sweep.get(0).above(),
            harshest.turnDeg(),
            harshest.excess()));
    Words.paragraph(
        out,
        width,
        0,
        "The house is turned with all that is drawn around it; sun and skyline stay. Boards stay as"
            + " laid for the drawing; light is traced coarsely on eight days of the year. Excess is the length of visible"
            + " joint above the limit (m) times its excess over the limit, in limits. "
            + Cautions.FORECAST);
  }

  private String label(Facing f) {
    return f.worstSurfaceId().isEmpty()
        ? "nothing shows"
        : file.house().surface(f.worstSurfaceId()).label();
  }

  @Override
  public String json() {
    return DecisionJson.facings(sweep, file.provenance());
  }

  @Override
  public String csv() {
    return DecisionCsv.facings(sweep);
  }
}
