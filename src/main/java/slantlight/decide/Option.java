package slantlight.decide;

import java.util.List;

/**
 * One thing that can be done about one surface, everything included: a finish level and the changes
 * that go with it. A surface gets exactly one of its options, so whatever two changes do to each
 * other on that surface is already in the numbers.
 *
 * @param changes the changes, none for "leave it as it is"
 * @param level finish level
 * @param price in whole units of the {@link Pricing}, over the surface as it is; may be negative
 * @param peak largest showing of the year
 * @param excess weighted showing above the room's limit, see {@link Excess}; 0 when the room bears
 *     it
 */
public record Option(
    String surfaceId, List<Remedy> changes, int level, long price, double peak, double excess) {
  public Option {
    changes = List.copyOf(changes);
  }

  /** True when the room bears what still shows. */
  public boolean solves() {
    return excess == 0;
  }

  /** True when it is the surface as it is. */
  public boolean asItIs() {
    return changes.isEmpty();
  }
}
