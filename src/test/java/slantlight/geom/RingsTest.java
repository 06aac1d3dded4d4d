package slantlight.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Rings against the JTS topology library on random polygons. */
class RingsTest {
  static final GeometryFactory JTS = new GeometryFactory();

  @Test
  void pointsLieInsideWhereTheLibrarySaysSo() {
    Random random = new Random(1);
    for (int i = 0; i < 200; i++) {
      double[] ring = star(random, 3 + random.nextInt(9));
      Polygon polygon = polygon(ring);
      Face face = Face.of(Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.UP), list(ring));
      for (int k = 0; k < 20; k++) {
        double x = 4 * random.nextDouble() - 1;
        double y = 4 * random.nextDouble() - 1;
        boolean in = polygon.contains(JTS.createPoint(new Coordinate(x, y)));
        assertThat(Rings.inside(ring, x, y)).isEqualTo(in);
        assertThat(face.contains(new Vec2(x, y))).isEqualTo(in);
      }
    }
  }

  @Test
  void areaCentroidAndBoundsAgreeWithTheLibrary() {
    Random random = new Random(2);
    for (int i = 0; i < 50; i++) {
      double[] ring = star(random, 3 + random.nextInt(9));
      Polygon polygon = polygon(ring);
      Face face = Face.of(Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.UP), list(ring));
      assertThat(Rings.area(ring)).isCloseTo(polygon.getArea(), within(1e-12));
      assertThat(face.centroid().x()).isCloseTo(polygon.getCentroid().getX(), within(1e-12));
      assertThat(face.centroid().y()).isCloseTo(polygon.getCentroid().getY(), within(1e-12));
      var box = polygon.getEnvelopeInternal();
      assertThat(Rings.bounds(ring))
          .containsExactly(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
      double[] back = Rings.oriented(ring, false);
      assertThat(Rings.area(back)).isCloseTo(-polygon.getArea(), within(1e-12));
      assertThat(polygon(back).equalsTopo(polygon)).isTrue();
      assertThat(Rings.oriented(back, true)).containsExactly(ring);
    }
  }

  @Test
  void boxesLieWithinConvexRingsAndMeetWhereTheLibrarySaysSo() {
    Random random = new Random(6);
    int held = 0;
    int met = 0;
    for (int i = 0; i < 300; i++) {
      Coordinate[] points = new Coordinate[8];
      for (int k = 0; k < points.length; k++) {
        points[k] = new Coordinate(3 * random.nextDouble(), 3 * random.nextDouble());
      }
      Polygon hull = (Polygon) new ConvexHull(points, JTS).getConvexHull().norm().reverse();
      Coordinate[] corners = hull.getExteriorRing().getCoordinates();
      double[] ring = new double[2 * (corners.length - 1)];
      for (int k = 0; k < corners.length - 1; k++) {
        ring[2 * k] = corners[k].x;
        ring[2 * k + 1] = corners[k].y;
      }
      assertThat(Rings.area(ring)).as("counter-clockwise").isPositive();
      for (int k = 0; k < 20; k++) {
        double[] a = box(random);
        double[] b = box(random);
        boolean within = hull.covers(JTS.toGeometry(envelope(a)));
        assertThat(Rings.holds(ring, a)).isEqualTo(within);
        boolean meet = JTS.toGeometry(envelope(a)).intersects(JTS.toGeometry(envelope(b)));
        assertThat(Rings.meet(a, b)).isEqualTo(meet);
        held += within ? 1 : 0;
        met += meet ? 1 : 0;
      }
    }
    assertThat(held).isBetween(500, 4000);
    assertThat(met).isBetween(500, 4000);
    double[] beside = {1, 0, 2, 1};
    assertThat(Rings.meet(new double[] {0, 0, 1, 1}, beside)).as("an edge alone").isFalse();
  }

  private static double[] box(Random random) {
    double x = 2.5 * random.nextDouble();
    double y = 2.5 * random.nextDouble();
    return new double[] {x, y, x + random.nextDouble(), y + random.nextDouble()};
  }

  private static Envelope envelope(double[] box) {
    return new Envelope(box[0], box[2], box[1], box[3]);
  }

  @Test
  void clippedAreaIsTheLibrarysIntersection() {
    Random random = new Random(3);
    double[] window = {0.2, 0.1, 1.9, 0.4, 1.6, 1.8, 0.5, 1.5};
    for (int i = 0; i < 100; i++) {
      double[] ring = star(random, 3 + random.nextInt(9));
      Polygon polygon = polygon(ring);
      assertThat(Rings.area(Rings.clip(ring, window)))
          .isCloseTo(polygon.intersection(polygon(window)).getArea(), within(1e-12));
      Geometry box = polygon(new double[] {0.3, 0.6, 1.7, 0.6, 1.7, 1.5, 0.3, 1.5});
      assertThat(Rings.area(Rings.clip(ring, 0.3, 0.6, 1.7, 1.5)))
          .isCloseTo(polygon.intersection(box).getArea(), within(1e-12));
    }
  }

  @Test
  void clippingAtACornerOrEdgeKeepsWholeRingsAndNoSlivers() {
    double[] square = {0, 0, 1, 0, 1, 1, 0, 1};
    assertThat(Rings.clip(square, 1, 0, 0.5)).isSameAs(square);
    assertThat(Rings.clip(square, -1, 0, 0)).isEmpty();
    assertThat(Rings.clip(square, -1, -1, 0)).isEmpty();
    assertThat(Rings.area(Rings.clip(square, 1, 0, 0))).isEqualTo(1);
    assertThat(Rings.clip(square, -1, -1, 0.5)).hasSize(6);
  }

  @Test
  void hullIsTheLibrarysHull() {
    Random random = new Random(4);
    for (int i = 0; i < 100; i++) {
      double[] ring = star(random, 3 + random.nextInt(12));
      // Rows and columns of equal coordinates and repeated corners.
      for (int k = 0; k < ring.length && i % 2 == 0; k++) {
        ring[k] = Math.rint(4 * ring[k]) / 4;
      }
      Coordinate[] points = new Coordinate[ring.length / 2];
      for (int k = 0; k < points.length; k++) {
        points[k] = new Coordinate(ring[2 * k], ring[2 * k + 1]);
      }
      Geometry hull = new ConvexHull(points, JTS).getConvexHull();
      if (hull.getDimension() < 2) {
        continue;
      }
      double[] ours = Rings.hull(ring);
      assertThat(ours).hasSize(2 * (hull.getNumPoints() - 1));
      assertThat(Rings.area(ours)).isCloseTo(hull.getArea(), within(1e-12));
      assertThat(polygon(ours).equalsTopo(hull)).isTrue();
    }
  }

  @Test
  void hullsLeaveOutRepeatedAndAlignedCorners() {
    double[] square = {0, 0, 2, 0, 2, 2, 0, 2};
    assertThat(Rings.hull(new double[] {2, 2, 0, 0, 2, 0, 0, 0, 0, 2, 2, 2, 2, 0, 0, 2}))
        .containsExactly(square);
    assertThat(Rings.hull(new double[] {1, 0, 0, 1, 0, 0, 2, 1, 1, 1, 2, 0, 1, 2, 0, 2, 2, 2}))
        .containsExactly(square);
    Random random = new Random(5);
    for (int i = 0; i < 50; i++) {
      double[] ring = hull(star(random, 3 + random.nextInt(12)));
      // Again in another order, with points of the edges that round to either side of them.
      double[] more = new double[3 * ring.length];
      for (int k = 0; k < ring.length; k += 2) {
        int next = (k + 2) % ring.length;
        for (int axis = 0; axis < 2; axis++) {
          more[k + axis] = ring[k + axis];
          more[3 * ring.length - 2 - k + axis] = ring[k + axis];
          more[ring.length + k + axis] = 0.3 * ring[k + axis] + 0.7 * ring[next + axis];
        }
      }
      double[] ours = Rings.hull(more);
      assertThat(Rings.area(ours)).isCloseTo(Rings.area(ring), within(1e-12));
      ConvexPieces.makeUp(polygon(ring), List.of(ours));
    }
  }

  @Test
  void whatLiesOutsideAWindowIsTheLibrarysDifference() {
    Random random = new Random(6);
    int apart = 0;
    int across = 0;
    for (int i = 0; i < 500; i++) {
      double[] ring = hull(star(random, 3 + random.nextInt(9)));
      double size = 0.2 + 1.5 * random.nextDouble();
      double du = 3 * random.nextDouble() - 1.5;
      double dv = 3 * random.nextDouble() - 1.5;
      double[] window = placed(hull(star(random, 3 + random.nextInt(9))), size, du, dv);
      double both = polygon(ring).intersection(polygon(window)).getArea();
      apart += both == 0 ? 1 : 0;
      across += both > 0 && both < Rings.area(ring) ? 1 : 0;
      cut(ring, window);
    }
    assertThat(apart).isGreaterThan(50);
    assertThat(across).isGreaterThan(200);
  }

  @Test
  void aWindowRoundTheRingLeavesNothingAndOneWithinItsRim() {
    Random random = new Random(7);
    for (int i = 0; i < 100; i++) {
      double[] ring = hull(star(random, 3 + random.nextInt(9)));
      assertThat(cut(ring, placed(ring, 1.1, 0, 0))).isEmpty();
      assertThat(cut(ring, placed(ring, 0.9, 0, 0))).hasSize(ring.length / 2);
      cut(ring, ring);
    }
  }

  @Test
  void aWindowThatOnlyTouchesTakesNothing() {
    double[] square = {0, 0, 1, 0, 1, 1, 0, 1};
    double[][] touching = {
      {1, 0, 2, 0, 2, 1, 1, 1}, // all of an edge
      {1, 0.3, 2, 0, 2, 1, 1, 0.6}, // a part of it
      {1, 1, 2, 1, 2, 2, 1, 2}, // corner to corner
      {1, 0.5, 2, 0, 2, 1}, // corner to edge
      {0.5, 1.5, 1.5, 0.5, 1.5, 1.5} // corner to slanted edge
    };
    for (double[] window : touching) {
      cut(square, window);
      assertThat(polygon(square).touches(polygon(window))).isTrue();
    }
  }

  /** A corner cut off by next to nothing, as rounding does it, turns that edge any way. */
  @Test
  void anEdgeOfAWindowTooShortForADirectionIsPassedOver() {
    Random random = new Random(8);
    for (int i = 0; i < 300; i++) {
      double[] ring = hull(star(random, 3 + random.nextInt(9)));
      double[] window = placed(hull(star(random, 3 + random.nextInt(9))), 1, 0.4, -0.3);
      int k = 2 * random.nextInt(window.length / 2);
      double azimuth = 2 * Math.PI * random.nextDouble();
      double[] more = new double[window.length + 2];
      System.arraycopy(window, 0, more, 0, k);
      System.arraycopy(window, k, more, k + 2, window.length - k);
      more[k] = window[k] + 1e-11 * Math.cos(azimuth);
      more[k + 1] = window[k + 1] + 1e-11 * Math.sin(azimuth);
      List<double[]> out = new ArrayList<>();
      Rings.addOutside(ring, more, out);
      ConvexPieces.makeUp(polygon(ring).difference(polygon(window)), out);
    }
  }

  private static List<double[]> cut(double[] ring, double[] window) {
    List<double[]> out = new ArrayList<>();
    Rings.addOutside(ring, window, out);
    ConvexPieces.makeUp(polygon(ring).difference(polygon(window)), out);
    return out;
  }

  /** The library's hull, counter-clockwise. */
  static double[] hull(double[] ring) {
    Coordinate[] hull =
        new ConvexHull(polygon(ring).getCoordinates(), JTS).getConvexHull().getCoordinates();
    double[] out = new double[2 * (hull.length - 1)];
    for (int i = 0; i + 1 < hull.length; i++) {
      out[2 * i] = hull[i].x;
      out[2 * i + 1] = hull[i].y;
    }
    return Rings.oriented(out, true);
  }

  /** A convex ring made larger or smaller about its middle, then moved. */
  private static double[] placed(double[] ring, double by, double du, double dv) {
    double[] middle = Rings.middle(ring);
    double[] out = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      out[i] = middle[0] + by * (ring[i] - middle[0]) + du;
      out[i + 1] = middle[1] + by * (ring[i + 1] - middle[1]) + dv;
    }
    return out;
  }

  /** A simple polygon: corners at growing azimuths round a middle, at random distances. */
  static double[] star(Random random, int corners) {
    double[] ring = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double a = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
      double r = 0.3 + random.nextDouble();
      ring[2 * i] = 1 + r * Math.cos(a);
      ring[2 * i + 1] = 1 + r * Math.sin(a);
    }
    return ring;
  }

  static Polygon polygon(double[] ring) {
    Coordinate[] c = new Coordinate[ring.length / 2 + 1];
    for (int i = 0; i < c.length; i++) {
      int k = 2 * i % ring.length;
      c[i] = new Coordinate(ring[k], ring[k + 1]);
    }
    return JTS.createPolygon(c);
  }

  private static List<Vec2> list(double[] ring) {
    List<Vec2> out = new ArrayList<>();
    for (int i = 0; i < ring.length; i += 2) {
      out.add(new Vec2(ring[i], ring[i + 1]));
    }
    return out;
  }
}
