package slantlight.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Holds the pieces into which something was cut to the region that they should make up. */
final class ConvexPieces {
  private ConvexPieces() {}

  /**
   * Each piece is convex and counter-clockwise, lies in the region and on no other piece, and
   * together they have its area: by the JTS topology library, to 1e-9 m2.
   */
  static void makeUp(Geometry region, List<double[]> pieces) {
    List<Polygon> polygons = pieces.stream().map(RingsTest::polygon).toList();
    double sum = 0;
    for (int i = 0; i < pieces.size(); i++) {
      assertThat(pieces.get(i)).as("a piece of %s", region).hasSizeGreaterThanOrEqualTo(6);
      assertThat(leastTurn(pieces.get(i))).as("a piece of %s", region).isGreaterThan(-1e-12);
      Polygon piece = polygons.get(i);
      assertThat(piece.difference(region).getArea()).as("%s beyond", piece).isLessThan(1e-9);
      for (Polygon other : polygons.subList(0, i)) {
        if (piece.getEnvelopeInternal().intersects(other.getEnvelopeInternal())) {
          assertThat(piece.intersection(other).getArea())
              .as("%s on %s", piece, other)
              .isLessThan(1e-9);
        }
      }
      sum += piece.getArea();
    }
    assertThat(sum).as("all of %s", region).isCloseTo(region.getArea(), within(1e-9));
  }

  /** Twice the area of the triangle at the corner that turns least to the left, m2. */
  private static double leastTurn(double[] ring) {
    double least = Double.POSITIVE_INFINITY;
    int n = ring.length;
    for (int i = 0; i < n; i += 2) {
      int j = (i + 2) % n;
      int k = (i + 4) % n;
      double ux = ring[j] - ring[i];
      double uy = ring[j + 1] - ring[i + 1];
      least = Math.min(least, ux * (ring[k + 1] - ring[j + 1]) - uy * (ring[k] - ring[j]));
    }
    return least;
  }
}
