package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  @TempDir private Path folder;

  @Test
  void writesAndReplaces() throws IOException {
    Path file = folder.resolve("a.txt");
    WholeFile.write(file, "one");
    WholeFile.write(file, "two");
    assertThat(file).content().isEqualTo("two");
    assertThat(names()).containsExactly("a.txt");
  }

  @Test
  void failureLeavesTheOldFileAndNoDebris() throws IOException {
    Path file = folder.resolve("a.txt");
    WholeFile.write(file, "old");
    assertThatThrownBy(
            () ->
                WholeFile.write(
                    file,
                    out -> {
                      out.write(new byte[100_000]);
                      throw new IOException("the disk is full");
                    }))
        .hasMessage("the disk is full");
    assertThat(file).content().isEqualTo("old");
    assertThat(names()).containsExactly("a.txt");
  }

  @Test
  void missingFolderIsAnIoError() {
    assertThatThrownBy(() -> WholeFile.write(folder.resolve("no").resolve("a.txt"), "x"))
        .isInstanceOf(IOException.class);
  }

  private String[] names() throws IOException {
    try (var list = Files.list(folder)) {
      return list.map(p -> p.getFileName().toString()).toArray(String[]::new);
    }
  }
}
