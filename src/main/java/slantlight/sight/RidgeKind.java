package slantlight.sight;

import slantlight.scene.JointKind;

/** What leaves a ridge on a finished surface. */
public enum RidgeKind {
  TAPERED,
  BUTT,
  CUT,
  /** A butt joint between members, its ends drawn back by a batten behind: recessed. */
  BACK_BLOCKED,
  /** A filled fastener head. */
  SPOT;

  /** The ridge of a joint between boards. */
  public static RidgeKind of(JointKind kind) {
    return switch (kind) {
      case TAPERED -> TAPERED;
      case BUTT -> BUTT;
      case CUT -> CUT;
      case SPOT -> SPOT;
    };
  }
}
