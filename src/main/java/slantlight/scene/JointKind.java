package slantlight.scene;

/** Kinds of board joint, by the board edges that meet. */
public enum JointKind {
  /** Two recessed long edges. */
  TAPERED,
  /** Two square ends, on a member. */
  BUTT,
  /** A tapered edge against a cut edge or two cut edges: finished like a butt joint. */
  CUT,
  /** A filled fastener head: a spot, not a line. */
  SPOT
}
