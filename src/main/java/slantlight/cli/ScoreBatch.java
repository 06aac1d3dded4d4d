package slantlight.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import slantlight.decide.Verdict;
import slantlight.decide.Verdicts;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.units.Progress;

/**
 * Scores many scenes, one after another, each on all cores. A scene that cannot be scored is told
 * and passed over; what was finished before is not done again.
 */
final class ScoreBatch {
  private final CommonOptions common;
  private final ScoreForm form;
  private final Function<House, ScoreOptions> options;
  private final String optionsText;

  private int code = ExitCode.OK;
  private int skipped;

  /**
   * Makes a batch.
   *
   * @param options of a house
   * @param optionsText what of them changes a result, for its record
   */
  ScoreBatch(
      CommonOptions common,
      ScoreForm form,
      Function<House, ScoreOptions> options,
      String optionsText) {
    this.common = common;
    this.form = form;
    this.options = options;
    this.optionsText = optionsText;
  }

  /**
   * Scores a part of the scenes and tells or writes the table of them.
   *
   * @param folder where results go; null: to the command's output
   * @return the largest exit code that a scene of its own would have ended with
   * @throws IOException if a result cannot be written; those before it stand
   */
  int run(SceneList list, Part part, BatchFolder folder, ConsoleProgress bar) throws IOException {
    for (String fault : list.faults()) {
      tell(fault);
      code = ExitCode.FAULTS;
    }
    List<SceneList.Listed> mine = part.of(list.scenes());
    if (mine.isEmpty()) {
      if (part.of() > 1) {
        tell("part " + part.number() + "/" + part.of() + " holds none of " + scenes(list.scenes()));
      }
      return code;
    }
    List<BatchRow> rows = new ArrayList<>();
    for (int i = 0; i < mine.size(); i++) {
      String place = (i + 1) + "/" + mine.size() + " " + mine.get(i).name();
      rows.add(row(mine.get(i), place, folder, bar));
      bar.close();
    }
    BatchRow.print(rows, common.out(), Terminal.width());
    common.out().flush();
    if (folder != null) {
      tell(folder.keep(part, rows) + ": " + counts(rows));
    }
    return code;
  }

  private BatchRow row(
      SceneList.Listed scene, String place, BatchFolder folder, ConsoleProgress bar)
      throws IOException {
    SceneFile file;
    List<String> sources = List.of();
    HouseScore score;
    try {
      file = SceneFile.read(scene.path(), common.err());
      if (folder != null) {
        sources = folder.sources(scene, file, optionsText);
        Optional<BatchRow> before = folder.finished(scene, sources);
        if (before.isPresent()) {
          skipped++;
          tell(place + ": unchanged, skipped");
          return before.get();
        }
      }
      Progress named = (stage, share) -> bar.at(place + ": " + stage, share);
      score = Scorer.score(file.house(), options.apply(file.house()), named);
    } catch (CancellationException e) {
      throw e;
    } catch (IOException | RuntimeException | OutOfMemoryError | StackOverflowError e) {
      bar.close();
      return failed(scene, place, folder, e);
    }
    bar.close();
    List<Verdict> verdicts = Verdicts.of(score);
    BatchRow row = BatchRow.of(scene.name(), score, verdicts, file.provenance());
    int width = folder == null ? Terminal.width() : Terminal.FILE_WIDTH;
    String text = form.of(score, verdicts, file.provenance(), width);
    if (folder == null) {
      common.out().println("== " + scene.path() + "\n\n" + text);
      common.out().flush();
    } else {
      folder.keep(scene, sources, text, row);
    }
    tell(place + ": " + row.told());
    return row;
  }

  private BatchRow failed(SceneList.Listed scene, String place, BatchFolder folder, Throwable e) {
    int one = Main.failed(e, common.err(), common.trace);
    code = Math.max(code, one);
    boolean old = folder != null && Files.exists(folder.result(scene));
    tell(
        place
            + ": not scored"
            + (old ? "; " + folder.result(scene) + " is of an earlier state of it" : ""));
    return BatchRow.failed(scene.name(), one == ExitCode.FAULTS ? "faults" : "failed");
  }

  private String counts(List<BatchRow> rows) {
    long bad = rows.stream().filter(r -> !r.cells().get(1).equals("scored")).count();
    return (rows.size() - bad - skipped)
        + " scored now, "
        + skipped
        + " before, "
        + bad
        + " not scored";
  }

  private void tell(String line) {
    common.err().println(line);
    common.err().flush();
  }

  private static String scenes(List<SceneList.Listed> list) {
    return list.size() + (list.size() == 1 ? " scene" : " scenes");
  }
}
