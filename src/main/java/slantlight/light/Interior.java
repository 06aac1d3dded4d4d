package slantlight.light;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Occluders;
import slantlight.geom.Rings;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Surface;

/** The inside of the house: what blocks sight there, its rooms, passages and openings. */
final class Interior {
  /** Sight is followed through no more than this many passages. */
  private static final int HOPS = 3;

  /** Points are lifted by this much, m, so that their own surface does not shade them. */
  static final double LIFT = 1e-4;

  private final Occluders faces;

  /** The same, to be thrown. */
  private final List<Body> walls;

  private final Map<String, Integer> roomIndex = new HashMap<>();
  private final List<Aperture> apertures = new ArrayList<>();
  private final List<Aperture> doorways = new ArrayList<>();
  private final int[][] near;

  /** Rooms within which nothing can stand between two points of their surfaces. */
  private final boolean[] convex;

  private final Aperture[][] reach;

  /** Passages of each room. */
  private final Door[][] doors;

  Interior(House house, Outdoors outdoors) {
    this(house, outdoors, "");
  }

  /**
   * The inside of a house.
   *
   * @param shut id of an opening that a sheet shuts
   */
  Interior(House house, Outdoors outdoors, String shut) {
    List<Face> list = new ArrayList<>();
    for (Surface s : house.surfaces()) {
      list.add(s.face());
    }
    faces = Occluders.of(list);
    walls = list.stream().map(f -> Body.of(List.of(f))).toList();
    for (int i = 0; i < house.rooms().size(); i++) {
      roomIndex.put(house.rooms().get(i).id(), i);
    }
    int n = house.rooms().size();
    convex = new boolean[n];
    for (int i = 0; i < n; i++) {
      convex[i] = isConvex(house, house.rooms().get(i).id());
    }
    List<List<Integer>> next = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      next.add(new ArrayList<>());
    }
    for (int i = 0; i < house.openings().size(); i++) {
      int index = i;
      Opening o = house.openings().get(i);
      int room = room(o.roomId());
      if (o.kind() == OpeningKind.PASSAGE) {
        doorways.add(new Aperture(i, o, room, outdoors));
        o.toRoomId()
            .ifPresent(
                id -> {
                  join(next, room, room(id));
                  doorways.add(new Aperture(index, o, room(id), outdoors));
                });
      } else {
        apertures.add(
            new Aperture(i, o, room, outdoors, o.id().equals(shut) ? new SheetCell() : null));
      }
    }
    doors = new Door[n][];
    near = new int[n][];
    reach = new Aperture[n][];
    for (int i = 0; i < n; i++) {
      int own = i;
      doors[i] =
          doorways.stream()
              .filter(d -> d.room == own)
              .map(d -> Door.of(d, facesOf(house, d.opening.roomId())))
              .toArray(Door[]::new);
      near[i] = within(next, i, HOPS - 1);
      boolean[] far = new boolean[n];
      for (int r : within(next, i, HOPS)) {
        far[r] = true;
      }
      reach[i] = apertures.stream().filter(a -> far[a.room]).toArray(Aperture[]::new);
    }
  }

  /** True when every surface of a room has all the others on its front side. */
  private static boolean isConvex(House house, String room) {
    List<Face> own = facesOf(house, room);
    for (Face f : own) {
      for (Face g : own) {
        if (g.corners().stream().anyMatch(p -> f.frame().height(p) < -1e-6)) {
          return false;
        }
      }
    }
    return true;
  }

  private static List<Face> facesOf(House house, String room) {
    return house.surfaces().stream()
        .filter(s -> s.roomId().equals(room))
        .map(Surface::face)
        .toList();
  }

  private static void join(List<List<Integer>> doors, int a, int b) {
    if (!doors.get(a).contains(b)) {
      doors.get(a).add(b);
      doors.get(b).add(a);
    }
  }

  /** Rooms at most that many passages away, ascending. */
  private static int[] within(List<List<Integer>> doors, int room, int hops) {
    java.util.TreeMap<Integer, Integer> found = new java.util.TreeMap<>();
    found.put(room, 0);
    java.util.ArrayDeque<Integer> open = new java.util.ArrayDeque<>(List.of(room));
    while (!open.isEmpty()) {
      int r = open.remove();
      int d = found.get(r);
      if (d < hops) {
        for (int next : doors.get(r)) {
          if (found.putIfAbsent(next, d + 1) == null) {
            open.add(next);
          }
        }
      }
    }
    return found.keySet().stream().mapToInt(Integer::intValue).toArray();
  }

  /**
   * Number of a room.
   *
   * @throws IllegalArgumentException if the house has no such room
   */
  int room(String id) {
    Integer i = roomIndex.get(id);
    if (i == null) {
      throw new IllegalArgumentException("the house has no room \"" + id + "\"");
    }
    return i;
  }

  /** Rooms whose surfaces may be seen from a room, itself included. */
  int[] near(int room) {
    return near[room];
  }

  /** Openings to the outside that may be seen from a room. */
  Aperture[] reach(int room) {
    return reach[room];
  }

  List<Aperture> apertures() {
    return apertures;
  }

  /** Passages, once for each room they join; for their place only. */
  List<Aperture> doorways() {
    return doorways;
  }

  Occluders faces() {
    return faces;
  }

  /** True when sight within one room is never blocked. */
  boolean clear(int room, int other) {
    return room == other && convex[room];
  }

  /**
   * What inside may stand between a surface and an opening.
   *
   * @param room of the surface
   * @param box of its plane
   */
  Shade[] between(int room, Frame plane, double[] box, Aperture a) {
    if (clear(room, a.room)) {
      return new Shade[0];
    }
    int[] found = new int[faces.size()];
    int count = faces.between(plane.toWorld(Rings.round(box), LIFT), a.corners(), found);
    return IntStream.range(0, count)
        .mapToObj(i -> walls.get(found[i]))
        .flatMap(
            w ->
                w
                    .shades(
                        plane,
                        1,
                        p -> plane.height(p) - Shade.CLEAR,
                        p -> a.height(p.x(), p.y(), p.z()) - Shade.CLEAR)
                    .stream())
        .toArray(Shade[]::new);
  }

  boolean blocked(double ax, double ay, double az, double bx, double by, double bz) {
    return faces.between(ax, ay, az, bx, by, bz);
  }

  /**
   * False when no passage out of a point's room, or none into another room, lets through any line
   * of sight from the point to a polygon there.
   *
   * @param corners of the polygon, x, y and z of each in turn
   */
  boolean joined(int room, int other, double px, double py, double pz, double[] corners) {
    return passes(room, px, py, pz, corners) && passes(other, px, py, pz, corners);
  }

  private boolean passes(int room, double px, double py, double pz, double[] corners) {
    for (Door door : doors[room]) {
      if (door.passes(px, py, pz, corners)) {
        return true;
      }
    }
    return false;
  }
}
