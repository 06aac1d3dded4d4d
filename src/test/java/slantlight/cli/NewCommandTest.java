package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;

class NewCommandTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          20x14x9|south|44.9|America/Chicago|ft|180
          20'x14' 6"x9' 1 1/2"|west|47.6|America/Los_Angeles|in|270
          6x4.2x2.7|37.5|-33.9|Australia/Sydney|m|37.5
          6000x4200x2700|ne|60.2|Europe/Helsinki|mm|45
          1m x 1m x 1m|-30|-89|Antarctica/South_Pole|cm|330
          """)
  void whatItWritesPassesCheck(
      String size, String facing, String latitude, String zone, String units, double azimuth) {
    Path file = folder.resolve("my.json");
    CommandRun run =
        CommandRun.of(
            "new",
            "--size",
            size,
            "--facing",
            facing,
            "--latitude",
            latitude,
            "--zone",
            zone,
            "--units",
            units,
            "--out",
            file.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    Read read = SceneReader.read(file);
    assertThat(read).isInstanceOf(Read.Ok.class);
    assertThat(((Read.Ok) read).warnings()).isEmpty();
    House house = ((Read.Ok) read).house();
    Opening glass = house.openings().get(0);
    Vec3 out = glass.face().frame().n().times(-1);
    assertThat(Math.toDegrees(out.azimuth())).isCloseTo(azimuth, within(1e-3));
  }

  @Test
  void anExistingFileIsKept() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.json"), "precious");
    CommandRun run = CommandRun.of("new", "--out", file.toString());
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("is there already; name another --out or add --force");
    assertThat(file).content().isEqualTo("precious");
    assertThat(CommandRun.of("new", "--force", "--out", file.toString()).code()).isZero();
    assertThat(file).content().startsWith("// A starter scene");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          --size|20x14|give width, depth and height
          --size|20xwidex9|a length is a number or a string
          --size|20x14x0.5|has a side of 6"
          --facing|soth|did you mean "south"?
          --facing|999|give degrees or a compass word
          --latitude|91|must be from -90 to 90
          --longitude|NaN|must be from -180 to 180
          --zone|America/Chigaco|did you mean "America/Chicago"?
          --units|furlong|must be m, mm, cm, ft or in
          --glass|30|it must be from
          """)
  void flagsThatMakeNoSense(String flag, String value, String message) {
    Path file = folder.resolve("none.json");
    CommandRun run = CommandRun.of("new", flag, value, "--out", file.toString());
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains(message);
    assertThat(file).doesNotExist();
  }

  @Test
  void aFolderThatIsMissing() {
    CommandRun run = CommandRun.of("new", "--out", folder.resolve("no/such/scene.json").toString());
    assertThat(run.code()).isEqualTo(ExitCode.OUTPUT);
    assertThat(run.err()).contains("no/such").doesNotContain("Exception:");
  }
}
