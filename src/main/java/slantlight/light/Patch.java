package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * A small piece of an inside surface.
 *
 * @param rings outer rings counter-clockwise and holes clockwise, plane coordinates of the frame
 * @param centre a point of it
 * @param probes points of it at which light is computed, spread evenly
 * @param sunProbes points of it at which the sun is tested, spread evenly
 * @param corners points of it near its corners
 */
record Patch(
    int index,
    int group,
    int surface,
    int room,
    Frame frame,
    double[][] rings,
    double area,
    double edge,
    Vec3 centre,
    Vec3[] probes,
    Vec3[] sunProbes,
    Vec3[] corners) {
  Vec3 normal() {
    return frame.n();
  }

  /** Points of it on an even lattice of that many rows, made anew. */
  List<Vec3> lattice(int side) {
    double[] b = Rings.bounds(rings[0]);
    List<Vec3> out = new ArrayList<>(side * side);
    for (int j = 0; j < side; j++) {
      double v = b[1] + (b[3] - b[1]) * (j + 0.5) / side;
      for (int i = 0; i < side; i++) {
        double u = b[0] + (b[2] - b[0]) * (i + 0.5) / side;
        boolean in = Rings.inside(rings[0], u, v);
        for (int r = 1; in && r < rings.length; r++) {
          in = !Rings.inside(rings[r], u, v);
        }
        if (in) {
          out.add(frame.toWorld(new Vec2(u, v)));
        }
      }
    }
    return out;
  }
}
