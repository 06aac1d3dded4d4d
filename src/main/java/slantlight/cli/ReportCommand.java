package slantlight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.decide.Inspection;
import slantlight.decide.KeptLight;
import slantlight.decide.Pricing;
import slantlight.decide.ReducedScorer;
import slantlight.decide.RemedyFinder;
import slantlight.decide.RemedyStudy;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.report.PrintedSheets;
import slantlight.report.ReportData;
import slantlight.report.ReportFolder;
import slantlight.report.ReportMaker;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;

/** What goes to the client, the painter and the crew. */
@Command(
    name = "report",
    description = {
      "Write a report into a folder: report.html and report.pdf with the answer, the finish"
          + " schedule, drawings to scale, calendars, reasons, quantities and cautions;",
      "score.json, surfaces.csv and joints.csv; the drawings as SVG; the rooms as rooms.glb."
    },
    footer = {
      "",
      "Exit codes: 0 written, 1 faults in the scene, 2 command line not understood, 3 something"
          + " could not be written.",
      "Example: slantlight report scenes/one-room.json --out report"
    })
final class ReportCommand implements Callable<Integer> {
  /** Shades and lamps studied; each costs the light of a house anew. */
  private static final int HOUSE_WIDE = 1;

  @Mixin private CommonOptions common;
  @Mixin private ProgressOptions progress;
  @Mixin private TimeOptions time;

  @Parameters(paramLabel = "SCENE", description = "Scene file (JSON).")
  private Path scene;

  @Option(
      names = {"-o", "--out"},
      required = true,
      paramLabel = "FOLDER",
      description = "Folder to write into; made if needed, other files in it are left alone.")
  private Path out;

  @Option(
      names = "--parts",
      split = ",",
      paramLabel = "PART",
      description = "Besides the page: ${COMPLETION-CANDIDATES} (default: all).")
  private Set<ReportFolder.Part> parts = EnumSet.allOf(ReportFolder.Part.class);

  @Option(
      names = "--all-sheets",
      description =
          "Print the sheet of every surface, not only of those that matter; on the screen all are"
              + " there anyway.")
  private boolean allSheets;

  @Option(
      names = "--no-remedies",
      description = "Do not weigh remedies: quicker, but without the chart of what money buys.")
  private boolean noRemedies;

  @Override
  public Integer call() throws IOException {
    ScoreOptions options = time.in(ScoreOptions.standard());
    SceneFile file = SceneFile.read(scene, common.err());
    ReportFolder.prepare(out);
    ReportData data;
    try (ConsoleProgress bar = progress.open()) {
      LightModel light = new KeptLight(Transport.of(file.house(), TransportOptions.DEFAULT, bar));
      HouseScore score = Scorer.score(light, options, bar);
      Optional<RemedyStudy> study =
          noRemedies ? Optional.empty() : Optional.of(study(light, score, options, bar));
      List<Inspection> inspections =
          Inspection.of(
              score, ReducedScorer.daylight(light, score, score.year(), weekly(), options, bar));
      bar.at("the picture of the worst moment", 0);
      data = ReportMaker.of(light, score, file.provenance(), study, inspections);
      bar.at("writing", 0.5);
    }
    List<Path> written =
        ReportFolder.write(
            data, out, parts, allSheets ? PrintedSheets.ALL : PrintedSheets.THAT_MATTER);
    written.stream()
        .filter(p -> !p.getParent().endsWith("sheets"))
        .forEach(p -> common.out().println("wrote " + p));
    long sheets = written.stream().filter(p -> p.getParent().endsWith("sheets")).count();
    if (sheets > 0) {
      common.out().println("wrote " + sheets + " drawings to " + out.resolve("sheets"));
    }
    return ExitCode.OK;
  }

  private static RemedyStudy study(
      LightModel light, HouseScore score, ScoreOptions options, ConsoleProgress bar) {
    List<String> targets = RemedyFinder.aboveLimit(score);
    ReducedScorer scorer = ReducedScorer.of(light, score, targets, options);
    return RemedyFinder.study(score, targets, scorer, new Pricing(score.house()), HOUSE_WIDE, bar);
  }

  /** A day a week, enough to name good days for a look. */
  private static List<Integer> weekly() {
    return ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 7);
  }
}
