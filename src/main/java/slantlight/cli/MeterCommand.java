package slantlight.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Room;
import slantlight.sky.SkyModel;
import slantlight.sky.SkyState;
import slantlight.sky.Weather;
import slantlight.units.LengthUnit;

/** Light at points, by source: what a lux meter there would read, and the light vector. */
@Command(
    name = "meter",
    description =
        "Illuminance and light vector at points, with their parts by source: hold it against a lux"
            + " meter or another program.",
    footer = {
      "",
      "The points file is CSV: x,y,z,nx,ny,nz in the world (x east, y north, z up), with a name",
      "before them if you like. The normal is the way the meter faces."
    })
final class MeterCommand implements Runnable {
  private static final String PRESCRIBED = "prescribed";

  @Mixin private CommonOptions common;
  @Mixin private ProgressOptions progress;

  @Parameters(paramLabel = "SCENE", description = "Scene file.")
  private Path scene;

  @Option(
      names = "--points",
      required = true,
      paramLabel = "FILE",
      description = "Points as CSV: [name,]x,y,z,nx,ny,nz.")
  private Path points;

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      defaultValue = "m",
      description = "Unit of plain numbers in the points file: m, mm, cm, ft or in (default m).")
  private LengthUnit unit;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description =
          "Local clock time such as 2026-06-21T15:00, or \"prescribed\" for the light that the scene"
              + " states (the default if it states one).")
  private String at;

  @Option(
      names = "--weather",
      paramLabel = "SKY",
      defaultValue = "clear",
      description = "clear, partly or overcast (default clear); only with a clock time.")
  private String weather;

  @Option(
      names = "--lamps",
      paramLabel = "ON",
      defaultValue = "auto",
      description = "auto (by their switched hours), on or off (default auto).")
  private Switch lamps;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Option(names = "--csv", description = "Write CSV: one line per point and source, and a total.")
  private boolean csv;

  private enum Switch {
    AUTO,
    ON,
    OFF
  }

  /** Something that shines, and when. */
  private record Light(String when, LightState state) {}

  @Override
  public void run() {
    if (json && csv) {
      throw CommandFailure.usage("--json and --csv exclude each other");
    }
    House house = Scenes.read(scene, common.err());
    List<PointsFile.Point> list = PointsFile.read(points, unit);
    List<Room> rooms = roomsOf(house, list);
    Light light = light(house);
    List<MeterOutput.Reading> readings = new ArrayList<>();
    try (ConsoleProgress bar = progress.open()) {
      Transport transport = Transport.of(house, TransportOptions.DEFAULT, bar);
      for (int i = 0; i < list.size(); i++) {
        bar.at("light at the points", (double) i / list.size());
        SamplePoint sample = sample(list.get(i), rooms.get(i));
        readings.add(
            new MeterOutput.Reading(
                list.get(i), rooms.get(i).id(), transport.incident(sample, light.state())));
      }
    }
    MeterOutput output = new MeterOutput(house.name(), light.when(), readings);
    if (json) {
      output.json(common.out());
    } else if (csv) {
      output.csv(common.out());
    } else {
      output.table(common.out(), Terminal.width());
    }
    common.out().flush();
  }

  private List<Room> roomsOf(House house, List<PointsFile.Point> list) {
    RoomFinder finder = new RoomFinder(house);
    List<Room> rooms = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (PointsFile.Point p : list) {
      // A millimetre in front, so that a point on a surface is in the room that it faces.
      Optional<Room> room = finder.around(p.at().plus(p.normal().times(1e-3)));
      room.ifPresentOrElse(rooms::add, () -> faults.add(lost(finder, p)));
    }
    if (!faults.isEmpty()) {
      throw CommandFailure.faults(String.join("\n", faults));
    }
    return rooms;
  }

  private String lost(RoomFinder finder, PointsFile.Point p) {
    String where =
        String.format(
            Locale.ROOT,
            "%s:%d: point %s at (%.3f, %.3f, %.3f) m ",
            points,
            p.line(),
            p.name(),
            p.at().x(),
            p.at().y(),
            p.at().z());
    return where
        + (finder.around(p.at().minus(p.normal().times(1e-3))).isPresent()
            ? "faces into something solid; turn its normal round"
            : "is in no room: outside the house or inside something solid; move it");
  }

  private Light light(House house) {
    SkyModel sky = SkyModel.of(house.site());
    boolean stated = at == null ? house.prescribed().isPresent() : at.equals(PRESCRIBED);
    if (stated) {
      if (house.prescribed().isEmpty()) {
        throw CommandFailure.usage(
            scene + " states no light of its own; give --at a time such as 2026-06-21T15:00");
      }
      SkyState state = sky.prescribed(house.prescribed().get(), Month.JUNE);
      return new Light("as the scene states", new LightState(state, shares(house, null, state)));
    }
    if (at == null) {
      throw CommandFailure.usage("give --at a local clock time such as 2026-06-21T15:00");
    }
    ZonedDateTime time = time(house);
    SkyState state = sky.at(time, weather());
    return new Light(
        time.toLocalDateTime() + " " + time.getZone() + ", sky " + weather,
        new LightState(state, shares(house, time, state)));
  }

  private ZonedDateTime time(House house) {
    try {
      LocalDateTime local = LocalDateTime.parse(at);
      if (local.getYear() < 1950 || local.getYear() > 2050) {
        throw CommandFailure.usage(
            "--at must lie between 1950 and 2050, not in " + local.getYear());
      }
      return local.atZone(house.site().zone());
    } catch (DateTimeParseException e) {
      throw CommandFailure.usage(
          "--at is \""
              + at
              + "\"; write a local clock time such as 2026-06-21T15:00, or prescribed");
    }
  }

  private Weather weather() {
    return switch (weather.toLowerCase(Locale.ROOT)) {
      case "clear" -> Weather.CLEAR;
      case "partly", "partly_cloudy", "partly-cloudy" -> Weather.PARTLY_CLOUDY;
      case "overcast" -> Weather.OVERCAST;
      default ->
          throw CommandFailure.usage(
              "--weather is \"" + weather + "\"; write clear, partly or overcast");
    };
  }

  private List<Double> shares(House house, ZonedDateTime time, SkyState sky) {
    if (lamps != Switch.AUTO || time == null) {
      return Collections.nCopies(house.lamps().size(), lamps == Switch.ON ? 1.0 : 0.0);
    }
    double altitude = Math.asin(Math.max(-1, Math.min(1, sky.sun().z())));
    return house.lampShares(time.toLocalTime(), altitude);
  }

  private static SamplePoint sample(PointsFile.Point p, Room room) {
    Vec3 hint = Math.abs(p.normal().x()) < 0.9 ? Vec3.EAST : Vec3.NORTH;
    return new SamplePoint(Frame.of(p.at(), hint, p.normal()), room.id());
  }
}
