package slantlight.scene.resolve;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slantlight.geom.Vec2;
import slantlight.scene.Attention;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.LevelScale;
import slantlight.scene.Opening;
import slantlight.scene.Outside;
import slantlight.scene.Room;
import slantlight.scene.RoomUse;
import slantlight.scene.Site;
import slantlight.scene.Surface;
import slantlight.scene.file.Binder;
import slantlight.scene.file.Faults;
import slantlight.scene.file.FinishesFile;
import slantlight.scene.file.RoomFile;
import slantlight.scene.file.SceneFile;

/**
 * Turns the records of a scene file into a {@link House}. All faults go to the binder's faults; the
 * resolver goes on past each as far as it can.
 */
public final class Resolver {
  private final Scope scope;
  private final SceneFile file;
  private final Path folder;
  private final List<Path> lampFiles = new ArrayList<>();

  /**
   * Makes a resolver.
   *
   * @param folder folder of the scene file, absolute
   */
  public Resolver(Binder binder, Faults warnings, SceneFile file, Path folder) {
    this.scope = new Scope(binder, warnings);
    this.file = file;
    this.folder = folder;
  }

  /** The house; empty when anything in the file is at fault. */
  public Optional<House> house() {
    FinishesFile finishes = file.finishes() == null ? FinishesFile.NONE : file.finishes();
    Optional<Site> site =
        Optional.ofNullable(file.site()).map(s -> new SiteResolver(scope).site(s));
    Rooms rooms = rooms(finishes);
    rooms.tellOverlaps();
    List<Opening> openings = new Openings(scope, rooms.shells(), rooms.ids()).cut();
    rooms.shells().values().forEach(s -> new Extras(scope, finishes, s).add());
    double ground = site.map(s -> s.groundReflectance().get(6)).orElse(0.2);
    Outside outside =
        new Surroundings(scope, rooms.shells(), rooms.ids(), ground).outside(file.outside());
    Fixtures fixtures = new Fixtures(scope, rooms, folder);
    List<Lamp> lamps = fixtures.lamps(file.fixtures());
    lampFiles.addAll(fixtures.files());
    List<Eye> eyes = new Places(scope, rooms).eyes(file.eyes(), openings);
    rooms.tellInnerGlass(openings);
    tellDarkRooms(rooms, openings, lamps);
    tellNamesakes(rooms);
    SiteResolver other = new SiteResolver(scope);
    if (!scope.binder().faults().none() || site.isEmpty()) {
      return Optional.empty();
    }
    Turn turn = new Turn(file.north() == null ? 0 : file.north());
    return Optional.of(
        new House(
            file.name(),
            file.note() == null ? "" : file.note(),
            site.get(),
            rooms.shells().values().stream().map(Resolver::room).map(turn::of).toList(),
            surfaces(rooms).stream().map(turn::of).toList(),
            openings.stream().map(turn::of).toList(),
            lamps.stream().map(turn::of).toList(),
            turn.of(outside),
            eyes.stream().map(turn::of).toList(),
            Optional.ofNullable(file.rates()).map(other::rates),
            Optional.ofNullable(file.prescribed()).map(other::prescribed),
            file.scale() == null ? LevelScale.GA_214 : file.scale()));
  }

  /** The photometry files that {@link #house} has read, absolute, each once. */
  public List<Path> lampFiles() {
    return List.copyOf(lampFiles);
  }

  private Rooms rooms(FinishesFile finishes) {
    Map<String, Shell> shells = new LinkedHashMap<>();
    Set<String> ids = new HashSet<>();
    List<RoomFile> written = file.rooms() == null ? List.of() : file.rooms();
    for (RoomFile room : written) {
      Optional<String> text = scope.binder().written(room, "id");
      if (text.isPresent() && !ids.add(text.get())) {
        scope.fault(room, "id", "the room id \"" + text.get() + "\" is used twice", "give another");
        continue;
      }
      if (room.id() != null && room.height() != null) {
        new ShellBuilder(scope, finishes, room)
            .build()
            .ifPresent(s -> shells.put(room.id().text(), s));
      }
    }
    return new Rooms(scope, shells, ids);
  }

  private List<Surface> surfaces(Rooms rooms) {
    List<Surface> out = new ArrayList<>();
    for (Shell shell : rooms.shells().values()) {
      for (Draft d : shell.drafts()) {
        out.add(d.surface());
      }
    }
    return out;
  }

  private void tellNamesakes(Rooms rooms) {
    Set<String> met = new HashSet<>();
    for (Shell shell : rooms.shells().values()) {
      for (Draft d : shell.drafts()) {
        if (!met.add(d.id)) {
          scope.fault(
              shell.file(),
              "two surfaces of " + shell.id() + " are called \"" + d.id + "\"",
              "give walls, doors, polygons and boxes names that differ from each other and from floor,"
                  + " ceiling and wall-south");
        }
      }
    }
  }

  private static Room room(Shell s) {
    RoomUse use = s.file().use();
    Attention attention = s.file().attention() == null ? usual(use) : s.file().attention();
    List<Vec2> outline = Plan.outer(s.region());
    return new Room(s.id(), s.label(), use, attention, outline, s.floor(), s.height());
  }

  private static Attention usual(RoomUse use) {
    return switch (use) {
      case LIVING, KITCHEN, BEDROOM, STUDY, HALL, STAIR, BATH -> Attention.EVERYDAY;
      case LAUNDRY, CLOSET, GARAGE, STORAGE, ATTIC, PLENUM -> Attention.SERVICE;
    };
  }

  private void tellDarkRooms(Rooms rooms, List<Opening> openings, List<Lamp> lamps) {
    Set<String> lit = new HashSet<>();
    openings.forEach(o -> lit.add(o.roomId()));
    openings.forEach(o -> o.toRoomId().ifPresent(lit::add));
    lamps.forEach(l -> lit.add(l.roomId()));
    for (Shell s : rooms.shells().values()) {
      if (!lit.contains(s.id())) {
        scope.warn(
            s.file(),
            "id",
            "no light ever reaches " + s.id(),
            "give it a window, a passage or a lamp, or nothing in it can show");
      }
    }
  }

  /** Hours by which a zone's standard clock may differ from the sun's without a warning. */
  static boolean plausible(Site site) {
    double zoneHours =
        site.zone()
                .getRules()
                .getStandardOffset(Instant.EPOCH.plusSeconds(1_767_225_600L))
                .getTotalSeconds()
            / 3600.0;
    double sunHours = site.longitudeDeg() / 15;
    double apart = Math.abs(zoneHours - sunHours);
    return Math.min(apart, 24 - apart) <= 3.5;
  }
}
