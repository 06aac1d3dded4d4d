package slantlight;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Attention;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
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
import slantlight.scene.Site;
import slantlight.scene.SkylinePoint;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/** Small houses built in code, for tests that should not depend on the scene reader. */
public final class TestHouses {
  private TestHouses() {}

  /**
   * One box room, inside from (0, 0, 0) to (width, depth, height), its south wall at y = 0 with one
   * window: from x0 to x1, sill to head. Surfaces: room/floor, room/ceiling, room/south, room/east,
   * room/north, room/west. Opening: room/window. Eye: room/eye in the middle at 1.6 m.
   */
  public static House boxRoom(
      double width,
      double depth,
      double height,
      double x0,
      double x1,
      double sill,
      double head,
      double lrv) {
    Paint paint = new Paint(lrv, Sheen.FLAT);
    List<Surface> surfaces = new ArrayList<>();
    surfaces.add(
        surface(
            "floor",
            SurfaceKind.FLOOR,
            Face.of(Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.UP), rectangle(0, 0, width, depth)),
            new Paint(0.3, Sheen.SATIN)));
    surfaces.add(
        surface(
            "ceiling",
            SurfaceKind.CEILING,
            Face.of(
                Frame.of(new Vec3(0, depth, height), Vec3.EAST, Vec3.DOWN),
                rectangle(0, 0, width, depth)),
            paint));
    // Seen from inside, u runs to the viewer's right: westward on the south wall.
    Frame south = Frame.of(new Vec3(width, 0, 0), Vec3.EAST.times(-1), Vec3.NORTH);
    List<Vec2> southHole = rectangle(width - x1, sill, width - x0, head);
    surfaces.add(
        surface(
            "south",
            SurfaceKind.WALL,
            new Face(south, rectangle(0, 0, width, height), List.of(southHole)),
            paint));
    surfaces.add(
        surface(
            "east",
            SurfaceKind.WALL,
            Face.of(
                Frame.of(new Vec3(width, depth, 0), Vec3.NORTH.times(-1), Vec3.EAST.times(-1)),
                rectangle(0, 0, depth, height)),
            paint));
    surfaces.add(
        surface(
            "north",
            SurfaceKind.WALL,
            Face.of(
                Frame.of(new Vec3(0, depth, 0), Vec3.EAST, Vec3.NORTH.times(-1)),
                rectangle(0, 0, width, height)),
            paint));
    surfaces.add(
        surface(
            "west",
            SurfaceKind.WALL,
            Face.of(Frame.of(Vec3.ZERO, Vec3.NORTH, Vec3.EAST), rectangle(0, 0, depth, height)),
            paint));
    Opening window =
        new Opening(
            "room/window",
            "south window",
            "room",
            OpeningKind.WINDOW,
            "room/south",
            Optional.empty(),
            Face.of(south, southHole),
            0.8,
            2,
            0,
            0,
            Optional.empty());
    Room room =
        new Room(
            "room",
            "Room",
            RoomUse.LIVING,
            Attention.EVERYDAY,
            rectangle(0, 0, width, depth),
            0,
            height);
    Eye eye =
        new Eye(
            "room/eye",
            "standing in the middle",
            "room",
            new Vec3(width / 2, depth / 2, 1.6),
            false);
    return new House(
        "Box room",
        "An invented room for tests",
        site(),
        List.of(room),
        surfaces,
        List.of(window),
        List.of(),
        new Outside(0, List.of(), List.of()),
        List.of(eye),
        Optional.empty(),
        Optional.empty(),
        LevelScale.GA_214);
  }

  /** The house with boards 1200 mm wide on offer instead. */
  public static House metric(House house) {
    List<BoardSize> sizes = List.of(new BoardSize(1.2, 2.4), new BoardSize(1.2, 3));
    BoardOffer offer = new BoardOffer(sizes, 0.0125, BoardRun.AUTO, Double.POSITIVE_INFINITY);
    return house.withSurfaces(
        house.surfaces().stream().map(s -> s.boarded() ? s.withBoards(offer) : s).toList());
  }

  /** Latitude 45 N, longitude 93 W, sea level, level horizon. */
  public static Site site(SkylinePoint... skyline) {
    return new Site(
        45,
        -93,
        ZoneId.of("America/Chicago"),
        0,
        java.util.Collections.nCopies(12, 0.2),
        0.21,
        java.util.Collections.nCopies(12, 0.5),
        List.of(skyline));
  }

  public static List<Vec2> rectangle(double x0, double y0, double x1, double y1) {
    return List.of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1));
  }

  private static Surface surface(String part, SurfaceKind kind, Face face, Paint paint) {
    boolean boarded = kind != SurfaceKind.FLOOR;
    return new Surface(
        "room/" + part,
        "Room " + part,
        "room",
        kind,
        face,
        paint,
        boarded,
        boarded ? Optional.of(new Framing(Math.PI / 2, 0.4064, 0)) : Optional.empty(),
        boarded ? Optional.of(offer()) : Optional.empty(),
        OptionalInt.empty(),
        List.of(),
        List.of());
  }

  /** 48 in boards, 8 to 16 ft, 1/2 in thick. */
  public static BoardOffer offer() {
    double ft = 0.3048;
    List<BoardSize> sizes = new ArrayList<>();
    for (int length : new int[] {8, 9, 10, 12, 14, 16}) {
      sizes.add(new BoardSize(4 * ft, length * ft));
    }
    return new BoardOffer(sizes, 0.0127, BoardRun.AUTO, Double.POSITIVE_INFINITY);
  }

  /** A surface under another name. */
  public static Surface named(Surface s, String id, String label) {
    return new Surface(
        id,
        label,
        s.roomId(),
        s.kind(),
        s.face(),
        s.paint(),
        s.boarded(),
        s.framing(),
        s.boards(),
        s.level(),
        s.covered(),
        s.joints());
  }
}
