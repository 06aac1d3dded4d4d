package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many scenes in one run: shared, stopped, resumed, and none spoilt by another. */
class ScoreBatchTest {
  private static final List<String> QUICK = List.of("--days", "180", "--step", "240");

  @TempDir Path folder;

  private Path scenes;
  private Path out;

  @BeforeEach
  void makeScenes() throws IOException {
    scenes = Files.createDirectory(folder.resolve("scenes"));
    out = folder.resolve("out");
    scene(scenes.resolve("alder.json"), 12);
    scene(scenes.resolve("birch.json"), 9);
    scene(scenes.resolve("cedar.json"), 6);
  }

  @Test
  void eachSceneGetsWhatARunOfItsOwnWrites() throws IOException {
    CommandRun run = score(scenes, "--out", out);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("alder", "birch", "cedar").doesNotContain("GA-214");
    assertThat(run.err())
        .containsSubsequence("1/3 alder: 5 surfaces", "2/3 birch", "3/3 cedar", "3 scored now");
    Path alone = folder.resolve("alone.txt");
    assertThat(score(scenes.resolve("birch.json"), "--out", alone).code()).isZero();
    assertThat(out.resolve("birch.txt")).hasSameBinaryContentAs(alone);
    assertThat(Files.readAllLines(out.resolve("summary.csv")))
        .hasSize(4)
        .element(1)
        .asString()
        .startsWith("alder,scored,One room,5,");
  }

  @Test
  void withoutAFolderTheAnswersFollowOneAnother() {
    CommandRun run = score(scenes.resolve("cedar.json"), scenes.resolve("alder.json"));
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .containsSubsequence("== ", "alder.json", "Level ", "== ", "cedar.json", "shows most");
    assertThat(score(scenes, "--json").err()).contains("add --out FOLDER");
  }

  @Test
  void aBadSceneIsToldAndTheOthersAreScored() throws IOException {
    Files.writeString(scenes.resolve("bad.json"), "{ \"slantlight\": 1, \"nonsense\": 2 }");
    CommandRun run = score(scenes, scenes.resolve("none.json"), "--out", out);
    assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(run.err())
        .contains("bad.json:1:", "nonsense", "2/5 bad: not scored", "there is no such file")
        .contains("3 scored now, 0 before, 2 not scored");
    assertThat(out.resolve("cedar.txt")).isRegularFile();
    assertThat(out.resolve("bad.txt")).doesNotExist();
    assertThat(Files.readString(out.resolve("summary.csv"))).contains("\nbad,faults,");
  }

  @Test
  void twoProcessesShareTheWorkAndTheUnionIsTheSingleRun() throws Exception {
    assertThat(score(scenes, "--csv", "--out", out).code()).isZero();
    Path shared = folder.resolve("shared");
    Process one = process(scenes, "--csv", "--out", shared, "--part", "1/2");
    Process two = process(scenes, "--csv", "--out", shared, "--part", "2/2");
    assertThat(one.waitFor()).isZero();
    assertThat(two.waitFor()).isZero();

    Map<String, String> union = contents(shared);
    List<String> rows = new ArrayList<>();
    for (int i = 1; i <= 2; i++) {
      String summary = union.remove("summary-" + i + "-of-2.csv");
      rows.addAll(summary.lines().skip(1).toList());
    }
    Map<String, String> single = contents(out);
    String all = single.remove("summary.csv");
    assertThat(union).hasSize(6).isEqualTo(single);
    assertThat(rows.stream().sorted()).containsExactlyElementsOf(all.lines().skip(1).toList());

    CommandRun closing = score(scenes, "--csv", "--out", shared);
    assertThat(closing.err()).contains("0 scored now, 3 before");
    assertThat(shared.resolve("summary.csv")).hasContent(all);
  }

  @Test
  void killedAndStartedAgainItGoesOnWhereItWas() throws Exception {
    Process killed = process(scenes, "--out", out);
    try (BufferedReader told =
        new BufferedReader(
            new InputStreamReader(killed.getErrorStream(), StandardCharsets.UTF_8))) {
      assertThat(told.readLine()).startsWith("1/3 alder: 5 surfaces");
      killed.destroyForcibly().waitFor();
    }
    CommandRun again = score(scenes, "--out", out);
    assertThat(again.code()).isZero();
    assertThat(again.err()).contains("1/3 alder: unchanged, skipped", "3/3 cedar: ");
    Path fresh = folder.resolve("fresh");
    assertThat(score(scenes, "--out", fresh).code()).isZero();
    Map<String, String> left = contents(out);
    left.keySet().removeIf(n -> n.endsWith(".part")); // debris of the killed writer, if any
    assertThat(left).isEqualTo(contents(fresh));
  }

