package slantlight.decide;

import java.util.List;

/**
 * One house-wide change: a shade, or all the like lamps of a room moved alike.
 *
 * @param changes one, or one per lamp
 */
record HouseWide(List<Remedy> changes) {
  HouseWide {
    changes = List.copyOf(changes);
  }
}
