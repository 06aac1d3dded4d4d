package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import slantlight.FuzzTime;

/**
 * Any bytes as photometry: a luminaire whose light is finite, or one message; see DEVELOPERS.md.
 */
class Lm63ReaderFuzzTest {
  @FuzzTest(maxDuration = FuzzTime.EACH)
  void readsOrTellsWhatIsWrong(byte[] bytes) throws IOException {
    Path file = Files.createTempFile("lamp", ".ies");
    try {
      Files.write(file, bytes);
      Photometry lamp = Lm63Reader.read(file);
      assertThat(lamp.name()).doesNotContainPattern("\\p{Cc}");
      assertThat(lamp.lumens()).isPositive().isFinite();
      for (double g = 0; g <= 3.2; g += 0.4) {
        assertThat(lamp.candela(g, 2 * g)).isNotNegative().isFinite();
      }
    } catch (Lm63Exception e) {
      assertThat(e.getMessage())
          .isNotBlank()
          .doesNotContain("Exception")
          .doesNotContainPattern("\\p{Cc}");
      assertThat(e.getMessage().length()).isLessThan(1000);
    } finally {
      Files.delete(file);
    }
  }
}
