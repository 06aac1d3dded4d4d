package slantlight.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected values by hand from the inch of 25.4 mm (international, 1959). */
class MeasuresTest {
  private static final double INCH = 0.0254;
  private static final Measures FEET = Measures.typed(LengthUnit.FT);
  private static final Measures DRAWN = Measures.printed(LengthUnit.IN);
  private static final Measures METRES = Measures.printed(LengthUnit.MM);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "204.75|17' 0 3/4\"|17' 0\u00be\"",
        "174.5|14' 6 1/2\"|14' 6\u00bd\"",
        "144|12' 0\"|12' 0\"",
        "0.25|1/4\"|\u00bc\"",
        "10.6|10 1/2\"|10\u00bd\"",
        "11.99|1' 0\"|1' 0\"",
        "0|0\"|0\""
      })
  void lengthsInFeetGoToTheQuarterInch(double inches, String typed, String printed) {
    assertThat(FEET.length(inches * INCH)).isEqualTo(typed);
    assertThat(DRAWN.length(inches * INCH)).isEqualTo(printed);
  }

  @Property
  void whatIsReadIsWithinAnEighthOfAnInch(@ForAll @DoubleRange(min = 0, max = 500) double metres) {
    for (Measures m : new Measures[] {FEET, DRAWN}) {
      assertThat(Length.parse(m.length(metres), LengthUnit.M).orElseThrow().metres())
          .isCloseTo(metres, within(INCH / 8 + 1e-9));
    }
  }

  @Test
  void metricReadersReadMetresAndMillimetres() {
    assertThat(METRES.length(5.2)).isEqualTo("5.20 m");
    assertThat(METRES.distance(2.46)).isEqualTo("2.5 m");
    assertThat(METRES.gap(0.268)).isEqualTo("268 mm");
    assertThat(METRES.gap(0.0004)).isEqualTo("less than 1 mm");
    assertThat(METRES.total(1043.94)).isEqualTo("1,043.9 m");
    assertThat(METRES.span(1, 3)).isEqualTo("1.00 to 3.00 m");
    assertThat(METRES.span(1, 1.004)).isEqualTo("1.00 m");
    assertThat(METRES.area(41.64)).isEqualTo("41.6 m\u00b2");
    assertThat(Measures.METRIC.area(41.64)).isEqualTo("41.6 m2");
    assertThat(METRES.volume(35.4)).isEqualTo("35 l");
  }

  @Test
  void readersInFeetReadNothingMetric() {
    assertThat(DRAWN.distance(2.46)).isEqualTo("8' 1\"");
    assertThat(DRAWN.gap(0.268)).isEqualTo("10\u00bd\"");
    assertThat(DRAWN.gap(0.0032)).isEqualTo("1/8\"");
    assertThat(DRAWN.gap(0.001)).isEqualTo("less than 1/16\"");
    assertThat(FEET.total(43.9)).isEqualTo("144 ft");
    assertThat(FEET.span(1, 3)).isEqualTo("3' 3 1/4\" to 9' 10\"");
    assertThat(DRAWN.area(41.64)).isEqualTo("448 sq ft");
    assertThat(FEET.area(41.64)).isEqualTo("448 ft2");
  }

  /** A US gallon is 231 cubic inches, 3.785411784 l (NIST Handbook 44, appendix C). */
  @Test
  void aGallonIs231CubicInches() {
    assertThat(FEET.volume(3.785411784 * 5)).isEqualTo("5.0 US gal");
    assertThat(FEET.volume(3.785411784 * 5.06)).isEqualTo("5.1 US gal");
  }

  @Test
  void scaleBarsAreOfARoundLengthInTheReadersUnit() {
    assertThat(METRES.single(METRES.round(4.99))).isEqualTo("2 m");
    assertThat(METRES.single(METRES.round(5))).isEqualTo("5 m");
    assertThat(METRES.single(METRES.round(0.1))).isEqualTo("0.5 m");
    assertThat(DRAWN.single(DRAWN.round(3.75))).isEqualTo("10 ft");
    assertThat(DRAWN.round(3.75)).isCloseTo(10 * 0.3048, within(1e-12));
    assertThat(DRAWN.single(DRAWN.round(0.1))).isEqualTo("1 ft");
  }
}
