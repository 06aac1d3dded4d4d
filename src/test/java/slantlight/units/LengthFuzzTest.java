package slantlight.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import slantlight.FuzzTime;

/** Any text as a length: none, or a finite one that reads back as it is written. */
class LengthFuzzTest {
  @FuzzTest(maxDuration = FuzzTime.EACH)
  void readsNothingOrAFiniteLengthThatReadsBack(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    for (LengthUnit unit : LengthUnit.values()) {
      Optional<Length> length = Length.parse(text, unit);
      if (length.isEmpty()) {
        continue;
      }
      double metres = length.get().metres();
      assertThat(metres).isFinite();
      // Beyond a million kilometres a double no longer carries sixteenths of an inch.
      if (Math.abs(metres) < 1e9) {
        assertThat(Length.parse(length.get().metric(), unit).orElseThrow().metres())
            .isCloseTo(metres, within(5.1e-4));
        assertThat(Length.parse(length.get().feetInches(), unit).orElseThrow().metres())
            .isCloseTo(metres, within(0.0254 / 32 + 1e-6));
      }
    }
  }
}
