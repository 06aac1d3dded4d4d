package slantlight.score;

/** Bands of showing. */
public enum Band {
  QUIET(0),
  TRACE(1),
  PLAIN(2.5),
  LOUD(6);

  private final double from;

  Band(double from) {
    this.from = from;
  }

  /** Smallest showing of the band. */
  public double from() {
    return from;
  }

  public static Band of(double showing) {
    Band band = QUIET;
    for (Band b : values()) {
      if (showing >= b.from) {
        band = b;
      }
    }
    return band;
  }
}
