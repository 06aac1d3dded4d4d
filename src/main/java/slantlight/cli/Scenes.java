package slantlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import slantlight.scene.Fault;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;

/** Reads the scene that a command was given. */
final class Scenes {
  private static final int MOST_SHOWN = 200;

  private Scenes() {}

  /**
   * The house of a scene file; warnings go to {@code err}.
   *
   * @throws CommandFailure with every fault if the scene has one
   */
  static House read(Path file, PrintWriter err) {
    return sound(file, err).house();
  }

  /**
   * A scene file and what it names; warnings go to {@code err}.
   *
   * @throws CommandFailure with every fault if the scene has one
   */
  static Read.Ok sound(Path file, PrintWriter err) {
    Read read = SceneReader.read(file);
    if (read instanceof Read.Faulty faulty) {
      throw CommandFailure.faults(text(faulty.faults()));
    }
    Read.Ok ok = (Read.Ok) read;
    ok.warnings().forEach(w -> err.println("warning: " + w.text()));
    return ok;
  }

  private static String text(List<Fault> faults) {
    String lines =
        faults.stream().limit(MOST_SHOWN).map(Fault::text).collect(Collectors.joining("\n"));
    return faults.size() > MOST_SHOWN
        ? lines + "\nand " + (faults.size() - MOST_SHOWN) + " more faults"
        : lines;
  }
}
