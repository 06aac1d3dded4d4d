package slantlight.decide;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.Kernel;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.SunBeams;
import slantlight.scene.House;
import slantlight.score.Peak;
import slantlight.score.SpotScore;
import slantlight.score.SurfaceScore;
import slantlight.sky.SkyModel;
import slantlight.sky.SkyState;
import slantlight.units.Progress;

/**
 * Tells which surfaces a change of the light reaches, by a look at the worst place of each joint:
 * illuminance and light vector there at the worst moments of the surface's joints.
 */
public final class Reach {
  /** A change of the light at a place by this share of its illuminance is none. */
  private static final double NONE = 0.02;

  private final House house;
  private final List<SamplePoint> places = new ArrayList<>();
  private final List<String> surfaceIds = new ArrayList<>();

  /** Worst moments of the joints, each once. */
  private final List<LightState> states;

  /** Moments of each place's surface, numbers in {@link #states}. */
  private final List<Set<Integer>> moments = new ArrayList<>();

  private Reach(House house, List<SurfaceScore> scores) {
    this.house = house;
    Map<ZonedDateTime, LightState> worst = new LinkedHashMap<>();
    List<ZonedDateTime> order = new ArrayList<>();
    for (SurfaceScore s : scores) {
      Set<Integer> own = new LinkedHashSet<>();
      Stream.concat(
              s.joints().stream().flatMap(j -> j.peak().stream()),
              s.spots().flatMap(SpotScore::peak).stream())
          .forEach(
              p -> {
                add(s.surfaceId(), p.place(), own);
                if (worst.putIfAbsent(p.at(), stateAt(house, p)) == null) {
                  order.add(p.at());
                }
                own.add(order.indexOf(p.at()));
              });
    }
    states = List.copyOf(worst.values());
  }

  private void add(String surfaceId, Vec3 place, Set<Integer> ofSurface) {
    moments.add(ofSurface);
    Frame f = house.surface(surfaceId).face().frame();
    places.add(
        new SamplePoint(new Frame(place, f.u(), f.v(), f.n()), house.surface(surfaceId).roomId()));
    surfaceIds.add(surfaceId);
  }

  /** The light of a house at a worst moment: the real sky and the lamps that are on then. */
  public static LightState stateAt(House house, Peak peak) {
    SkyState sky =
        house
            .prescribed()
            .map(p -> SkyModel.of(house.site()).prescribed(p, peak.at().getMonth()))
            .orElseGet(() -> SkyModel.of(house.site()).at(peak.at(), peak.weather()));
    return new LightState(sky, house.lampShares(peak.at().toLocalTime(), sky.sun().altitude()));
  }

  /**
   * The surfaces that get other light than before.
   *
   * @param scores of surfaces as they are
   */
  static Set<String> of(LightModel before, LightModel after, List<SurfaceScore> scores) {
    Set<String> out = new LinkedHashSet<>();
    Reach reach = new Reach(before.house(), scores);
    List<float[][]> a = reach.values(before);
    List<float[][]> b = reach.values(after);
    SunBeams beamsBefore = before.beams(reach.places);
    SunBeams beamsAfter = after.beams(reach.places);
    for (int i = 0; i < a.size(); i++) {
      if (differ(a.get(i), b.get(i), reach.moments.get(i))
          || reach.beamDiffers(beamsBefore, beamsAfter, i)) {
        out.add(reach.surfaceIds.get(i));
      }
    }
    return out;
  }

  private List<float[][]> values(LightModel light) {
    Basis basis =
        light.basis(places, Collections.nCopies(places.size(), Kernel.VECTOR), Progress.NONE);
    Basis.Block block = basis.block(states);
    List<float[][]> out = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      float[][] rows = new float[Kernel.VECTOR.rows()][states.size()];
      basis.evaluate(i, block, rows);
      out.add(rows);
    }
    return out;
  }

  private static boolean differ(float[][] a, float[][] b, Set<Integer> moments) {
    for (int m : moments) {
      for (int r = 0; r < a.length; r++) {
        if (Math.abs(a[r][m] - b[r][m]) > NONE * a[0][m]) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean beamDiffers(SunBeams before, SunBeams after, int place) {
    for (int m : moments.get(place)) {
      Vec3 sun = states.get(m).sky().sun();
      double a = before.transmittance(place, sun.x(), sun.y(), sun.z());
      double b = after.transmittance(place, sun.x(), sun.y(), sun.z());
      if (Math.abs(a - b) > NONE * a) {
        return true;
      }
    }
    return false;
  }
}
