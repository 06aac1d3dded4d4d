package slantlight.view;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.score.Peak;
import slantlight.units.Progress;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Pixels;
import slantlight.view.gl.Target;

/** Renders a day or a year without a window. */
public final class Film {
  private Film() {}

  /** What is filmed. */
  public enum Span {
    /** One day from midnight to midnight. */
    DAY,
    /** One moment of the clock through the year. */
    YEAR
  }

  /**
   * How it is filmed.
   *
   * @param at a moment of the day, or the time of day for a year; empty means the worst of the year
   * @param roomId whose light is shown; empty means the room with the worst surface
   * @param asLit surfaces under their light instead of risk
   * @param width pixels
   * @param height pixels
   * @param frames how many pictures
   * @param millis how long each is shown
   */
  public record Options(
      Span span,
      Optional<ZonedDateTime> at,
      Optional<String> roomId,
      boolean asLit,
      int width,
      int height,
      int frames,
      int millis) {
    public Options {
      if (width < 320 || height < 240 || width > 7680 || height > 4320) {
        throw new IllegalArgumentException(
            "a film is 320 x 240 to 7680 x 4320 pixels, not " + width + " x " + height);
      }
      if (frames < 1 || frames > 2000) {
        throw new IllegalArgumentException("a film has 1 to 2000 frames, not " + frames);
      }
    }
  }

  /**
   * Scores a house, renders and writes.
   *
   * @throws slantlight.view.gl.GlUnavailable without OpenGL 3.3 (Mesa's offscreen library is
   *     enough)
   */
  public static void of(House house, Options options, Path out, Progress progress)
      throws IOException {
    LightModel light = Transport.of(house, TransportOptions.DEFAULT, progress);
    Scores.Scored scored = Scores.of(light, progress);
    render(scored, light, options, out, progress);
  }

  /**
   * Renders and writes.
   *
   * @param out {@code .png} or {@code .apng} for an animated PNG, {@code .gif} for a GIF, else a
   *     folder of numbered PNG files
   * @throws slantlight.view.gl.GlUnavailable without OpenGL 3.3 (Mesa's offscreen library is
   *     enough)
   */
  static void render(
      Scores.Scored scored, LightModel light, Options options, Path out, Progress progress)
      throws IOException {
    ViewModel model = scored.model();
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Screen screen = new Screen(model, 4);
        Target target = new Target(options.width(), options.height(), 1);
        Reel reel = Reel.to(out, options.millis())) {
      Stage stage = stage(model, screen.shape(), options);
      House house = model.house();
      List<RoomField> rooms = new ArrayList<>();
      String room = roomId(model, options);
      if (options.asLit()) {
        for (String id : roomsSeen(model, stage, room)) {
          rooms.add(new RoomField(light, screen.shape(), id, progress));
        }
      }
      Moments moments = new Moments(house);
      ZonedDateTime first = stage.time;
      for (int i = 0; i < options.frames(); i++) {
        progress.at("film", (double) i / options.frames());
        stage.time = time(first, options, i);
        if (options.asLit()) {
          screen.light(
              LitMoment.of(light, rooms, moments.at(stage.time, stage.weather), Optional.of(room)));
        }
        if (stage.measure == Stage.Measure.MOMENT) {
          scored
              .moments()
              .ifPresent(m -> screen.joints(JointsThen.of(m, stage.time, stage.weather)));
        }
        screen.draw(target, stage, scale(options));
        Pixels frame = target.read();
        gl.check();
        reel.add(frame);
      }
      reel.finish();
    }
  }

  /** The room filmed, and the one stood in when that is another. */
  private static List<String> roomsSeen(ViewModel model, Stage stage, String room) {
    return new Walker(model.house())
        .room(stage.camera.eye())
        .map(r -> r.id())
        .filter(id -> !id.equals(room))
        .map(id -> List.of(room, id))
        .orElse(List.of(room));
  }

  /** Layout is made for 1280 units across. */
  private static double scale(Options options) {
    return Math.max(0.5, Math.min(options.width() / 1280.0, options.height() / 720.0));
  }

  private static ZonedDateTime time(ZonedDateTime first, Options options, int i) {
    if (options.span() == Span.DAY) {
      long minutes = Math.round(24.0 * 60 * i / options.frames());
      return first.toLocalDate().atStartOfDay(first.getZone()).plusMinutes(minutes);
    }
    return first.withDayOfYear(1 + (int) Math.floor(365.0 * i / options.frames()));
  }

  private static String roomId(ViewModel model, Options options) {
    return options
        .roomId()
        .or(() -> Stop.all(model).stream().findFirst().map(s -> s.surface().roomId()))
        .orElse(model.house().rooms().get(0).id());
  }

  private static Stage stage(ViewModel model, HouseShape shape, Options options) {
    String room = roomId(model, options);
    Stage stage = new Stage(Show.noon(model.house()), Camera.around(shape.middle(), 0, 0.5, 10));
    Controls controls = new Controls(stage);
    controls.show(model, shape);
    Optional<Peak> worst =
        Stop.all(model).stream()
            .filter(s -> s.surface().roomId().equals(room))
            .map(Stop::peak)
            .findFirst();
    if (!options.asLit()) {
      controls.goOutside(1.6);
      worst.ifPresent(p -> stage.time = p.at());
      stage.measure = Stage.Measure.MOMENT;
    } else {
      worst.ifPresentOrElse(p -> Stop.look(model, stage, p), () -> controls.standIn(room));
      stage.look = Stage.Look.AS_LIT;
      stage.panes = Stage.Panes.ROOM;
      Stop.all(model).stream()
          .filter(s -> s.surface().roomId().equals(room))
          .findFirst()
          .ifPresent(s -> stage.surface = Optional.of(s.surface().id()));
    }
    options.at().ifPresent(t -> stage.time = t);
    return stage;
  }
}
