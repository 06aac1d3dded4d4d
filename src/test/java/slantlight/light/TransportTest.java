package slantlight.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Vec3;
import slantlight.scene.Distribution;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.units.Progress;

class TransportTest {
  private static final House ROOM = TestHouses.boxRoom(5, 8, 2.75, 0.5, 4.5, 0.0, 2.44, 0.7);

  @Test
  void energyIsKept() {
    House h = ROOM;
    Transport t = Transport.of(h, LightHouses.QUICK, Progress.NONE);
    EnergyBalance b =
        t.energy(LightHouses.sunny(h, Vec3.ofAzimuthAltitude(3.0, 0.6), 80_000, 4000));
    assertThat(b.imbalance()).isLessThan(0.005);
  }

  @Test
  void basisAgreesWithTheExactAnswerAtANode() {
    Vec3 sun = Vec3.ofAzimuthAltitude(2.8, 0.5);
    House h = LightHouses.withSun(ROOM, sun);
    Transport t = Transport.of(h, LightHouses.QUICK, Progress.NONE);
    LightState state = LightHouses.sunny(h, sun, 80_000, 4000);
    SamplePoint p = LightHouses.below(2, 3, 2.75);
    Basis basis = t.basis(List.of(p), List.of(LightHouses.VECTOR), Progress.NONE);
    float[][] out = new float[3][1];
    basis.evaluate(0, basis.block(List.of(state)), out);
    IncidentField f = t.incident(p, state);
    Vec3 v = p.frame().directionToLocal(f.lightVector());
    assertThat(out[0][0]).isCloseTo((float) v.z(), within((float) (0.002 * v.z())));
    assertThat(out[1][0]).isCloseTo((float) v.x(), within((float) (0.002 * v.z())));
    assertThat(out[2][0]).isCloseTo((float) v.y(), within((float) (0.002 * v.z())));
  }

  @Test
  void lampsObeyInverseSquareAndCosine() {
    House h =
        LightHouses.withLamps(
            LightHouses.painted(ROOM, 0),
            new Lamp(
                "l",
                "l",
                "room",
                new Vec3(2, 3, 2.7),
                Vec3.DOWN,
                Vec3.EAST,
                Distribution.Named.BARE,
                1000 * 4 * Math.PI,
                0,
                0,
                0,
                List.of()));
    Transport t = Transport.of(h, LightHouses.QUICK, Progress.NONE);
    LightState state = LightHouses.even(h, 0, 0);
    double under =
        t.incident(LightHouses.at(new Vec3(2, 3, 0.7), Vec3.EAST, Vec3.UP), state).illuminance();
    assertThat(under).isCloseTo(250, within(1e-6));
    double aside =
        t.incident(LightHouses.at(new Vec3(4, 3, 0.7), Vec3.EAST, Vec3.UP), state).illuminance();
    assertThat(aside).isCloseTo(250 / Math.sqrt(8), within(1e-6));
  }
}
