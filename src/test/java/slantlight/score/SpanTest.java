package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slantlight.scene.JointKind;

class SpanTest {
  @Test
  void aSpanHoldsItsShowingAndGoesWithIt() {
    for (JointKind kind : JointKind.values()) {
      for (int level = 0; level <= 5; level++) {
        Span one = Span.of(1, kind, level);
        assertThat(one.low()).isLessThan(1);
        assertThat(one.high()).isGreaterThan(1);
        assertThat(Span.of(7, kind, level).high()).isCloseTo(7 * one.high(), within(1e-12));
      }
    }
  }

  @Test
  void independentSpansAddInSquaresOfTheirLogarithms() {
    // Butt joint at level 4: heights 0.7 to 1.3 of the table's (ridges.csv), field factor 3 to 2
    // round 2.5, light 15 % either way; by hand: exp(-sqrt(0.3567^2 + 0.1823^2 + 0.1625^2)) = 0.649
    // and exp(sqrt(0.2624^2 + 0.2231^2 + 0.1398^2)) = 1.450.
    Span s = Span.of(1, JointKind.BUTT, 4);
    assertThat(s.low()).isCloseTo(0.649, within(0.001));
    assertThat(s.high()).isCloseTo(1.450, within(0.001));
  }
}
