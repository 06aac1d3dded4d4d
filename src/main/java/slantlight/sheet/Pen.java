package slantlight.sheet;

import java.util.List;
import slantlight.score.Band;

/**
 * A line style.
 *
 * @param width mm on paper
 * @param dashes lengths of dash and gap in turn, mm; empty for a full line
 */
public record Pen(Colour ink, double width, List<Double> dashes) {
  public Pen {
    dashes = List.copyOf(dashes);
  }

  /** A full line. */
  public static Pen full(Colour ink, double width) {
    return new Pen(ink, width, List.of());
  }

  /** A dashed line of equal dashes and gaps. */
  public static Pen dashed(Ink ink, double width, double dash) {
    return new Pen(ink, width, List.of(dash, dash));
  }

  /** The line of a joint in a band: told apart by width and pattern as well as by colour. */
  public static Pen of(Band band) {
    return switch (band) {
      case QUIET -> new Pen(Ink.QUIET_LINE, 0.3, List.of(0.4, 0.8));
      case TRACE -> new Pen(Ink.TRACE, 0.6, List.of(2.2, 0.9));
      case PLAIN -> full(Ink.PLAIN, 0.9);
      case LOUD -> full(Ink.LOUD, 1.7);
    };
  }
}
