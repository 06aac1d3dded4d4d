package slantlight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import slantlight.decide.Showing;
import slantlight.report.ReportFolder;
import slantlight.scene.SurfaceKind;
import slantlight.scene.WholeFile;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.score.SurfaceScore;
import slantlight.sheet.CalendarSheet;
import slantlight.sheet.Drawing;
import slantlight.sheet.IdeaSheet;
import slantlight.sheet.SectionSheet;
import slantlight.sheet.SunPathSheet;
import slantlight.sheet.SurfaceSheet;
import slantlight.sheet.SvgText;

/** Draws the pictures of the documents, so that none is drawn by hand. */
@Command(
    name = "docs-pictures",
    hidden = true,
    description = "Draw the pictures of the documents from a scene.")
final class DocsPicturesCommand implements Callable<Integer> {
  @Mixin private CommonOptions common;
  @Mixin private ProgressOptions progress;

  @Parameters(index = "0", paramLabel = "SCENE", description = "Scene file (JSON).")
  private Path scene;

  @Parameters(index = "1", paramLabel = "FOLDER", description = "Folder to write into.")
  private Path out;

  @Override
  public Integer call() throws IOException {
    ReportFolder.prepare(out);
    SceneFile file = SceneFile.read(scene, common.err());
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 7))
            .withStep(20);
    HouseScore score;
    try (ConsoleProgress bar = progress.open()) {
      score = Scorer.score(file.house(), options, bar);
    }
    for (Drawing d : drawings(score)) {
      Path path = out.resolve(d.id() + ".svg");
      WholeFile.write(path, SvgText.file(d, file.provenance().toString()));
      common.out().println("wrote " + path);
    }
    return ExitCode.OK;
  }

  private static List<Drawing> drawings(HouseScore score) {
    List<Drawing> out = new ArrayList<>();
    out.add(IdeaSheet.draw());
    out.add(SunPathSheet.of(score.house(), score.year(), "sun-path"));
    score.surfaces().stream()
        .filter(s -> score.house().surface(s.surfaceId()).kind() == SurfaceKind.CEILING)
        .max(Comparator.comparingDouble((SurfaceScore s) -> Showing.at(s, 4)))
        .ifPresent(
            s -> {
              String label = score.house().surface(s.surfaceId()).label();
              out.add(SurfaceSheet.of(score.house(), s, "ceiling"));
              out.add(
                  CalendarSheet.of(
                      s.calendar(), score.house().site(), score.year(), "calendar", label));
              SectionSheet.of(score.house(), s, "section").ifPresent(out::add);
            });
    return out;
  }
}
