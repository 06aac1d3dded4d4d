package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import slantlight.view.draw.Box;

/** What can be clicked or pulled in the picture that was drawn last. */
final class Hits {
  private final List<Hit> hits = new ArrayList<>();

  /** What happens on a press or pull at a place, layout units. */
  @FunctionalInterface
  interface Act {
    void at(double x, double y);
  }

  /** A place and what happens there. */
  record Hit(Box box, Act act) {}

  void clear() {
    hits.clear();
  }

  void add(Box box, Act act) {
    hits.add(new Hit(box, act));
  }

  void addAll(List<Hit> more) {
    hits.addAll(more);
  }

  int count() {
    return hits.size();
  }

  /** Takes out what was added after the first {@code many}. */
  List<Hit> takeFrom(int many) {
    List<Hit> tail = hits.subList(many, hits.size());
    List<Hit> out = List.copyOf(tail);
    tail.clear();
    return out;
  }

  /** The act of the topmost place under the pointer, or null. */
  Act find(double x, double y) {
    for (int i = hits.size() - 1; i >= 0; i--) {
      if (hits.get(i).box().contains(x, y)) {
        return hits.get(i).act();
      }
    }
    return null;
  }
}
