package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same question gives the same bytes with any number of threads, in any locale and zone. */
class SameBytesTest {
  private static final String SCENE = "scenes/one-room.json";

  private final Locale locale = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @TempDir private Path folder;
  private List<String[]> questions;

  @BeforeEach
  void points() throws IOException {
    Path points = Files.writeString(folder.resolve("points.csv"), "I,10',7',9',0,0,-1\n");
    questions =
        List.of(
            new String[] {"check", SCENE},
            new String[] {
              "meter", SCENE, "--points", points.toString(), "--at", "2026-12-21T16:00", "--csv"
            },
            new String[] {
              "meter", SCENE, "--points", points.toString(), "--at", "2026-06-21T21:30"
            },
            new String[] {"score", SCENE, "--days", "60", "--step", "60"},
            new String[] {"score", SCENE, "--days", "60", "--step", "60", "--json"});
  }

  @AfterEach
  void restore() {
    Locale.setDefault(locale);
    TimeZone.setDefault(zone);
  }

  @Test
  void localeAndZoneOfTheMachineDoNotMatter() {
    List<CommandRun> plain = questions.stream().map(CommandRun::of).toList();
    assertThat(plain).allSatisfy(r -> assertThat(r.code()).as(r.err()).isZero());
    String[][] places = {
      {"tr-TR", "Asia/Kathmandu"}, {"ar-EG-u-nu-arab", "Africa/Cairo"}, {"de-DE", "Pacific/Apia"}
    };
    for (String[] place : places) {
      Locale.setDefault(Locale.forLanguageTag(place[0]));
      TimeZone.setDefault(TimeZone.getTimeZone(place[1]));
      for (int i = 0; i < plain.size(); i++) {
        assertThat(CommandRun.of(questions.get(i)))
            .as("%s in %s", String.join(" ", questions.get(i)), place[0])
            .isEqualTo(plain.get(i));
      }
    }
  }

  @Test
  void numberOfThreadsDoesNotMatter() {
    CommandRun one = withThreads("1");
    assertThat(one.code()).as(one.err()).isZero();
    assertThat(withThreads("2")).isEqualTo(one);
    assertThat(withThreads("8")).isEqualTo(one);
  }

  private static CommandRun withThreads(String threads) {
    return CommandRun.of(
        "score", SCENE, "--days", "60", "--step", "60", "--json", "--threads", threads);
  }
}
