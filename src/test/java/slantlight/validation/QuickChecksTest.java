package slantlight.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The published checks that take no time, subject by subject: unit tests of the physics, and what
 * mutation testing runs. {@link ValidationTest} holds all of them and their document.
 */
class QuickChecksTest {
  @Test
  void sun() {
    hold(SunChecks.all());
  }

  @Test
  void sky() {
    hold(SkyChecks.all());
  }

  @Test
  void optics() {
    hold(OpticsChecks.all());
  }

  @Test
  void ridges() {
    hold(RidgeChecks.all());
  }

  @Test
  void eye() {
    hold(EyeChecks.all());
  }

  private static void hold(List<Check> checks) {
    assertThat(checks).isNotEmpty().allMatch(Check::holds);
  }
}
