package slantlight.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Convex parts of faces against the JTS topology library. */
class FacePartsTest {
  private static final Frame PLANE = Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.UP);

  @Test
  void starsFallIntoConvexParts() {
    Random random = new Random(31);
    for (int i = 0; i < 200; i++) {
      agree(RingsTest.star(random, 3 + random.nextInt(12)));
    }
  }

  /** Many corners at one height and many edges upright or level. */
  @Test
  void starsOnALatticeFallIntoConvexParts() {
    Random random = new Random(32);
    for (int i = 0; i < 300; i++) {
      double[] ring = RingsTest.star(random, 4 + random.nextInt(12));
      for (int k = 0; k < ring.length; k++) {
        ring[k] = Math.rint(4 * ring[k]) / 4;
      }
      if (RingsTest.polygon(ring).isValid() && Rings.area(ring) > 0) {
        agree(ring);
      }
    }
  }

  @Test
  void combsFallIntoConvexParts() {
    for (int teeth = 1; teeth < 9; teeth++) {
      double[] comb = new double[8 * teeth + 4];
      int n = 0;
      for (int i = 0; i < teeth; i++) {
        for (double[] p : new double[][] {{2, 1}, {2, 3}, {1, 3}, {1, 1}}) {
          comb[n++] = 2.0 * (teeth - 1 - i) + p[0];
          comb[n++] = p[1];
        }
      }
      comb[n++] = 1;
      comb[n++] = 0;
      comb[n++] = 2 * teeth;
      comb[n++] = 0;
      for (double angle : new double[] {0, 0.5, Math.PI / 2, 2.2}) {
        agree(angle, List.of(comb));
      }
    }
  }

  @Test
  void holesInAStarAreLeftOut() {
    Random random = new Random(33);
    for (int i = 0; i < 100; i++) {
      double[] outer = RingsTest.star(random, 5 + random.nextInt(7));
      double[] hole = outer.clone();
      double by = 0.2 + 0.6 * random.nextDouble();
      for (int k = 0; k < hole.length; k++) {
        hole[k] = 1 + by * (hole[k] - 1);
      }
      agree(outer, hole);
      agree(outer, Rings.oriented(hole, false));
    }
  }

  /** Windows of a wall: they touch each other, the outline or neither, at heights alike or not. */
  @Test
  void cellsOfALatticeAreLeftOut() {
    Random random = new Random(34);
    for (int i = 0; i < 60; i++) {
      List<double[]> rings = new ArrayList<>();
      rings.add(new double[] {0, 0, 5, 0, 5, 4, 0, 4});
      for (int cell = 0; cell < 20; cell++) {
        if (random.nextInt(3) == 0) {
          double u = cell % 5;
          double v = Math.floorDiv(cell, 5);
          double in = random.nextInt(3) == 0 ? 0.2 : 0;
          rings.add(new double[] {u + in, v, u + 1, v + in, u + 1 - in, v + 1, u, v + 1 - in});
        }
      }
      agree(i % 3 == 0 ? 0 : 2 * Math.PI * random.nextDouble(), rings);
    }
  }

  private static void agree(double[]... rings) {
    agree(0, List.of(rings));
  }

  /** Outline and holes turned about the origin. */
  private static void agree(double angle, List<double[]> rings) {
    Geometry region = RingsTest.polygon(rings.get(0));
    for (double[] hole : rings.subList(1, rings.size())) {
      region = region.difference(RingsTest.polygon(hole));
    }
    AffineTransformation turn = AffineTransformation.rotationInstance(angle);
    List<List<Vec2>> turned =
        rings.stream()
            .map(r -> turn.transform(RingsTest.polygon(r)).getCoordinates())
            .map(FacePartsTest::open)
            .toList();
    Face face = new Face(PLANE, turned.get(0), turned.subList(1, turned.size()));
    ConvexPieces.makeUp(turn.transform(region), face.parts());
  }

  private static List<Vec2> open(Coordinate[] ring) {
    return Arrays.stream(ring).skip(1).map(c -> new Vec2(c.x, c.y)).toList();
  }
}
