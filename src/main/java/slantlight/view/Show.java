package slantlight.view;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import slantlight.geom.Vec3;
import slantlight.scene.Fault;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.score.ScoreOptions;
import slantlight.view.draw.Box;
import slantlight.view.gl.Target;

/** The viewer's window: one loop that draws when something changed. */
public final class Show implements AutoCloseable {
  private static final double STILL_SECONDS = 0.1;
  private static final long RELOAD_NANOS = 700_000_000L;
  private final Path scene;
  private final Path stills;
  private final Window window;
  private final Stage stage;
  private final Controls controls;
  private final Remembered remembered;
  private final Window.Place start;
  private final int samples;
  private Screen screen;
  private Workshop workshop;
  private Target target;
  private FileTime read;
  private long looked = System.nanoTime();
  private Optional<Hits.Act> pulling = Optional.empty();
  private boolean dragged;
  private int kept;

  /** Told when the first picture and the scores were there. */
  private final Consumer<String> times;

  private final long began = System.nanoTime();
  private final double workBefore = work();
  private boolean shown;

  private Show(Path scene, House house, Path stills, boolean debug, Consumer<String> times) {
    this.scene = scene;
    this.stills = stills;
    this.times = times;
    remembered = new Remembered(Remembered.usual(), scene);
    start = remembered.place();
    window = new Window(house.name() + " - Slantlight", start, debug);
    boolean software = window.context().renderer().contains("llvmpipe");
    samples = software ? 1 : 4;
    stage = new Stage(noon(house), Camera.around(new Vec3(0, 0, 0), 0, 0.5, 10));
    controls = new Controls(stage);
    open(house);
    controls.goOutside(aspect());
    remembered.camera().ifPresent(controls::stand);
    read = modified();
  }

  /**
   * Opens the window on a scene and returns when it is closed.
   *
   * @param house the scene as read
   * @param stills folder for kept pictures
   * @param debug whether to ask the driver for its own messages
   * @param times told in words how long the first picture and the scores took
   * @throws slantlight.view.gl.GlUnavailable when there is no desktop or no OpenGL 3.3
   */
  public static void run(
      Path scene, House house, Path stills, boolean debug, Consumer<String> times) {
    try (Show show = new Show(scene, house, stills, debug, times)) {
      show.loop();
    }
  }

  /** Equinox noon of the year that is scored: a time that shows something everywhere. */
  static ZonedDateTime noon(House house) {
    return LocalDate.of(ScoreOptions.DEFAULT_YEAR, 3, 21).atTime(12, 0).atZone(house.site().zone());
  }

  private void open(House house) {
    ViewModel empty = ViewModel.unscored(house);
    if (screen == null) {
      screen = new Screen(empty, samples);
    } else {
      screen.show(empty);
    }
    controls.show(empty, screen.shape());
    workshop = new Workshop(house, Scores::of);
  }

  private void loop() {
    boolean fresh = true;
    String said = "";
    while (window.open()) {
      List<Window.Event> events =
          window.events(fresh || stage.playing != Stage.Play.NO ? 0 : STILL_SECONDS);
      Optional<Hover> rested = stage.hover;
      boolean changed = fresh || events.stream().anyMatch(e -> !(e instanceof Window.Event.Move));
      for (Window.Event e : events) {
        obey(e);
      }
      changed |= !rested.equals(stage.hover);
      boolean taken = pickUp();
      fresh = reload() || taken;
      if (stage.playing != Stage.Play.NO) {
        play();
        changed = true;
      }
      if (stage.look == Stage.Look.AS_LIT) {
        workshop.want(controls.rooms(), stage.time, stage.weather);
      }
      if (stage.measure == Stage.Measure.MOMENT) {
        workshop.wantJoints(stage.time, stage.weather);
      }
      String working = workshop.failure().isEmpty() ? workshop.working() : workshop.failure();
      if (changed || fresh || resized() || !Objects.equals(working, said)) {
        said = working;
        screen.working(working);
        draw();
      }
    }
  }

  private boolean resized() {
    int[] size = window.pixels();
    return target == null || target.width() != size[0] || target.height() != size[1];
  }

  private void draw() {
    int[] size = window.pixels();
    if (size[0] == 0 || size[1] == 0) {
      return;
    }
    if (resized()) {
      if (target != null) {
        target.close();
      }
      target = new Target(size[0], size[1], 1);
    }
    screen.draw(target, stage, window.scale());
    target.toWindow();
    window.swap();
    if (!shown) {
      shown = true;
      tell("first picture");
    }
  }

  /** Says how long ago the viewer was started, by the clock and in work of all its threads. */
  private void tell(String what) {
    times.accept(
        String.format(
            Locale.ROOT,
            "%s after %.2f s by the clock, %.2f s of processor time (and %.2f s before the viewer)",
            what,
            (System.nanoTime() - began) / 1e9,
            work() - workBefore,
            workBefore));
  }

