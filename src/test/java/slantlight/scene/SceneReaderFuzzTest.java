package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import slantlight.FuzzTime;

/** Any bytes as a scene: a house, or faults of one line each; see DEVELOPERS.md. */
class SceneReaderFuzzTest {
  @FuzzTest(maxDuration = FuzzTime.EACH)
  void readsOrTellsWhatIsWrong(byte[] bytes) throws IOException {
    Path file = Files.createTempFile("scene", ".json");
    try {
      Files.write(file, bytes);
      if (SceneReader.read(file) instanceof Read.Faulty faulty) {
        assertThat(faulty.faults()).isNotEmpty().hasSizeLessThan(1000);
        for (Fault fault : faulty.faults()) {
          assertThat(fault.what()).isNotBlank();
          assertThat(fault.text()).doesNotContain("Exception").doesNotContainPattern("\\p{Cc}");
          assertThat(fault.text().length()).isLessThan(4000);
        }
      }
    } finally {
      Files.delete(file);
    }
  }
}
