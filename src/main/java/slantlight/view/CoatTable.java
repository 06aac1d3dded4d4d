package slantlight.view;

import slantlight.scene.Paint;
import slantlight.sight.Coating;
import slantlight.view.gl.Program;

/** A {@link Coating} as the shaders take it: its body as a table and the lobe's roughness. */
final class CoatTable {
  /** Steps of the table in the root of the cosine; STEPS of coat.glsl. */
  private static final int STEPS = 32;

  private final float[] body = new float[STEPS + 1];
  private final double roughness;

  CoatTable(Coating coating) {
    for (int i = 0; i <= STEPS; i++) {
      double root = (double) i / STEPS;
      body[i] = (float) coating.body(Math.max(1e-6, root * root), 1);
    }
    roughness = coating.roughness();
  }

  static CoatTable of(Paint paint, double roughnessGain) {
    return new CoatTable(Coating.of(paint, roughnessGain));
  }

  void set(Program program, String name) {
    program.set(name + "Body", body).set(name + "Alpha", roughness);
  }
}
