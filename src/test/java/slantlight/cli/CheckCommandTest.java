package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  @TempDir Path folder;

  @Test
  void aSoundSceneIsCounted() {
    CommandRun run = CommandRun.of("check", "scenes/one-room.json");
    assertThat(run.code()).isZero();
    assertThat(run.out().strip())
        .isEqualTo(
            "scenes/one-room.json: no faults; 1 room, 6 surfaces (5 of drywall), 1 opening, 1"
                + " lamp, 6 eye points");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void faultsGoToStandardErrorWithCodeOne() throws IOException {
    Path spoilt = folder.resolve("spoilt.json");
    Files.writeString(
        spoilt,
        Files.readString(Path.of("scenes/one-room.json"))
            .replace("44.9", "144.9")
            .replace("\"8' 4\\\"\"", "\"9' 4\\\"\""));
    CommandRun run = CommandRun.of("check", "scenes/one-room.json", spoilt.toString());
    assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(run.out()).contains("one-room.json: no faults").doesNotContain("spoilt");
    assertThat(run.err().lines())
        .containsExactly(
            spoilt + ":9:17 $.site.latitude: latitude is 144.9; it must be a number from -90 to 90",
            spoilt
                + ":29:34 $.rooms[0].openings[0].height: window head 9' 4\" is above the wall's 9'"
                + " 0\"; lower it or raise the wall",
            spoilt + ": 2 faults");
  }

  @Test
  void jsonForMachines() {
    CommandRun run = CommandRun.of("check", "--json", folder.resolve("none.json").toString());
    assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(run.out()).contains("\"sound\" : false").contains("there is no such file");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void aSceneMustBeNamed() {
    assertThat(CommandRun.of("check").code()).isEqualTo(ExitCode.USAGE);
  }
}
