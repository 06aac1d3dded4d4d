package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilmCommandTest {
  private static final String SCENE = Path.of("scenes", "one-room.json").toString();

  @Test
  void aSizeThatIsNoSizeIsToldBeforeAnythingIsComputed(@TempDir Path folder) {
    CommandRun run =
        CommandRun.of("film", SCENE, folder.resolve("a.png").toString(), "--size", "wide");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("--size is \"wide\"; write width x height, as 1280x720");
  }

  @Test
  void aRoomThatIsNotThereIsToldWithThoseThatAre(@TempDir Path folder) {
    CommandRun run =
        CommandRun.of("film", SCENE, folder.resolve("a.png").toString(), "--room", "cellar");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("there is no room \"cellar\"; there are ");
  }

  @Test
  void tooManyFramesAndBadTimesAreTold(@TempDir Path folder) {
    String out = folder.resolve("a.png").toString();
    CommandRun frames = CommandRun.of("film", SCENE, out, "--frames", "0");
    assertThat(frames.code()).isEqualTo(ExitCode.USAGE);
    assertThat(frames.err()).contains("a film has 1 to 2000 frames, not 0");
    CommandRun time = CommandRun.of("film", SCENE, out, "--at", "noon");
    assertThat(time.code()).isEqualTo(ExitCode.USAGE);
    assertThat(time.err()).contains("--at is \"noon\"; write a local clock time");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aSceneThatIsNotThereIsToldByBothCommands() {
    for (String command : new String[] {"show", "film"}) {
      String[] args =
          command.equals("show")
              ? new String[] {command, "missing.json"}
              : new String[] {command, "missing.json", "out.png"};
      CommandRun run = CommandRun.of(args);
      assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
      assertThat(run.err()).contains("missing.json");
    }
  }
}
