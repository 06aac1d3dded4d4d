package slantlight.light;

import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec3;

/**
 * A small piece of an inside surface.
 *
 * @param rings outer rings counter-clockwise and holes clockwise, plane coordinates of the frame
 * @param centre a point of it
 * @param probes points of it at which light is computed, spread evenly
 * @param eyes points of it that look for light from outside and from lamps: fewer far from both
 * @param box least u, least v, greatest u, greatest v
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
    Vec3[] eyes,
    double[] box) {
  /** True when the patch is a full rectangle, its box. */
  boolean whole() {
    double cell = (box[2] - box[0]) * (box[3] - box[1]);
    return rings.length == 1 && rings[0].length == 8 && area > 0.999999 * cell;
  }

  /** Corners of its box, just in front of it: x, y and z of each in turn. */
  double[] corners() {
    return frame.toWorld(Rings.round(box), Interior.LIFT);
  }

  Vec3 normal() {
    return frame.n();
  }
}
