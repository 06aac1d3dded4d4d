package slantlight.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import slantlight.TestHouses;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.sky.GlassPane;
import slantlight.units.Progress;

/**
 * The sun's beam on patches and their parts: cosine times transmittance times the share of them
 * that outlines thrown along the beam cover, cut by the JTS topology library.
 */
class SunFlecksTest {
  /** Window: x 1.2 to 2.9, z 0.7 to 2 of the wall y = 0. */
  static final House ROOM = TestHouses.boxRoom(4, 3, 2.5, 1.2, 2.9, 0.7, 2, 0.6);

  /** The same, its glass set back by a quarter of a metre. */
  static final House SET_BACK = LightHouses.withOpening(ROOM, o -> LightHouses.setBack(o, 0.25));

  static final List<Vec3> WINDOW = FleckShapes.upright(1.2, 2.9, 0.7, 2, 0);

  @Test
  void patchesTakeTheShareThatTheWindowThrowsOnThem() {
    agree(ROOM, WINDOW, 0, 21);
  }

  @Test
  void aRevealCutsTheBeamByTheGlassSetBack() {
    agree(SET_BACK, WINDOW, 0.25, 22);
  }

  private static void agree(House house, List<Vec3> window, double reveal, int seed) {
    Transport light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    SunFlecks flecks = light.roomLight().flecks();
    Random random = new Random(seed);
    int lit = 0;
    for (int i = 0; i < 60; i++) {
      Vec3 sun = FleckShapes.sun(random);
      FleckTable under = flecks.under(sun);
      for (Patch patch : light.roomLight().patches()) {
        double cos = sun.dot(patch.normal());
        float fleck = under.mean(patch.index(), 0, 0);
        if (cos <= 1e-3) {
          assertThat(cos <= 0 && fleck != 0).isFalse();
          continue;
        }
        Geometry thrown = FleckShapes.through(patch.frame(), window, reveal, sun);
        double lux = cos * 0.8 * GlassPane.relativeTransmittance(-sun.y(), 2);
        Geometry own = FleckShapes.shape(patch);
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

  private static Geometry part(Patch patch, int side, int q) {
    double[] box = patch.box();
    double du = (box[2] - box[0]) / side;
    double dv = (box[3] - box[1]) / side;
    double u = box[0] + du * (q % side);
    double v = box[1] + dv * Math.floorDiv(q, side);
    return FleckShapes.JTS.toGeometry(new Envelope(u, u + du, v, v + dv));
  }
}
