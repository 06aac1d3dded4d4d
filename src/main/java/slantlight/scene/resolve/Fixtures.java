package slantlight.scene.resolve;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Distribution;
import slantlight.scene.Lamp;
import slantlight.scene.Lm63Exception;
import slantlight.scene.Lm63Reader;
import slantlight.scene.OnHours;
import slantlight.scene.Photometry;
import slantlight.scene.file.SceneFile.FixtureFile;
import slantlight.scene.file.Values;

/** Resolves the lamps. */
final class Fixtures {
  /** A lamp is kept this far off the ceiling, so that it lights it from below, m. */
  private static final double OFF_CEILING = 0.002;

  private static final OnHours EVENING = new OnHours(LocalTime.NOON, LocalTime.of(23, 0), true);

  private final Scope scope;
  private final Rooms rooms;
  private final Path folder;
  private final Map<Path, Optional<Photometry>> files = new LinkedHashMap<>();

  /**
   * Makes the resolver.
   *
   * @param folder folder of the scene file; photometry files lie in it or below
   */
  Fixtures(Scope scope, Rooms rooms, Path folder) {
    this.scope = scope;
    this.rooms = rooms;
    this.folder = folder;
  }

  List<Lamp> lamps(List<FixtureFile> written) {
    List<Lamp> out = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (FixtureFile f : written == null ? List.<FixtureFile>of() : written) {
      if (!ids.add(f.id().text())) {
        scope.fault(f, "id", "the id \"" + f.id().text() + "\" is used twice", "give another");
      }
      lamp(f).ifPresent(out::add);
    }
    return out;
  }

  /** The photometry files that were read, in the order of the scene. */
  Set<Path> files() {
    return files.keySet();
  }

  private Optional<Lamp> lamp(FixtureFile f) {
    Optional<Shell> shell = rooms.room(f, f.room());
    Optional<Photometry> measured = photometry(f);
    if (f.photometry() == null
        && scope.lacks(
            f,
            "lumens",
            f.lumens(),
            "the lamp has no lumens",
            "give lumens, or a photometry file")) {
      return Optional.empty();
    }
    if (f.photometry() != null && f.distribution() != null) {
      scope.fault(
          f, "distribution", "the lamp has a distribution and a photometry file", "keep one");
    }
    if (f.position().z().isEmpty()) {
      scope.fault(f.position(), "the lamp has no height", "give position as [x, y, z]");
      return Optional.empty();
    }
    if (shell.isEmpty() || (f.photometry() != null && measured.isEmpty())) {
      return Optional.empty();
    }
    Vec3 position = lowered(shell.get(), f.position().at(0));
    if (!rooms.inside(shell.get(), f, "position", "the lamp", position)) {
      return Optional.empty();
    }
    Vec3 aim = f.aim() == null ? Vec3.DOWN : f.aim().unit();
    double[] size = size(f, measured);
    Distribution spread =
        measured
            .<Distribution>map(Distribution.Measured::new)
            .orElse(f.distribution() == null ? Distribution.Named.DIFFUSER : f.distribution());
    return Optional.of(
        new Lamp(
            f.id().text(),
            f.label() == null ? Shell.labelOf(f.id().text()) : f.label(),
            shell.get().id(),
            position,
            aim,
            c0(aim, f.turn()),
            spread,
            f.lumens() != null ? f.lumens() : measured.orElseThrow().lumens(),
            size[0],
            size[1],
            size[2],
            hours(f)));
  }

  private static Vec3 lowered(Shell shell, Vec3 p) {
    double top = shell.ceilingAt(new Vec2(p.x(), p.y())).orElse(Double.POSITIVE_INFINITY);
    boolean touching = p.z() > top - OFF_CEILING && p.z() <= top + 1e-6;
    return touching ? new Vec3(p.x(), p.y(), top - OFF_CEILING) : p;
  }

  private static double[] size(FixtureFile f, Optional<Photometry> measured) {
    double[] size = new double[3];
    if (f.size() != null) {
      for (int i = 0; i < f.size().size(); i++) {
        size[i] = f.size().get(i).metres();
      }
    } else if (measured.isPresent()) {
      size[0] = measured.get().width();
      size[1] = measured.get().length();
      size[2] = measured.get().height();
    }
    return size;
  }

  private static List<OnHours> hours(FixtureFile f) {
    return f.on() == null
        ? List.of(EVENING)
        : f.on().stream().map(Values.Span::hours).flatMap(Optional::stream).toList();
  }

  /** Direction of C0 square to the aim: the turn as a plan direction, or level, else east. */
  private static Vec3 c0(Vec3 aim, Double turnDeg) {
    boolean level = Math.hypot(aim.x(), aim.y()) > 1e-3;
    Vec3 hint = level ? aim.cross(Vec3.UP) : Vec3.EAST;
    if (turnDeg != null) {
      double a = Math.toRadians(turnDeg);
      hint = new Vec3(Math.sin(a), Math.cos(a), 0);
    }
    Vec3 square = hint.minus(aim.times(hint.dot(aim)));
    return square.length() < 1e-6 ? Vec3.UP : square.unit();
  }

  private Optional<Photometry> photometry(FixtureFile f) {
    if (f.photometry() == null) {
      return Optional.empty();
    }
    Path file;
    try {
      file = folder.resolve(f.photometry()).normalize();
    } catch (java.nio.file.InvalidPathException e) {
      scope.fault(f, "photometry", "this is no file name", "name an LM-63 file (.ies)");
      return Optional.empty();
    }
    if (Path.of(f.photometry()).isAbsolute() || !file.startsWith(folder)) {
      scope.fault(
          f,
          "photometry",
          "the file lies outside the scene's folder",
          "copy it beside the scene and name it from there");
      return Optional.empty();
    }
    if (!Files.isRegularFile(file)) {
      scope.fault(
          f,
          "photometry",
          "there is no file \"" + f.photometry() + "\" beside the scene",
          "check its name, or use a distribution and lumens");
      return Optional.empty();
    }
    return files.computeIfAbsent(file, p -> read(f, p));
  }

  private Optional<Photometry> read(FixtureFile f, Path file) {
    try {
      if (!file.toRealPath().startsWith(folder.toRealPath())) {
        scope.fault(
            f,
            "photometry",
            "the file is a link out of the scene's folder",
            "copy it beside the scene");
        return Optional.empty();
      }
      return Optional.of(Lm63Reader.read(file));
    } catch (Lm63Exception | java.io.IOException e) {
      scope.fault(
          f,
          "photometry",
          "the file \"" + f.photometry() + "\" cannot be used: " + e.getMessage(),
          "get a sound LM-63 file from the lamp's maker");
      return Optional.empty();
    }
  }
}
