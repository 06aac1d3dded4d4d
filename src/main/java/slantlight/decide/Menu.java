package slantlight.decide;

import java.util.List;

/**
 * The options of every surface under one set of house-wide changes (shades, moved lamps), which act
 * on several surfaces at once and so cannot be chosen surface by surface.
 *
 * @param changes the house-wide changes, none for the house as it is
 * @param price of these changes, whole units
 * @param surfaces the options of each surface; no surface without options
 */
public record Menu(List<Remedy> changes, long price, List<List<Option>> surfaces) {
  public Menu {
    changes = List.copyOf(changes);
    surfaces = surfaces.stream().map(List::copyOf).toList();
    for (List<Option> options : surfaces) {
      if (options.isEmpty()) {
        throw new IllegalArgumentException("a surface needs at least one option");
      }
    }
  }
}
