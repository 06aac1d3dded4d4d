package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every fault is one clear message with its place; all of them come in one pass. */
class SceneFaultsTest {
  @TempDir Path folder;

  @Test
  void theBaseSceneIsSound() {
    assertThat(SceneTexts.read(folder, SceneTexts.SOUND)).isInstanceOf(Read.Ok.class);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "head": 8|"head": "9' 2\\""|scene.json:11:30 $.rooms[0].openings[0].head: window head 9' 2" is above the wall's 9' 0"; lower it or raise the wall
          "name"|"nmae"|there is no key "nmae" here; the keys are
          "name"|"nmae"|did you mean "name"?
          "name": "|"name": "\\u001b[2J|it must be a text in quotes, in one line
          "units": "ft"|"units": "fet"|one of m, mm, cm, ft, in
          45,|91,|latitude is 91; it must be a number from -90 to 90
          45,|NaN,|latitude is NaN
          45,|1e999,|latitude is Infinity
          Chicago|Chikago|did you mean "America/Chicago"?
          "height": 9|"height": -9|height is -9
          "height": 9|"height": "nine"|height is "nine"; it must be a number or a string
          "height": 9|"height": null|height is null
          "use": "living"|"use": "livign"|did you mean "living"?
          "use": "living", |` `|the key use is missing
          [20, 0], [20, 14]|[20, 14], [20, 0]|crosses or touches itself at edges
          [20, 14], [0, 14]|[20, 0], [0, 0]|edge shorter than 1 mm
          [[0, 0], [20, 0], [20, 14], [0, 14]]|[[0, 0], [20, 0], [10, 0]]|crosses or touches itself
          [20, 0], [20, 14]|["2000 m", 0], ["2000 m", 14]|at most 1 km; are the units right?
          "offset": 2|"offset": 16|window runs to 22' 0" along a wall of 20' 0"
          "wall": "south"|"wall": "soth"|did you mean "south"?
          "to": "hall"|"to": "hal"|there is no other room "hal"; known: hall; did you mean "hall"?
          "to": "hall"|"to": "great-room"|there is no other room "great-room"
          "id": "hall"|"id": "great-room"|the room id "great-room" is used twice
          "room": "great-room"|"room": "grate-room"|did you mean "great-room"?
          [10, 7, 8]|[30, 7, 8]|the lamp stands outside great-room in plan
          [10, 7, 8]|[10, 7, 9.5]|the lamp at 9' 6" is not between the floor at 0" and the ceiling at 9' 0"
          [10, 7, 8]|[10, 7]|the lamp has no height
          "lumens": 800|"photometry": "none.ies"|there is no file "none.ies" beside the scene
          "lumens": 800|"photometry": "../x.ies"|the file lies outside the scene's folder
          "lumens": 800|"photometry": "/etc/passwd"|the file lies outside the scene's folder
          "lumens": 800|"lumens": 800, "on": ["sunset to 25:99"]|on[0] is "sunset to 25:99"
          "lumens": 800|"lumens": 800, "lumens": 900|the key is given twice
          14' 4 1/2|12' 4 1/2|hall and great-room overlap by
          "head": 8|"head": 8, "height": 7|has height and head
          "kind": "window"|"kind": "skylight"|a skylight needs at; give its middle
          "slantlight": 1|"slantlight": 2|a whole number from 1 to 1
          """)
  void tellsWhatIsWrong(String from, String to, String message) {
    assertThat(SceneTexts.SOUND).contains(from);
    List<String> faults = SceneTexts.faults(folder, SceneTexts.SOUND.replace(from, to));
    assertThat(faults).anySatisfy(f -> assertThat(f).contains(message));
    assertThat(faults).allSatisfy(f -> assertThat(f).startsWith("scene.json"));
  }

  @Test
  void tellsEveryFaultInOnePassInTheOrderOfTheFile() {
    String text =
        SceneTexts.SOUND
            .replace("45,", "91,")
            .replace("\"width\": 6", "\"widht\": 6")
            .replace("\"head\": 8", "\"head\": 12")
            .replace("\"to\": \"hall\"", "\"to\": \"hell\"")
            .replace("[10, 7, 8]", "[10, 70, 8]");
    List<String> faults = SceneTexts.faults(folder, text);
    assertThat(faults).hasSize(5);
    assertThat(faults.get(0)).contains("latitude is 91");
    assertThat(faults.get(1)).contains("needs width");
    assertThat(faults.get(2)).contains("did you mean \"width\"?");
    assertThat(faults.get(3)).contains("there is no other room \"hell\"");
    assertThat(faults.get(4)).contains("outside great-room");
  }

  @Test
  void openingsMustNotOverlap() {
    String second =
        "{ \"id\": \"W2\", \"kind\": \"window\", \"wall\": \"south\", \"offset\": 7, \"width\": 3,"
            + " \"height\": 4 },\n      { \"id\": \"P1\"";
    assertThat(SceneTexts.faults(folder, SceneTexts.SOUND.replace("{ \"id\": \"P1\"", second)))
        .singleElement()
        .asString()
        .contains("overlaps or touches another opening of Great room south wall");
  }

  @Test
  void aSteppedCeilingWithoutItsRiserDoesNotClose() {
    String step =
        "\"ceiling\": { \"kind\": \"polygons\", \"polygons\": ["
            + "{ \"id\": \"low\", \"points\": [[0,0,9],[0,14,9],[10,14,9],[10,0,9]] },"
            + "{ \"id\": \"high\", \"points\": [[10,0,10],[10,14,10],[20,14,10],[20,0,10]] } ] },"
            + " \"openings\": [";
    String open = SceneTexts.SOUND.replace("\"openings\": [", step);
    assertThat(SceneTexts.faults(folder, open))
        .anySatisfy(f -> assertThat(f).contains("great-room do not close"));
    String riser =
        "{ \"id\": \"riser\", \"points\": [[10,0,9],[10,14,9],[10,14,10],[10,0,10]] } ] }";
    String closed = open.replace("[20,0,10]] } ] }", "[20,0,10]] }, " + riser);
    assertThat(SceneTexts.faults(folder, closed)).isEmpty();
  }

  @Test
  void aCeilingMustCoverTheRoom() {
    String gap =
        "\"ceiling\": { \"kind\": \"polygons\", \"polygons\": ["
            + "{ \"id\": \"low\", \"points\": [[0,0,9],[0,14,9],[10,14,9],[10,0,9]] } ] },"
            + " \"openings\": [";
    assertThat(SceneTexts.faults(folder, SceneTexts.SOUND.replace("\"openings\": [", gap)))
        .anySatisfy(f -> assertThat(f).contains("leaves 140.0 sq ft of the room open"));
  }

  @Test
  void lampsMustNotStandInSolids() {
    String box =
        "\"boxes\": [ { \"id\": \"block\", \"from\": [8,5,0], \"to\": [12,9,8.5] } ], \"openings\": [";
    assertThat(SceneTexts.faults(folder, SceneTexts.SOUND.replace("\"openings\": [", box)))
        .anySatisfy(f -> assertThat(f).contains("the lamp is inside a solid box"));
  }

  @Test
  void filesThatAreNoScenes() throws IOException {
    assertThat(one(folder.resolve("missing.json"))).contains("there is no such file");
    assertThat(one(folder)).contains("is a folder, not a scene file");
    assertThat(text("")).contains("is empty");
    assertThat(text("// only a comment\n")).contains("is empty");
    assertThat(text("[1, 2]")).contains("must be an object");
    assertThat(text(SceneTexts.SOUND.substring(0, 300))).contains("ends in the middle of a value");
    assertThat(text("{\"a\" 1}")).contains("is not JSON here");
    assertThat(text("[".repeat(10_000))).contains("nested more than 64 deep");
    assertThat(text("[" + "1,".repeat(600_000) + "1]")).contains("more than 500000 values");
    assertThat(text("{} {}")).contains("something follows the end");
    Path binary = folder.resolve("binary.json");
    Files.write(binary, new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2});
    assertThat(one(binary)).contains("is not text");
    Path huge = folder.resolve("huge.json");
    try (RandomAccessFile f = new RandomAccessFile(huge.toFile(), "rw")) {
      f.setLength((64L << 20) + (1 << 20));
    }
    assertThat(one(huge)).contains("is 65 MiB large");
  }

  private String text(String text) throws IOException {
    return one(Files.writeString(folder.resolve("text.json"), text));
  }

  private static String one(Path file) {
    Read read = SceneReader.read(file);
    assertThat(read).isInstanceOf(Read.Faulty.class);
    return ((Read.Faulty) read)
        .faults().stream().map(Fault::text).collect(java.util.stream.Collectors.joining("\n"));
  }

  @Test
  void anOppositeLongitudeIsWarnedOf() {
    Read read = SceneTexts.read(folder, SceneTexts.SOUND.replace("-93", "93"));
    assertThat(((Read.Ok) read).warnings())
        .singleElement()
        .satisfies(w -> assertThat(w.text()).contains("lies far from the zone America/Chicago"));
  }

  @Test
  void aWindowIntoAnotherRoomIsWarnedOf() {
    String inner = SceneTexts.SOUND.replace("\"wall\": \"south\"", "\"wall\": \"north\"");
    String apart = inner.replace("\"width\": 4", "\"offset\": 12, \"width\": 4");
    Read read = SceneTexts.read(folder, apart);
    assertThat(((Read.Ok) read).warnings())
        .extracting(Fault::what)
        .contains("great-room/W1 opens into hall, where it finds no daylight");
  }

  @Test
  void photometryIsReadThroughNoLinkOutOfTheFolder(@TempDir Path elsewhere) throws IOException {
    Path secret =
        Files.copy(Path.of("scenes", "downlight-invented.ies"), elsewhere.resolve("far.ies"));
    Files.createSymbolicLink(folder.resolve("near.ies"), secret);
    String linked = SceneTexts.SOUND.replace("\"lumens\": 800", "\"photometry\": \"near.ies\"");
    assertThat(SceneTexts.faults(folder, linked))
        .singleElement()
        .asString()
        .contains("is a link out of the scene's folder");
  }

  @Test
  void aSpoiltPhotometryFileIsTold() throws IOException {
    String ies = Files.readString(Path.of("scenes", "downlight-invented.ies"));
    Files.writeString(folder.resolve("lamp.ies"), ies.substring(0, ies.length() - 30));
    String scene = SceneTexts.SOUND.replace("\"lumens\": 800", "\"photometry\": \"lamp.ies\"");
    assertThat(SceneTexts.faults(folder, scene))
        .singleElement()
        .asString()
        .contains("the file \"lamp.ies\" cannot be used");
  }

  @Test
  void twoSurfacesOfOneNameAreTold() {
    String walls = "\"walls\": [ { \"wall\": \"east\", \"id\": \"floor\" } ], \"openings\": [";
    assertThat(SceneTexts.faults(folder, SceneTexts.SOUND.replace("\"openings\": [", walls)))
        .singleElement()
        .asString()
        .contains("two surfaces of great-room are called \"great-room/floor\"");
  }
}
