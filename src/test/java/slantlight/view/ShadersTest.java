package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Program;

class ShadersTest {
  private static final Path FOLDER = Path.of("shaders");
  private static final List<List<String>> PROGRAMS =
      List.of(
          List.of("flat", "flat"),
          List.of("line", "line"),
          List.of("lit", "lit"),
          List.of("beam", "beam"),
          List.of("ridge", "ridge"),
          List.of("tone", "tone"),
          List.of("tone", "kept"),
          List.of("sky", "flat"),
          List.of("plain", "plain"));

  @Test
  void everyProgramCompilesAndEveryShaderIsUsed() throws IOException {
    TreeSet<String> used = new TreeSet<>();
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE)) {
      for (List<String> names : PROGRAMS) {
        new Program(names.get(0), names.get(1)).close();
        used.add(names.get(0) + ".vert");
        used.add(names.get(1) + ".frag");
      }
      gl.check();
    }
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(
              files.map(f -> f.getFileName().toString()).filter(f -> !f.endsWith(".glsl")).toList())
          .containsExactlyInAnyOrderElementsOf(used);
    }
  }

  @Test
  void everyShaderBeginsWithWhatItComputes() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file : files.toList()) {
        List<String> lines = Files.readAllLines(file);
        int first = lines.get(0).startsWith("#version") ? 1 : 0;
        assertThat(lines.get(first)).as(file.toString()).startsWith("// ");
      }
    }
  }

  @Test
  void aContextReportsErrors() {
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE)) {
      org.lwjgl.opengl.GL11C.glEnable(0x7777);
      org.assertj.core.api.Assertions.assertThatThrownBy(gl::check)
          .isInstanceOf(IllegalStateException.class);
    }
  }
}
