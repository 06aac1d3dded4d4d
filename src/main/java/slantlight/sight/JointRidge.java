package slantlight.sight;

import java.util.OptionalDouble;

/**
 * Relief left by a finished joint or fastener, across its line.
 *
 * @param crown the broad build-up
 * @param edge the narrow step of the feather or tape
 * @param lowShare low end of the heights met in practice, as a share of those given
 * @param highShare high end of them
 * @param source where the figures come from
 */
public record JointRidge(
    RaisedCosine crown, RaisedCosine edge, double lowShare, double highShare, String source) {

  /** The same ridge with both heights scaled. */
  public JointRidge scaled(double share) {
    return new JointRidge(
        new RaisedCosine(crown.height() * share, crown.width()),
        new RaisedCosine(edge.height() * share, edge.width()),
        lowShare,
        highShare,
        source);
  }

  /**
   * The same ridge with its crown as measured on site, where it was, m. The edge goes with the
   * crown's height: whoever left half the crown left half the edge.
   */
  public JointRidge measured(OptionalDouble crownHeight, OptionalDouble crownWidth) {
    if (crownHeight.isEmpty() && crownWidth.isEmpty()) {
      return this;
    }
    double height = crownHeight.orElse(crown.height());
    return new JointRidge(
        new RaisedCosine(height, crownWidth.orElse(crown.width())),
        new RaisedCosine(edge.height() * height / crown.height(), edge.width()),
        lowShare,
        highShare,
        "crown measured on site; " + source);
  }
}
