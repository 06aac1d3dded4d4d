package slantlight.reference;

/**
 * Where a ray ended. One is filled again and again by each path tracer, so that rays cost little.
 */
final class Hit {
  /** What was met. */
  enum What {
    /** A surface of a room, from inside. */
    SURFACE,
    /** The back of a surface: the outer skin of the house, taken as black. */
    SKIN,
    /** An outside block. */
    BLOCK,
    /** A cloth in an opening, which scatters. */
    CLOTH,
    /** Nothing: the ray goes on to ground or sky. */
    OUTSIDE
  }

  What what = What.OUTSIDE;
  int index;
  double distance;

  /** Share of the light let through by clear glass on the way. */
  double through;

  /** Openings of the outside crossed on the way. */
  int crossed;
}
