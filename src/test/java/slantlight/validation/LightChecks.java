package slantlight.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.TestHouses;
import slantlight.geom.ConfigurationFactors;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.ExchangeProbe;
import slantlight.light.IncidentField;
import slantlight.light.LightHouses;
import slantlight.light.LightState;
import slantlight.light.RoomEnergy;
import slantlight.light.SamplePoint;
import slantlight.light.SourceKind;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.Distribution;
import slantlight.scene.GroundKind;
import slantlight.scene.GroundZone;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Outside;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.sky.CieSky;
import slantlight.sky.SkyModel;
import slantlight.sky.SkyState;
import slantlight.sky.Weather;
import slantlight.units.Progress;

/** Light transport against closed forms, conservation laws and the laws of photometry. */
final class LightChecks {
  private static final String SUBJECT = "Light transport";
  private static final TransportOptions QUICK = LightHouses.QUICK;

  private LightChecks() {}

  static List<Check> all() {
    List<Check> out = new ArrayList<>();
    out.addAll(elements());
    out.addAll(rectangles());
    out.addAll(window());
    out.addAll(handCheck());
    out.addAll(closedBoxes());
    out.addAll(lamps());
    out.addAll(sums());
    out.addAll(trade());
    out.addAll(demoRooms());
    return out;
  }

  private static Transport transport(House h) {
    return Transport.of(h, QUICK, Progress.NONE);
  }

  /** Illuminance on a plane over pi: the configuration factor of a hole of unit luminance. */
  private static double factor(Transport t, Vec3 p, Vec3 u, Vec3 n) {
    LightState state = LightHouses.even(t.house(), 1000, 1000);
    return t.incident(LightHouses.at(p, u, n), state).illuminance() / (1000 * Math.PI);
  }

  private static List<Check> elements() {
    List<Check> out = new ArrayList<>();
    // A hole a wide and b high in the south wall of a black room, one lower corner at x = 3, z = 1.
    for (double[] c :
        new double[][] {{1, 1, 1, 0.138532}, {2, 1, 1, 0.167375}, {1, 1, 2, 0.059864}}) {
      House h = hole(3, 3 + c[0], 1, 1 + c[1]);
      double ours = factor(transport(h), new Vec3(3, c[2], 1), Vec3.EAST, new Vec3(0, -1, 0));
      out.add(
          Check.within(
              SUBJECT,
              String.format(
                  Locale.ROOT,
                  "element to parallel rectangle B-3, a %.0f b %.0f c %.0f",
                  c[0],
                  c[1],
                  c[2]),
              "Howell, A Catalog of Radiation Heat Transfer Configuration Factors, B-3",
              c[3],
              ours,
              0.005,
              4));
    }
    for (double[] c :
        new double[][] {{1, 1, 1, 0.055734}, {1, 2, 1, 0.095068}, {2, 2, 1, 0.124269}}) {
      House h = hole(3, 3 + c[0], 0, c[1]);
      double ours = factor(transport(h), new Vec3(3, c[2], 0), Vec3.EAST, Vec3.UP);
      out.add(
          Check.within(
              SUBJECT,
              String.format(
                  Locale.ROOT,
                  "element to perpendicular rectangle B-4, W %.0f H %.0f S %.0f",
                  c[0],
                  c[1],
                  c[2]),
              "Howell, catalog of configuration factors, B-4",
              c[3],
              ours,
              0.005,
              4));
    }
    return out;
  }

  private static House hole(double x0, double x1, double sill, double head) {
    House room = TestHouses.boxRoom(8, 8, 3, x0, x1, sill, head, 0);
    return LightHouses.withOpening(LightHouses.painted(room, 0), LightHouses::bare);
  }

