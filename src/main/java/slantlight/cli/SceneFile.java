package slantlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import slantlight.report.Provenance;
import slantlight.scene.House;
import slantlight.scene.Read;

/**
 * A scene file that was read without faults.
 *
 * @param lampFiles photometry files that it names, absolute
 * @param provenance what is recorded in files made from it
 */
record SceneFile(Path path, House house, List<Path> lampFiles, Provenance provenance) {
  /**
   * Reads a scene.
   *
   * @param messages receives warnings
   * @throws CommandFailure with every fault, one to a line
   */
  static SceneFile read(Path path, PrintWriter messages) throws IOException {
    Read.Ok read = Scenes.sound(path, messages);
    Provenance made = Provenance.of(Files.readAllBytes(path));
    return new SceneFile(path, read.house(), read.lampFiles(), made);
  }
}
