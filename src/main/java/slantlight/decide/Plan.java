package slantlight.decide;

import java.util.ArrayList;
import java.util.List;

/**
 * One decision for the whole house.
 *
 * @param changes house-wide changes
 * @param options one per surface, in the order of the menu
 * @param price of everything, whole units
 * @param excess weighted showing above the limits that is left, see {@link Excess}
 */
public record Plan(List<Remedy> changes, List<Option> options, long price, double excess) {
  public Plan {
    changes = List.copyOf(changes);
    options = List.copyOf(options);
  }

  /** Every change of the plan, house-wide ones first. */
  public List<Remedy> allChanges() {
    List<Remedy> out = new ArrayList<>(changes);
    for (Option o : options) {
      out.addAll(o.changes());
    }
    return out;
  }

  /** The surfaces that show more than their room bears. */
  public List<Option> unsolved() {
    return options.stream().filter(o -> !o.solves()).toList();
  }
}
