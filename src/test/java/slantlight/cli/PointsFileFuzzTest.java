package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import slantlight.FuzzTime;
import slantlight.units.LengthUnit;

/** Any bytes as points: points with unit normals, or messages that name file and line. */
class PointsFileFuzzTest {
  @FuzzTest(maxDuration = FuzzTime.EACH)
  void readsOrTellsWhatIsWrong(byte[] bytes) throws IOException {
    Path file = Files.createTempFile("points", ".csv");
    try {
      Files.write(file, bytes);
      for (PointsFile.Point p : PointsFile.read(file, LengthUnit.FT)) {
        assertThat(p.at().length()).isFinite();
        assertThat(p.normal().length()).isBetween(1 - 1e-9, 1 + 1e-9);
        assertThat(p.name()).isNotBlank().doesNotContainPattern("\\p{Cc}");
      }
    } catch (CommandFailure e) {
      assertThat(e.exitCode()).isEqualTo(ExitCode.FAULTS);
      assertThat(e.getMessage().lines())
          .hasSizeLessThan(60)
          .allMatch(l -> l.startsWith(file.toString()))
          .noneMatch(l -> l.codePoints().anyMatch(Character::isISOControl));
    } finally {
      Files.delete(file);
    }
  }
}
