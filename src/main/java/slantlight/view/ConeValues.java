package slantlight.view;

import java.util.Map;
import slantlight.geom.Vec2;
import slantlight.scene.Surface;

/** Gathers the cones of light at places, for the shaders: four floats a cone, the last unused. */
final class ConeValues {
  private final Map<String, float[]> cones;
  private final Vertices out = new Vertices(4);

  /** Of the values a {@link LitMoment} holds by surface. */
  ConeValues(Map<String, float[]> cones) {
    this.cones = cones;
  }

  /** Adds the cones at a plane point, dark where they are unknown; returns the illuminance, lx. */
  double add(Surface s, SurfaceGrid grid, Vec2 p) {
    float[] values = cones.get(s.id());
    SurfaceGrid.Blend blend = grid.blend(p);
    double lux = 0;
    for (int k = 0; k < Cones.VALUES; k++) {
      double sum = 0;
      for (int i = 0; values != null && i < 4; i++) {
        sum += blend.weights[i] * values[blend.nodes[i] * Cones.VALUES + k];
      }
      out.add(sum);
      if (k % 3 == 2) {
        lux += sum;
        out.add(0);
      }
    }
    return lux;
  }

  float[] data() {
    return out.data();
  }
}
