package slantlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.decide.Verdict;
import slantlight.decide.Verdicts;
import slantlight.report.Provenance;
import slantlight.report.ScoreCsv;
import slantlight.report.ScoreJson;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.scene.WholeFile;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;

/** The main job: which joints show, when, why, and what level to specify. */
@Command(
    name = "score",
    description =
        "Score every joint of a scene over the year and name the finish level that each surface"
            + " earns.")
final class ScoreCommand implements Callable<Integer> {
  @Mixin private CommonOptions common;
  @Mixin private ProgressOptions progress;

  @Parameters(paramLabel = "SCENE", description = "Scene file (JSON).")
  private Path scene;

  @ArgGroup private Format format;

  private static final class Format {
    @Option(names = "--json", description = "Print everything as JSON (docs/score.schema.json).")
    private boolean json;

    @Option(names = "--csv", description = "Print a line for each surface as CSV.")
    private boolean surfaces;

    @Option(names = "--joints-csv", description = "Print a line for each joint as CSV.")
    private boolean joints;
  }

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write to a file, whole or not at all.")
  private Path out;

  @Option(
      names = "--days",
      paramLabel = "N",
      defaultValue = "1",
      description = "Follow every N-th day of the year (default: ${DEFAULT-VALUE}, all).")
  private int everyDays;

  @Option(
      names = "--step",
      paramLabel = "MINUTES",
      defaultValue = "10",
      description = "Time step, a divisor of 1440 (default: ${DEFAULT-VALUE}).")
  private int step;

  @Option(names = "--year", paramLabel = "YEAR", description = "Calendar year (default: 2026).")
  private int year = ScoreOptions.DEFAULT_YEAR;

  @Option(
      names = "--surface",
      paramLabel = "ID",
      split = ",",
      description = "Only these surfaces, such as great-room/ceiling; a room's id takes all of it.")
  private List<String> only = List.of();

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Worker threads (default: one for each core).")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Override
  public Integer call() throws IOException {
    SceneFile file = SceneFile.read(scene, common.err());
    ScoreOptions options = options(file.house());
    HouseScore score;
    try (ConsoleProgress bar = progress.open()) {
      score = Scorer.score(file.house(), options, bar);
    }
    List<Verdict> verdicts = Verdicts.of(score);
    String text = machine(score, verdicts, file.provenance());
    if (text == null) {
      java.io.StringWriter words = new java.io.StringWriter();
      PrintWriter writer = new PrintWriter(words);
      new ScoreText(score, verdicts, out == null ? Terminal.width() : Terminal.FILE_WIDTH)
          .print(writer);
      writer.flush();
      text = words.toString();
    }
    if (out != null) {
      WholeFile.write(out, text);
    } else {
      common.out().print(text);
      common.out().flush();
    }
    return ExitCode.OK;
  }

  private String machine(HouseScore score, List<Verdict> verdicts, Provenance made) {
    if (format == null) {
      return null;
    }
    if (format.json) {
      return ScoreJson.of(score, verdicts, made);
    }
    if (format.joints) {
      return ScoreCsv.joints(score, made);
    }
    return format.surfaces ? ScoreCsv.surfaces(score, verdicts, made) : null;
  }

  private ScoreOptions options(House house) {
    if (everyDays < 1 || everyDays > 366) {
      throw CommandFailure.usage("--days " + everyDays + ": give a number from 1 to 366");
    }
    if (step < 1 || 1440 % step != 0) {
      throw CommandFailure.usage(
          "--step " + step + ": give minutes that divide a day, such as 5, 10, 15, 30 or 60");
    }
    if (year < 1950 || year > 2050) {
      throw CommandFailure.usage("--year " + year + ": give a year from 1950 to 2050");
    }
    if (threads < 1) {
      throw CommandFailure.usage("--threads " + threads + ": give at least 1");
    }
    ScoreOptions standard = ScoreOptions.standard();
    return new ScoreOptions(
        year,
        ScoreOptions.everyDay(year, everyDays),
        step,
        surfaces(house),
        standard.spacing(),
        standard.eye(),
        standard.layouts(),
        standard.backBlocked(),
        threads);
  }

  private Set<String> surfaces(House house) {
    Set<String> ids = new TreeSet<>();
    for (String wanted : only) {
      List<String> found =
          house.surfaces().stream()
              .filter(Surface::boarded)
              .filter(s -> s.id().equals(wanted) || s.roomId().equals(wanted))
              .map(Surface::id)
              .toList();
      if (found.isEmpty()) {
        throw CommandFailure.usage(
            "--surface "
                + wanted
                + ": no boarded surface or room of that id; there are "
                + String.join(
                    ", ",
                    house.surfaces().stream().filter(Surface::boarded).map(Surface::id).toList()));
      }
      ids.addAll(found);
    }
    return ids;
  }
}