  /** Processor time of this program so far, s. */
  private static double work() {
    Duration d = ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    return d.toMillis() / 1000.0;
  }

  private boolean pickUp() {
    boolean[] any = {false};
    workshop.take(
        model -> {
          stage.hover = Optional.empty();
          screen.show(model);
          controls.show(model, screen.shape());
          if (stage.time.equals(noon(model.house()))) {
            new Almanac(model, Optional.empty()).worst().ifPresent(p -> stage.time = p.at());
          }
          any[0] = true;
          tell("scores");
        },
        moment -> {
          screen.light(moment);
          any[0] = true;
        },
        joints -> {
          screen.joints(joints);
          any[0] = true;
        });
    return any[0];
  }

  private void play() {
    stage.time =
        stage.playing == Stage.Play.DAY
            ? stage.time.plusMinutes(3).with(stage.time.toLocalDate())
            : stage.time.plusDays(1);
  }

  /** Reads the scene again when its file changed; a broken edit keeps the last good scene. */
  private boolean reload() {
    long now = System.nanoTime();
    if (now - looked < RELOAD_NANOS) {
      return false;
    }
    looked = now;
    FileTime time = modified();
    if (time.equals(read)) {
      return false;
    }
    read = time;
    Read found = SceneReader.read(scene);
    if (found instanceof Read.Ok ok) {
      stage.notice = Optional.empty();
      stage.surface = Optional.empty();
      stage.joint = Optional.empty();
      stage.hover = Optional.empty();
      workshop.close();
      open(ok.house());
    } else if (found instanceof Read.Faulty faulty) {
      stage.notice = Optional.of(faults(faulty.faults()));
    }
    return true;
  }

  /** The first fault, and how many more there are. */
  static String faults(List<Fault> faults) {
    String first = faults.get(0).text();
    return faults.size() == 1 ? first : first + " (and " + (faults.size() - 1) + " more)";
  }

  private FileTime modified() {
    try {
      return Files.getLastModifiedTime(scene);
    } catch (IOException e) {
      return FileTime.fromMillis(0);
    }
  }

  private double aspect() {
    int[] size = window.pixels();
    double k = window.scale();
    Box picture = Arrangement.of(new Box(0, 0, size[0] / k, size[1] / k), stage).room();
    return picture.h() > 0 && picture.w() > 0 ? picture.w() / picture.h() : 1.6;
  }

  private void obey(Window.Event event) {
    if (event instanceof Window.Event.Move m) {
      boolean looking = !stage.presenting && !stage.keyCard;
      stage.hover = looking ? screen.under(m.x(), m.y(), stage.camera) : Optional.empty();
      return;
    }
    stage.hover = Optional.empty();
    if (event instanceof Window.Event.Key k) {
      key(k.press());
    } else if (event instanceof Window.Event.Down d) {
      dragged = false;
      pulling = Optional.ofNullable(screen.hits().find(d.x(), d.y()));
      pulling.ifPresent(a -> a.at(d.x(), d.y()));
    } else if (event instanceof Window.Event.Drag d) {
      dragged = true;
      pulling.ifPresentOrElse(a -> a.at(d.x(), d.y()), () -> controls.drag(d.dx(), d.dy()));
    } else if (event instanceof Window.Event.Up u) {
      if (!dragged && pulling.isEmpty() && screen.picture().contains(u.x(), u.y())) {
        Vec3 ray = stage.camera.ray(u.x(), u.y(), screen.picture());
        controls.choose(Picked.along(screen.model(), stage.camera.eye(), ray));
      }
      pulling = Optional.empty();
    } else if (event instanceof Window.Event.Wheel w) {
      controls.wheel(w.notches());
    }
  }

  private void key(Controls.Press press) {
    switch (press.key()) {
      case "K" -> still();
      case "F" -> window.wholeScreen(start);
      default -> controls.press(press, aspect());
    }
  }

  private void still() {
    Path file;
    do {
      kept++;
      file = stills.resolve(String.format(Locale.ROOT, "still-%03d.png", kept));
    } while (Files.exists(file));
    try {
      target.read().write(file);
      stage.notice = Optional.of("Kept " + file);
    } catch (IOException e) {
      stage.notice = Optional.of("The still could not be written: " + e.getMessage());
    }
  }

  @Override
  public void close() {
    try {
      remembered.keep(window.place(), stage.camera);
    } catch (IOException e) {
      throw new UncheckedIOException("window and camera could not be remembered", e);
    } finally {
      workshop.close();
      screen.close();
      if (target != null) {
        target.close();
      }
      window.close();
    }
  }
}
