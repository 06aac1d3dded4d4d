package slantlight.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slantlight.TestHouses;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Attention;
import slantlight.scene.Block;
import slantlight.scene.Distribution;
import slantlight.scene.GroundZone;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.LevelScale;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Outside;
import slantlight.scene.Paint;
import slantlight.scene.Room;
import slantlight.scene.RoomUse;
import slantlight.scene.Shade;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/**
 * Puts small houses together for comparisons of light: boxes, gables, windows, blocks and lamps.
 */
final class HouseSketch {
  private final List<Room> rooms = new ArrayList<>();
  private final List<Surface> surfaces = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Lamp> lamps = new ArrayList<>();
  private final List<Block> blocks = new ArrayList<>();
  private final List<GroundZone> zones = new ArrayList<>();

  /** Glass, frame and reveal of a window. */
  record Glazing(
      double transmittance, int panes, double frameShare, double reveal, Optional<Shade> shade) {
    static final Glazing CLEAR = new Glazing(0.8, 2, 0, 0, Optional.empty());

    static Glazing bare() {
      return new Glazing(1, 0, 0, 0, Optional.empty());
    }
  }

  /**
   * A box room with its corner at (x, y, 0): surfaces floor, ceiling, south, east, north, west.
   *
   * @param rho reflectance of floor, walls and ceiling
   */
  HouseSketch box(String id, double x, double y, double w, double d, double h, double... rho) {
    room(id, x, y, w, d, h);
    Vec3[] low = corners(x, y, 0, w, d);
    Vec3[] high = corners(x, y, h, w, d);
    face(id, "floor", SurfaceKind.FLOOR, rho[0], low[0], low[1], low[2], low[3]);
    face(id, "ceiling", SurfaceKind.CEILING, rho[2], high[3], high[2], high[1], high[0]);
    face(id, "south", SurfaceKind.WALL, rho[1], low[1], low[0], high[0], high[1]);
    face(id, "east", SurfaceKind.WALL, rho[1], low[2], low[1], high[1], high[2]);
    face(id, "north", SurfaceKind.WALL, rho[1], low[3], low[2], high[2], high[3]);
    face(id, "west", SurfaceKind.WALL, rho[1], low[0], low[3], high[3], high[0]);
    return this;
  }

  /** As {@link #box}, under a gable whose ridge runs west to east at height {@code ridge}. */
  HouseSketch gable(String id, double w, double d, double h, double ridge, double... rho) {
    room(id, 0, 0, w, d, h);
    Vec3[] low = corners(0, 0, 0, w, d);
    Vec3[] high = corners(0, 0, h, w, d);
    Vec3 west = new Vec3(0, d / 2, ridge);
    Vec3 east = new Vec3(w, d / 2, ridge);
    face(id, "floor", SurfaceKind.FLOOR, rho[0], low[0], low[1], low[2], low[3]);
    face(id, "south-slope", SurfaceKind.CEILING, rho[2], west, east, high[1], high[0]);
    face(id, "north-slope", SurfaceKind.CEILING, rho[2], east, west, high[3], high[2]);
    face(id, "south", SurfaceKind.WALL, rho[1], low[1], low[0], high[0], high[1]);
    face(id, "east", SurfaceKind.WALL, rho[1], low[2], low[1], high[1], east, high[2]);
    face(id, "north", SurfaceKind.WALL, rho[1], low[3], low[2], high[2], high[3]);
    face(id, "west", SurfaceKind.WALL, rho[1], low[0], low[3], high[3], west, high[0]);
    return this;
  }

  /**
   * A window in a surface.
   *
   * @param along from and to, to the right of the surface's first corner seen from inside, m
   * @param up from and to above it, m
   */
  HouseSketch window(String surfaceId, String name, double[] along, double[] up, Glazing glazing) {
    Surface s = cut(surfaceId, along, up);
    openings.add(
        new Opening(
            s.roomId() + "/" + name,
            name,
            s.roomId(),
            OpeningKind.WINDOW,
            surfaceId,
            Optional.empty(),
            Face.of(s.face().frame(), rectangle(along, up)),
            glazing.transmittance(),
            glazing.panes(),
            glazing.frameShare(),
            glazing.reveal(),
            glazing.shade()));
    return this;
  }

