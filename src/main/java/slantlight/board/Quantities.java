package slantlight.board;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Material for a surface or, summed, a house. Coverage rules and their sources are in the board
 * data file.
 *
 * @param boards boards to buy
 * @param netArea area to cover with boards, those that are up already left out, m2
 * @param boardArea area bought, m2
 * @param tape m
 * @param compound litres of ready-mixed compound, by finish level of the surface
 * @param cornerBead m
 * @param fasteners count
 */
public record Quantities(
    SortedMap<Stock, Integer> boards,
    double netArea,
    double boardArea,
    double tape,
    double compound,
    double cornerBead,
    int fasteners) {
  public Quantities {
    boards = Collections.unmodifiableSortedMap(new TreeMap<>(boards));
  }

  /** Share of the bought area that is cut away, 0 to 1. */
  public double waste() {
    // Two areas that are equal but for rounding must not print as a waste of -0 %.
    return boardArea == 0 ? 0 : Math.max(0, 1 - netArea / boardArea);
  }
}
