package slantlight.decide;

import java.util.List;
import java.util.Optional;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;
import slantlight.scene.Surface;

/** A house with one part exchanged. */
final class Edits {
  private Edits() {}

  /** The surface of the same id exchanged. */
  static House surface(House h, Surface surface) {
    return h.withSurfaces(
        h.surfaces().stream().map(s -> s.id().equals(surface.id()) ? surface : s).toList());
  }

  /** The opening of the same id exchanged. */
  static House opening(House h, Opening opening) {
    return h.withOpenings(
        h.openings().stream().map(o -> o.id().equals(opening.id()) ? opening : o).toList());
  }

  /** The lamp of the same id exchanged. */
  static House lamp(House h, Lamp lamp) {
    return h.withLamps(h.lamps().stream().map(l -> l.id().equals(lamp.id()) ? lamp : l).toList());
  }

  static Optional<Lamp> findLamp(House h, String id) {
    return h.lamps().stream().filter(l -> l.id().equals(id)).findFirst();
  }

  static Optional<Opening> findOpening(House h, String id) {
    return h.openings().stream().filter(o -> o.id().equals(id)).findFirst();
  }

  /** The house with every lamp out. */
  static House unlit(House h) {
    return h.withLamps(h.lamps().stream().map(l -> l.withOn(List.of())).toList());
  }
}