  private static List<Check> rectangles() {
    List<Check> out = new ArrayList<>();
    // Faces of a closed box a x b x c stand to each other as the catalog's rectangles.
    for (double[] box : new double[][] {{3, 3, 3}, {6, 6, 3}, {2, 4, 4}, {3, 6, 3}}) {
      House h = LightHouses.closedBox(box[0], box[1], box[2], 0.5);
      Transport t = transport(h);
      String size = String.format(Locale.ROOT, "%.0f x %.0f x %.0f m box", box[0], box[1], box[2]);
      out.add(
          Check.within(
              SUBJECT,
              "parallel rectangles C-11, floor to ceiling, " + size,
              "Howell, catalog of configuration factors, C-11; Hamilton and Morgan 1952",
              ConfigurationFactors.parallelRectangles(box[0], box[1], box[2]),
              ExchangeProbe.factor(t, "room/floor", "room/ceiling"),
              0.005,
              4));
      out.add(
          Check.within(
              SUBJECT,
              "perpendicular rectangles C-14, floor to west wall, " + size,
              "Howell, catalog of configuration factors, C-14; Hamilton and Morgan 1952",
              ConfigurationFactors.perpendicularRectangles(box[1], box[0], box[2]),
              ExchangeProbe.factor(t, "room/floor", "room/west"),
              0.005,
              4));
    }
    return out;
  }

  private static List<Check> window() {
    House h = hole(2, 5, 0.4, 2.3);
    Transport t = transport(h);
    LightState state = LightHouses.even(h, 5000, 5000);
    List<Check> out = new ArrayList<>();
    List<Vec3> corners =
        List.of(new Vec3(2, 0, 0.4), new Vec3(5, 0, 0.4), new Vec3(5, 0, 2.3), new Vec3(2, 0, 2.3));
    for (double y : new double[] {0.5, 2, 6}) {
      SamplePoint p = LightHouses.below(3, y, 3);
      IncidentField f = t.incident(p, state);
      Vec3 lambert = lambert(corners, p.frame().origin()).times(5000);
      String where = String.format(Locale.ROOT, "ceiling %.1f m from the window", y);
      out.add(
          Check.within(
              SUBJECT,
              "one window, black room, illuminance, lx, " + where,
              "Lambert, Photometria, 1760 (polygon formula)",
              lambert.dot(Vec3.DOWN),
              f.illuminance(),
              0.005,
              1));
      double e = Math.toRadians(0.5);
      double derivative = (tilted(t, p, e, state) - tilted(t, p, -e, state)) / (2 * Math.sin(e));
      out.add(
          Check.within(
              SUBJECT,
              "one window, black room, light vector toward the window, lx, " + where,
              "Gershun, The Light Field, 1936: derivative of illuminance by tilt",
              derivative,
              f.lightVector().dot(new Vec3(0, -1, 0)),
              0.005,
              1));
    }
    return out;
  }

  private static double tilted(Transport t, SamplePoint p, double tilt, LightState state) {
    // Lowered by a hair: a tilted element must not dip into its own ceiling.
    Vec3 n = new Vec3(0, -Math.sin(tilt), -Math.cos(tilt));
    return t.incident(LightHouses.at(p.frame().origin(), Vec3.EAST, n), state).illuminance();
  }

  /** The formula once more, in plain vectors. */
  private static Vec3 lambert(List<Vec3> corners, Vec3 p) {
    Vec3 sum = Vec3.ZERO;
    for (int i = 0; i < corners.size(); i++) {
      Vec3 a = corners.get(i).minus(p).unit();
      Vec3 b = corners.get((i + 1) % corners.size()).minus(p).unit();
      sum = sum.plus(a.cross(b).unit().times(Math.acos(a.dot(b)) / 2));
    }
    Vec3 toward = corners.get(0).plus(corners.get(2)).times(0.5).minus(p);
    return sum.dot(toward) < 0 ? sum.times(-1) : sum;
  }

