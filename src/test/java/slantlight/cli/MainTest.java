package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class MainTest {
  @Test
  void helpNamesEveryCommand() {
    CommandRun run = CommandRun.of("--help");
    assertThat(run.code()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).startsWith("Usage: slantlight [-hV] COMMAND").contains(Commands.NAMES);
    assertThat(run.err()).isEmpty();
  }

  @Test
  void everyCommandHasHelpThatNamesItself() {
    for (String name : Commands.NAMES) {
      CommandRun run = CommandRun.of(name, "--help");
      assertThat(run.code()).as(name).isEqualTo(ExitCode.OK);
      assertThat(run.out()).startsWith("Usage: slantlight " + name);
    }
  }

  @Test
  void noCommandIsAUsageError() {
    CommandRun run = CommandRun.of();
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isEqualToIgnoringNewLines(
            "slantlight: Name a command, such as: slantlight score scenes/one-room.json"
                + "Try: slantlight --help");
  }

  @Test
  void misspeltCommandGetsASuggestion() {
    CommandRun run = CommandRun.of("complete");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("Unmatched argument").contains("slantlight completion");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void completionScriptIsUnderstoodByBash() throws Exception {
    CommandRun run = CommandRun.of("completion");
    assertThat(run.code()).isEqualTo(ExitCode.OK);
    Process bash =
        new ProcessBuilder(
                "bash", "-c", "source /dev/stdin && complete -p slantlight && echo ${COMPREPLY[0]}")
            .redirectErrorStream(true)
            .start();
    try (OutputStream in = bash.getOutputStream()) {
      in.write(run.out().getBytes(StandardCharsets.UTF_8));
    }
    assertThat(text(bash.getInputStream())).contains("-F _complete_slantlight");
    assertThat(bash.waitFor()).isZero();
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void fullDiskIsAnOutputError() throws Exception {
    Process java = java("completion").redirectOutput(new java.io.File("/dev/full")).start();
    assertThat(text(java.getErrorStream())).contains("not all of the output could be written");
    assertThat(java.waitFor()).isEqualTo(ExitCode.OUTPUT);
  }

  @Test
  void versionComesFromTheJar(@TempDir Path folder) throws Exception {
    Process java = java("--version").directory(folder.toFile()).start();
    assertThat(text(java.getInputStream())).startsWith("slantlight ");
    assertThat(java.waitFor()).isZero();
    try (var left = Files.list(folder)) {
      assertThat(left).isEmpty();
    }
  }

  private static ProcessBuilder java(String... args) {
    List<String> command =
        new java.util.ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    command.addAll(List.of(args));
    return new ProcessBuilder(command);
  }

  private static String text(InputStream in) throws IOException {
    return new String(in.readAllBytes(), StandardCharsets.UTF_8);
  }
}
