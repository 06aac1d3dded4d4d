package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The photometric reader: layouts, symmetries, units and every way to be wrong. */
class Lm63ReaderTest {
  private static final Path FILES = Path.of("src", "test", "resources", "lm63");
  private static final String HEAD = "IESNA:LM-63-2002\n[TEST] T\n[LUMCAT] CAT-7\n";
  private static final String NUMBERS = "1 1000 1 3 1 1 2 0.1 0.2 0.3\n1 1 10\n";
  private static final String TABLE = "0 45 90\n0\n100 80 0\n";

  @TempDir Path folder;

  @Test
  void readsAnAxialFileInMetres() throws Lm63Exception {
    Photometry p = Lm63Reader.read(FILES.resolve("axial-downlight.ies"));
    assertThat(p.name()).isEqualTo("AXIAL DOWNLIGHT, INVENTED DATA");
    assertThat(p.candela(Math.toRadians(37.5), 2)).isCloseTo(700, within(1e-9));
    assertThat(p.candela(Math.toRadians(120), 0)).isZero();
    assertThat(p.width()).isZero();
  }

  @Test
  void readsAnAbsoluteQuadrantFileInFeetOf2019() throws Lm63Exception {
    Photometry p = Lm63Reader.read(FILES.resolve("sconce-quadrant.ies"));
    assertThat(p.width()).isCloseTo(0.33 * 0.3048, within(1e-12));
    assertThat(p.candela(0, 0))
        .as("the 1.10000 of 2019 is a file type, not a factor")
        .isCloseTo(426, within(1e-9));
    double c = 0.6;
    double g = 1.1;
    double there = p.candela(g, c);
    assertThat(p.candela(g, -c)).isCloseTo(there, within(1e-9));
    assertThat(p.candela(g, Math.PI - c)).isCloseTo(there, within(1e-9));
    assertThat(p.candela(g, Math.PI + c)).isCloseTo(there, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"axial-downlight.ies", "sconce-quadrant.ies"})
  void fluxIsTheIntegralOfTheLookup(String name) throws Lm63Exception {
    Photometry p = Lm63Reader.read(FILES.resolve(name));
    int n = 720;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double g = Math.PI * (i + 0.5) / n;
      double ring = 0;
      for (int k = 0; k < 144; k++) {
        ring += p.candela(g, 2 * Math.PI * (k + 0.5) / 144) / 144;
      }
      sum += ring * Math.sin(g) * 2 * Math.PI * Math.PI / n;
    }
    assertThat(p.lumens()).isCloseTo(sum, within(2e-4 * sum));
  }

  @Test
  void symmetriesAgreeWithTheSameTableWrittenOut() throws Exception {
    String v = "0 60 120 180\n";
    Photometry half =
        read(HEAD + "TILT=NONE\n1 -1 1 4 3 1 2 0 0 0 1 1 1\n" + v + "0 90 180\n" + rows(5, 7, 9));
    Photometry full =
        read(
            HEAD
                + "TILT=NONE\n1 -1 1 4 5 1 2 0 0 0 1 1 1\n"
                + v
                + "0 90 180 270 360\n"
                + rows(5, 7, 9, 7, 5));
    Photometry across =
        read(HEAD + "TILT=NONE\n1 -1 1 4 3 1 2 0 0 0 1 1 1\n" + v + "90 180 270\n" + rows(3, 8, 4));
    Photometry acrossFull =
        read(
            HEAD
                + "TILT=NONE\n1 -1 1 4 5 1 2 0 0 0 1 1 1\n"
                + v
                + "0 90 180 270 360\n"
                + rows(8, 3, 8, 4, 8));
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      double g = Math.PI * random.nextDouble();
      double c = 4 * Math.PI * (random.nextDouble() - 0.5);
      assertThat(half.candela(g, c)).isCloseTo(full.candela(g, c), within(1e-9));
      assertThat(across.candela(g, c)).isCloseTo(acrossFull.candela(g, c), within(1e-9));
    }
    assertThat(half.lumens()).isCloseTo(full.lumens(), within(1e-9));
    assertThat(across.lumens()).isCloseTo(acrossFull.lumens(), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "IESNA:LM-63-1986, 2.0",
    "IESNA91, 2.0",
    "IESNA:LM-63-1991, 2.0",
    "IESNA:LM-63-1995, 1.0",
    "IESNA:LM-63-2002, 1.0",
    "IES:LM-63-2019, 1.0",
    "A lamp of 1986 without an edition line, 2.0"
  })
  void ballastLampFactorCountsInTheFirstEditionsOnly(String first, double share) throws Exception {
    Photometry p = read(first + "\nTILT=NONE\n1 1000 3 3 1 1 2 0 0 0\n0.5 2 10\n" + TABLE);
    assertThat(p.candela(0, 0)).isCloseTo(100 * 3 * 0.5 * share, within(1e-9));
  }

  @Test
  void tiltTableIsReadAndItsUprightFactorUsed() throws Exception {
    Photometry p = read(HEAD + "TILT=INCLUDE\n1\n3\n0 45 90\n0.9 0.8 0.7\n" + NUMBERS + TABLE);
    assertThat(p.candela(0, 0)).isCloseTo(90, within(1e-9));
    assertThat(p.name()).isEqualTo("CAT-7");
  }

  @Test
  void commasAndBrokenLinesSeparateAlike() throws Exception {
    Photometry p =
        read(
            HEAD
                + "tilt=none\r\n1,1000,1,\r\n3 1,1 2 0.1 0.2 0.3\n1\n1\n10\n0,45\n90 0\n100,80 0\n\n");
    assertThat(p.candela(Math.toRadians(45), 0)).isCloseTo(80, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "TILT=other.tlt;1 1|4|tilt table is in another file|TILT=INCLUDE",
        "TILT=NONE;1 1000 1 3 1 3 2 0 0 0;1 1 1;@|5|Type A|Type C",
        "TILT=NONE;1 1000 1 3 1 2 2 0 0 0;1 1 1;@|5|Type B|Type C",
        "TILT=NONE;1 1000 1 3 1 4 2 0 0 0;1 1 1;@|5|photometric type is 4|from 1 to 3",
        "TILT=NONE;1 1000 1 3 1 1 9 0 0 0;1 1 1;@|5|unit of length is 9|from 1 to 2",
        "TILT=NONE;1 1000 1 1 1 1 2 0 0 0;1 1 1;@|5|vertical angles is 1|from 2",
        "TILT=NONE;1 1000 1 2000 2000 1 2 0 0 0;1 1 1;@|5|too large|fewer angles",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;0 45 90;0;100 80|9|after 2 of 3 values|cut short",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;0 45|7|after 2 of 3 values|cut short",
        "TILT=NONE;1 1000 1 3 1|5|ends where the photometric type|whole file",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;0 45 90;0;100 80 0 7|9|after the last candela|counts",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;0 90 45;0;100 80 0|7|do not ascend|damaged",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;10 45 90;0;1 1 1|7|vertical angles run from 10|0 or 90",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;0 45 90;30;1 1 1|8|horizontal angles run from 30|one angle 0",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;0 45 90;0;1 -1 1|9|candela value is -1|0 or more",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;0 45 90;0;1 NaN 1|9|NaN|plain number",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;0 45 90;0;1 x,1|9|\"x\" stands where|plain number",
        "TILT=NONE;1 1000 0 3 1 1 2 0 0 0;1 1 1;@|6|zero or negative|correct",
        "TILT=NONE;1 1000 1 3 1 1 2 0 0 0;1 1 1;0 45 90;0;0 0 0|9|all candela values are zero|no file"
      })
  void faultsAreToldByLineWithWhatToDo(String body, int line, String problem, String remedy)
      throws IOException {
    String text = HEAD + body.replace("@", TABLE).replace(';', '\n');
    Lm63Exception e = refused(text);
    assertThat(e).hasMessageContaining(problem).hasMessageContaining(remedy);
    assertThat(e.line()).isEqualTo(line);
    assertThat(e).hasMessageContaining("line " + line);
  }

  @Test
  void filesThatAreNoPhotometryAreToldApart() throws IOException {
    assertThat(refused("hello\nworld")).hasMessageContaining("no TILT= line");
    assertThat(refused("")).hasMessageContaining("no TILT= line");
    assertThat(refused("IES:LM-63-2077\nTILT=NONE\n")).hasMessageContaining("2077");
    assertThat(refused("a\0b")).hasMessageContaining("binary");
    assertThat(refused("x".repeat((4 << 20) + 1))).hasMessageContaining("4 MiB");
    assertThat(fault(folder)).hasMessageContaining("folder");
    assertThat(fault(folder.resolve("none.ies"))).hasMessageContaining("cannot be read");
  }

  @Test
  void anyDamageGivesATableOrAFault() throws Exception {
    byte[] good = Files.readAllBytes(FILES.resolve("sconce-quadrant.ies"));
    Random random = new Random(5);
    for (int i = 0; i < 300; i++) {
      byte[] bad = java.util.Arrays.copyOf(good, 1 + random.nextInt(good.length));
      for (int k = 0; k < 3; k++) {
        bad[random.nextInt(bad.length)] = (byte) (9 + random.nextInt(118));
      }
      Path file = Files.write(folder.resolve("damaged.ies"), bad);
      try {
        assertThat(Lm63Reader.read(file).lumens()).isPositive();
      } catch (Lm63Exception e) {
        assertThat(e).hasMessageContaining("damaged.ies");
      }
    }
  }

  private Photometry read(String text) throws IOException, Lm63Exception {
    return Lm63Reader.read(write(text));
  }

  private Lm63Exception refused(String text) throws IOException {
    return fault(write(text));
  }

  private static Lm63Exception fault(Path file) {
    return catchThrowableOfType(Lm63Exception.class, () -> Lm63Reader.read(file));
  }

  private Path write(String text) throws IOException {
    return Files.write(folder.resolve("lamp.ies"), text.getBytes(StandardCharsets.ISO_8859_1));
  }

  private static String rows(int... peaks) {
    StringBuilder out = new StringBuilder();
    for (int peak : peaks) {
      for (double share : List.of(1.0, 0.6, 0.3, 0.1)) {
        out.append(peak * share).append(' ');
      }
      out.append('\n');
    }
    return out.toString();
  }
}
