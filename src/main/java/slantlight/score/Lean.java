package slantlight.score;

import slantlight.geom.Vec3;

/** The directions, in a sample's frame, toward which the flanks of what is followed lean. */
enum Lean {
  /** A joint along v. */
  U,
  /** A joint along u. */
  V,
  /** A round spot: every direction, the worst one counts. */
  ALL;

  /** Magnitude of the lean's part of a vector that lies along the surface. */
  double part(double u, double v) {
    return switch (this) {
      case U -> Math.abs(u);
      case V -> Math.abs(v);
      case ALL -> Math.sqrt(u * u + v * v);
    };
  }

  /** A local direction as seen with the first axis across the joint. */
  Vec3 turned(Vec3 local) {
    return this == V ? new Vec3(local.y(), -local.x(), local.z()) : local;
  }
}
