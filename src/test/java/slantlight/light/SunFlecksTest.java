package slantlight.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import slantlight.TestHouses;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Block;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.Outside;
import slantlight.sky.GlassPane;
import slantlight.units.Progress;

/**
 * The sun's beam on patches and their parts: cosine times transmittance times the share of them
 * that outlines thrown along the beam cover, cut by the JTS topology library.
 */
class SunFlecksTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  /** Window: x 1.2 to 2.9, z 0.7 to 2 of the wall y = 0. */
  private static final House ROOM = TestHouses.boxRoom(4, 3, 2.5, 1.2, 2.9, 0.7, 2, 0.6);

  private static final List<Vec3> WINDOW = upright(1.2, 2.9, 0.7, 2, 0);

  @Test
  void patchesTakeTheShareThatTheWindowThrowsOnThem() {
    agree(ROOM, WINDOW, 0, 21);
  }

  @Test
  void aRevealCutsTheBeamByTheGlassSetBack() {
    House deep =
        LightHouses.withOpening(
            ROOM,
            o ->
                new Opening(
                    o.id(),
                    o.label(),
                    o.roomId(),
                    o.kind(),
                    o.surfaceId(),
                    o.toRoomId(),
                    o.face(),
                    o.transmittance(),
                    o.panes(),
                    o.frameShare(),
                    0.25,
                    o.shade()));
    agree(deep, WINDOW, 0.25, 22);
  }

  private static void agree(House house, List<Vec3> window, double reveal, int seed) {
    Transport light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    SunFlecks flecks = light.roomLight().flecks();
    Random random = new Random(seed);
    int lit = 0;
    for (int i = 0; i < 100; i++) {
      Vec3 sun = sun(random);
      FleckTable under = flecks.under(sun);
      for (Patch patch : light.roomLight().patches()) {
        double cos = sun.dot(patch.normal());
        float fleck = under.mean(patch.index(), 0, 0);
        if (cos <= 1e-3) {
          assertThat(cos <= 0 && fleck != 0).isFalse();
          continue;
        }
        Geometry thrown =
            thrown(patch.frame(), window, sun)
                .intersection(thrown(patch.frame(), moved(window, -reveal), sun));
        double lux = cos * 0.8 * GlassPane.relativeTransmittance(-sun.y(), 2);
        Geometry own = shape(patch);
        double expected = lux * own.intersection(thrown).getArea() / own.getArea();
        assertThat((double) fleck)
            .as("patch %s under %s", patch.index(), sun)
            .isCloseTo(expected, within(1e-5));
        lit += fleck == 0 ? 0 : 1;
        int side = flecks.side(patch.index());
        for (int q = 0; fleck != 0 && q < side * side; q++) {
          Geometry part = own.intersection(part(patch, side, q));
          double there = lux * part.intersection(thrown).getArea() / part.getArea();
          if (part.getArea() > 1e-6) {
            assertThat((double) under.at(patch.index(), q, 0, 0)).isCloseTo(there, within(1e-4));
          }
        }
      }
    }
    assertThat(lit).isGreaterThan(1000);
  }

  /** What comes to the floor and the walls is what came through the window, less the shadow. */
  @Test
  void aBoardOutsideShadesWhatItsShadowCovers() {
    // Upright, half a metre before the left part of the window.
    List<Vec3> board = upright(0.4, 2.1, 0.2, 1.9, -0.5);
    House shaded = withBlock(ROOM, board);
    Transport light = Transport.of(shaded, TransportOptions.DEFAULT, Progress.NONE);
    SunFlecks flecks = light.roomLight().flecks();
    Random random = new Random(23);
    int whole = 0;
    int none = 0;
    int partly = 0;
    for (int i = 0; i < 60; i++) {
      Vec3 sun = sun(random);
      FleckTable under = flecks.under(sun);
      double got = 0;
      double expected = 0;
      double open = 0;
      for (Patch patch : light.roomLight().patches()) {
        double cos = sun.dot(patch.normal());
        if (cos <= 1e-3) {
          continue;
        }
        Geometry own = shape(patch);
        Geometry through = thrown(patch.frame(), WINDOW, sun).intersection(own);
        Geometry shadow = thrown(patch.frame(), board, sun);
        double lux = cos * 0.8 * GlassPane.relativeTransmittance(-sun.y(), 2);
        double mean = under.mean(patch.index(), 0, 0);
        double area = through.difference(shadow).getArea();
        if (area == through.getArea() && area > 0) {
          assertThat(mean)
              .as("patch %s under %s", patch.index(), sun)
              .isCloseTo(lux * area / own.getArea(), within(1e-5));
          whole++;
        } else if (through.within(shadow)) {
          assertThat(mean).as("patch %s under %s", patch.index(), sun).isLessThan(1e-3);
          none += area == 0 ? 1 : 0;
        } else {
          partly++;
        }
        got += mean * own.getArea();
        expected += lux * area;
        open += lux * through.getArea();
      }
      assertThat(got).as("flux under %s", sun).isCloseTo(expected, within(1e-5 * open));
    }
    assertThat(whole).isGreaterThan(100);
    assertThat(none).isGreaterThan(100);
    assertThat(partly).isGreaterThan(100);
  }

  /** Anywhere that shines through a window to the south. */
  private static Vec3 sun(Random random) {
    double azimuth = Math.toRadians(110 + 140 * random.nextDouble());
    return Vec3.ofAzimuthAltitude(azimuth, Math.toRadians(4 + 60 * random.nextDouble()));
  }

  private static List<Vec3> upright(double x0, double x1, double z0, double z1, double y) {
    return List.of(
        new Vec3(x0, y, z0), new Vec3(x1, y, z0), new Vec3(x1, y, z1), new Vec3(x0, y, z1));
  }

  private static List<Vec3> moved(List<Vec3> ring, double dy) {
    return ring.stream().map(p -> p.plus(new Vec3(0, dy, 0))).toList();
  }

  private static House withBlock(House house, List<Vec3> ring) {
    Frame frame = Frame.of(ring.get(0), Vec3.EAST, Vec3.NORTH);
    Face face = Face.of(frame, ring.stream().map(frame::toPlane).toList());
    return house.withOutside(
        new Outside(0, List.of(), List.of(new Block("board", "board", List.of(face), 0.3))));
  }

  /** A ring moved along the beam onto a plane. */
  private static Geometry thrown(Frame plane, List<Vec3> ring, Vec3 sun) {
    double cos = sun.dot(plane.n());
    return polygon(
        ring.stream()
            .map(p -> p.minus(sun.times(p.minus(plane.origin()).dot(plane.n()) / cos)))
            .map(plane::toPlane)
            .toList());
  }

  private static Geometry shape(Patch patch) {
    Geometry out = JTS.createPolygon();
    for (double[] ring : patch.rings()) {
      List<Vec2> corners = new ArrayList<>();
      for (int i = 0; i < ring.length; i += 2) {
        corners.add(new Vec2(ring[i], ring[i + 1]));
      }
      Geometry polygon = polygon(corners);
      out = Rings.area(ring) > 0 ? out.union(polygon) : out.difference(polygon);
    }
    return out;
  }

  private static Geometry part(Patch patch, int side, int q) {
    double[] box = patch.box();
    double du = (box[2] - box[0]) / side;
    double dv = (box[3] - box[1]) / side;
    double u = box[0] + du * (q % side);
    double v = box[1] + dv * Math.floorDiv(q, side);
    return JTS.toGeometry(new Envelope(u, u + du, v, v + dv));
  }

  private static Geometry polygon(List<Vec2> ring) {
    Coordinate[] c = new Coordinate[ring.size() + 1];
    for (int i = 0; i < c.length; i++) {
      Vec2 p = ring.get(i % ring.size());
      c[i] = new Coordinate(p.x(), p.y());
    }
    return JTS.createPolygon(c);
  }
}
