package slantlight.scene;

/** What part of a room a surface is. */
public enum SurfaceKind {
  FLOOR,
  WALL,
  CEILING,
  /** Any free polygon: soffit, beam face, stair soffit, island side. */
  OTHER
}
