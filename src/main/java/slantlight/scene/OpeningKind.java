package slantlight.scene;

/** What fills a hole in a surface. */
public enum OpeningKind {
  WINDOW,
  /** A door to the outside; its glass share lets light in. */
  DOOR,
  /** Glazed opening in a ceiling or roof slope. */
  SKYLIGHT,
  /** An open way into another room. */
  PASSAGE
}
