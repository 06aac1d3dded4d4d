package slantlight.decide;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slantlight.geom.Face;
import slantlight.geom.Vec3;
import slantlight.scene.BoardOffer;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;
import slantlight.scene.Paint;
import slantlight.scene.Room;
import slantlight.scene.Shade;
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

  static House openings(House h, List<Opening> openings) {
    return of(h, h.site(), h.rooms(), h.surfaces(), openings, h.lamps());
  }

  /** The opening of the same id exchanged. */
  static House opening(House h, Opening opening) {
    return openings(
        h, h.openings().stream().map(o -> o.id().equals(opening.id()) ? opening : o).toList());
  }

  /** The lamp of the same id exchanged. */
  static House lamp(House h, Lamp lamp) {
    List<Lamp> lamps = h.lamps().stream().map(l -> l.id().equals(lamp.id()) ? lamp : l).toList();
    return of(h, h.site(), h.rooms(), h.surfaces(), h.openings(), lamps);
  }

  static Optional<Lamp> findLamp(House h, String id) {
    return h.lamps().stream().filter(l -> l.id().equals(id)).findFirst();
  }

  static Optional<Opening> findOpening(House h, String id) {
    return h.openings().stream().filter(o -> o.id().equals(id)).findFirst();
  }

  static Surface withLevel(Surface s, int level) {
    return of(s, s.face(), s.paint(), s.boards(), OptionalInt.of(level));
  }

  static Surface withPaint(Surface s, Paint paint) {
    return of(s, s.face(), paint, s.boards(), s.level());
  }

  static Surface withBoards(Surface s, BoardOffer boards) {
    return of(s, s.face(), s.paint(), Optional.of(boards), s.level());
  }

  static Surface withFace(Surface s, Face face) {
    return of(s, face, s.paint(), s.boards(), s.level());
  }

  static Opening withFace(Opening o, Face face) {
    return of(o, face, o.shade());
  }

  static Opening withShade(Opening o, Shade shade) {
    return of(o, o.face(), Optional.of(shade));
  }

  static Lamp placed(Lamp l, Vec3 position, Vec3 aim, Vec3 c0) {
    return new Lamp(
        l.id(),
        l.label(),
        l.roomId(),
        position,
        aim,
        c0,
        l.distribution(),
        l.lumens(),
        l.width(),
        l.length(),
        l.height(),
        l.on());
  }

  /** The house with every lamp out. */
  static House unlit(House h) {
    List<Lamp> lamps =
        h.lamps().stream()
            .map(
                l ->
                    new Lamp(
                        l.id(),
                        l.label(),
                        l.roomId(),
                        l.position(),
                        l.aim(),
                        l.c0(),
                        l.distribution(),
                        l.lumens(),
                        l.width(),
                        l.length(),
                        l.height(),
                        List.of()))
            .toList();
    return of(h, h.site(), h.rooms(), h.surfaces(), h.openings(), lamps);
  }

  /**
   * One room by itself, its passages open to darkness: enough to see what its own lamps do to its
   * own surfaces, at a fraction of the work.
   */
  static House roomAlone(House h, String roomId) {
    return new House(
        h.name(),
        h.note(),
        h.site(),
        h.rooms().stream().filter(r -> r.id().equals(roomId)).toList(),
        h.surfaces().stream().filter(s -> s.roomId().equals(roomId)).toList(),
        h.openings().stream()
            .filter(o -> o.roomId().equals(roomId) && o.toRoomId().isEmpty())
            .toList(),
        h.lamps().stream().filter(l -> l.roomId().equals(roomId)).toList(),
        h.outside(),
        h.eyes().stream().filter(e -> e.roomId().equals(roomId)).toList(),
        h.rates(),
        h.prescribed(),
        h.scale());
  }

  private static Surface of(
      Surface s, Face face, Paint paint, Optional<BoardOffer> boards, OptionalInt level) {
    return new Surface(
        s.id(),
        s.label(),
        s.roomId(),
        s.kind(),
        face,
        paint,
        s.boarded(),
        s.framing(),
        boards,
        level,
        s.covered(),
        s.joints());
  }

  private static Opening of(Opening o, Face face, Optional<Shade> shade) {
    return new Opening(
        o.id(),
        o.label(),
        o.roomId(),
        o.kind(),
        o.surfaceId(),
        o.toRoomId(),
        face,
        o.transmittance(),
        o.panes(),
        o.frameShare(),
        o.revealDepth(),
        shade);
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
