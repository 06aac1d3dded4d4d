package slantlight.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.TransportOptions;
import slantlight.reference.HouseSketch.Glazing;
import slantlight.scene.Distribution;
import slantlight.scene.GroundKind;
import slantlight.scene.GroundZone;
import slantlight.scene.House;
import slantlight.scene.Shade;
import slantlight.scene.Surface;
import slantlight.sky.CieSky;
import slantlight.sky.SkyState;

/** Rooms, skies and points at which two light transports are held against each other. */
final class ReferenceRooms {
  private static final Vec3 SOUTH_SUN = Vec3.ofAzimuthAltitude(Math.PI, Math.toRadians(35));
  private static final Vec3 EAST_SUN =
      Vec3.ofAzimuthAltitude(Math.toRadians(110), Math.toRadians(20));
  private static final double[] DOOR_UP = {0, 2.1};
  private static final double[] SILL = {0.9, 2.1};

  private ReferenceRooms() {}

  /**
   * One room under one light.
   *
   * @param options the program's mesh: its default, except where a point lies so near to a bright
   *     spot of a wall that the default mesh smears it by more than the limit of the comparison
   */
  record Case(
      String name,
      House house,
      LightState state,
      List<SamplePoint> points,
      TransportOptions options) {
    Case(String name, House house, LightState state, List<SamplePoint> points) {
      this(name, house, state, points, TransportOptions.DEFAULT);
    }

    Case meshed(double edge) {
      return new Case(name, house, state, points, options.withPatchEdge(edge));
    }
  }

  static List<Case> all() {
    return List.of(
        oneWindowOvercast(),
        blackRoom(),
        paleRoom(),
        twoWindowsInSun(),
        threeWindows(),
        underAnOverhang(),
        acrossFromANeighbour(),
        downlights(),
        sconceUnderTheCeiling(),
        passage(),
        gable(),
        revealAndFrame(),
        clothShade(),
        besideWater(),
        snowOutside());
  }

  private static Case oneWindowOvercast() {
    HouseSketch s = plain(0.3, 0.5, 0.8).window("a/south", "w", at(1, 4), SILL, Glazing.CLEAR);
    return daylit("one window, overcast", s, overcast());
  }

  private static Case blackRoom() {
    HouseSketch s =
        plain(0.05, 0.05, 0.05).window("a/south", "w", at(1, 4), DOOR_UP, Glazing.CLEAR);
    return daylit("glass door, reflectance 0.05, clear sky", s, clear(SOUTH_SUN, 0));
  }

  private static Case paleRoom() {
    HouseSketch s = plain(0.85, 0.85, 0.85).window("a/south", "w", at(2, 3.2), SILL, Glazing.CLEAR);
    return daylit("one window, reflectance 0.85", s, overcast());
  }

  private static Case twoWindowsInSun() {
    HouseSketch s =
        plain(0.3, 0.6, 0.8)
            .window("a/south", "w1", at(0.5, 2.5), DOOR_UP, Glazing.CLEAR)
            .window("a/east", "w2", at(1, 3), SILL, Glazing.CLEAR);
    return daylit("two windows, sun on the floor", s, clear(SOUTH_SUN, 70_000));
  }

  private static Case threeWindows() {
    HouseSketch s =
        plain(0.2, 0.7, 0.85)
            .window("a/south", "w1", at(0.5, 1.7), SILL, Glazing.CLEAR)
            .window("a/east", "w2", at(2, 3.5), SILL, Glazing.CLEAR)
            .window("a/north", "w3", at(3, 4.5), new double[] {0.3, 2.3}, Glazing.CLEAR);
    return daylit("three windows, low sun from the east", s, clear(EAST_SUN, 45_000));
  }

