package slantlight.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slantlight.scene.StarterScene;
import slantlight.scene.WholeFile;
import slantlight.scene.file.Compass;
import slantlight.scene.file.Faults;
import slantlight.units.Length;
import slantlight.units.LengthUnit;

/** Writes a commented starter scene. */
@Command(
    name = "new",
    description = "Write a commented starter scene: one room with one glass wall.",
    footer = {
      "",
      "Exit codes: 0 written, 2 command line not understood, 3 the file could not be written.",
      "Example: slantlight new --size \"20x14x9\" --facing south-west --latitude 47.6"
          + " --zone America/Los_Angeles --out my-room.json"
    })
final class NewCommand implements Callable<Integer> {
  /** Middle of 2026: only the standard offset of the zone is asked, never the clock. */
  private static final Instant ANY_DAY = Instant.parse("2026-07-01T12:00:00Z");

  private static final double LEAST = 1;
  private static final double MOST = 100;

  @Mixin private CommonOptions common;

  @Option(
      names = "--size",
      paramLabel = "WxDxH",
      description = "Width along the glass, depth and height, such as 20x14x9 or 6.1mx4.3mx2.7m.")
  private String size;

  @Option(
      names = "--facing",
      defaultValue = "south",
      paramLabel = "DIR",
      description =
          "Where the glass looks: a compass word or degrees from true north (${DEFAULT-VALUE}).")
  private String facing;

  @Option(
      names = "--latitude",
      defaultValue = "44.9",
      paramLabel = "DEG",
      description = "Degrees north (${DEFAULT-VALUE}).")
  private double latitude;

  @Option(
      names = "--longitude",
      paramLabel = "DEG",
      description = "Degrees east; left out, the middle of the time zone.")
  private Double longitude;

  @Option(
      names = "--zone",
      defaultValue = "America/Chicago",
      paramLabel = "ZONE",
      description = "IANA time zone (${DEFAULT-VALUE}).")
  private String zone;

  @Option(
      names = "--glass",
      paramLabel = "LENGTH",
      description = "Width of the glass; left out, three fifths of the wall.")
  private String glass;

  @Option(
      names = "--units",
      defaultValue = "ft",
      paramLabel = "UNIT",
      description = "Unit of plain numbers: m, mm, cm, ft or in (${DEFAULT-VALUE}).")
  private String unitWord;

  @Option(names = "--name", defaultValue = "My room", description = "Name of the scene.")
  private String name;

  @Option(
      names = {"-o", "--out"},
      defaultValue = "scene.json",
      paramLabel = "FILE",
      description = "File to write (${DEFAULT-VALUE}).")
  private Path out;

  @Option(names = "--force", description = "Replace the file if it is there.")
  private boolean force;

  @Override
  public Integer call() throws IOException {
    StarterScene scene = scene();
    if (Files.exists(out) && !force) {
      throw CommandFailure.usage(out + " is there already; name another --out or add --force");
    }
    WholeFile.write(out, scene.text());
    common.out().println("wrote " + out);
    common.out().println("next: slantlight check " + out + "; slantlight score " + out);
    return ExitCode.OK;
  }

  private StarterScene scene() {
    LengthUnit units = units();
    double[] sides = sides(units);
    double width = sides[0];
    double wide = glass == null ? 0.6 * width : length("--glass", glass, units);
    if (wide < 0.1 || wide > width - 2 * StarterScene.LEAST_WALL) {
      throw CommandFailure.usage(
          "--glass is "
              + new Length(wide).format(units)
              + "; it must be from "
              + new Length(0.1).format(units)
              + " to "
              + new Length(width - 2 * StarterScene.LEAST_WALL).format(units));
    }
    if (!(Math.abs(latitude) <= 90)) {
      throw CommandFailure.usage("--latitude is " + latitude + "; it must be from -90 to 90");
    }
    ZoneId zoneId = zoneId();
    double east =
        longitude != null
            ? longitude
            : zoneId.getRules().getStandardOffset(ANY_DAY).getTotalSeconds() / 240.0;
    if (!(Math.abs(east) <= 180)) {
      throw CommandFailure.usage("--longitude is " + east + "; it must be from -180 to 180");
    }
    if (name.isBlank() || name.length() > 200) {
      throw CommandFailure.usage("--name must have 1 to 200 letters");
    }
    return new StarterScene(
        name, units, width, sides[1], sides[2], degrees(), latitude, east, zoneId, wide);
  }

  private LengthUnit units() {
    for (LengthUnit u : LengthUnit.values()) {
      if (u.name().equalsIgnoreCase(unitWord)) {
        return u;
      }
    }
    throw CommandFailure.usage("--units is \"" + unitWord + "\"; it must be m, mm, cm, ft or in");
  }

  private double[] sides(LengthUnit units) {
    if (size == null) {
      return units.imperial()
          ? new double[] {20 * 0.3048, 14 * 0.3048, 9 * 0.3048}
          : new double[] {6, 4.2, 2.7};
    }
    String[] parts = size.toLowerCase(Locale.ROOT).replace('\u00d7', 'x').split("x", -1);
    if (parts.length != 3) {
      throw CommandFailure.usage(
          "--size is \"" + size + "\"; give width, depth and height, such as 20x14x9");
    }
    double[] sides = new double[3];
    for (int i = 0; i < 3; i++) {
      sides[i] = length("--size", parts[i], units);
      if (sides[i] < LEAST || sides[i] > MOST) {
        throw CommandFailure.usage(
            "--size has a side of "
                + new Length(sides[i]).format(units)
                + "; each must be from "
                + new Length(LEAST).format(units)
                + " to "
                + new Length(MOST).format(units));
      }
    }
    return sides;
  }

  private static double length(String option, String text, LengthUnit units) {
    return Length.parse(text, units)
        .orElseThrow(
            () ->
                CommandFailure.usage(option + " has \"" + text + "\"; a length is " + Length.FORMS))
        .metres();
  }

  private double degrees() {
    OptionalDouble word = Compass.degrees(facing);
    if (word.isPresent()) {
      return word.getAsDouble();
    }
    double degrees = Double.NaN;
    if (facing.matches("[+-]?\\d{1,4}(\\.\\d{1,9})?")) {
      degrees = Double.parseDouble(facing);
    }
    if (!(Math.abs(degrees) <= 360)) {
      throw CommandFailure.usage(
          "--facing is \""
              + facing
              + "\"; give degrees or a compass word"
              + Faults.nearest(facing, Compass.WINDS)
                  .map(w -> "; did you mean \"" + w + "\"?")
                  .orElse(""));
    }
    return degrees;
  }

  private ZoneId zoneId() {
    if (ZoneId.getAvailableZoneIds().contains(zone)) {
      return ZoneId.of(zone);
    }
    Optional<String> nearest = Faults.nearest(zone, ZoneId.getAvailableZoneIds());
    throw CommandFailure.usage(
        "--zone is \""
            + zone
            + "\"; give an IANA time zone"
            + nearest.map(n -> "; did you mean \"" + n + "\"?").orElse(""));
  }
}
