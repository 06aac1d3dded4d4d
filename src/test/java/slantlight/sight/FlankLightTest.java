package slantlight.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec3;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;

/** Flanks under light: limits, symmetry and shadow. */
class FlankLightTest {
  private static final Vec3 ABOVE = new Vec3(0, 0, 1);

  @Test
  void mattContrastIsSlopeTimesSlantForAnyUnclippedLight() {
    Random random = new Random(11);
    double[] directions = new double[60];
    double[] lux = new double[20];
    double ex = 0;
    double ez = 0;
    for (int i = 0; i < lux.length; i++) {
      double z = 0.05 + 0.95 * random.nextDouble();
      double a = 2 * Math.PI * random.nextDouble();
      double s = Math.sqrt(1 - z * z);
      directions[3 * i] = s * Math.cos(a);
      directions[3 * i + 1] = s * Math.sin(a);
      directions[3 * i + 2] = z;
      lux[i] = 1000 * random.nextDouble();
      ex += lux[i] * directions[3 * i];
      ez += lux[i] * z;
    }
    double slope = 0.02;
    FlankLight light = FlankLight.of(directions, lux, slope, Coating.matt(0.8), ABOVE);
    assertThat(light.michelson()).isCloseTo(slope * Math.abs(ex) / ez, within(1e-12));
  }

  @Test
  void lightAlongTheRidgeShowsNothing() {
    Coating flat = Coating.of(new Paint(0.8, Sheen.FLAT));
    FlankLight light = beam(new Vec3(0, 1, 0.05).unit(), 0.05, flat, new Vec3(0, -1, 1).unit());
    assertThat(light.rising()).isCloseTo(light.falling(), within(1e-9 * light.rising()));
  }

  @Test
  void farFlankGoesIntoItsOwnShadowBelowItsSlope() {
    // Light travels along +x, so it comes from -x and the rising flank faces it.
    double slope = 0.1;
    Vec3 under = new Vec3(-1, 0, 0.09).unit();
    Vec3 over = new Vec3(-1, 0, 0.11).unit();
    assertThat(beam(under, slope, Coating.matt(1), ABOVE).falling()).isZero();
    assertThat(beam(under, slope, Coating.matt(1), ABOVE).michelson()).isEqualTo(1);
    assertThat(beam(over, slope, Coating.matt(1), ABOVE).falling()).isPositive();
    assertThat(beam(over, slope, Coating.matt(1), ABOVE).rising())
        .isGreaterThan(beam(over, slope, Coating.matt(1), ABOVE).falling());
  }

  @Test
  void darkPaintShowsMoreUnderTheSameLightBecauseItsSheenIsBare() {
    // Light from a low window ahead and even fill; the eye looks toward the window.
    double[] directions = new double[3 * 65];
    double[] lux = new double[65];
    directions[0] = -Math.cos(0.15);
    directions[2] = Math.sin(0.15);
    lux[0] = 5000;
    for (int i = 0; i < 64; i++) {
      double z = Math.sqrt((i + 0.5) / 64);
      double a = i * 2.399963;
      double s = Math.sqrt(1 - z * z);
      directions[3 * (i + 1)] = s * Math.cos(a);
      directions[3 * (i + 1) + 1] = s * Math.sin(a);
      directions[3 * (i + 1) + 2] = z;
      lux[i + 1] = 20;
    }
    Vec3 eye = new Vec3(Math.cos(0.8), 0, Math.sin(0.8));
    double pale =
        FlankLight.of(directions, lux, 0.01, Coating.of(new Paint(0.85, Sheen.FLAT)), eye)
            .michelson();
    double dark =
        FlankLight.of(directions, lux, 0.01, Coating.of(new Paint(0.06, Sheen.FLAT)), eye)
            .michelson();
    assertThat(dark).isGreaterThan(1.5 * pale);
  }

  @Test
  void noLightNoContrast() {
    FlankLight none = FlankLight.of(new double[0], new double[0], 0.1, Coating.matt(1), ABOVE);
    assertThat(none.michelson()).isZero();
  }

  @Test
  void profilesHaveTheSlopeAndShadowTheyClaim() {
    RaisedCosine crown = new RaisedCosine(0.0012, 0.525);
    double steepest = 0;
    for (double x = -0.3; x < 0.3; x += 1e-4) {
      double numeric = (crown.heightAt(x + 1e-7) - crown.heightAt(x - 1e-7)) / 2e-7;
      assertThat(crown.slopeAt(x)).isCloseTo(numeric, within(1e-6));
      steepest = Math.max(steepest, Math.abs(crown.slopeAt(x)));
    }
    assertThat(steepest).isCloseTo(crown.peakSlope(), within(1e-7));
    assertThat(crown.shadowLength(Math.toRadians(45))).isCloseTo(0.0012, within(1e-12));
  }

  @Test
  void levelMattSurfaceSendsBackItsShareOfTheIlluminance() {
    double[] directions = {0.6, 0, 0.8, 0, -0.8, 0.6, 0.6, 0, -0.8};
    double[] lux = {100, 50, 1000};
    double expected = 0.5 / Math.PI * (100 * 0.8 + 50 * 0.6);
    assertThat(FlankLight.level(directions, lux, Coating.matt(0.5), ABOVE))
        .as("light from below counts for nothing")
        .isCloseTo(expected, within(1e-9));
    assertThat(FlankLight.level(directions, lux, Coating.matt(0.5), new Vec3(1, 0, 0))).isZero();
  }

  /** A flank is a level surface turned: the same as turning light and eye the other way. */
  @Test
  void tiltingTheFlankIsTurningLightAndEye() {
    Coating paint = Coating.of(new Paint(0.3, Sheen.SATIN));
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      double tilt = 0.3 * (2 * random.nextDouble() - 1);
      double turned = 1.2 * (2 * random.nextDouble() - 1);
      double seen = 1.2 * (2 * random.nextDouble() - 1);
      double y = 0.3 * random.nextDouble();
      double flat = Math.sqrt(1 - y * y);
      // Directions by their angle from the normal in the plane across the ridge.
      Vec3 light = new Vec3(flat * Math.sin(turned), y, flat * Math.cos(turned));
      Vec3 eye = new Vec3(flat * Math.sin(seen), -y, flat * Math.cos(seen));
      double weight =
          FlankLight.weight(
              paint, Math.sin(tilt), Math.cos(tilt), light.x(), light.y(), light.z(), eye);
      Vec3 l = new Vec3(flat * Math.sin(turned + tilt), y, flat * Math.cos(turned + tilt));
      Vec3 e = new Vec3(flat * Math.sin(seen + tilt), -y, flat * Math.cos(seen + tilt));
      double level =
          l.z() <= 0 || e.z() <= 0
              ? 0
              : l.z() * paint.reflectance(l.x(), l.y(), l.z(), e.x(), e.y(), e.z());
      assertThat(weight).isCloseTo(level, within(1e-9 + 1e-9 * level));
    }
    assertThat(FlankLight.weight(paint, 0.1, 0.995, 0, 0.6, -0.8, ABOVE)).isZero();
    assertThat(FlankLight.weight(paint, -0.6, 0.8, 0.8, 0, 0, new Vec3(0, 0, 1))).isZero();
  }

  private static FlankLight beam(Vec3 light, double slope, Coating coating, Vec3 eye) {
    return FlankLight.of(
        new double[] {light.x(), light.y(), light.z()}, new double[] {1000}, slope, coating, eye);
  }
}