  private static List<Check> handCheck() {
    House h =
        LightHouses.withOpening(
            LightHouses.painted(TestHouses.boxRoom(8, 8, 2.75, 1.5, 6.5, 0, 2.44, 0), 0),
            o ->
                new slantlight.scene.Opening(
                    o.id(),
                    o.label(),
                    o.roomId(),
                    o.kind(),
                    o.surfaceId(),
                    Optional.empty(),
                    o.face(),
                    0.8,
                    0,
                    0,
                    0,
                    Optional.empty()));
    Transport t = transport(h);
    LightState ground = LightHouses.even(h, 0, 0.2 * 60_000 / Math.PI);
    List<Check> out = new ArrayList<>();
    for (double[] row : new double[][] {{1, 2690, 2900}, {3, 860, 1960}, {7, 130, 630}}) {
      SamplePoint p = LightHouses.below(4, row[0], 2.75);
      Vec3 v = t.incident(p, ground).lightVector();
      String where = String.format(Locale.ROOT, "ground light on a ceiling %.0f m in", row[0]);
      String source = "numerical integration by hand, rounded to 10 lx";
      out.add(Check.within(SUBJECT, where + ", normal part, lx", source, row[1], -v.z(), 0.04, 0));
      out.add(
          Check.within(
              SUBJECT,
              where + ", tangential part, lx",
              source,
              row[2],
              Math.hypot(v.x(), v.y()),
              0.02,
              0));
    }
    return out;
  }

  private static Lamp bulb(Vec3 at, double lumens, double size) {
    return new Lamp(
        "bulb",
        "bulb",
        "room",
        at,
        Vec3.DOWN,
        Vec3.EAST,
        size > 0 ? Distribution.Named.DIFFUSER : Distribution.Named.BARE,
        lumens,
        size,
        size,
        0,
        List.of());
  }

  private static List<Check> closedBoxes() {
    List<Check> out = new ArrayList<>();
    for (double rho : new double[] {0.3, 0.8}) {
      House h =
          LightHouses.withLamps(
              LightHouses.closedBox(4, 5, 3, rho), bulb(new Vec3(2, 2.5, 1.5), 3000, 0));
      Transport t = transport(h);
      LightState state = LightHouses.even(h, 0, 0);
      double area = 2 * (4 * 5 + 4 * 3 + 5 * 3);
      double flux =
          t.surfaceLight(state).stream().mapToDouble(p -> p.area() * p.illuminance()).sum();
      out.add(
          Check.within(
              SUBJECT,
              "mean illuminance of a closed box, reflectance " + rho + ", lx",
              "integrating sphere, flux / (A (1 - rho)) (Walsh, Photometry)",
              3000 / (area * (1 - rho)),
              flux / area,
              0.01,
              1));
      out.add(
          Check.fact(
              SUBJECT,
              "closed box, reflectance " + rho + ": absorbed + escaped = entered within 0.5 %",
              "conservation of energy",
              "within 0.5 %",
              t.energy(state).imbalance() < 0.005));
    }
    return out;
  }

  private static List<Check> lamps() {
    House h =
        LightHouses.withLamps(
            LightHouses.painted(TestHouses.boxRoom(6, 6, 3, 1, 2, 1, 2, 0), 0),
            bulb(new Vec3(3, 3, 2.9), 1000 * 4 * Math.PI, 0));
    Transport t = transport(h);
    LightState state = LightHouses.even(h, 0, 0);
    List<Check> out = new ArrayList<>();
    double one = onFloor(t, new Vec3(3, 3, 1.9), state);
    double two = onFloor(t, new Vec3(3, 3, 0.9), state);
    out.add(
        Check.within(
            SUBJECT,
            "inverse square: 1 m over 2 m under a point lamp",
            "Kepler 1604",
            4,
            one / two,
            0.001,
            3));
    out.add(
        Check.within(
            SUBJECT,
            "cosine law: 2 m aside and 2 m below over 2 m below",
            "Lambert, Photometria, 1760: cos^3 of 45 degrees",
            Math.pow(0.5, 1.5),
            onFloor(t, new Vec3(5, 3, 0.9), state) / two,
            0.001,
            4));
    House wide =
        LightHouses.withLamps(
            LightHouses.painted(TestHouses.boxRoom(6, 6, 3, 1, 2, 1, 2, 0), 0),
            bulb(new Vec3(3, 3, 2.9), 1000, 1));
    // A square diffuser of even luminance seen from under its middle: four corners of B-3.
    double luminance = 1000 / Math.PI;
    out.add(
        Check.within(
            SUBJECT,
            "1 m square lamp from 1 m below, lx",
            "Howell, catalog of configuration factors, B-3, four quarters",
            Math.PI * luminance * 4 * ConfigurationFactors.elementParallel(0.5, 0.5, 1),
            onFloor(transport(wide), new Vec3(3, 3, 1.9), LightHouses.even(wide, 0, 0)),
            0.005,
            1));
    return out;
  }

