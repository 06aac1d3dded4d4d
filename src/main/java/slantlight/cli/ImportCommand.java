package slantlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.scene.WholeFile;
import slantlight.scene.gbxml.GbXmlImport;
import slantlight.scene.gbxml.ImportException;
import slantlight.scene.gbxml.Imported;

/** Makes a scene from a gbXML file. */
@Command(
    name = "import",
    description = "Make a scene from the rooms of a gbXML file, and tell what was not understood.",
    footer = {
      "",
      "Exit codes: 0 written, 1 the file gives no rooms, 2 command line not understood, 3 the scene"
          + " could not be written.",
      "Example: slantlight import house.xml --out house.json"
    })
final class ImportCommand implements Callable<Integer> {
  @Mixin private CommonOptions common;

  @Parameters(paramLabel = "FILE", description = "A gbXML file with spaces and surfaces.")
  private Path file;

  @Option(
      names = {"-o", "--out"},
      required = true,
      paramLabel = "SCENE",
      description = "Scene file to write.")
  private Path out;

  @Option(names = "--force", description = "Replace the scene file if it is there.")
  private boolean force;

  @Override
  public Integer call() throws IOException {
    if (Files.exists(out) && !force) {
      throw CommandFailure.usage(out + " is there already; name another --out or add --force");
    }
    Imported imported;
    try {
      imported = GbXmlImport.read(file);
    } catch (ImportException e) {
      throw CommandFailure.faults(e.getMessage());
    }
    WholeFile.write(out, imported.scene());
    PrintWriter print = common.out();
    print.println(
        "wrote "
            + out
            + ": "
            + imported.rooms()
            + " rooms, "
            + imported.windows()
            + " windows, "
            + imported.doors()
            + " doors, "
            + imported.passages()
            + " passages");
    print.println("to look over:");
    imported.notes().forEach(n -> print.println("  " + n));
    print.println("next: slantlight check " + out);
    return ExitCode.OK;
  }
}
