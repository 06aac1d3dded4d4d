package slantlight.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slantlight.geom.Vec3;

/** The mirror conserves energy and points where mirrors point. */
class WaterMirrorTest {
  @ParameterizedTest
  @CsvSource({"80", "60", "40", "25", "15"})
  void calmWaterSendsUpFresnelTimesBeam(double altitudeDeg) {
    Vec3 sun = Vec3.ofAzimuthAltitude(Math.PI, Math.toRadians(altitudeDeg));
    WaterMirror calm = new WaterMirror(Fresnel.WATER, 1e-4);
    double expected = Fresnel.reflectance(sun.z(), Fresnel.WATER) * sun.z();
    // Curvature of R over 0.6 degrees of slope leaves about 1 %, most at the lowest sun.
    assertThat(flux(calm, sun)).isCloseTo(expected, within(0.012 * expected));
  }

  @ParameterizedTest
  @CsvSource({"60, 0", "60, 5", "30, 5", "10, 5", "5, 10", "2, 10"})
  void roughWaterNeverSendsUpMoreThanArrives(double altitudeDeg, double wind) {
    Vec3 sun = Vec3.ofAzimuthAltitude(0.4, Math.toRadians(altitudeDeg));
    WaterMirror water = WaterMirror.water(wind);
    WaterMirror perfect = new WaterMirror(1e6, water.slopeVariance());
    assertThat(flux(perfect, sun)).isBetween(0.5 * sun.z(), 1.001 * sun.z());
    assertThat(flux(water, sun)).isLessThan(flux(perfect, sun));
  }

  @Test
  void glitterIsBrightestTowardTheMirrorImageAndWiderInWind() {
    Vec3 sun = Vec3.ofAzimuthAltitude(0, Math.toRadians(30));
    Vec3 mirrored = new Vec3(-sun.x(), -sun.y(), sun.z());
    Vec3 aside = Vec3.ofAzimuthAltitude(Math.PI + 0.3, Math.toRadians(30));
    WaterMirror calm = WaterMirror.water(0);
    WaterMirror windy = WaterMirror.water(8);
    assertThat(calm.glitter(sun, mirrored)).isGreaterThan(windy.glitter(sun, mirrored));
    assertThat(calm.glitter(sun, aside)).isLessThan(windy.glitter(sun, aside));
    assertThat(calm.glitter(sun, new Vec3(0, 1, 0))).isZero();
    assertThat(calm.glitter(new Vec3(0, 1, 0), mirrored)).isZero();
  }

  /**
   * Masking by Smith's own integral over the slopes that hide a facet: Lambda(mu) is the mean of (q
   * - mu)+ over mu, q a Gaussian slope along the ray and mu the slope of the ray.
   */
  @ParameterizedTest
  @CsvSource({"3", "6", "12", "25"})
  void lowSunAndLowViewHideFacetsAsSmithsIntegralSays(double deg) {
    double variance = 0.04;
    WaterMirror water = new WaterMirror(1e6, variance);
    Vec3 sun = Vec3.ofAzimuthAltitude(0, Math.toRadians(deg));
    Vec3 out = new Vec3(0, -sun.y(), sun.z());
    // The facet lies level: density at slope 0, all light mirrored.
    double unmasked = 1 / (Math.PI * variance) / (4 * out.z());
    double ray = Math.tan(Math.toRadians(deg));
    double sigma = Math.sqrt(variance / 2);
    int n = 4000;
    double sum = 0;
    double step = 8 * sigma / n;
    for (int i = 0; i < n; i++) {
      double q = ray + (i + 0.5) * step;
      sum += (q - ray) * Math.exp(-q * q / variance) / Math.sqrt(Math.PI * variance) * step;
    }
    double lambda = sum / ray;
    assertThat(water.glitter(sun, out) / unmasked).isCloseTo(1 / (1 + 2 * lambda), within(2e-4));
  }

  @Test
  void levelIceMirrorsByFresnel() {
    assertThat(WaterMirror.ice().index()).isEqualTo(1.31);
    // ((n - 1) / (n + 1))^2 square on, everything at grazing.
    assertThat(WaterMirror.ice().reflectance(1))
        .isCloseTo(0.31 * 0.31 / 2.31 / 2.31, within(1e-12));
    assertThat(WaterMirror.ice().reflectance(-0.1)).isCloseTo(1, within(1e-12));
    assertThat(WaterMirror.water(-5)).isEqualTo(WaterMirror.water(0));
  }

  /** Upward flux per unit beam normal illuminance, integrated over slopes of the facets. */
  private static double flux(WaterMirror water, Vec3 sun) {
    double sigma = Math.sqrt(water.slopeVariance());
    int n = 400;
    double reach = 4;
    double step = 2 * reach * sigma / n;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        double zx = (i + 0.5) * step - reach * sigma;
        double zy = (k + 0.5) * step - reach * sigma;
        Vec3 normal = new Vec3(-zx, -zy, 1).unit();
        double cosOmega = normal.dot(sun);
        Vec3 out = normal.times(2 * cosOmega).minus(sun);
        if (cosOmega <= 0 || out.z() <= 0) {
          continue;
        }
        // dOmega = 4 cos(omega) dOmega_n and dOmega_n = cos^3(beta) dzx dzy.
        double solid = 4 * cosOmega * Math.pow(normal.z(), 3) * step * step;
        sum += water.glitter(sun, out) * out.z() * solid;
      }
    }
    return sum;
  }
}
