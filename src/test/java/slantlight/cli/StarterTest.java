package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The script that starts an installed Slantlight, before a Java that only tells its arguments. */
@DisabledOnOs(OS.WINDOWS)
class StarterTest {
  private static final String JAVA = "#!/bin/sh\nfor a; do echo \"<$a>\"; done\nexit 7\n";

  @TempDir Path folder;

  private Path starter;
  private Path jar;
  private Path java;
  private Path cache;

  @BeforeEach
  void install() throws IOException {
    Path home = Files.createDirectories(folder.toRealPath().resolve("an install"));
    starter = Files.createDirectories(home.resolve("bin")).resolve("slantlight");
    Files.copy(Path.of("src/dist/slantlight"), starter);
    jar = Files.createDirectories(home.resolve("lib")).resolve("slantlight.jar");
    Files.writeString(jar, "a jar");
    java = Files.createDirectories(folder.toRealPath().resolve("jdk/bin")).resolve("java");
    Files.writeString(java, JAVA);
    assertThat(java.toFile().setExecutable(true)).isTrue();
    // Nothing can be kept there, even by a process in the background that outlives the test.
    cache = Path.of("/dev/null");
  }

  @Test
  void itHandsOnArgumentsAndExitCode() throws Exception {
    Path link = folder.resolve("link");
    Files.createSymbolicLink(link, starter);
    assertThat(started(link, "score", "my house.json", "--out", ""))
        .containsExactly(
            "<-cp>",
            "<" + jar + ">",
            "<slantlight.cli.Main>",
            "<score>",
            "<my house.json>",
            "<--out>",
            "<>",
            "7");
  }

  @Test
  void itUsesWhatWasKeptForJustThisJarAndJava() throws Exception {
    cache = folder.toRealPath().resolve("cache");
    Path kept = Files.createDirectories(cache.resolve("slantlight"));
    String name =
        shell("ls -lL \"$1\" \"$2\" | cksum | tr ' ' '-'", java.toString(), jar.toString()).get(0);
    Path archive = kept.resolve(name + ".jsa");
    Files.writeString(archive, "");
    assertThat(started(starter, "--version"))
        .containsExactly(
            "<-XX:SharedArchiveFile=" + archive + ">",
            "<-Xlog:disable>",
            "<-Xlog:all=error:stderr>",
            "<-cp>",
            "<" + jar + ">",
            "<slantlight.cli.Main>",
            "<--version>",
            "7");
  }

  @Test
  void theJavaThatComesWithItGoesFirst() throws Exception {
    Path own = jar.resolveSibling("runtime/bin/java");
    Files.createDirectories(own.getParent());
    Files.writeString(own, "#!/bin/sh\necho own\n");
    assertThat(own.toFile().setExecutable(true)).isTrue();
    assertThat(started(starter, "--version")).containsExactly("own", "0");
  }

  /** What the starter wrote, and its exit code. */
  private List<String> started(Path script, String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of("/bin/sh", script.toString()));
    command.addAll(List.of(arguments));
    return run(command);
  }

  private List<String> shell(String script, String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of("/bin/sh", "-c", script, "sh"));
    command.addAll(List.of(arguments));
    return run(command);
  }

  private List<String> run(List<String> command) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("JAVA_HOME", java.getParent().getParent().toString());
    builder.environment().put("XDG_CACHE_HOME", cache.toString());
    Process process = builder.start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    List<String> lines = new ArrayList<>(out.lines().toList());
    lines.add(Integer.toString(process.waitFor()));
    return lines;
  }
}
