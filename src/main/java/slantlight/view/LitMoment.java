package slantlight.view;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;

/**
 * The light on the surfaces at one moment.
 *
 * @param cones by surface, as {@link RoomField#at} gives them
 * @param beams the sun's own beam
 * @param room the room whose brightness the picture is set for; empty means all that are ready
 */
record LitMoment(
    LightState state, Map<String, float[]> cones, List<Beam> beams, Optional<String> room) {
  /**
   * A sun patch with what comes through.
   *
   * @param normalLux illuminance of the beam square to it, behind the glass, lx
   */
  record Beam(SunPatch patch, double normalLux) {}

  /** The moment in the rooms that are ready. */
  static LitMoment of(
      LightModel light, Collection<RoomField> rooms, LightState state, Optional<String> room) {
    Map<String, float[]> cones = new LinkedHashMap<>();
    for (RoomField field : rooms) {
      cones.putAll(field.at(state));
    }
    List<Beam> beams = new ArrayList<>();
    Vec3 sun = state.sky().sun();
    if (state.sky().sunNormalLux() > 0 && sun.z() > 0) {
      for (SunPatch p : SunPatch.all(light.house(), sun)) {
        if (!cones.containsKey(p.surface().id())) {
          continue;
        }
        Frame f = p.surface().face().frame();
        SamplePoint at =
            new SamplePoint(
                new Frame(f.toWorld(p.inside()), f.u(), f.v(), f.n()), p.surface().roomId());
        double through = light.beams(List.of(at)).transmittance(0, sun.x(), sun.y(), sun.z());
        if (through > 0) {
          beams.add(new Beam(p, through * state.sky().sunNormalLux()));
        }
      }
    }
    return new LitMoment(state, cones, beams, room);
  }
}
