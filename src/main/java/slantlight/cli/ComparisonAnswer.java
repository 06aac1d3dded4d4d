package slantlight.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import slantlight.board.Joint;
import slantlight.decide.Comparison;
import slantlight.decide.Verdict;
import slantlight.report.Cautions;
import slantlight.report.DecisionCsv;
import slantlight.report.DecisionJson;

/** What changes from one scene to another. */
record ComparisonAnswer(SceneFile file, Comparison comparison) implements Answer {
  /** Joints printed under a surface; all are in the JSON. */
  private static final int JOINTS = 4;

  /** A difference of showing that is worth a line. */
  private static final double WORTH = 0.05;

  @Override
  public void print(PrintWriter out, int width) {
    List<Comparison.SurfaceChange> changed =
        comparison.surfaces().stream()
            .filter(
                s ->
                    Math.abs(s.difference()) >= WORTH
                        || !level(s.before()).equals(level(s.after())))
            .sorted(Comparator.comparingDouble(s -> -Math.abs(s.difference())))
            .toList();
    if (changed.isEmpty()) {
      out.println("No surface shows more or less than before.");
    }
    TextTable table =
        new TextTable(
            TextTable.wrap("surface or joint"),
            TextTable.right("before"),
            TextTable.right("after"),
            TextTable.right("change"),
            TextTable.left("level"));
    for (Comparison.SurfaceChange s : changed) {
      table.row(
          s.label(),
          showing(s.showingBefore()),
          showing(s.showingAfter()),
          String.format(Locale.ROOT, "%+.1f", s.difference()),
          level(s.before()) + " to " + level(s.after()));
      s.joints().stream()
          .sorted(Comparator.comparingDouble(j -> -Math.abs(difference(j))))
          .filter(j -> Math.abs(difference(j)) >= WORTH)
          .limit(JOINTS)
          .forEach(
              j ->
                  table.row(
                      "  " + Joint.name(j.jointId()),
                      showing(j.before()),
                      showing(j.after()),
                      String.format(Locale.ROOT, "%+.1f", difference(j)),
                      ""));
    }
    if (!table.isEmpty()) {
      table.print(out, width);
    }
    int same = comparison.surfaces().size() - changed.size();
    out.println();
    Words.paragraph(
        out,
        width,
        0,
        same
            + (same == 1 ? " surface does" : " surfaces do")
            + " not change. Showing at level 4. "
            + Cautions.FORECAST);
  }

  private static double difference(Comparison.JointChange j) {
    return j.after().orElse(0) - j.before().orElse(0);
  }

  private static String showing(OptionalDouble showing) {
    return showing.isPresent() ? Words.showing(showing.getAsDouble()) : "-";
  }

  private static String level(Optional<Verdict> verdict) {
    return verdict.map(v -> Integer.toString(v.level())).orElse("-");
  }

  @Override
  public String json() {
    return DecisionJson.comparison(comparison, file.provenance());
  }

  @Override
  public String csv() {
    return DecisionCsv.comparison(comparison);
  }
}
