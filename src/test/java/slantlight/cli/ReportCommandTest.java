package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {
  private static final String SCENE = "scenes/one-room.json";

  @TempDir Path folder;

  @Test
  void writesAReportOfARealScene() throws IOException {
    Path out = folder.resolve("report");
    CommandRun run =
        CommandRun.of(
            "report",
            SCENE,
            "--out",
            out.toString(),
            "--days",
            "60",
            "--step",
            "60",
            "--parts",
            "data,sheets,model",
            "--no-remedies");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out()).contains("report.html", "score.json", "rooms.glb", "drawings to");
    String page = Files.readString(out.resolve("report.html"));
    assertThat(page).contains("One room", "Finish schedule", "data:image/png;base64,");
    String words = page.substring(page.indexOf("<body>"), page.indexOf("<script>"));
    // The comfortable arm of 1 m is 39.4 in.
    assertThat(words)
        .containsPattern("3&#39; 3&quot; beside joint [BT]\\d, [0-9]+.?&quot; off the");
    assertThat(words.replaceAll("<[^>]*>", " ")).doesNotContain("NaN", "null", "Infinity");
    assertThat(Files.readString(out.resolve("sheets/living.ceiling.svg"))).doesNotContain("NaN");
    assertThat(out.resolve("report.pdf")).doesNotExist();
  }

  /** The folder is tried before the long work begins. */
  @Test
  void aFolderThatCannotBeUsedIsToldAtOnce() throws IOException {
    Path taken = Files.writeString(folder.resolve("taken"), "x");
    CommandRun run = CommandRun.of("report", SCENE, "--out", taken.toString());
    assertThat(run.code()).isEqualTo(ExitCode.OUTPUT);
    assertThat(run.err()).contains("a file has the name of the folder").doesNotContain("\tat ");
    assertThat(taken).hasContent("x");
  }

  @Test
  void badOptionsAreToldBeforeAnythingIsWritten() {
    CommandRun run =
        CommandRun.of("report", SCENE, "--out", folder.resolve("r").toString(), "--step", "7");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("--step 7");
    assertThat(folder.resolve("r")).doesNotExist();
  }

  @Test
  void picturesOfTheDocumentsComeFromACommand() {
    CommandRun run = CommandRun.of("docs-pictures", SCENE, folder.resolve("pictures").toString());
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(folder.resolve("pictures/idea.svg")).exists();
    assertThat(folder.resolve("pictures/ceiling.svg")).exists();
  }
}
