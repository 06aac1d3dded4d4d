package slantlight.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.decide.Verdicts;
import slantlight.scene.WholeFile;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;

/** The main job: which joints show, when, why, and what level to specify. */
@Command(
    name = "score",
    description =
        "Score every joint of a scene over the year and name the finish level that each surface"
            + " earns.",
    footer = {
      "",
      "Several scenes or a folder: each is scored by itself, one with faults is told and passed",
      "over (exit code 1). With --out they are resumed where they were stopped. See docs/many.md."
    })
final class ScoreCommand implements Callable<Integer> {
  @Mixin private CommonOptions common;
  @Mixin private ProgressOptions progress;
  @Mixin private TimeOptions time;
  @Mixin private SurfaceOptions surfaces;

  @Parameters(
      arity = "1..*",
      paramLabel = "SCENE",
      description = "Scene files (JSON), or folders of them (*.json).")
  private List<Path> scenes;

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
      description =
          "Write to a file, whole or not at all; for several scenes, a folder that gets a file for"
              + " each and a table of all.")
  private Path out;

  @Option(
      names = "--part",
      paramLabel = "i/n",
      description =
          "Of all the scenes only every n-th, from the i-th on, so that n processes or machines"
              + " can share them.")
  private String part;

  @Override
  public Integer call() throws IOException {
    if (scenes.size() > 1 || part != null || Files.isDirectory(scenes.get(0))) {
      return many();
    }
    SceneFile file = SceneFile.read(scenes.get(0), common.err());
    ScoreOptions options = time.in(surfaces.year(file.house()));
    HouseScore score;
    try (ConsoleProgress bar = progress.open()) {
      score = Scorer.score(file.house(), options, bar);
    }
    int width = out == null ? Terminal.width() : Terminal.FILE_WIDTH;
    String text = form().of(score, Verdicts.of(score), file.provenance(), width);
    if (out != null) {
      WholeFile.write(out, text);
    } else {
      common.out().print(text);
      common.out().flush();
    }
    return ExitCode.OK;
  }

  private int many() throws IOException {
    Part share = part == null ? Part.WHOLE : Part.parse(part);
    time.in(ScoreOptions.standard().withThreads(surfaces.threads()));
    if (out == null && form() != ScoreForm.TEXT) {
      throw CommandFailure.usage(
          "several scenes in this form need a folder to go to: add --out FOLDER");
    }
    SceneList list = SceneList.of(scenes);
    BatchFolder folder = out == null ? null : BatchFolder.open(out, list, form());
    ScoreBatch batch =
        new ScoreBatch(common, form(), house -> time.in(surfaces.year(house)), options());
    try (ConsoleProgress bar = progress.open()) {
      return batch.run(list, share, folder, bar);
    }
  }

  /** What changes a result beside the scene, in words that stay the same. */
  private String options() {
    return time.text() + ", surfaces " + surfaces.text();
  }

  private ScoreForm form() {
    Format asked = format == null ? new Format() : format;
    if (asked.json) {
      return ScoreForm.JSON;
    }
    if (asked.surfaces) {
      return ScoreForm.CSV;
    }
    return asked.joints ? ScoreForm.JOINTS_CSV : ScoreForm.TEXT;
  }
}
