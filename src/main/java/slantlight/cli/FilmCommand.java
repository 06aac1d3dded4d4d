package slantlight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.scene.House;
import slantlight.view.Film;
import slantlight.view.gl.GlUnavailable;

/** A day or a year as moving pictures. */
@Command(
    name = "film",
    description =
        "Renders a day or a year to an animated PNG or GIF, or to a folder of PNG files. Needs no"
            + " desktop; Mesa's offscreen library is enough (Debian: libosmesa6).")
final class FilmCommand implements Runnable {
  private static final Pattern SIZE = Pattern.compile("(\\d{3,4})x(\\d{3,4})");

  @Mixin private CommonOptions common;
  @Mixin private ProgressOptions progress;

  @Parameters(index = "0", paramLabel = "SCENE", description = "Scene file.")
  private Path scene;

  @Parameters(
      index = "1",
      paramLabel = "OUT",
      description = "File ending in .png, .apng or .gif; anything else is a folder of frames.")
  private Path out;

  @Option(
      names = "--span",
      paramLabel = "SPAN",
      defaultValue = "day",
      description = "day or year (default day).")
  private Film.Span span;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description =
          "Local clock time such as 2026-06-21T15:00: the day filmed, or the hour of the year's"
              + " (default: the worst moment).")
  private String at;

  @Option(
      names = "--room",
      paramLabel = "ID",
      description = "Room to stand in (default: that of the surface that shows most).")
  private String room;

  @Option(
      names = "--risk",
      description = "Film the painted risk from outside instead of the room as lit.")
  private boolean risk;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      defaultValue = "1280x720",
      description = "Pixels (default 1280x720).")
  private String size;

  @Option(
      names = "--frames",
      paramLabel = "N",
      defaultValue = "96",
      description = "Number of pictures (default 96: a quarter of an hour each for a day).")
  private int frames;

  @Option(
      names = "--millis",
      paramLabel = "MS",
      defaultValue = "80",
      description = "How long each is shown, milliseconds (default 80).")
  private int millis;

  @Override
  public void run() {
    House house = Scenes.read(scene, common.err());
    Film.Options options = options(house);
    try (ConsoleProgress bar = progress.open()) {
      Film.of(house, options, out, bar);
    } catch (GlUnavailable e) {
      throw CommandFailure.output("slantlight: " + e.getMessage(), e);
    } catch (IOException e) {
      throw CommandFailure.output("slantlight: " + out + ": " + e.getMessage(), e);
    }
    common.out().println("Wrote " + out);
    common.out().flush();
  }

  private Film.Options options(House house) {
    Matcher m = SIZE.matcher(size.toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      throw CommandFailure.usage("--size is \"" + size + "\"; write width x height, as 1280x720");
    }
    if (room != null && house.rooms().stream().noneMatch(r -> r.id().equals(room))) {
      throw CommandFailure.usage(
          "there is no room \""
              + room
              + "\"; there are "
              + String.join(", ", house.rooms().stream().map(r -> r.id()).toList()));
    }
    if (millis < 20 || millis > 10_000) {
      throw CommandFailure.usage("--millis lies between 20 and 10000, not " + millis);
    }
    try {
      return new Film.Options(
          span,
          time(house),
          Optional.ofNullable(room),
          !risk,
          Integer.parseInt(m.group(1)),
          Integer.parseInt(m.group(2)),
          frames,
          millis);
    } catch (IllegalArgumentException e) {
      throw CommandFailure.usage(e.getMessage());
    }
  }

  private Optional<ZonedDateTime> time(House house) {
    if (at == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDateTime.parse(at).atZone(house.site().zone()));
    } catch (DateTimeParseException e) {
      throw CommandFailure.usage(
          "--at is \"" + at + "\"; write a local clock time such as 2026-06-21T15:00");
    }
  }
}
