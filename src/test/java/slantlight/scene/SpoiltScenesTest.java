package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** However a scene is spoilt, the reader answers with a house or with messages, never otherwise. */
class SpoiltScenesTest {
  private static final Pattern VALUE =
      Pattern.compile("(?<=: |\\[|, )(-?[0-9.]+|\"[^\"\\\\]*\"|true|false)(?=[,\\]} \\n])");
  private static final List<String> OTHERS =
      List.of(
          "-1",
          "0",
          "1e300",
          "NaN",
          "-Infinity",
          "1e-9",
          "999",
          "\"\"",
          "\"x\"",
          "null",
          "true",
          "[]",
          "{}",
          "[[]]",
          "\"14' 6\\\"\"",
          "[1, 2]",
          "[1, 2, 3]",
          "{\"id\": 1}");

  @TempDir Path folder;

  @Test
  void valuesReplacedAtRandom() throws IOException {
    String sound = scene();
    Random random = new Random(42);
    int faulty = 0;
    for (int i = 0; i < 120; i++) {
      StringBuilder text = new StringBuilder(sound);
      for (int k = 0; k <= random.nextInt(3); k++) {
        Matcher m = VALUE.matcher(text);
        int start = random.nextInt(text.length());
        if (m.find(start)) {
          text.replace(m.start(), m.end(), OTHERS.get(random.nextInt(OTHERS.size())));
        }
      }
      faulty += told(text.toString()) ? 1 : 0;
    }
    assertThat(faulty).isGreaterThan(50);
  }

  @Test
  void textCutAndSwappedAtRandom() throws IOException {
    String sound = scene();
    Random random = new Random(7);
    for (int i = 0; i < 60; i++) {
      int from = random.nextInt(sound.length());
      int to = Math.min(sound.length(), from + 1 + random.nextInt(30));
      told(sound.substring(0, from) + sound.substring(to));
      told(sound.substring(0, from));
    }
  }

  private static String scene() throws IOException {
    return Files.readString(Path.of("scenes", "lake-house.json"))
        .replace("\"photometry\": \"downlight-invented.ies\"", "\"lumens\": 700");
  }

  private boolean told(String text) {
    if (SceneTexts.read(folder, text) instanceof Read.Faulty f) {
      assertThat(f.faults()).isNotEmpty();
      for (Fault fault : f.faults()) {
        assertThat(fault.what()).isNotBlank();
        assertThat(fault.expected()).isNotBlank();
        assertThat(fault.text()).doesNotContain("Exception").doesNotContain("\n");
      }
      return true;
    }
    return false;
  }
}
