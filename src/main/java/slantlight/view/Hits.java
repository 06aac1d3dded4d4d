package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.view.draw.Box;

/** What can be clicked or pulled in the picture that was drawn last. */
final class Hits {
  private final List<Hit> hits = new ArrayList<>();

  /** What happens on a press or pull at a place, layout units. */
  @FunctionalInterface
  interface Act {
    void at(double x, double y);
  }

  /** What a place of a drawing shows, for a pointer that rests there. */
  @FunctionalInterface
  interface Rest {
    Optional<Picked> at(double x, double y);
  }

  /** A place, what happens there and what it shows. */
  record Hit(Box box, Act act, Rest rest) {}

  void clear() {
    hits.clear();
  }

  void add(Box box, Act act) {
    add(box, act, (x, y) -> Optional.empty());
  }

  /** A place of a drawing, which also tells what is under the pointer. */
  void add(Box box, Act act, Rest rest) {
    hits.add(new Hit(box, act, rest));
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
    return top(x, y).map(Hit::act).orElse(null);
  }

  /** The topmost place under the pointer. */
  Optional<Hit> top(double x, double y) {
    for (int i = hits.size() - 1; i >= 0; i--) {
      if (hits.get(i).box().contains(x, y)) {
        return Optional.of(hits.get(i));
      }
    }
    return Optional.empty();
  }
}
