package slantlight.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.scene.Fault;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Surface;

/** Tells every fault of scene files. */
@Command(
    name = "check",
    description = "Tell every fault of a scene file in one pass: where, what, what to do.",
    footer = {"", "Exit codes: 0 sound, 1 a scene has faults, 2 command line not understood."})
final class CheckCommand implements Callable<Integer> {
  @Mixin private CommonOptions common;

  @Parameters(arity = "1..*", paramLabel = "SCENE", description = "Scene files.")
  private List<Path> scenes;

  @Option(names = "--json", description = "Print faults and warnings as JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    int code = ExitCode.OK;
    StringWriter text = new StringWriter();
    try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
      out.useDefaultPrettyPrinter();
      out.writeStartArray();
      for (Path scene : scenes) {
        Read read = SceneReader.read(scene);
        code = read instanceof Read.Faulty ? ExitCode.FAULTS : code;
        if (json) {
          write(out, scene, read);
        } else {
          tell(scene, read);
        }
      }
      out.writeEndArray();
    }
    if (json) {
      common.out().println(text);
    }
    return code;
  }

  private void tell(Path scene, Read read) {
    if (read instanceof Read.Faulty faulty) {
      faulty.faults().forEach(f -> common.err().println(f.text()));
      int n = faulty.faults().size();
      common.err().println(scene + ": " + n + (n == 1 ? " fault" : " faults"));
    } else if (read instanceof Read.Ok ok) {
      ok.warnings().forEach(w -> common.err().println("warning: " + w.text()));
      common.out().println(scene + ": no faults; " + contents(ok.house()));
    }
  }

  private static String contents(House h) {
    long drywall = h.surfaces().stream().filter(Surface::boarded).count();
    return counted(h.rooms().size(), "room")
        + ", "
        + counted(h.surfaces().size(), "surface")
        + " ("
        + drywall
        + " of drywall), "
        + counted(h.openings().size(), "opening")
        + ", "
        + counted(h.lamps().size(), "lamp")
        + ", "
        + counted(h.eyes().size(), "eye point");
  }

  private static String counted(int n, String what) {
    return n + " " + what + (n == 1 ? "" : "s");
  }

  private static void write(JsonGenerator out, Path scene, Read read) throws IOException {
    out.writeStartObject();
    out.writeStringField("scene", scene.toString());
    out.writeBooleanField("sound", read instanceof Read.Ok);
    out.writeArrayFieldStart("faults");
    if (read instanceof Read.Faulty faulty) {
      write(out, faulty.faults());
    }
    out.writeEndArray();
    out.writeArrayFieldStart("warnings");
    if (read instanceof Read.Ok ok) {
      write(out, ok.warnings());
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void write(JsonGenerator out, List<Fault> faults) throws IOException {
    for (Fault f : faults) {
      out.writeStartObject();
      out.writeStringField("file", f.file());
      out.writeNumberField("line", f.line());
      out.writeNumberField("column", f.column());
      out.writeStringField("path", f.jsonPath());
      out.writeStringField("what", f.what());
      out.writeStringField("expected", f.expected());
      if (f.nearest().isPresent()) {
        out.writeStringField("nearest", f.nearest().get());
      }
      out.writeEndObject();
    }
  }
}
