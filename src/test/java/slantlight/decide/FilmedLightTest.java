package slantlight.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.Kernel;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.Suns;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.Shade;
import slantlight.sky.SkyModel;
import slantlight.sky.Weather;
import slantlight.units.Progress;

/**
 * Film against physics: light is linear in what the glass lets through (superposition), so in a
 * room with one window all of it, its bounces too, falls with the film's transmittance.
 */
class FilmedLightTest {
  private static final double TAU = 0.35;

  private final House house = TestHouses.boxRoom(5, 8, 2.7, 1, 4, 0, 2.4, 0.8);
  private final Opening window = house.openings().get(0);
  private final House filmed = Edits.opening(house, window.withShade(new Shade(TAU, false)));
  private final LightModel bare =
      new KeptLight(Transport.of(house, TransportOptions.DEFAULT, Progress.NONE));
  private final SamplePoint ceiling =
      new SamplePoint(Frame.of(new Vec3(2.5, 3, 2.699), Vec3.EAST, Vec3.DOWN), "room");
  private final LightState noon =
      new LightState(
          SkyModel.of(house.site())
              .at(ZonedDateTime.of(2026, 3, 20, 12, 0, 0, 0, house.site().zone()), Weather.CLEAR),
          house.lamps().stream().map(l -> 0.0).toList());

  private float[] light(LightModel model) {
    Basis basis = model.basis(List.of(ceiling), List.of(Kernel.VECTOR), Progress.NONE);
    float[][] out = new float[3][1];
    basis.evaluate(0, basis.block(List.of(noon)), out);
    return new float[] {out[0][0], out[1][0], out[2][0]};
  }

  private LightModel mixed() {
    House black = Edits.opening(house, window.withShade(new Shade(0, false)));
    return new FilmedLight(filmed, bare, bare.changed(black).orElseThrow(), TAU);
  }

  @Test
  void allLightOfTheOnlyWindowFallsWithTheFilm() {
    float[] before = light(bare);
    float[] after = light(mixed());
    assertThat(before[0]).isGreaterThan(100);
    for (int r = 0; r < 3; r++) {
      assertThat((double) after[r]).isCloseTo(TAU * before[r], within(1e-4 * before[0]));
    }
    assertThat(mixed().incident(ceiling, noon).illuminance())
        .isCloseTo(TAU * bare.incident(ceiling, noon).illuminance(), within(1e-6 * before[0]));
  }

  /** Flecks of sun on the floor, seen from low on the wall beside them, by bundle of suns. */
  private float[][] flecks(LightModel model) {
    SamplePoint wall =
        new SamplePoint(Frame.of(new Vec3(0.001, 1.5, 0.3), Vec3.NORTH, Vec3.EAST), "room");
    Vec3 a = Vec3.ofAzimuthAltitude(Math.toRadians(147), Math.toRadians(27));
    Vec3 b = Vec3.ofAzimuthAltitude(Math.toRadians(153), Math.toRadians(41));
    Suns suns = new Suns(new double[] {a.x(), a.y(), a.z(), b.x(), b.y(), b.z()}, new int[] {0, 2});
    Basis basis =
        model.basis(List.of(ceiling, wall), List.of(Kernel.VECTOR, Kernel.VECTOR), Progress.NONE);
    float[][] out = new float[3][2];
    basis.flecks(1, suns, 0, 0, out);
    return out;
  }

  @Test
  void flecksOfSunFallWithTheFilm() {
    float[][] before = flecks(bare);
    float[][] after = flecks(mixed());
    float[][] traced = flecks(Transport.of(filmed, TransportOptions.DEFAULT, Progress.NONE));
    for (int m = 0; m < 2; m++) {
      // A lux or more of a sun of 100,000: not lost in rounding.
      assertThat(Math.abs(before[0][m])).isGreaterThan(1e-5f);
      for (int r = 0; r < 3; r++) {
        double most = 1e-4 * Math.abs(before[0][m]);
        assertThat((double) after[r][m]).isCloseTo(TAU * before[r][m], within(most));
        assertThat((double) after[r][m]).isCloseTo(traced[r][m], within(most));
      }
    }
  }

  /** Kept and asked for again, alone or beside others, they are the same bits. */
  @Test
  void flecksOfSunAreKept() {
    float[][] computed = flecks(Transport.of(house, TransportOptions.DEFAULT, Progress.NONE));
    assertThat(flecks(bare)).isEqualTo(computed);
    light(bare);
    assertThat(flecks(bare)).isEqualTo(computed);
  }

  @Test
  void theMixIsTheLightTracedAnewBehindTheFilm() {
    float[] traced = light(Transport.of(filmed, TransportOptions.DEFAULT, Progress.NONE));
    float[] shared = light(bare.changed(filmed).orElseThrow());
    float[] mixed = light(mixed());
    for (int r = 0; r < 3; r++) {
      assertThat(shared[r]).isEqualTo(traced[r]);
      assertThat((double) mixed[r]).isCloseTo(traced[r], within(1e-4 * traced[0]));
    }
  }

  @Test
  void otherPaintSharesTheExchangeAndGivesTheLightTracedAnew() {
    House pale =
        house.withSurfaces(
            house.surfaces().stream()
                .map(s -> s.withPaint(new slantlight.scene.Paint(0.3, s.paint().sheen())))
                .toList());
    float[] traced = light(Transport.of(pale, TransportOptions.DEFAULT, Progress.NONE));
    float[] shared = light(bare.changed(pale).orElseThrow());
    assertThat(shared).isEqualTo(traced);
    assertThat(shared[0]).isNotEqualTo(light(bare)[0]);
  }

  @Test
  void anotherShapeIsNotShared() {
    House other = TestHouses.boxRoom(5, 8, 2.8, 1, 4, 0, 2.4, 0.8);
    assertThat(bare.changed(other)).isEmpty();
  }

  @Test
  void whatIsKeptIsWhatWasComputed() {
    assertThat(light(bare)).isEqualTo(light(bare));
    assertThat(light(bare))
        .isEqualTo(light(Transport.of(house, TransportOptions.DEFAULT, Progress.NONE)));
  }
}
