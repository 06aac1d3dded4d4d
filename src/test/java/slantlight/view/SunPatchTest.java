package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.LightModel;
import slantlight.light.SamplePoint;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Surface;
import slantlight.sky.Weather;
import slantlight.units.Progress;

class SunPatchTest {
  /**
   * In a house of many rooms the sun comes through passages and is stopped by other rooms' walls,
   * eaves and reveals: painted patches and the light model's own beam test must say the same.
   */
  @Test
  void patchesOfAWholeHouseAreThoseOfTheLightModel() {
    House house = ((Read.Ok) SceneReader.read(Path.of("scenes", "lake-house.json"))).house();
    // Beams are exact whatever the patches of the bounced light; coarse ones are soon made.
    LightModel light =
        Transport.of(house, TransportOptions.DEFAULT.withPatchEdge(2), Progress.NONE);
    Random random = new Random(3);
    int lit = 0;
    for (int[] t : new int[][] {{10, 28, 8, 40}, {12, 21, 12, 0}}) {
      ZonedDateTime at = ZonedDateTime.of(2026, t[0], t[1], t[2], t[3], 0, 0, house.site().zone());
      Vec3 sun = new Moments(house).at(at, Weather.CLEAR).sky().sun();
      List<SunPatch> patches = SunPatch.all(house, sun);
      for (Surface s : house.surfaces()) {
        Frame f = s.face().frame();
        for (int i = 0; i < 60; i++) {
          Vec2 p = somewhere(s, random);
          List<SunPatch> own =
              patches.stream().filter(q -> q.surface().id().equals(s.id())).toList();
          boolean near =
              own.stream()
                  .anyMatch(q -> q.region().getBoundary().distance(Outlines.point(p)) < 0.005);
          if (!s.face().contains(p) || near) {
            continue;
          }
          boolean painted = own.stream().anyMatch(q -> q.region().contains(Outlines.point(p)));
          SamplePoint point =
              new SamplePoint(new Frame(f.toWorld(p), f.u(), f.v(), f.n()), s.roomId());
          double through = light.beams(List.of(point)).transmittance(0, sun.x(), sun.y(), sun.z());
          assertThat(painted).as(s.id() + " " + p + " " + at).isEqualTo(through > 0);
          lit += painted ? 1 : 0;
        }
      }
    }
    assertThat(lit).isGreaterThan(50);
  }

  private static Vec2 somewhere(Surface s, Random random) {
    List<Vec2> ring = s.face().outer();
    Vec2 a = ring.get(random.nextInt(ring.size()));
    Vec2 b = ring.get(random.nextInt(ring.size()));
    Vec2 c = ring.get(random.nextInt(ring.size()));
    return a.lerp(b, random.nextDouble()).lerp(c, random.nextDouble());
  }
}
