package slantlight.board;

import java.util.BitSet;
import java.util.List;
import slantlight.scene.BoardSize;

/**
 * One way to cut a row: its pieces, what they cost, and where their butt joints meet the row edges.
 *
 * @param pieces from run to run, each from end to end
 * @param upNear places within the stagger of a joint that reaches the upper row edge: the row above
 *     should not use them
 * @param down places whose joint reaches the lower row edge
 */
record Pattern(Cost cost, List<Piece> pieces, BitSet upNear, BitSet down) {

  /** Butt joints of the row above that break the stagger over this row. */
  int conflicts(Pattern above) {
    if (!upNear.intersects(above.down)) {
      return 0;
    }
    BitSet both = (BitSet) upNear.clone();
    both.and(above.down);
    return both.cardinality();
  }

  /** A board of a row before it has a number: run index, ends, m, and the size it is cut from. */
  record Piece(int run, double from, double to, BoardSize stock) {}
}
