package slantlight.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Lambert's formula against closed forms, slow sums over the polygon, and its own limits. */
class LambertTest {
  @Test
  void rectangleOverheadHasTheTabulatedConfigurationFactor() {
    for (double[] abc : new double[][] {{1, 2, 3}, {2, 0.5, 1}, {4, 4, 0.25}, {0.01, 0.02, 5}}) {
      double[] ring = {0, 0, abc[2], 0, abc[1], abc[2], abc[0], abc[1], abc[2], abc[0], 0, abc[2]};
      double expected = Math.PI * ConfigurationFactors.elementParallel(abc[0], abc[1], abc[2]);
      assertThat(vector(ring).z()).isCloseTo(expected, within(1e-12 + 1e-10 * expected));
    }
  }

  @Test
  void tiltedTriangleAgreesWithASumOverItsArea() {
    Vec3 a = new Vec3(-0.7, 0.9, 1.1);
    Vec3 b = new Vec3(1.3, 1.6, 0.4);
    Vec3 c = new Vec3(0.2, 2.1, 1.9);
    Vec3 sum = Vec3.ZERO;
    Vec3 normal = b.minus(a).cross(c.minus(a)).times(0.5);
    int n = 400;
    double share = 1.0 / (n * n);
    // Each of the n x n little triangles stands by its centroid.
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < 2 * (n - i) - 1; k++) {
        double u = (i + (k % 2 == 0 ? 1.0 : 2.0) / 3) / n;
        double v = (Math.floorDiv(k, 2) + (k % 2 == 0 ? 1.0 : 2.0) / 3) / n;
        Vec3 p = a.plus(b.minus(a).times(u)).plus(c.minus(a).times(v));
        double r = p.length();
        sum = sum.plus(p.times(Math.abs(p.dot(normal)) * share / (r * r * r * r)));
      }
    }
    Vec3 ours = vector(a.x(), a.y(), a.z(), b.x(), b.y(), b.z(), c.x(), c.y(), c.z());
    // Written counter-clockwise or clockwise, the vector turns its sign.
    Vec3 toward = ours.dot(a) > 0 ? ours : ours.times(-1);
    assertThat(toward.distance(sum)).isLessThan(1e-5);
    Vec3 back = vector(c.x(), c.y(), c.z(), b.x(), b.y(), b.z(), a.x(), a.y(), a.z());
    assertThat(back.plus(ours).length()).isLessThan(1e-14);
  }

  @Test
  void vectorPointsTowardARingThatRunsCounterClockwiseSeenFromThePoint() {
    // Overhead, seen from below with north up, east lies to the left.
    Vec3 v = vector(1, 1, 2, 1, -1, 2, -1, -1, 2, -1, 1, 2);
    assertThat(v.z()).isPositive();
    assertThat(v.x()).isCloseTo(0, within(1e-15));
    assertThat(v.y()).isCloseTo(0, within(1e-15));
  }

  @Test
  void wholeHemisphereOfABoxGivesPi() {
    // A plate so wide that it fills the view: configuration factor 1.
    assertThat(vector(1e6, 1e6, 1, 1e6, -1e6, 1, -1e6, -1e6, 1, -1e6, 1e6, 1).z())
        .isCloseTo(Math.PI, within(1e-5));
  }

  @Test
  void aFarRectangleIsItsSolidAngle() {
    double d = 1e4;
    Vec3 v = vector(d, 0.5, 0.5, d, -0.5, 0.5, d, -0.5, -0.5, d, 0.5, -0.5);
    assertThat(Math.abs(v.x())).isCloseTo(1 / (d * d), within(1e-16));
  }

  /** The angle by its series and by the arc tangent meet without a step. */
  @Test
  void shortEdgesAddUpToLongOnes() {
    double[] few = {1, 0, 1, -1, 0, 1, 0, -1.2, 1};
    Vec3 whole = vector(few);
    for (int parts : new int[] {2, 15, 19, 21, 40, 300}) {
      double[] many = new double[3 * 3 * parts];
      for (int e = 0; e < 3; e++) {
        for (int i = 0; i < parts; i++) {
          for (int k = 0; k < 3; k++) {
            double from = few[3 * e + k];
            double to = few[3 * ((e + 1) % 3) + k];
            many[3 * (e * parts + i) + k] = from + (to - from) * i / parts;
          }
        }
      }
      assertThat(vector(many).distance(whole)).as("%s parts", parts).isLessThan(1e-11);
    }
  }

  @Test
  void edgesOfMoreThanARightAngleAndNoLengthCountRightly() {
    // Two opposite edges of a strip seen under 2 atan(10): closed form of an infinite-looking
    // strip.
    double w = 10;
    double len = 1e7;
    // Configuration factor of a strip -w..w at distance 1, endless along y: sin of the half angle.
    double expected = Math.PI * w / Math.hypot(w, 1);
    assertThat(vector(w, len, 1, w, -len, 1, -w, -len, 1, -w, len, 1).z())
        .isCloseTo(expected, within(1e-5));
    Vec3 plain = vector(1, 1, 2, 1, -1, 2, -1, -1, 2);
    Vec3 doubled = vector(1, 1, 2, 1, 1, 2, 1, -1, 2, -1, -1, 2);
    assertThat(doubled.distance(plain)).isLessThan(1e-15);
  }

  @Test
  void addsToWhatIsThere() {
    double[] out = {1, 2, 3};
    double[] ring = {1, 1, 2, 1, -1, 2, -1, -1, 2, -1, 1, 2};
    Lambert.add(ring, 4, out);
    Vec3 alone = vector(ring);
    assertThat(new Vec3(out[0], out[1], out[2]).distance(alone.plus(new Vec3(1, 2, 3))))
        .isLessThan(1e-14);
  }

  @Test
  void clippingKeepsWhatLiesInFront() {
    double[] square = {-1, -1, -1, 1, -1, -1, 1, 2, 3, -1, 2, 3};
    double[] out = new double[3 * 8];
    // The plane 0.6 y + 0.8 z = 0 cuts both sloping sides where y = -1 + 3 t and z = -1 + 4 t.
    int kept = Lambert.clip(square, 4, 0, 0.6, 0.8, out);
    assertThat(kept).isEqualTo(4);
    double t = 1.4 / 5;
    int onPlane = 0;
    for (int i = 0; i < kept; i++) {
      double y = out[3 * i + 1];
      double z = out[3 * i + 2];
      assertThat(Math.abs(out[3 * i])).isCloseTo(1, within(1e-15));
      if (Math.abs(0.6 * y + 0.8 * z) < 1e-12) {
        assertThat(y).isCloseTo(-1 + 3 * t, within(1e-12));
        assertThat(z).isCloseTo(-1 + 4 * t, within(1e-12));
        onPlane++;
      } else {
        assertThat(y).isEqualTo(2);
        assertThat(z).isEqualTo(3);
      }
    }
    assertThat(onPlane).isEqualTo(2);
    assertThat(Lambert.clip(square, 4, 1, 0, 0, out)).isEqualTo(4);
    for (int i = 0; i < 4; i++) {
      assertThat(out[3 * i]).isBetween(0.0, 1.0);
    }
    assertThat(Lambert.clip(square, 4, 0, 0, -1, out)).isEqualTo(4);
    for (int i = 0; i < 4; i++) {
      assertThat(out[3 * i + 2]).isLessThanOrEqualTo(0);
    }
  }

  @Test
  void clippingKeepsAllOrNothingWhereThePlaneMisses() {
    double[] triangle = {1, 2, 3, 4, 5, 7, 2, 8, 1};
    double[] out = new double[3 * 6];
    assertThat(Lambert.clip(triangle, 3, 1, 1, 1, out)).isEqualTo(3);
    assertThat(java.util.Arrays.copyOf(out, 9)).containsExactly(triangle);
    assertThat(Lambert.clip(triangle, 3, -1, -1, -1, out)).isZero();
    // A corner that only touches the plane leaves nothing.
    double[] touching = {0, 0, 0, -1, 1, 0, -1, -1, 0};
    assertThat(Lambert.clip(touching, 3, 1, 0, 0, out)).isZero();
  }

  @Test
  void theTwoSidesOfACutAddUp() {
    double[] ring = {-0.7, 0.9, 1.1, 1.3, 1.6, 0.4, 0.2, 2.1, 1.9, -0.5, 1.7, 1.8};
    double[] front = new double[3 * 8];
    double[] back = new double[3 * 8];
    Vec3 n = new Vec3(0.8, -0.2, 0.1);
    int f = Lambert.clip(ring, 4, n.x(), n.y(), n.z(), front);
    int b = Lambert.clip(ring, 4, -n.x(), -n.y(), -n.z(), back);
    double[] out = new double[3];
    Lambert.add(front, f, out);
    Lambert.add(back, b, out);
    assertThat(new Vec3(out[0], out[1], out[2]).distance(vector(ring))).isLessThan(1e-14);
    assertThat(f + b).isEqualTo(8);
  }

  private static Vec3 vector(double... ring) {
    double[] out = new double[3];
    Lambert.add(ring, ring.length / 3, out);
    return new Vec3(out[0], out[1], out[2]);
  }
}
