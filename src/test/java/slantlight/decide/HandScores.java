package slantlight.decide;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slantlight.TestHouses;
import slantlight.board.Joint;
import slantlight.board.Layout;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.Source;
import slantlight.light.SourceKind;
import slantlight.scene.Attention;
import slantlight.scene.BoardRun;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Paint;
import slantlight.scene.Room;
import slantlight.scene.RoomUse;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.Calendar;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.LevelScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.sky.Weather;

/** Scores written by hand, so that decisions can be tested without any light. */
final class HandScores {
  private HandScores() {}

  /** The box room of {@link TestHouses} with another use, attention and paint on all surfaces. */
  static House house(RoomUse use, Attention attention, Paint paint) {
    House h = TestHouses.boxRoom(5, 8, 2.7, 1, 4, 0, 2.4, 0.8);
    Room r = h.rooms().get(0);
    Room room = new Room(r.id(), r.label(), use, attention, r.outline(), r.floor(), r.height());
    List<Surface> surfaces = new ArrayList<>();
    for (Surface s : h.surfaces()) {
      surfaces.add(surface(s, paint, OptionalInt.empty(), List.of()));
    }
    return h.withRooms(List.of(room)).withSurfaces(surfaces);
  }

  static Surface surface(Surface s, Paint paint, OptionalInt level, List<List<Vec2>> covered) {
    return new Surface(
        s.id(),
        s.label(),
        s.roomId(),
        s.kind(),
        s.face(),
        paint,
        s.boarded(),
        s.framing(),
        s.boards(),
        level,
        covered,
        s.joints());
  }

  /** A surface with one butt joint of 2 m whose peaks at levels 3, 4 and 5 are given. */
  static SurfaceScore score(House house, String surfaceId, double l3, double l4, double l5) {
    Joint joint =
        new Joint(
            surfaceId + "#B1",
            JointKind.BUTT,
            new Vec2(1, 1),
            new Vec2(3, 1),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    List<LevelScore> levels = List.of(level(3, l3), level(4, l4), level(5, l5));
    Peak peak = peak(house.surface(surfaceId), l4);
    JointScore score =
        new JointScore(joint, 2, levels, Optional.of(peak), List.of(l4 / 2, l4, l4 / 2));
    return new SurfaceScore(
        surfaceId,
        new Layout(
            surfaceId, BoardRun.ACROSS_FRAMING, List.of(), List.of(joint), List.of(), "by hand"),
        List.of(score),
        levels,
        Optional.of(peak),
        new Calendar(List.of(), 60, new float[0][]),
        Optional.empty());
  }

  /** A surface none of whose joints can be seen. */
  static SurfaceScore unseen(String surfaceId) {
    return new SurfaceScore(
        surfaceId,
        new Layout(surfaceId, BoardRun.ACROSS_FRAMING, List.of(), List.of(), List.of(), "by hand"),
        List.of(),
        List.of(level(3, 0), level(4, 0), level(5, 0)),
        Optional.empty(),
        new Calendar(List.of(), 60, new float[0][]),
        Optional.empty());
  }

  static HouseScore of(House house, SurfaceScore... surfaces) {
    return new HouseScore(house, Arrays.asList(surfaces), 2026, 10, 1, 1);
  }

  static LevelScore level(int level, double showing) {
    List<Double> shares = new ArrayList<>();
    List<Double> hours = new ArrayList<>();
    for (Band b : Band.values()) {
      shares.add(Band.of(showing) == b ? 1.0 : 0.0);
      hours.add(showing >= b.from() ? 400.0 : 0.0);
    }
    return new LevelScore(level, showing, shares, hours, hours);
  }

  private static Peak peak(Surface surface, double showing) {
    Vec3 place = surface.face().frame().toWorld(new Vec2(2, 1));
    return new Peak(
        showing,
        0.01,
        ZonedDateTime.of(2026, 12, 21, 15, 10, 0, 0, TestHouses.site().zone()),
        Weather.CLEAR,
        place,
        "room/eye",
        2.5,
        new Source(SourceKind.GROUND, "room/window", "ground light through the south window"),
        0.8,
        Math.toRadians(8),
        Double.NaN,
        800,
        2);
  }
}