  /** An open way between two surfaces of two rooms that lie back to back. */
  HouseSketch passage(
      String from, String to, double[] along, double[] up, double[] alongOther, double[] upOther) {
    Surface s = cut(from, along, up);
    Surface other = cut(to, alongOther, upOther);
    openings.add(
        new Opening(
            s.roomId() + "/passage",
            "passage",
            s.roomId(),
            OpeningKind.PASSAGE,
            from,
            Optional.of(other.roomId()),
            Face.of(s.face().frame(), rectangle(along, up)),
            1,
            0,
            0,
            0,
            Optional.empty()));
    return this;
  }

  /** A lamp aimed along {@code aim}, its luminous opening width x length square to the aim. */
  HouseSketch lamp(
      String roomId,
      Vec3 at,
      Vec3 aim,
      Distribution distribution,
      double lumens,
      double width,
      double length) {
    Vec3 c0 = Math.abs(aim.z()) > 0.9 ? Vec3.NORTH : Vec3.UP;
    String id = roomId + "/F" + (lamps.size() + 1);
    lamps.add(
        new Lamp(id, id, roomId, at, aim, c0, distribution, lumens, width, length, 0, List.of()));
    return this;
  }

  /** A flat outside thing, such as an overhang or a neighbour's wall. */
  HouseSketch block(String id, double rho, Vec3... corners) {
    blocks.add(new Block(id, id, List.of(plane(corners)), rho));
    return this;
  }

  HouseSketch zone(GroundZone zone) {
    zones.add(zone);
    return this;
  }

  House house() {
    return new House(
        "Sketch",
        "Invented rooms for tests",
        TestHouses.site(),
        rooms,
        surfaces,
        openings,
        lamps,
        new Outside(0, zones, blocks),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        LevelScale.GA_214);
  }

  private void room(String id, double x, double y, double w, double d, double h) {
    rooms.add(
        new Room(
            id,
            id,
            RoomUse.LIVING,
            Attention.EVERYDAY,
            TestHouses.rectangle(x, y, x + w, y + d),
            0,
            h));
  }

  private static Vec3[] corners(double x, double y, double z, double w, double d) {
    return new Vec3[] {
      new Vec3(x, y, z), new Vec3(x + w, y, z), new Vec3(x + w, y + d, z), new Vec3(x, y + d, z)
    };
  }

  /**
   * A surface by its corners, counter-clockwise seen from inside, starting at the frame's origin.
   */
  private void face(String room, String part, SurfaceKind kind, double rho, Vec3... corners) {
    surfaces.add(
        new Surface(
            room + "/" + part,
            part,
            room,
            kind,
            plane(corners),
            new Paint(rho, Sheen.FLAT),
            false,
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            List.of(),
            List.of()));
  }

  private static Face plane(Vec3... corners) {
    Vec3 u = corners[1].minus(corners[0]);
    Vec3 n = u.cross(corners[2].minus(corners[1]));
    Frame frame = Frame.of(corners[0], u, n);
    return Face.of(frame, Arrays.stream(corners).map(frame::toPlane).toList());
  }

  private Surface cut(String surfaceId, double[] along, double[] up) {
    for (int i = 0; i < surfaces.size(); i++) {
      Surface s = surfaces.get(i);
      if (s.id().equals(surfaceId)) {
        List<List<Vec2>> holes = new ArrayList<>(s.face().holes());
        holes.add(rectangle(along, up));
        Surface with = s.withFace(new Face(s.face().frame(), s.face().outer(), holes));
        surfaces.set(i, with);
        return with;
      }
    }
    throw new IllegalArgumentException(surfaceId);
  }

  private static List<Vec2> rectangle(double[] along, double[] up) {
    return TestHouses.rectangle(along[0], up[0], along[1], up[1]);
  }
}
