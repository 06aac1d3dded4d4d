package slantlight.scene;

/** Which way the long edges of the boards run. */
public enum BoardRun {
  /** Whichever shows less; the layout decides. */
  AUTO,
  /** Long edges square to the framing. */
  ACROSS_FRAMING,
  /** Long edges along the framing. */
  ALONG_FRAMING
}
