package slantlight.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The subsets of a short list. */
final class Subsets {
  private Subsets() {}

  /** All of them, the empty one first, smaller ones before larger ones, in the list's order. */
  static <T> List<List<T>> of(List<T> items) {
    List<List<T>> out = new ArrayList<>();
    for (int bits = 0; bits < 1 << items.size(); bits++) {
      List<T> subset = new ArrayList<>();
      for (int i = 0; i < items.size(); i++) {
        if ((bits >> i & 1) == 1) {
          subset.add(items.get(i));
        }
      }
      out.add(subset);
    }
    out.sort(Comparator.comparingInt(List::size));
    return out;
  }
}
