package slantlight.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.light.Basis;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.scene.Surface;
import slantlight.units.Progress;

/** Light at the grid nodes of one room's surfaces, ready for any moment. */
final class RoomField {
  private final Map<String, int[]> sampleOfNode = new LinkedHashMap<>();
  private final Basis basis;

  /** Computes the room's responses: seconds of work, so not on the drawing thread. */
  RoomField(LightModel light, HouseShape shape, String roomId, Progress progress) {
    List<SamplePoint> points = new ArrayList<>();
    for (Surface s : light.house().surfaces()) {
      if (!s.roomId().equals(roomId)) {
        continue;
      }
      SurfaceGrid grid = shape.grid(s);
      Frame f = s.face().frame();
      int[] samples = new int[grid.nodes()];
      for (int node = 0; node < samples.length; node++) {
        Vec2 at = grid.sample(node);
        samples[node] = at == null ? -1 : points.size();
        if (at != null) {
          points.add(new SamplePoint(new Frame(f.toWorld(at), f.u(), f.v(), f.n()), s.roomId()));
        }
      }
      sampleOfNode.put(s.id(), samples);
    }
    basis = light.basis(points, Collections.nCopies(points.size(), Cones.KERNEL), progress);
  }

  /**
   * Cones at a moment, the sun's own beam left out.
   *
   * @return by surface: {@link Cones#VALUES} values a node, lx, in the surface's frame
   */
  Map<String, float[]> at(LightState state) {
    Basis.Block block = basis.block(List.of(state));
    float[][] out = new float[Cones.VALUES][1];
    Map<String, float[]> bySurface = new LinkedHashMap<>();
    sampleOfNode.forEach(
        (id, samples) -> {
          float[] values = new float[samples.length * Cones.VALUES];
          for (int node = 0; node < samples.length; node++) {
            if (samples[node] >= 0) {
              basis.evaluate(samples[node], block, out);
              for (int k = 0; k < Cones.VALUES; k++) {
                values[node * Cones.VALUES + k] = out[k][0];
              }
            }
          }
          bySurface.put(id, values);
        });
    return bySurface;
  }
}
