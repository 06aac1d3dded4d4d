package slantlight.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slantlight.report.Provenance;
import slantlight.scene.WholeFile;

/**
 * Where the results of many scenes go. Beside each result lies a record of what it was made from:
 * the bytes of the scene and of its lamp files, the options and the program's version. A result
 * whose record still tells the truth need not be made again. Nothing in it depends on the time, the
 * machine or the order of the work.
 */
final class BatchFolder {
  private static final String FIRST_LINE = "slantlight record of a score, form 1";
  private static final String RECORD = ".record";

  private final Path folder;
  private final ScoreForm form;

  private BatchFolder(Path folder, ScoreForm form) {
    this.folder = folder;
    this.form = form;
  }

  /**
   * A folder for the results of these scenes; it need not exist.
   *
   * @throws CommandFailure if results would overwrite scenes or one another
   */
  static BatchFolder open(Path folder, SceneList list, ScoreForm form) {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw CommandFailure.usage(
          "--out " + folder + ": this is a file; several scenes need a folder");
    }
    BatchFolder results = new BatchFolder(folder, form);
    Path place = folder.toAbsolutePath().normalize();
    Set<Path> taken = new HashSet<>();
    taken.add(results.summary(Part.WHOLE));
    for (SceneList.Listed scene : list.scenes()) {
      if (scene.folder().equals(place)) {
        throw CommandFailure.usage(
            "--out " + folder + ": scenes lie there; name another folder for the results");
      }
      if (!taken.add(results.result(scene))) {
        throw CommandFailure.usage(
            scene.path()
                + ": its result would be "
                + results.result(scene)
                + ", which is taken; rename the scene");
      }
    }
    return results;
  }

  /** The file of a scene's result. */
  Path result(SceneList.Listed scene) {
    return folder.resolve(scene.name() + form.ending());
  }

  /** The table of all scenes of a part. */
  Path summary(Part part) {
    String which = part.of() == 1 ? "" : "-" + part.number() + "-of-" + part.of();
    return folder.resolve("summary" + which + ".csv");
  }

  /** What a result is made from, to be asked before the work: a line each. */
  List<String> sources(SceneList.Listed scene, SceneFile file, String options) throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(FIRST_LINE);
    lines.add("version " + file.provenance().version());
    lines.add("options " + options + ", form " + form);
    lines.add("scene " + file.provenance().sceneHash());
    for (Path lamp : file.lampFiles()) {
      String name = scene.folder().relativize(lamp).toString().replace('\\', '/');
      lines.add("lamp " + name + " " + Provenance.hash(Files.readAllBytes(lamp)));
    }
    return lines;
  }

  /** The row of a scene whose result stands and was made from just these sources; else empty. */
  Optional<BatchRow> finished(SceneList.Listed scene, List<String> sources) throws IOException {
    Path record = record(scene);
    Path result = result(scene);
    if (!Files.isRegularFile(record) || !Files.isRegularFile(result)) {
      return Optional.empty();
    }
    List<String> lines;
    try {
      lines = Files.readAllLines(record);
    } catch (CharacterCodingException e) {
      return Optional.empty(); // no record of ours
    }
    List<String> head = new ArrayList<>(sources);
    head.add(resultLine(result));
    return lines.size() == head.size() + BatchRow.COLUMNS.size()
            && lines.subList(0, head.size()).equals(head)
        ? Optional.of(new BatchRow(lines.subList(head.size(), lines.size())))
        : Optional.empty();
  }

  /** Writes a result, then its record: killed in between, the result is made again. */
  void keep(SceneList.Listed scene, List<String> sources, String text, BatchRow row)
      throws IOException {
    Path result = result(scene);
    Files.createDirectories(result.toAbsolutePath().getParent());
    WholeFile.write(result, text);
    List<String> lines = new ArrayList<>(sources);
    lines.add(resultLine(result));
    lines.addAll(row.cells());
    WholeFile.write(record(scene), String.join("\n", lines) + "\n");
  }

  /** Writes the table of the scenes of a part. */
  Path keep(Part part, List<BatchRow> rows) throws IOException {
    Files.createDirectories(folder);
    Path summary = summary(part);
    WholeFile.write(summary, BatchRow.csv(rows));
    return summary;
  }

  private Path record(SceneList.Listed scene) {
    return folder.resolve(scene.name() + form.ending() + RECORD);
  }

  private static String resultLine(Path result) throws IOException {
    return "result " + Provenance.hash(Files.readAllBytes(result));
  }
}
