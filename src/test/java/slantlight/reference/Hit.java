package slantlight.reference;

/**
 * Where a ray ended. One is filled again and again by each path tracer, so that rays cost little.
 */
final class Hit {
  /** What was met. */
  enum What {
    /** A surface of a room, from inside. */
    SURFACE,
    /** A surface of a room, from behind. */
    BACK,
    /** An opening to the outside, from inside. */
    PANE,
    /** An outer wall of the house or a side of a block, from outside. */
    SHELL,
    /** Nothing. */
    NOTHING
  }

  What what = What.NOTHING;
  int index;
  double distance;
}
