package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScoreCommandTest {
  private static final String ROOM = "scenes/one-room.json";

  @TempDir Path folder;

  @Test
  void theAnswerComesFirstThenReasonsQuantitiesAndCautions() {
    CommandRun run = CommandRun.of("score", ROOM, "--days", "60", "--step", "60");
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("One room\nAn invented room; no real building.\n\nLevel ")
        .containsSubsequence(
            "at level 4 (likely",
            "times the noticeable at level 4",
            "Area: ",
            "Boards: ",
            "Joints: ",
            "not a warranty of appearance",
            "never look at the sun");
  }

  @Test
  void aFileIsWrittenWholeAndNothingElse() throws IOException {
    Path out = folder.resolve("score.csv");
    CommandRun run =
        CommandRun.of(
            "score", ROOM, "--days", "90", "--step", "120", "--csv", "--out", out.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out()).isEmpty();
    assertThat(Files.readString(out)).contains("living/ceiling");
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(out);
    }
  }

  @Test
  void oneSurfaceAlone() {
    CommandRun run =
        CommandRun.of("score", ROOM, "--surface", "living/ceiling", "--days", "60", "--step", "60");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("ceiling").doesNotContain("north wall:");
  }

  @Test
  void theSameBytesWithAnyNumberOfThreads() {
    String[] bytes = new String[3];
    int[] threads = {1, 2, 8};
    for (int i = 0; i < 3; i++) {
      bytes[i] =
          CommandRun.of(
                  "score",
                  ROOM,
                  "--days",
                  "90",
                  "--step",
                  "60",
                  "--json",
                  "--threads",
                  String.valueOf(threads[i]))
              .out();
    }
    assertThat(bytes[1]).isEqualTo(bytes[0]);
    assertThat(bytes[2]).isEqualTo(bytes[0]);
  }

  @Test
  void faultsOfTheSceneAreLocated() {
    CommandRun run = CommandRun.of("score", folder.resolve("none.json").toString());
    assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(run.err()).contains("none.json: there is no such file").doesNotContain("Fault[");
  }

  @Test
  void badNumbersAndUnknownSurfacesAreUsage() {
    CommandRun step = CommandRun.of("score", ROOM, "--step", "7");
    assertThat(step.code()).isEqualTo(ExitCode.USAGE);
    assertThat(step.err().strip())
        .isEqualTo(
            "slantlight: --step 7: give minutes that divide a day, such as 5, 10, 15, 30 or 60");
    CommandRun surface = CommandRun.of("score", ROOM, "--surface", "attic");
    assertThat(surface.code()).isEqualTo(ExitCode.USAGE);
    assertThat(surface.err())
        .contains("no boarded surface or room of that id")
        .contains("living/ceiling");
  }
}
