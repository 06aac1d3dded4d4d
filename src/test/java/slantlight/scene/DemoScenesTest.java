package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The scenes that are shipped must be read without a fault. */
class DemoScenesTest {
  @ParameterizedTest
  @ValueSource(strings = {"one-room", "lake-house"})
  void demoScenesAreSound(String name) {
    Read read = SceneReader.read(Path.of("scenes", name + ".json"));
    assertThat(read).isInstanceOf(Read.Ok.class);
    assertThat(((Read.Ok) read).warnings()).isEmpty();
  }
}
