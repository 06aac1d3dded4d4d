package slantlight.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slantlight.sky.Fresnel;

/** The lobe's own integrals against sums over directions that know nothing of facets. */
class GlossLobeTest {
  @ParameterizedTest
  @CsvSource({"0.3, 0", "0.3, 50", "0.6, 30", "0.6, 75", "1, 60"})
  void albedoIsTheSumOverTheHemisphere(double roughness, double deg) {
    GlossLobe lobe = new GlossLobe(1.5, roughness);
    double iz = Math.cos(Math.toRadians(deg));
    double ix = Math.sin(Math.toRadians(deg));
    int n = 400;
    double sum = 0;
    for (int r = 0; r < n; r++) {
      double oz = Math.sqrt((r + 0.5) / n);
      double s = Math.sqrt(1 - oz * oz);
      for (int p = 0; p < n; p++) {
        double a = Math.PI * (p + 0.5) / n;
        sum += lobe.reflectance(ix, 0, iz, s * Math.cos(a), s * Math.sin(a), oz);
      }
    }
    double slow = Math.PI * sum / (n * n);
    assertThat(lobe.albedo(iz)).isCloseTo(slow, within(0.01 * slow));
  }

  /** Even steps over the receptor's window. */
  @ParameterizedTest
  @CsvSource({"SIXTY, 0.1", "SIXTY, 0.5", "EIGHTY_FIVE, 0.3", "TWENTY, 0.2"})
  void glossIsTheSumOverTheReceptor(GlossAngle angle, double roughness) {
    GlossLobe lobe = new GlossLobe(1.5, roughness);
    double t = Math.toRadians(angle.degrees());
    int n = 300;
    double stepIn = Math.toRadians(angle.inPlaneDeg()) / n;
    double stepAcross = Math.toRadians(angle.acrossDeg()) / n;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double turn = t + (i + 0.5 - n / 2.0) * stepIn;
      for (int k = 0; k < n; k++) {
        double tilt = (k + 0.5 - n / 2.0) * stepAcross;
        double oz = Math.cos(tilt) * Math.cos(turn);
        double f =
            lobe.reflectance(
                -Math.sin(t), 0, Math.cos(t), Math.cos(tilt) * Math.sin(turn), Math.sin(tilt), oz);
        sum += Math.max(0, f * oz) * Math.cos(tilt) * stepIn * stepAcross;
      }
    }
    double slow = 100 * sum / Fresnel.reflectance(Math.cos(t), GlossAngle.BLACK_GLASS);
    assertThat(lobe.gloss(angle)).isCloseTo(slow, within(0.01 * slow));
  }

  @Test
  void fittedLobesReadTheGlossTheyAreFittedTo() {
    for (double gloss : new double[] {3, 12, 40, 80}) {
      assertThat(GlossLobe.ofGloss60(gloss).gloss(GlossAngle.SIXTY))
          .isCloseTo(gloss, within(1e-3 * gloss));
    }
  }

  @Test
  void impossibleLobesAreRefused() {
    assertThatThrownBy(() -> new GlossLobe(1, 0.1)).hasMessageContaining("index above 1");
    assertThatThrownBy(() -> new GlossLobe(1.5, 0.0004)).hasMessageContaining("from 0.0005 to 1");
    assertThatThrownBy(() -> new GlossLobe(1.5, 1.01)).hasMessageContaining("1.01");
    assertThat(new GlossLobe(1.5, 1).roughness()).isEqualTo(1);
    assertThat(new GlossLobe(1.5, 0.1).reflectance(0, 0, 0, 0, 0, 1)).isZero();
    assertThat(new GlossLobe(1.5, 0.1).reflectance(0, 0, 1, 1, 0, 0)).isZero();
  }
}
