package slantlight.score;

import slantlight.geom.Vec3;

/** The directions, in a sample's frame, toward which the flanks of what is followed lean. */
enum Lean {
  /** A joint along v. */
  U(1, 0),
  /** A joint along u. */
  V(0, 1),
  /** A round spot: every direction, the worst one counts. */
  ALL(1, 1);

  private final float takesU;
  private final float takesV;

  Lean(float takesU, float takesV) {
    this.takesU = takesU;
    this.takesV = takesV;
  }

  /** Magnitude of the lean's part of a vector that lies along the surface. */
  double part(double u, double v) {
    return Math.sqrt(takesU * u * u + takesV * v * v);
  }

  /**
   * Magnitudes of the lean's parts of many vectors.
   *
   * @param size how many
   */
  void parts(float[] u, float[] v, float[] out, int size) {
    float a = takesU;
    float b = takesV;
    for (int m = 0; m < size; m++) {
      out[m] = (float) Math.sqrt(a * u[m] * u[m] + b * v[m] * v[m]);
    }
  }

  /** A local direction as seen with the first axis across the joint. */
  Vec3 turned(Vec3 local) {
    return this == V ? new Vec3(local.y(), -local.x(), local.z()) : local;
  }
}
