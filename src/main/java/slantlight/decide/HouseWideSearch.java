package slantlight.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.SourceKind;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;
import slantlight.scene.Room;
import slantlight.scene.Shade;
import slantlight.scene.Surface;
import slantlight.score.HouseScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.units.Progress;

/**
 * Finds the house-wide changes that act on the causes: for the opening behind most excess a cloth
 * shade and a clear film, for the lamps behind it a place far enough off or an aim far enough away.
 * The search for "far enough" looks at the room alone; what it finds is then scored in the whole
 * house.
 */
final class HouseWideSearch {
  /** A light cloth: a fifth goes through, scattered (from memory). */
  private static final Shade CLOTH = new Shade(0.2, true);

  /** Shares that neutral films of the trade let through, the lightest film first (from memory). */
  private static final List<Double> FILMS = List.of(0.7, 0.5, 0.35, 0.2);

  /** Farthest that a lamp is moved, m. */
  private static final double FARTHEST = 1.5;

  /** Largest turn of a lamp's aim, radians. */
  private static final double WIDEST = Math.toRadians(60);

  /** A change helps that leaves less than this share of the showing. */
  private static final double HELPS = 0.99;

  private static final double HEADROOM = 2.0;
  private static final int HALVINGS = 4;

  private final House house;
  private final Bench bench;
  private final Rescorer rescorer;
  private final Judge judge;

  HouseWideSearch(House house, Bench bench, Rescorer rescorer, Judge judge) {
    this.house = house;
    this.bench = bench;
    this.rescorer = rescorer;
    this.judge = judge;
  }

  /** What a culprit spoils: the surface it spoils most, and the excess of all of them. */
  private record Blame(SurfaceScore worst, double excess) {}

  /**
   * Finds changes.
   *
   * @param most how many culprits; every set of changes is a menu of its own, and a house lit anew
   * @return by culprit, the changes that can be made to it one instead of another
   */
  List<List<HouseWide>> search(HouseScore before, int most, Progress progress) {
    List<Map.Entry<String, Blame>> culprits = new ArrayList<>(blame(before).entrySet());
    culprits.sort(
        Comparator.comparingDouble((Map.Entry<String, Blame> e) -> -e.getValue().excess()));
    List<List<HouseWide>> out = new ArrayList<>();
    for (Map.Entry<String, Blame> e : culprits) {
      if (out.size() == most) {
        break;
      }
      progress.at("shades and lamps", 0.6 + 0.1 * out.size());
      Optional<Opening> opening = Edits.findOpening(house, e.getKey());
      List<HouseWide> changes = new ArrayList<>();
      if (opening.isPresent()) {
        shade(opening.get()).ifPresent(changes::add);
        film(opening.get(), e.getValue().worst()).ifPresent(changes::add);
      } else {
        Edits.findLamp(house, e.getKey())
            .filter(l -> l.roomId().equals(roomOf(e.getValue().worst())))
            .flatMap(l -> lamp(l, e.getValue().worst()))
            .ifPresent(changes::add);
      }
      if (!changes.isEmpty()) {
        out.add(changes);
      }
    }
    return out;
  }

  private Map<String, Blame> blame(HouseScore before) {
    Map<String, Blame> out = new LinkedHashMap<>();
    for (SurfaceScore s : before.surfaces()) {
      Optional<Peak> peak = Showing.worst(s);
      if (peak.isEmpty() || peak.get().source().kind() == SourceKind.BOUNCE) {
        continue;
      }
      double excess = judge.excess(s, Math.max(3, Baseline.level(house, s)));
      String cause = like(peak.get().source().via());
      out.merge(
          cause,
          new Blame(s, excess),
          (a, b) ->
              new Blame(
                  Baseline.showing(house, a.worst()) >= Baseline.showing(house, b.worst())
                      ? a.worst()
                      : b.worst(),
                  a.excess() + b.excess()));
    }
    return out;
  }

  /** The first of the lamps that are like a lamp; the id itself for an opening. */
  private String like(String id) {
    return Edits.findLamp(house, id).map(l -> alike(l).get(0).id()).orElse(id);
  }

  /** The lamps of a room that have the same light and mounting height. */
  private List<Lamp> alike(Lamp lamp) {
    return house.lamps().stream()
        .filter(
            l ->
                l.roomId().equals(lamp.roomId())
                    && l.distribution().equals(lamp.distribution())
                    && l.lumens() == lamp.lumens()
                    && Math.abs(l.position().z() - lamp.position().z()) < 0.01)
        .toList();
  }

  private static Optional<HouseWide> shade(Opening opening) {
    boolean shaded =
        opening.shade().isPresent()
            && opening.shade().get().transmittance() <= CLOTH.transmittance();
    return shaded
        ? Optional.empty()
        : Optional.of(
            new HouseWide(List.of(new Remedy.ShadeOpening(opening.id(), opening.label(), CLOTH))));
  }

