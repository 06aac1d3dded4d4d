package slantlight.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Shares of cells against the JTS topology library on random polygons. */
class CoverageTest {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final double[] BOX = {-0.3, 0.2, 1.9, 1.7};

  @Test
  void starsCoverWhatTheLibrarySays() {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      double[] ring = star(random, 3 + random.nextInt(9), 0.3 + random.nextDouble());
      agree(1 + random.nextInt(8), RingsTest.polygon(ring), ring);
    }
  }

  @Test
  void convexOnesCoverWhatTheLibrarySays() {
    Random random = new Random(12);
    for (int i = 0; i < 200; i++) {
      double[] ring =
          RingsTest.hull(star(random, 3 + random.nextInt(9), 0.3 + random.nextDouble()));
      agree(1 + random.nextInt(8), RingsTest.polygon(ring), ring);
    }
  }

  /** Corners on cell borders and edges along them, where a row or column is met exactly. */
  @Test
  void cornersAndEdgesOnTheLatticeCoverWhatTheLibrarySays() {
    Random random = new Random(13);
    int side = 4;
    int kept = 0;
    for (int i = 0; i < 300; i++) {
      double[] ring = star(random, 3 + random.nextInt(9), 0.6);
      for (int k = 0; k < ring.length; k++) {
        double step = k % 2 == 0 ? (BOX[2] - BOX[0]) / side : (BOX[3] - BOX[1]) / side;
        double from = BOX[k % 2];
        ring[k] = from + step * Math.rint((ring[k] - from) / step);
      }
      Polygon polygon = RingsTest.polygon(ring);
      if (polygon.isValid() && Rings.area(ring) > 0) {
        agree(side, polygon, ring);
        kept++;
      }
    }
    assertThat(kept).isGreaterThan(100);
  }

  @Test
  void clockwiseHolesAreTakenAway() {
    Random random = new Random(14);
    for (int i = 0; i < 100; i++) {
      double[] outer = star(random, 5 + random.nextInt(7), 0.8);
      double[] hole = scaled(outer, 0.2 + 0.6 * random.nextDouble());
      Polygon ring =
          JTS.createPolygon(
              RingsTest.polygon(outer).getExteriorRing(),
              new LinearRing[] {RingsTest.polygon(hole).getExteriorRing()});
      agree(1 + random.nextInt(8), ring, outer, Rings.oriented(hole, false));
    }
  }

  @Test
  void ringsOneAfterAnotherAddUp() {
    Random random = new Random(15);
    for (int i = 0; i < 50; i++) {
      double[] a = star(random, 3 + random.nextInt(9), 0.5);
      double[] b = star(random, 3 + random.nextInt(9), 0.5);
      Coverage both = new Coverage(BOX, 5);
      both.add(a);
      both.add(b);
      for (int cell = 0; cell < 25; cell++) {
        assertThat(both.share(cell))
            .isCloseTo(
                share(RingsTest.polygon(a), 5, cell) + share(RingsTest.polygon(b), 5, cell),
                within(1e-12));
      }
    }
  }

  @Test
  void partsOutsideTheBoxAreLeftOut() {
    Random random = new Random(16);
    int across = 0;
    int outside = 0;
    for (int i = 0; i < 300; i++) {
      double[] ring = star(random, 3 + random.nextInt(9), 0.8);
      double du = 5 * random.nextDouble() - 2.5;
      double dv = 5 * random.nextDouble() - 2.5;
      for (int k = 0; k < ring.length; k += 2) {
        ring[k] += du;
        ring[k + 1] += dv;
      }
      Polygon polygon = RingsTest.polygon(ring);
      double inside = polygon.intersection(box(BOX)).getArea();
      across += inside > 0 && inside < polygon.getArea() ? 1 : 0;
      outside += inside == 0 ? 1 : 0;
      agree(1 + random.nextInt(8), polygon, ring);
    }
    assertThat(across).isGreaterThan(100);
    assertThat(outside).isGreaterThan(50);
  }

  @Test
  void aRingRoundTheBoxCoversAllOfIt() {
    Coverage all = new Coverage(BOX, 3);
    all.add(new double[] {-9, -9, 9, -9, 9, 9, -9, 9});
    for (int cell = 0; cell < 9; cell++) {
      assertThat(all.share(cell)).isCloseTo(1, within(1e-12));
    }
  }

  private static void agree(int side, Geometry expected, double[]... rings) {
    Coverage coverage = new Coverage(BOX, side);
    for (double[] ring : rings) {
      coverage.add(ring);
    }
    for (int cell = 0; cell < side * side; cell++) {
      assertThat(coverage.share(cell))
          .as("cell %s of %s x %s, %s", cell, side, side, expected)
          .isCloseTo(share(expected, side, cell), within(1e-9));
    }
  }

  private static double share(Geometry polygon, int side, int cell) {
    double du = (BOX[2] - BOX[0]) / side;
    double dv = (BOX[3] - BOX[1]) / side;
    double u = BOX[0] + du * (cell % side);
    double v = BOX[1] + dv * Math.floorDiv(cell, side);
    return polygon.intersection(box(u, v, u + du, v + dv)).getArea() / (du * dv);
  }

  private static Geometry box(double... b) {
    return JTS.toGeometry(new Envelope(b[0], b[2], b[1], b[3]));
  }

  /** Corners at growing azimuths round a middle, at random distances. */
  private static double[] star(Random random, int corners, double reach) {
    double[] ring = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double a = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
      double r = reach * (0.3 + random.nextDouble());
      ring[2 * i] = 0.8 + r * Math.cos(a);
      ring[2 * i + 1] = 0.9 + r * Math.sin(a);
    }
    return ring;
  }

  /** The ring shrunk toward the middle of {@link #star}. */
  private static double[] scaled(double[] ring, double by) {
    double[] out = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      out[i] = 0.8 + by * (ring[i] - 0.8);
      out[i + 1] = 0.9 + by * (ring[i + 1] - 0.9);
    }
    return out;
  }
}
