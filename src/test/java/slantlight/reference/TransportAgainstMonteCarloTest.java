package slantlight.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The program's light transport against an answer that shares no code with it. */
class TransportAgainstMonteCarloTest {
  static List<String> rooms() {
    return Comparison.rooms();
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void illuminanceAndLightVectorAgree(String room) {
    Comparison comparison = Comparison.of(room);
    assertThat(comparison.differences())
        .allSatisfy(
            d -> {
              assertThat(d.difference())
                  .as(d.toString())
                  .isBetween(-Comparison.LIMIT, Comparison.LIMIT);
              assertThat(d.sigmas()).as(d.toString()).isLessThan(3);
            });
  }
}