  private static Case underAnOverhang() {
    HouseSketch s =
        plain(0.3, 0.6, 0.8)
            .window("a/south", "w", at(1, 4), DOOR_UP, Glazing.CLEAR)
            .block(
                "overhang",
                0.3,
                new Vec3(-0.5, -0.01, 2.4),
                new Vec3(5.5, -0.01, 2.4),
                new Vec3(5.5, -1.5, 2.4),
                new Vec3(-0.5, -1.5, 2.4));
    return daylit("overhang over a glass door", s, clear(SOUTH_SUN, 70_000));
  }

  private static Case acrossFromANeighbour() {
    HouseSketch s =
        plain(0.3, 0.6, 0.8)
            .window("a/south", "w", at(1, 4), SILL, Glazing.CLEAR)
            .block(
                "neighbour",
                0.5,
                new Vec3(-4, -6, 0),
                new Vec3(9, -6, 0),
                new Vec3(9, -6, 5),
                new Vec3(-4, -6, 5));
    return daylit("neighbour's wall across", s, overcast());
  }

  private static Case downlights() {
    HouseSketch s = plain(0.25, 0.6, 0.8);
    for (double x : new double[] {1.2, 3.8}) {
      for (double y : new double[] {1.5, 4.5}) {
        s.lamp("a", new Vec3(x, y, 2.69), Vec3.DOWN, Distribution.Named.DOWNLIGHT, 900, 0.15, 0.15);
      }
    }
    return lamplit("four downlights", s);
  }

  private static Case sconceUnderTheCeiling() {
    HouseSketch s =
        plain(0.25, 0.6, 0.8)
            .lamp("a", new Vec3(0.1, 3, 2.1), Vec3.DOWN, Distribution.Named.UP_DOWN, 800, 0.1, 0.1)
            .lamp(
                "a", new Vec3(2.5, 3, 2.4), Vec3.DOWN, Distribution.Named.DIFFUSER, 2000, 0.3, 1.2);
    return lamplit("sconce and a broad diffuser", s).meshed(0.2);
  }

  private static Case passage() {
    HouseSketch s =
        new HouseSketch()
            .box("a", 0, 0, 5, 4, 2.7, 0.3, 0.7, 0.8)
            .box("b", 0, 4, 5, 3, 2.7, 0.3, 0.7, 0.8)
            .window("a/south", "w", at(1, 4), DOOR_UP, Glazing.CLEAR)
            .passage("a/north", "b/south", at(1, 3.5), at(0, 2.3), at(1.5, 4), at(0, 2.3));
    House house = s.house();
    List<SamplePoint> points = new ArrayList<>();
    points.add(point(house, "b/ceiling", 2.5, 1.0));
    points.add(point(house, "b/ceiling", 2.5, 2.2));
    points.add(point(house, "b/north", 2.5, 1.5));
    points.add(point(house, "b/floor", 2, 1));
    return new Case(
            "second room behind a passage",
            house,
            new LightState(clear(SOUTH_SUN, 70_000), List.of()),
            points)
        .meshed(0.2);
  }

  private static Case gable() {
    HouseSketch s =
        new HouseSketch()
            .gable("a", 6, 5, 2.4, 4.0, 0.3, 0.6, 0.8)
            .window("a/west", "w", at(1, 4), at(0.3, 2.3), Glazing.CLEAR);
    House house = s.house();
    Vec3 evening = Vec3.ofAzimuthAltitude(Math.toRadians(265), Math.toRadians(12));
    List<SamplePoint> points = new ArrayList<>();
    points.add(point(house, "a/south-slope", 1.5, 1.2));
    points.add(point(house, "a/north-slope", 3, 1.5));
    points.add(point(house, "a/east", 2.5, 2.0));
    points.add(point(house, "a/north", 3, 1.3));
    return new Case(
            "gable, evening sun", house, new LightState(clear(evening, 30_000), List.of()), points)
        .meshed(0.25);
  }

