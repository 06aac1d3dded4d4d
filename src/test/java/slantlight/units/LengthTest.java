package slantlight.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
  private static final double INCH = 0.0254; // exact, international inch of 1959

  /** Expected values: inches by hand, times 25.4 mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "14' 6 1/2\"|174.5",
        "14'-6 1/2\"|174.5",
        "14'6\"|174",
        "14'|168",
        "6ft 2in|74",
        "6 feet 2 inches|74",
        "5/8 in|0.625",
        "5/8\"|0.625",
        "1 1/2\"|1.5",
        "1-1/2 in|1.5",
        "-2' 3\"|-27",
        "3' 6½\"|42.5",
        "3′ 6½″|42.5",
        "7’ 2”|86",
        "4' 3''|51",
        "2 1/2'|30",
        ".5 in|0.5",
        "−3\"|-3"
      })
  void readsFeetAndInches(String text, double inches) {
    assertThat(Length.parse(text, LengthUnit.M).orElseThrow().metres())
        .isCloseTo(inches * INCH, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"4.42 m, 4.42", "150mm, 0.15", "12 cm, 0.12", "-0.2 M, -0.2", "1/2 m, 0.5"})
  void readsMetric(String text, double metres) {
    assertThat(Length.parse(text, LengthUnit.FT).orElseThrow().metres())
        .isCloseTo(metres, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"M, 9, 9", "FT, 9, 2.7432", "IN, 9, 0.2286", "MM, 9, 0.009", "CM, 9, 0.09"})
  void aBareNumberTakesTheScenesUnit(LengthUnit unit, String text, double metres) {
    assertThat(Length.parse(text, unit).orElseThrow().metres()).isCloseTo(metres, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "abc",
        "14 6",
        "6\" 2'",
        "5/0 in",
        "1e3 m",
        "NaN",
        "Infinity",
        "4,42 m",
        "12 furlongs",
        "--3",
        "3 m 2 m",
        "'",
        "1/2/3 in",
        "12' 3 m"
      })
  void refusesWhatIsNoLength(String text) {
    assertThat(Length.parse(text, LengthUnit.M)).isEmpty();
  }

  @Property
  void neverThrows(@ForAll @StringLength(max = 100) String text) {
    Length.parse(text, LengthUnit.FT).ifPresent(l -> assertThat(l.metres()).isFinite());
  }

  @Property
  void feetAndInchesComeBackToTheSixteenth(@ForAll @IntRange(min = -40_000, max = 40_000) int n) {
    Length length = new Length(n / 16.0 * INCH);
    double back = Length.parse(length.feetInches(), LengthUnit.M).orElseThrow().metres();
    assertThat(back).isCloseTo(length.metres(), within(1e-9));
  }

  @Property
  void anyLengthComesBackWithinHalfASixteenth(
      @ForAll @DoubleRange(min = -500, max = 500) double metres) {
    String text = new Length(metres).feetInches();
    assertThat(Length.parse(text, LengthUnit.M).orElseThrow().metres())
        .isCloseTo(metres, within(INCH / 32 + 1e-9));
    assertThat(Length.parse(new Length(metres).metric(), LengthUnit.FT).orElseThrow().metres())
        .isCloseTo(metres, within(0.0005 + 1e-9));
    assertThat(Length.parse(new Length(metres).millimetres(), LengthUnit.FT).orElseThrow().metres())
        .isCloseTo(metres, within(0.0005 + 1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "174.5|14' 6 1/2\"",
        "0.625|5/8\"",
        "168|14' 0\"",
        "0|0\"",
        "-27|-2' 3\"",
        "204.75|17' 0 3/4\"",
        "11.99|1' 0\"",
        "-0.01|0\""
      })
  void writesFeetAndInches(double inches, String text) {
    assertThat(new Length(inches * INCH).feetInches()).isEqualTo(text);
  }
}
