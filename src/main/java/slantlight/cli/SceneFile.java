package slantlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import slantlight.report.Provenance;
import slantlight.scene.Fault;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;

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
    Read read = SceneReader.read(path);
    if (read instanceof Read.Faulty faulty) {
      throw CommandFailure.faults(
          faulty.faults().stream().map(Fault::toString).collect(Collectors.joining("\n")));
    }
    Read.Ok ok = (Read.Ok) read;
    ok.warnings().forEach(w -> messages.println("warning: " + w));
    return new SceneFile(path, ok.house(), Provenance.of(Files.readAllBytes(path)));
  }
}
