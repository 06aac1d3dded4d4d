package slantlight.board;

/**
 * What a layout costs, compared in the order of its parts. Whole numbers, so that sums do not
 * depend on their order and equal layouts tie exactly.
 *
 * @param faults rules broken: {@link #HARD} for an end off its member or without stagger, 1 for a
 *     joint at an opening's corner and for a sliver
 * @param showing showing-weighted visible joint length, 1e-6 m
 * @param corners row joints at an opening's corner that only another row could avoid
 * @param waste area bought and cut away, mm2
 * @param boards number of boards
 */
record Cost(long faults, long showing, long corners, long waste, long boards)
    implements Comparable<Cost> {
  /** An end off its member or a missing stagger outweighs any number of corners and slivers. */
  static final long HARD = 1000;

  static final Cost ZERO = new Cost(0, 0, 0, 0, 0);

  /** Weighted metres in the unit of {@link #showing}. */
  static long micro(double weightedMetres) {
    return Math.round(weightedMetres * 1e6);
  }

  Cost plus(Cost o) {
    return new Cost(
        faults + o.faults,
        showing + o.showing,
        corners + o.corners,
        waste + o.waste,
        boards + o.boards);
  }

  Cost withFaults(long more) {
    return more == 0 ? this : new Cost(faults + more, showing, corners, waste, boards);
  }

  /** True when no waste or boards saved make this cost as low as the other. */
  boolean showsMoreThan(Cost o) {
    return faults > o.faults || (faults == o.faults && showing > o.showing);
  }

  @Override
  public int compareTo(Cost o) {
    int c = Long.compare(faults, o.faults);
    if (c == 0) {
      c = Long.compare(showing, o.showing);
    }
    if (c == 0) {
      c = Long.compare(corners, o.corners);
    }
    if (c == 0) {
      c = Long.compare(waste, o.waste);
    }
    return c == 0 ? Long.compare(boards, o.boards) : c;
  }
}
