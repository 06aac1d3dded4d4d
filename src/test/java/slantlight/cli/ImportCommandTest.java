package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportCommandTest {
  private static final String TWO_ROOMS = "src/test/resources/gbxml/two-rooms.xml";

  @TempDir Path folder;

  @Test
  void writesASceneThatChecksClean() {
    String out = folder.resolve("house.json").toString();
    CommandRun run = CommandRun.of("import", TWO_ROOMS, "--out", out);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out())
        .contains("2 rooms, 5 windows, 1 doors, 1 passages", "was not understood", "to look over");
    assertThat(CommandRun.of("check", out).code()).isZero();
  }

  @Test
  void keepsAnOlderSceneUnlessForced() throws IOException {
    Path out = Files.writeString(folder.resolve("house.json"), "mine");
    CommandRun run = CommandRun.of("import", TWO_ROOMS, "--out", out.toString());
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(out).hasContent("mine");
    assertThat(CommandRun.of("import", TWO_ROOMS, "--out", out.toString(), "--force").code())
        .isZero();
  }

  @Test
  void aFileWithoutRoomsIsAFaultOfTheFile() throws IOException {
    Path bad = Files.writeString(folder.resolve("bad.xml"), "<gbXML><Campus/></gbXML>");
    CommandRun run =
        CommandRun.of("import", bad.toString(), "--out", folder.resolve("x").toString());
    assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(run.err()).contains("bad.xml").contains("no Space element").doesNotContain("\tat ");
    assertThat(folder.resolve("x")).doesNotExist();
  }
}
