package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import slantlight.scene.Lm63Exception;
import slantlight.scene.Lm63Reader;
import slantlight.units.Length;
import slantlight.units.LengthUnit;

/** Files made to break the readers: each ends in messages of one line, never in an exception. */
class HostileInputTest {
  private static final Path CORPUS = Path.of("src", "test", "resources", "corpus");
  private static final String OUTLINE = "[[0, 0], [20, 0], [20, 14], [0, 14]]";

  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> hostileScenes() throws IOException {
    return scenes().entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(),
                    () -> {
                      Path file = folder.resolve(e.getKey() + ".json");
                      Files.writeString(file, e.getValue());
                      refused(file);
                    }));
  }

  private static Map<String, String> scenes() throws IOException {
    String sound = Files.readString(Path.of("scenes", "one-room.json"));
    assertThat(sound).contains(OUTLINE);
    Map<String, String> out = new LinkedHashMap<>();
    out.put("empty", "");
    out.put("null", "null");
    out.put("truncated", sound.substring(0, sound.length() / 2));
    out.put("deep arrays", "[".repeat(200_000));
    out.put("deep objects", "{\"a\":".repeat(100_000));
    out.put("key given twice", sound.replace("\"units\"", "\"name\": \"again\", \"units\""));
    out.put("10 km room", sound.replace(OUTLINE, "[[0,0],[32000,0],[32000,32000],[0,32000]]"));
    out.put(
        "wall of a nanometre", sound.replace(OUTLINE, "[[0,0],[20,0],[20,14],[1e-9,14],[0,14]]"));
    out.put(
        "outline touches itself", sound.replace(OUTLINE, "[[0,0],[20,0],[20,14],[10,0],[0,14]]"));
    out.put("outline crosses itself", sound.replace(OUTLINE, "[[0,0],[20,14],[20,0],[0,14]]"));
    out.put("coincident corners", sound.replace(OUTLINE, "[[0,0],[0,0],[20,0],[20,14],[0,14]]"));
    String window =
        "{\"id\":\"w%d\",\"kind\":\"window\",\"wall\":\"south\",\"width\":1,\"height\":1}";
    String windows =
        IntStream.range(0, 100_000)
            .mapToObj(i -> window.replace("%d", Integer.toString(i)))
            .collect(Collectors.joining(","));
    out.put(
        "too many windows", sound.replace("\"openings\": [", "\"openings\": [" + windows + ","));
    out.put("path escape", sound.replace("\"diffuser\"", "\"../../../etc/passwd\""));
    out.put("path escape to photometry", sound.replace("\"diffuser\"", "\"../../x.ies\""));
    out.put("unknown zone", sound.replace("America/Chicago", "Mars/Base"));
    out.put("latitude 91", sound.replace("44.9", "91"));
    out.put("not a number", sound.replace("44.9", "NaN"));
    out.put("number of a million digits", sound.replace("44.9", "4".repeat(1_000_000)));
    out.put("huge text", sound.replace("An invented room", "A".repeat(30_000_000)));
    String key = "\"" + "k".repeat(60) + "\":";
    out.put(
        "many values under long keys",
        ("{" + key).repeat(60) + "[" + "0,".repeat(400_000) + "0]" + "}".repeat(60));
    out.put("control characters", sound.replace("One room", "\u0000\u001b[31m"));
    assertThat(out.values()).doesNotContain(sound);
    return out;
  }

  /** The nearest known key was once looked for beyond the faults that are told: half a minute. */
  @Test
  void manyUnknownKeysAreCountedNotCompared() throws IOException {
    String text =
        IntStream.range(0, 400_000)
            .mapToObj(i -> "\"" + "unknownkey".repeat(7) + i + "\":0")
            .collect(Collectors.joining(",", "{", "}"));
    CommandRun run = CommandRun.of("check", scene("keys.json", text).toString());
    assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(run.out() + run.err()).containsPattern("there are 399\\d{3} more faults");
  }

  private Path scene(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void hugeFileIsRefusedUnread() throws IOException {
    Path file = folder.resolve("huge.json");
    try (RandomAccessFile f = new RandomAccessFile(file.toFile(), "rw")) {
      f.setLength(2L << 30);
    }
    refused(file);
  }

  @Test
  void binaryFileIsRefused() throws IOException {
    byte[] bytes = new byte[100_000];
    new Random(1).nextBytes(bytes);
    refused(Files.write(folder.resolve("binary.json"), bytes));
  }

  private static void refused(Path file) {
    CommandRun run = CommandRun.of("check", file.toString());
    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(ExitCode.FAULTS);
    String told = run.out() + run.err();
    assertThat(told).contains(file.getFileName().toString()).doesNotContain("Exception");
    assertThat(told).doesNotContain("\tat ").doesNotContain("\u001b");
    assertThat(told.lines().filter(l -> !l.isBlank()).count()).isBetween(1L, 60L);
    assertThat(told.length()).isLessThan(20_000);
  }

  @Test
  void spoiltPointsEndInPointsOrMessages() throws IOException {
    for (String text : spoilt(corpus("points"), 3000)) {
      try {
        assertThat(PointsFile.parse("p.csv", text, LengthUnit.M)).isNotEmpty();
      } catch (CommandFailure e) {
        assertThat(e.exitCode()).isEqualTo(ExitCode.FAULTS);
        assertThat(e.getMessage().lines()).allMatch(l -> l.startsWith("p.csv"));
      }
    }
  }

  /** Each quote once made a copy of all before it: minutes for a line of a few megabytes. */
  @Test
  void aLineOfQuotesIsReadInOnePass() {
    String line = "a" + "\"".repeat(4_000_000);
    assertThatThrownBy(() -> PointsFile.parse("p.csv", line, LengthUnit.M))
        .isInstanceOf(CommandFailure.class)
        .hasMessageContaining("has 1 cells");
  }

  @Test
  void spoiltPhotometryEndsInDataOrOneMessage() throws IOException {
    Path file = folder.resolve("x.ies");
    int read = 0;
    for (String text : spoilt(corpus("lm63"), 600)) {
      Files.write(file, text.getBytes(StandardCharsets.ISO_8859_1));
      try {
        assertThat(Lm63Reader.read(file).lumens()).isPositive();
        read++;
      } catch (Lm63Exception e) {
        assertThat(e.getMessage()).isNotBlank();
        assertThat(e.getMessage().lines()).hasSize(1);
      }
    }
    assertThat(read).isPositive();
  }

  @Test
  void spoiltLengthsEndInALengthOrNothing() throws IOException {
    for (String text : spoilt(corpus("lengths"), 5000)) {
      for (String line : text.split("\n", -1)) {
        Length.parse(line, LengthUnit.FT)
            .ifPresent(l -> assertThat(l.metres()).as(line).isFinite());
      }
    }
  }

  /** The corpus as it is, then copies with bytes changed, cut, doubled or mixed; fixed seed. */
  private static List<String> spoilt(List<String> corpus, int copies) {
    assertThat(corpus).isNotEmpty();
    Random random = new Random(20260101);
    String alphabet = "0123456789.,+-eE'\"/ \t\r\n#[]TILT=xyz\u0000\u00e9\uffff";
    Stream<String> made =
        IntStream.range(0, copies)
            .mapToObj(
                i -> {
                  StringBuilder s = new StringBuilder(corpus.get(random.nextInt(corpus.size())));
                  for (int k = random.nextInt(6); k >= 0 && !s.isEmpty(); k--) {
                    int at = random.nextInt(s.length());
                    int to = Math.min(s.length(), at + random.nextInt(12));
                    switch (random.nextInt(4)) {
                      case 0 -> s.setCharAt(at, alphabet.charAt(random.nextInt(alphabet.length())));
                      case 1 -> s.delete(at, to);
                      case 2 -> s.insert(at, s.substring(at, to).repeat(1 + random.nextInt(3)));
                      default -> {
                        String other = corpus.get(random.nextInt(corpus.size()));
                        s.setLength(at);
                        s.append(other, Math.min(other.length(), at), other.length());
                      }
                    }
                  }
                  return s.toString();
                });
    return Stream.concat(corpus.stream(), made).toList();
  }

  private static List<String> corpus(String kind) throws IOException {
    try (Stream<Path> files = Files.list(CORPUS.resolve(kind))) {
      return files
          .sorted()
          .map(
              f -> {
                try {
                  return Files.readString(f, StandardCharsets.ISO_8859_1);
                } catch (IOException e) {
                  throw new java.io.UncheckedIOException(e);
                }
              })
          .toList();
    }
  }
}
