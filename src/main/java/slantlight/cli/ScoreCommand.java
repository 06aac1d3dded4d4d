package slantlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
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
  @Mixin private TimeOptions time;
  @Mixin private SurfaceOptions surfaces;

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

  @Override
  public Integer call() throws IOException {
    SceneFile file = SceneFile.read(scene, common.err());
    ScoreOptions options = time.in(surfaces.year(file.house()));
    HouseScore score;
    try (ConsoleProgress bar = progress.open()) {
      score = Scorer.score(file.house(), options, bar);
    }
    List<Verdict> verdicts = Verdicts.of(score);
    String text = machine(score, verdicts, file.provenance());
    if (text == null) {
      StringWriter words = new StringWriter();
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
}
