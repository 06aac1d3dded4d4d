package slantlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import slantlight.report.Provenance;
import slantlight.scene.House;

/**
 * A scene file that was read without faults.
 *
 * @param provenance what is recorded in files made from it
 */
record SceneFile(Path path, House house, Provenance provenance) {
  /**
   * Reads a scene.
   *
   * @param messages receives warnings
   * @throws CommandFailure with every fault, one to a line
   */
  static SceneFile read(Path path, PrintWriter messages) throws IOException {
    House house = Scenes.read(path, messages);
    return new SceneFile(path, house, Provenance.of(Files.readAllBytes(path)));
  }
}