  private static double onFloor(Transport t, Vec3 p, LightState state) {
    return t.incident(LightHouses.at(p, Vec3.EAST, Vec3.UP), state).illuminance();
  }

  private static List<Check> sums() {
    Vec3 sun = Vec3.ofAzimuthAltitude(Math.toRadians(160), Math.toRadians(30));
    House h =
        LightHouses.withLamps(
            LightHouses.withSun(TestHouses.boxRoom(5, 8, 2.75, 0.5, 4.5, 0, 2.44, 0.7), sun),
            bulb(new Vec3(2, 5, 2.5), 2000, 0));
    Transport t = transport(h);
    SamplePoint p = LightHouses.below(2, 3, 2.75);
    LightState all = state(h, sun, 80_000, 4000, 1);
    double together = t.incident(p, all).illuminance();
    double parts =
        t.incident(p, state(h, sun, 80_000, 0, 0)).illuminance()
            + t.incident(p, state(h, sun, 0, 4000, 0)).illuminance()
            + t.incident(p, state(h, sun, 0, 0, 1)).illuminance();
    List<Check> out = new ArrayList<>();
    out.add(
        Check.within(
            SUBJECT,
            "sun + sky + lamp apart over together",
            "superposition of light",
            1,
            parts / together,
            1e-3,
            3));
    out.add(
        Check.fact(
            SUBJECT,
            "room with window, sun, sky and lamp: absorbed + escaped = entered within 0.5 %",
            "conservation of energy",
            "within 0.5 %",
            t.energy(all).imbalance() < 0.005));
    Basis basis = t.basis(List.of(p), List.of(LightHouses.VECTOR), Progress.NONE);
    float[][] rows = new float[3][1];
    basis.evaluate(0, basis.block(List.of(all)), rows);
    Vec3 v = p.frame().directionToLocal(t.incident(p, all).lightVector());
    out.add(
        Check.within(
            SUBJECT,
            "the year's basis over the exact answer at one of its suns, illuminance",
            "two paths of one model",
            1,
            rows[0][0] / v.z(),
            2e-3,
            2));
    return out;
  }

  private static LightState state(House h, Vec3 sun, double beam, double sky, double lamps) {
    CieSky vault = CieSky.ofZenith(CieSky.UNIFORM, sun, sky);
    return LightHouses.state(
        h, new SkyState(sun, beam, vault, Math.PI * sky, 0.2, Double.NaN), lamps);
  }

