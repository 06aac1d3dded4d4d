package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slantlight.TestHouses;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Attention;
import slantlight.scene.Eye;
import slantlight.scene.Framing;
import slantlight.scene.House;
import slantlight.scene.LevelScale;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Outside;
import slantlight.scene.Paint;
import slantlight.scene.Room;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/**
 * Generated houses: rooms of 5 x 5 x 2.75 m in a row or grid, each with a south window and doors.
 */
public final class RowHouses {
  private static final double SIDE = 5;
  private static final double HIGH = 2.75;

  private RowHouses() {}

  /** A grid of rooms; doorways join neighbours from west to east. */
  public static House grid(int columns, int rows) {
    List<Room> rooms = new ArrayList<>();
    List<Surface> surfaces = new ArrayList<>();
    List<Opening> openings = new ArrayList<>();
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        addRoom(i, j, columns, rooms, surfaces, openings);
      }
    }
    return new House(
        "Row of rooms",
        "An invented row for tests",
        TestHouses.site(),
        rooms,
        surfaces,
        openings,
        List.of(),
        new Outside(-0.3, List.of(), List.of()),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        LevelScale.GA_214);
  }

  private static void addRoom(
      int i, int j, int columns, List<Room> rooms, List<Surface> surfaces, List<Opening> openings) {
    String id = "r" + i + "-" + j;
    double x = i * (SIDE + 0.1);
    // Rows stand apart, so that every room has a window to the south.
    double y = j * (SIDE + 6);
    rooms.add(
        new Room(
            id,
            id,
            RoomUse.LIVING,
            Attention.EVERYDAY,
            TestHouses.rectangle(x, y, x + SIDE, y + SIDE),
            0,
            HIGH));
    List<Vec2> square = TestHouses.rectangle(0, 0, SIDE, SIDE);
    List<Vec2> wall = TestHouses.rectangle(0, 0, SIDE, HIGH);
    List<Vec2> window = TestHouses.rectangle(1, 0.3, 4, 2.4);
    List<Vec2> door = TestHouses.rectangle(2, 0, 3, 2.1);
    Frame floor = Frame.of(new Vec3(x, y, 0), Vec3.EAST, Vec3.UP);
    Frame ceiling = Frame.of(new Vec3(x, y + SIDE, HIGH), Vec3.EAST, Vec3.DOWN);
    Frame south = Frame.of(new Vec3(x + SIDE, y, 0), Vec3.EAST.times(-1), Vec3.NORTH);
    Frame north = Frame.of(new Vec3(x, y + SIDE, 0), Vec3.EAST, Vec3.NORTH.times(-1));
    Frame east =
        Frame.of(new Vec3(x + SIDE, y + SIDE, 0), Vec3.NORTH.times(-1), Vec3.EAST.times(-1));
    Frame west = Frame.of(new Vec3(x, y, 0), Vec3.NORTH, Vec3.EAST);
    surfaces.add(surface(id, "floor", SurfaceKind.FLOOR, Face.of(floor, square), 0.3));
    surfaces.add(surface(id, "ceiling", SurfaceKind.CEILING, Face.of(ceiling, square), 0.8));
    surfaces.add(wall(id, "south", new Face(south, wall, List.of(window))));
    surfaces.add(wall(id, "north", Face.of(north, wall)));
    List<List<Vec2>> eastHoles = i + 1 < columns ? List.of(door) : List.of();
    List<List<Vec2>> westHoles = i > 0 ? List.of(door) : List.of();
    surfaces.add(wall(id, "east", new Face(east, wall, eastHoles)));
    surfaces.add(wall(id, "west", new Face(west, wall, westHoles)));
    openings.add(
        new Opening(
            id + "/W",
            "W" + openings.size(),
            id,
            OpeningKind.WINDOW,
            id + "/south",
            Optional.empty(),
            Face.of(south, window),
            0.75,
            2,
            0.1,
            0.1,
            Optional.empty()));
    if (i + 1 < columns) {
      openings.add(
          new Opening(
              id + "/D",
              "doorway",
              id,
              OpeningKind.PASSAGE,
              id + "/east",
              Optional.of("r" + (i + 1) + "-" + j),
              Face.of(east, door),
              1,
              0,
              0,
              0,
              Optional.empty()));
    }
  }

  /**
   * The same house with boards on every wall and ceiling, and with four standing and two seated
   * eyes in each room, as many as a scene of such rooms gets.
   */
  public static House boarded(House bare) {
    List<Surface> surfaces = new ArrayList<>();
    for (Surface s : bare.surfaces()) {
      surfaces.add(s.kind() == SurfaceKind.FLOOR ? s : boarded(s));
    }
    List<Eye> eyes = new ArrayList<>();
    for (Room r : bare.rooms()) {
      Vec2 corner = r.outline().get(0);
      for (int i = 0; i < 6; i++) {
        boolean seated = i >= 4;
        double x = corner.x() + SIDE * (i % 2 == 0 ? 0.25 : 0.75);
        double y = corner.y() + SIDE * (i % 4 < 2 ? 0.25 : 0.75);
        Vec3 at = new Vec3(x, y, seated ? 1.15 : 1.6);
        eyes.add(new Eye(r.id() + "/eye-" + i, "eye " + i, r.id(), at, seated));
      }
    }
    return new House(
        bare.name(),
        bare.note(),
        bare.site(),
        bare.rooms(),
        surfaces,
        bare.openings(),
        bare.lamps(),
        bare.outside(),
        eyes,
        bare.rates(),
        bare.prescribed(),
        bare.scale());
  }

  private static Surface boarded(Surface s) {
    return new Surface(
        s.id(),
        s.label(),
        s.roomId(),
        s.kind(),
        s.face(),
        s.paint(),
        true,
        Optional.of(new Framing(Math.PI / 2, 0.4064, 0)),
        Optional.of(TestHouses.offer()),
        s.level(),
        s.covered(),
        s.joints());
  }

  static Surface wall(String room, String part, Face face) {
    return surface(room, part, SurfaceKind.WALL, face, 0.7);
  }

  private static Surface surface(
      String room, String part, SurfaceKind kind, Face face, double lrv) {
    return new Surface(
        room + "/" + part,
        room + " " + part,
        room,
        kind,
        face,
        new Paint(lrv, Sheen.FLAT),
        false,
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        List.of(),
        List.of());
  }

  /** Samples spread evenly over the ceilings. */
  public static List<SamplePoint> ceilingSamples(House h, int perRoom) {
    List<SamplePoint> out = new ArrayList<>();
    int side = (int) Math.ceil(Math.sqrt(perRoom));
    for (Room r : h.rooms()) {
      Vec2 corner = r.outline().get(0);
      for (int k = 0; k < perRoom; k++) {
        double x = corner.x() + SIDE * (k % side + 0.5) / side;
        int row = k / side;
        double y = corner.y() + SIDE * (row + 0.5) / side;
        out.add(new SamplePoint(Frame.of(new Vec3(x, y, HIGH), Vec3.EAST, Vec3.DOWN), r.id()));
      }
    }
    return out;
  }
}
