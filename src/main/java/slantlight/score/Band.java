package slantlight.score;

/** Bands of showing. */
public enum Band {
  QUIET(0, 0),
  TRACE(1, 1),
  PLAIN(2, 2.5),
  LOUD(3, 6);

  private final int index;
  private final double from;

  Band(int index, double from) {
    this.index = index;
    this.from = from;
  }

  /** Smallest showing of the band. */
  public double from() {
    return from;
  }

  /** Place of the band's figure in lists by band. */
  public int index() {
    return index;
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