  @Test
  void onlyWhatChangedIsScoredAgain() throws IOException {
    score(scenes, "--out", out);
    scene(scenes.resolve("birch.json"), 10);
    Files.writeString(out.resolve("cedar.txt"), "edited by hand");
    CommandRun changed = score(scenes, "--out", out);
    assertThat(changed.err())
        .contains("1/3 alder: unchanged, skipped", "2/3 birch: 5 surf", "3/3 cedar: 5 surf");
    assertThat(Files.readString(out.resolve("cedar.txt"))).startsWith("One room");
    CommandRun options = score(scenes, "--out", out, "--surface", "living/ceiling");
    assertThat(options.err()).contains("3 scored now, 0 before");
  }

  @Test
  void aChangedLampFileIsAChangedScene() throws IOException {
    Path lamp = scenes.resolve("lamp.ies");
    Files.copy(Path.of("scenes", "downlight-invented.ies"), lamp);
    Path lit = scenes.resolve("alder.json");
    Files.writeString(
        lit,
        Files.readString(lit)
            .replace("\"distribution\": \"diffuser\"", "\"photometry\": \"lamp.ies\""));
    assertThat(score(scenes, "--out", out).code()).isZero();
    Files.writeString(lamp, Files.readString(lamp) + "\r\n");
    assertThat(score(scenes, "--out", out).err()).contains("1 scored now, 2 before");
  }

  @Test
  void aSceneThatBreaksLaterKeepsItsOldResultAndSaysSo() throws IOException {
    score(scenes, "--out", out);
    Files.writeString(scenes.resolve("cedar.json"), "{");
    CommandRun run = score(scenes, "--out", out);
    assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(run.err()).contains("3/3 cedar: not scored; ", "cedar.txt is of an earlier state");
  }

  @Test
  void equalNamesInDifferentFoldersStayApart() throws IOException {
    Path other = Files.createDirectory(folder.resolve("others"));
    scene(other.resolve("alder.json"), 7);
    CommandRun run =
        score(scenes.resolve("alder.json"), other, scenes.resolve("alder.json"), "--out", out);
    assertThat(run.code()).isZero();
    assertThat(run.err()).contains("1/2 others/alder: ", "2/2 scenes/alder: ");
    assertThat(Files.readString(out.resolve("others/alder.txt")))
        .isNotEqualTo(Files.readString(out.resolve("scenes/alder.txt")));
  }

  @Test
  void whatCannotBeMeantIsRefusedBeforeAnyWork() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    CommandRun nothing = score(empty, "--out", out);
    assertThat(nothing.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(nothing.err()).contains("empty: the folder holds no scene files (*.json)");

    for (String part : List.of("0/2", "3/2", "1", "a/b", "-1/2", "1/0")) {
      CommandRun run = score(scenes, "--part=" + part);
      assertThat(run.code()).isEqualTo(ExitCode.USAGE);
      assertThat(run.err()).contains("--part " + part + ": give i/n with i from 1 to n");
    }
    assertThat(score(scenes, "--out", scenes).err()).contains("scenes lie there");
    assertThat(score(scenes, "--out", scenes.resolve("alder.json")).err())
        .contains("several scenes need a folder");
    Files.copy(scenes.resolve("alder.json"), scenes.resolve("summary.json"));
    assertThat(score(scenes, "--csv", "--out", out).err()).contains("rename the scene");
    Path bare = Files.copy(scenes.resolve("alder.json"), scenes.resolve("alder"));
    assertThat(score(scenes.resolve("alder.json"), bare, "--out", out).err())
        .contains("rename the scene");
    assertThat(out).doesNotExist();
  }

  @Test
  void aPartWithoutScenesIsNoFault() {
    CommandRun run = score(scenes, "--out", out, "--part", "5/8");
    assertThat(run.code()).isZero();
    assertThat(run.err()).contains("part 5/8 holds none of 3 scenes");
  }

  private static void scene(Path file, int windowFeet) throws IOException {
    String room = Files.readString(Path.of("scenes", "one-room.json"));
    Files.writeString(file, room.replace("\"width\": 12", "\"width\": " + windowFeet));
  }

  private static CommandRun score(Object... arguments) {
    return CommandRun.of(line(arguments).toArray(String[]::new));
  }

  private static List<String> line(Object... arguments) {
    List<String> line = new ArrayList<>(List.of("score"));
    Stream.of(arguments).map(Object::toString).forEach(line::add);
    line.addAll(QUICK);
    return line;
  }

  private static Process process(Object... arguments) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    command.addAll(line(arguments));
    return new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
  }

  /** Every file below a folder by its name, as text. */
  private static Map<String, String> contents(Path root) throws IOException {
    Map<String, String> out = new TreeMap<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        out.put(root.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    }
    return out;
  }
}