  /** The lightest film that is enough for the worst surface, else the darkest if it helps. */
  private Optional<HouseWide> film(Opening opening, SurfaceScore worst) {
    if (opening.shade().isPresent()) {
      return Optional.empty();
    }
    HouseWide darkest = film(opening, FILMS.get(FILMS.size() - 1));
    SurfaceScore under = under(darkest, house, worst);
    if (!borne(under)) {
      boolean helps = Baseline.showing(house, under) < HELPS * Baseline.showing(house, worst);
      return helps ? Optional.of(darkest) : Optional.empty();
    }
    for (double through : FILMS) {
      HouseWide film = film(opening, through);
      if (borne(under(film, house, worst))) {
        return Optional.of(film);
      }
    }
    return Optional.of(darkest);
  }

  private static HouseWide film(Opening o, double through) {
    Shade film = new Shade(through, false);
    return new HouseWide(List.of(new Remedy.ShadeOpening(o.id(), o.label(), film)));
  }

  private boolean borne(SurfaceScore score) {
    return judge.borne(score, Math.max(3, Baseline.level(house, score)));
  }

  /** Moved or turned just far enough; of the two, the one that is enough, else the better one. */
  private Optional<HouseWide> lamp(Lamp lamp, SurfaceScore worst) {
    Surface surface = house.surface(worst.surfaceId());
    List<Lamp> lamps = alike(lamp);
    Search move = move(lamps, surface, worst);
    Search turn = turn(lamps, surface, worst);
    Search best = move.after() <= Math.max(turn.after(), limit(worst)) ? move : turn;
    return best.after() < HELPS * Baseline.showing(house, worst)
        ? Optional.of(best.change())
        : Optional.empty();
  }

  private record Search(HouseWide change, double after) {}

  /** One way to change lamps, by how much. */
  @FunctionalInterface
  private interface Way {
    HouseWide by(double amount);
  }

  private Search move(List<Lamp> lamps, Surface surface, SurfaceScore worst) {
    Vec3 off = surface.face().frame().n();
    double most = room(lamps, off);
    Way way =
        amount ->
            new HouseWide(
                lamps.stream()
                    .map(l -> (Remedy) new Remedy.MoveLamp(l.id(), l.label(), off.times(amount)))
                    .toList());
    return least(way, most, worst);
  }

  private Search turn(List<Lamp> lamps, Surface surface, SurfaceScore worst) {
    Vec3 off = surface.face().frame().n();
    Way way =
        amount -> {
          List<Remedy> out = new ArrayList<>();
          for (Lamp l : lamps) {
            Vec3 axis = l.aim().cross(off);
            if (axis.length() > 1e-6) {
              out.add(new Remedy.AimLamp(l.id(), l.label(), axis.unit(), amount));
            }
          }
          return new HouseWide(out);
        };
    return least(way, way.by(0).changes().isEmpty() ? 0 : WIDEST, worst);
  }

  /** How far the lamps can go along a direction and stay in their room with headroom, m. */
  private double room(List<Lamp> lamps, Vec3 off) {
    double most = FARTHEST;
    for (Lamp l : lamps) {
      Room room = house.room(l.roomId());
      for (double d = 0.1; d <= FARTHEST + 1e-9; d += 0.1) {
        Vec3 p = l.position().plus(off.times(d));
        boolean in =
            Face.inside(room.outline(), new Vec2(p.x(), p.y()))
                && (off.z() > -0.5 || p.z() >= room.floor() + HEADROOM);
        if (!in) {
          most = Math.min(most, d - 0.1);
          break;
        }
      }
    }
    return most;
  }

  /** The least amount that brings the surface under its limit, else the most. */
  private Search least(Way way, double most, SurfaceScore worst) {
    if (most < 0.05) {
      return new Search(new HouseWide(List.of()), Double.POSITIVE_INFINITY);
    }
    Search best = search(way, most, worst);
    double low = 0;
    double high = most;
    for (int i = 0; i < HALVINGS && best.after() <= limit(worst); i++) {
      double middle = (low + high) / 2;
      Search here = search(way, middle, worst);
      if (here.after() <= limit(worst)) {
        high = middle;
        best = here;
      } else {
        low = middle;
      }
    }
    return best;
  }

  private Search search(Way way, double amount, SurfaceScore worst) {
    HouseWide change = way.by(amount);
    SurfaceScore after = under(change, house.alone(roomOf(worst)), worst);
    return new Search(change, Baseline.showing(house, after));
  }

  /** One surface under a change of a house or of a part of it. */
  private SurfaceScore under(HouseWide change, House where, SurfaceScore surface) {
    House changed = where;
    for (Remedy r : change.changes()) {
      changed = r.apply(changed);
    }
    Map<String, List<Remedy>> nothing = Map.of(surface.surfaceId(), List.of());
    return bench.run(rescorer.light(changed), changed, nothing).get(surface.surfaceId());
  }

  private String roomOf(SurfaceScore s) {
    return house.surface(s.surfaceId()).roomId();
  }

  private double limit(SurfaceScore s) {
    return judge.attention(s.surfaceId()).limit();
  }
}
