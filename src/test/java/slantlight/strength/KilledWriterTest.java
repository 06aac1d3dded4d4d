package slantlight.strength;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whoever kills the program while it writes finds the old file or the new one, never a torn one.
 */
class KilledWriterTest {
  private static final int KILLS = 100;

  @TempDir private Path folder;

  @Test
  void killedOutrightAHundredTimesNoFileIsTorn() throws Exception {
    Random random = new Random(7);
    for (int i = 0; i < KILLS; i++) {
      Path file = folder.resolve("out.txt");
      Process writer = writer(file);
      // After so many whole contents, and somewhere inside the next.
      for (int k = random.nextInt(4); k >= 0; k--) {
        assertThat(writer.getInputStream().read()).isEqualTo('\n');
      }
      spin(random.nextInt(200_000));
      writer.destroyForcibly().waitFor();
      byte[] content = Files.readAllBytes(file);
      assertThat(content).hasSize(EndlessWriter.SIZE);
      assertThat(content).containsOnly(content[0]);
    }
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void askedToStopItLeavesNoDebris() throws Exception {
    Random random = new Random(8);
    for (int i = 0; i < 15; i++) {
      Path file = folder.resolve("out.txt");
      Process writer = writer(file);
      assertThat(writer.getInputStream().read()).isEqualTo('\n');
      spin(random.nextInt(200_000));
      // SIGTERM takes the same way out as SIGINT, which a shell's background jobs ignore.
      writer.destroy();
      assertThat(writer.waitFor()).isEqualTo(128 + 15);
      assertThat(names()).containsExactly("out.txt");
    }
  }

  /** Passes a little time of a length that differs from run to run, without waiting on a clock. */
  private static void spin(int turns) {
    double x = 1;
    for (int i = 0; i < turns; i++) {
      x = Math.sin(x) + 1;
    }
    assertThat(x).isPositive();
  }

  private static Process writer(Path file) throws IOException {
    return new ProcessBuilder(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                EndlessWriter.class.getName(),
                file.toString()))
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> list = Files.list(folder)) {
      return list.map(p -> p.getFileName().toString()).toList();
    }
  }
}