  private static List<Check> trade() {
    List<Check> out = new ArrayList<>();
    House door = TestHouses.boxRoom(6, 8, 2.75, 0.5, 5.5, 0, 2.5, 0.8);
    Transport t = transport(LightHouses.withSun(door, Vec3.ofAzimuthAltitude(Math.PI, 0.5)));
    SamplePoint p = LightHouses.below(3, 4, 2.75);
    boolean sunMissed = true;
    for (double altitude = 1; altitude < 89; altitude += 2) {
      Vec3 sun = Vec3.ofAzimuthAltitude(Math.PI, Math.toRadians(altitude));
      sunMissed &= t.beams(List.of(p)).transmittance(0, sun.x(), sun.y(), sun.z()) == 0;
    }
    out.add(
        Check.fact(
            SUBJECT,
            "the sun's own beam never strikes a flat ceiling",
            "common practice, no source",
            "no beam at any altitude",
            sunMissed));
    Vec3 sun = Vec3.ofAzimuthAltitude(Math.PI, 0.5);
    IncidentField field = t.incident(p, LightHouses.sunny(door, sun, 80_000, 4000));
    IncidentField ground =
        field.bySource().entrySet().stream()
            .filter(e -> e.getKey().kind() == SourceKind.GROUND)
            .findFirst()
            .orElseThrow()
            .getValue();
    Frame f = p.frame();
    Vec3 g = f.directionToLocal(ground.lightVector());
    out.add(
        Check.fact(
            SUBJECT,
            "ground light through a tall door rakes the ceiling: more along than square to it",
            "common practice, no source",
            "tangential above normal part",
            Math.hypot(g.x(), g.y()) > 1.5 * g.z()));
    GroundZone lake =
        new GroundZone(
            "lake",
            "lake",
            GroundKind.WATER,
            TestHouses.rectangle(-200, -400, 200, -3),
            -0.5,
            0,
            false,
            2);
    Vec3 low = Vec3.ofAzimuthAltitude(Math.PI, Math.toRadians(12));
    House shore =
        LightHouses.withSun(door.withOutside(new Outside(-0.3, List.of(lake), List.of())), low);
    IncidentField over = transport(shore).incident(p, LightHouses.sunny(shore, low, 30_000, 0));
    double water = part(over, SourceKind.WATER);
    out.add(
        Check.fact(
            SUBJECT,
            "water throws a low sun up to the ceiling, and it outshines the ground",
            "common practice, no source",
            "water above ground light",
            water > part(over, SourceKind.GROUND) && water > 50));
    return out;
  }

  private static double part(IncidentField field, SourceKind kind) {
    return field.bySource().entrySet().stream()
        .filter(e -> e.getKey().kind() == kind)
        .mapToDouble(e -> e.getValue().illuminance())
        .sum();
  }

  /** Every room of every demo scene on a clear spring noon with all lamps on. */
  private static List<Check> demoRooms() {
    List<Check> out = new ArrayList<>();
    try (DirectoryStream<Path> scenes = Files.newDirectoryStream(Path.of("scenes"), "*.json")) {
      List<Path> sorted = new ArrayList<>();
      scenes.forEach(sorted::add);
      sorted.sort(Comparator.naturalOrder());
      for (Path scene : sorted) {
        out.add(demoRooms(scene));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out;
  }

  private static Check demoRooms(Path scene) throws IOException {
    House house = ((Read.Ok) SceneReader.read(scene)).house();
    Transport light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    ZonedDateTime noon = ZonedDateTime.of(2026, 3, 20, 12, 0, 0, 0, house.site().zone());
    List<RoomEnergy> rooms =
        RoomEnergy.of(
            light, LightHouses.state(house, SkyModel.at(house.site(), noon, Weather.CLEAR), 1));
    double worst = 0;
    for (RoomEnergy r : rooms) {
      worst = Math.max(worst, r.imbalance());
    }
    return Check.fact(
        SUBJECT,
        "demo scene "
            + scene.getFileName()
            + ", each lit room: in through openings, passages and from lamps = absorbed + out,"
            + " within 0.5 %",
        "conservation of energy",
        String.format(
            Locale.ROOT,
            "%d of %d rooms lit, worst below %.1f %%",
            rooms.size(),
            house.rooms().size(),
            Math.ceil(1000 * worst) / 10),
        !rooms.isEmpty() && worst < 0.005);
  }
}
