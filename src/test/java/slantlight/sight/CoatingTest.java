package slantlight.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;

/** Energy, reciprocity and the meaning of a light reflectance value. */
class CoatingTest {
  private static final AtomicInteger RUNS = new AtomicInteger();
  private static final double EIGHT = Math.cos(Math.toRadians(8));

  @ParameterizedTest
  @EnumSource(Sheen.class)
  void neverGivesBackMoreThanArrives(Sheen sheen) {
    for (double lrv : new double[] {0, 0.04, 0.5, 0.9, 1}) {
      Coating coating = Coating.of(new Paint(lrv, sheen));
      for (double deg = 0; deg < 90; deg += 1) {
        assertThat(coating.directionalAlbedo(Math.cos(Math.toRadians(deg)))).isBetween(0.0, 1.0);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Sheen.class)
  void reflectanceValueComesBackAtTheAngleItIsMeasured(Sheen sheen) {
    for (double lrv : new double[] {0.05, 0.3, 0.85}) {
      Coating coating = Coating.of(new Paint(lrv, sheen));
      assertThat(coating.directionalAlbedo(EIGHT)).isCloseTo(lrv, within(1e-9));
    }
  }

  @Test
  void integralOfTheReflectanceIsTheDirectionalAlbedo() {
    Coating coating = Coating.of(new Paint(0.3, Sheen.FLAT));
    for (double deg : new double[] {0, 30, 60, 75}) {
      double iz = Math.cos(Math.toRadians(deg));
      double ix = Math.sin(Math.toRadians(deg));
      int n = 500;
      double sum = 0;
      for (int r = 0; r < n; r++) {
        double oz = Math.sqrt((r + 0.5) / n);
        double s = Math.sqrt(1 - oz * oz);
        for (int p = 0; p < n; p++) {
          double a = Math.PI * (p + 0.5) / n;
          sum += coating.reflectance(ix, 0, iz, s * Math.cos(a), s * Math.sin(a), oz);
        }
      }
      double integral = Math.PI * sum / (n * n);
      assertThat(integral).isCloseTo(coating.directionalAlbedo(iz), within(2e-3));
    }
  }

  @Test
  void isReciprocal() {
    Coating coating = Coating.of(new Paint(0.4, Sheen.SATIN));
    Random random = new Random(7);
    for (int i = 0; i < 1000; i++) {
      double[] a = hemisphere(random);
      double[] b = hemisphere(random);
      double ab = coating.reflectance(a[0], a[1], a[2], b[0], b[1], b[2]);
      double ba = coating.reflectance(b[0], b[1], b[2], a[0], a[1], a[2]);
      assertThat(ab).isCloseTo(ba, within(1e-12 + 1e-9 * ab));
    }
  }

  @Test
  void glossierPaintMirrorsMoreSharply() {
    double last = 0;
    for (Sheen sheen : Sheen.values()) {
      double peak = lobeAtMirror(Coating.of(new Paint(0.5, sheen)), 60);
      assertThat(peak).isGreaterThanOrEqualTo(last);
      last = peak;
    }
  }

  @Test
  void compoundUnderPaintIsDullerAtTheMirrorDirection() {
    Paint paint = new Paint(0.2, Sheen.EGGSHELL);
    double gain = RidgeTable.standard().roughnessGain(4);
    assertThat(lobeAtMirror(Coating.of(paint, gain), 75))
        .isLessThan(lobeAtMirror(Coating.of(paint), 75));
    assertThat(RidgeTable.standard().roughnessGain(5)).isZero();
  }

  /** Each run asks for a roughness that nothing asked for before, so no kept answer replies. */
  @Test
  void albedoTableFollowsItsLobeBetweenNodes() {
    double gain = 0.4 + 1e-6 * RUNS.incrementAndGet();
    Coating coating = Coating.of(new Paint(0, Sheen.SATIN), gain);
    GlossLobe lobe = new GlossLobe(GlossLobe.PAINT_INDEX, coating.roughness());
    // Paint of no reflectance has no body: what comes back is the lobe's.
    assertThat(coating.bodyShare()).isZero();
    for (double c = 0.03; c <= 1; c += 0.0237) {
      double exact = lobe.albedo(c);
      assertThat(coating.directionalAlbedo(c)).isCloseTo(exact, within(2e-4 + 0.01 * exact));
    }
    Coating plain = Coating.of(new Paint(0, Sheen.SATIN));
    assertThat(coating.roughness()).isCloseTo(plain.roughness() * (1 + gain), within(1e-12));
    assertThat(Coating.matt(0.5).roughness()).isNaN();
  }

  @Test
  void sidesWorkedOutOnceGiveTheSameReflectance() {
    Random random = new Random(8);
    for (Coating coating :
        new Coating[] {
          Coating.of(new Paint(0.4, Sheen.SATIN)),
          Coating.of(new Paint(0.9, Sheen.FLAT)),
          Coating.matt(0.7)
        }) {
      for (int i = 0; i < 200; i++) {
        double[] a = hemisphere(random);
        double[] b = hemisphere(random);
        double h2 = 2 + 2 * (a[0] * b[0] + a[1] * b[1] + a[2] * b[2]);
        double direct = coating.reflectance(a[0], a[1], a[2], b[0], b[1], b[2]);
        double shared =
            coating.reflectance(coating.side(a[2]), coating.side(b[2]), h2, coating.fresnel(h2));
        assertThat(shared).isCloseTo(direct, within(1e-9 * direct));
      }
      Coating.Side behind = coating.side(-0.2);
      assertThat(behind.cos()).isZero();
      assertThat(coating.reflectance(behind, coating.side(1), 2, coating.fresnel(2))).isZero();
      assertThat(coating.reflectance(coating.side(1), behind, 2, coating.fresnel(2))).isZero();
    }
    assertThat(Coating.matt(0.7).bodyShare()).isEqualTo(0.7);
    assertThat(Coating.matt(0.7).body(1, 1)).isCloseTo(0.7 / Math.PI, within(1e-12));
    assertThat(Coating.matt(0.7).body(0, 1)).isZero();
    assertThat(Coating.matt(0.7).body(1, 0)).isZero();
  }

  private static double lobeAtMirror(Coating coating, double deg) {
    double c = Math.cos(Math.toRadians(deg));
    double s = Math.sin(Math.toRadians(deg));
    return coating.lobe(-s, 0, c, s, 0, c);
  }

  private static double[] hemisphere(Random random) {
    double z = 0.02 + 0.98 * random.nextDouble();
    double a = 2 * Math.PI * random.nextDouble();
    double s = Math.sqrt(1 - z * z);
    return new double[] {s * Math.cos(a), s * Math.sin(a), z};
  }
}