  private static Case revealAndFrame() {
    Glazing deep = new Glazing(0.7, 2, 0.15, 0.25, Optional.empty());
    HouseSketch s = plain(0.3, 0.6, 0.8).window("a/south", "w", at(1.5, 3.5), SILL, deep);
    return daylit("deep reveal and frame", s, overcast());
  }

  private static Case clothShade() {
    Glazing shaded = new Glazing(0.8, 2, 0, 0, Optional.of(new Shade(0.3, true)));
    HouseSketch s = plain(0.3, 0.6, 0.8).window("a/south", "w", at(1, 4), SILL, shaded);
    return daylit("scattering shade in the sun", s, clear(SOUTH_SUN, 70_000));
  }

  private static Case besideWater() {
    HouseSketch s =
        plain(0.3, 0.6, 0.8)
            .window("a/south", "w", at(1, 4), DOOR_UP, Glazing.CLEAR)
            .zone(
                new GroundZone(
                    "lake",
                    "lake",
                    GroundKind.WATER,
                    TestHouses.rectangle(-60, -80, 60, -5),
                    -0.5,
                    0.02,
                    false,
                    6));
    Vec3 low = Vec3.ofAzimuthAltitude(Math.PI, Math.toRadians(25));
    return daylit("lake in front, sun's glitter", s, clear(low, 60_000));
  }

  private static Case snowOutside() {
    HouseSketch s = plain(0.3, 0.6, 0.8).window("a/south", "w", at(1, 4), DOOR_UP, Glazing.CLEAR);
    SkyState winter = clear(EAST_SUN, 30_000);
    SkyState snow =
        new SkyState(
            winter.sun(),
            winter.sunNormalLux(),
            winter.luminance(),
            winter.diffuseHorizontalLux(),
            0.8,
            Double.NaN);
    return daylit("snow outside, low sun along the glass", s, snow);
  }

  private static HouseSketch plain(double floor, double walls, double ceiling) {
    return new HouseSketch().box("a", 0, 0, 5, 6, 2.7, floor, walls, ceiling);
  }

  private static Case daylit(String name, HouseSketch sketch, SkyState sky) {
    House house = sketch.house();
    return new Case(name, house, new LightState(sky, List.of()), usual(house));
  }

  private static Case lamplit(String name, HouseSketch sketch) {
    House house = sketch.house();
    SkyState night = new SkyState(Vec3.DOWN, 0, (x, y, z) -> 0, 0, 0.2, Double.NaN);
    List<Double> on = house.lamps().stream().map(l -> 1.0).toList();
    return new Case(name, house, new LightState(night, on), usual(house));
  }

  /** Ceiling near the south wall and deep in the room, a wall and the floor. */
  private static List<SamplePoint> usual(House house) {
    return List.of(
        point(house, "a/ceiling", 2.3, 4.9),
        point(house, "a/ceiling", 3.1, 2.2),
        point(house, "a/west", 2.0, 1.9),
        point(house, "a/floor", 3.4, 3.7));
  }

  private static SamplePoint point(House house, String surfaceId, double u, double v) {
    Surface s = house.surface(surfaceId);
    Frame f = s.face().frame();
    Vec2 at = new Vec2(u, v);
    if (!s.face().contains(at)) {
      throw new IllegalArgumentException(at + " is not on " + surfaceId);
    }
    return new SamplePoint(new Frame(f.toWorld(at), f.u(), f.v(), f.n()), s.roomId());
  }

  private static double[] at(double from, double to) {
    return new double[] {from, to};
  }

  private static SkyState overcast() {
    CieSky sky = CieSky.ofZenith(1, Vec3.UP, 5000);
    return new SkyState(Vec3.DOWN, 0, sky, sky.horizontalLux(), 0.2, Double.NaN);
  }

  private static SkyState clear(Vec3 sun, double normalLux) {
    CieSky sky = CieSky.ofHorizontal(12, sun, 12_000);
    return new SkyState(sun, normalLux, sky, sky.horizontalLux(), 0.2, Double.NaN);
  }
}
