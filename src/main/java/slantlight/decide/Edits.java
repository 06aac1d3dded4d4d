package slantlight.decide;

import java.util.List;
import java.util.Optional;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;
import slantlight.scene.Room;
import slantlight.scene.Site;
import slantlight.scene.Surface;

/** A house with one part exchanged. */
final class Edits {
  private Edits() {}

  static House site(House h, Site site) {
    return of(h, site, h.rooms(), h.surfaces(), h.openings(), h.lamps());
  }

  static House rooms(House h, List<Room> rooms) {
    return of(h, h.site(), rooms, h.surfaces(), h.openings(), h.lamps());
  }

  static House surfaces(House h, List<Surface> surfaces) {
    return of(h, h.site(), h.rooms(), surfaces, h.openings(), h.lamps());
  }

  /** The surface of the same id exchanged. */
  static House surface(House h, Surface surface) {
    return surfaces(
        h, h.surfaces().stream().map(s -> s.id().equals(surface.id()) ? surface : s).toList());
  }

  /** The opening of the same id exchanged. */
  static House opening(House h, Opening opening) {
    List<Opening> openings =
        h.openings().stream().map(o -> o.id().equals(opening.id()) ? opening : o).toList();
    return of(h, h.site(), h.rooms(), h.surfaces(), openings, h.lamps());
  }

  /** The lamp of the same id exchanged. */
  static House lamp(House h, Lamp lamp) {
    List<Lamp> lamps = h.lamps().stream().map(l -> l.id().equals(lamp.id()) ? lamp : l).toList();
    return of(h, h.site(), h.rooms(), h.surfaces(), h.openings(), lamps);
  }

  /** The lamp and opening of an id, if the house has them. */
  static Optional<Lamp> findLamp(House h, String id) {
    return h.lamps().stream().filter(l -> l.id().equals(id)).findFirst();
  }

  static Optional<Opening> findOpening(House h, String id) {
    return h.openings().stream().filter(o -> o.id().equals(id)).findFirst();
  }

  private static House of(
      House h,
      Site site,
      List<Room> rooms,
      List<Surface> surfaces,
      List<Opening> openings,
      List<Lamp> lamps) {
    return new House(
        h.name(),
        h.note(),
        site,
        rooms,
        surfaces,
        openings,
        lamps,
        h.outside(),
        h.eyes(),
        h.rates(),
        h.prescribed(),
        h.scale());
  }
}
