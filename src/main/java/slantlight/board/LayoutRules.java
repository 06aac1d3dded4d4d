package slantlight.board;

/**
 * Rules a layout keeps where it can. Lengths in m.
 *
 * <p>Sources: butt joints staggered by at least one framing bay (GA-216 and ASTM C840 ask for the
 * stagger, the amount is common practice); joints at least 6 in from the corner of an opening
 * (common practice; GA-216 asks for joints away from jamb lines); the smallest piece and row are
 * common practice, no source.
 *
 * @param staggerBays least distance between butt joints of neighbouring rows, framing bays
 * @param cornerClearance least distance of a joint from a corner of an opening
 * @param minPiece shortest piece in a run that is longer than this
 * @param minRow narrowest row on a surface that is deeper than this
 * @param sampleStep spacing of the places where the show weight is asked for
 */
public record LayoutRules(
    double staggerBays, double cornerClearance, double minPiece, double minRow, double sampleStep) {
  /** One bay, 6 in, 12 in, 6 in; weight sampled every 4 in. */
  public static final LayoutRules COMMON = new LayoutRules(1, 0.1524, 0.3048, 0.1524, 0.1016);

  public LayoutRules {
    if (!(staggerBays >= 0
        && cornerClearance >= 0
        && minPiece >= 0
        && minRow >= 0
        && sampleStep > 0)) {
      throw new IllegalArgumentException(
          "layout rules are lengths of at least 0, and the sample step is more than 0");
    }
  }
}
