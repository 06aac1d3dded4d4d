package slantlight.view;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import slantlight.geom.Vec3;
import slantlight.scene.WholeFile;

/** The window and camera of the last visit to a scene, in a small file of the user's. */
final class Remembered {
  private final Path file;
  private final Properties values = new Properties();
  private final String scene;

  /**
   * What is remembered about a scene.
   *
   * @param file may be missing or spoiled: then nothing is remembered
   */
  Remembered(Path file, Path scene) {
    this.file = file;
    this.scene = Integer.toHexString(scene.toAbsolutePath().normalize().hashCode());
    try (Reader in = Files.newBufferedReader(file)) {
      values.load(in);
    } catch (IOException | IllegalArgumentException e) {
      values.clear();
    }
  }

  /** The user's own file. */
  static Path usual() {
    String config = System.getenv("XDG_CONFIG_HOME");
    Path base =
        config == null || config.isEmpty()
            ? Path.of(System.getProperty("user.home"), ".config")
            : Path.of(config);
    return base.resolve("slantlight").resolve("view.properties");
  }

  Window.Place place() {
    double[] v = numbers("window", 4).orElse(new double[] {-1, -1, 1280, 760});
    return new Window.Place((int) v[0], (int) v[1], (int) v[2], (int) v[3]);
  }

  Optional<Camera> camera() {
    return numbers(scene + ".camera", 6)
        .map(v -> new Camera(new Vec3(v[0], v[1], v[2]), v[3], v[4], v[5]));
  }

  private Optional<double[]> numbers(String key, int count) {
    String[] parts = values.getProperty(key, "").split(",", -1);
    double[] out = new double[count];
    try {
      for (int i = 0; i < count; i++) {
        out[i] = Double.parseDouble(parts[i]);
        if (!Double.isFinite(out[i])) {
          return Optional.empty();
        }
      }
    } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
      return Optional.empty();
    }
    return Optional.of(out);
  }

  /** Keeps them for next time. */
  void keep(Window.Place place, Camera c) throws IOException {
    values.setProperty(
        "window", place.x() + "," + place.y() + "," + place.width() + "," + place.height());
    values.setProperty(
        scene + ".camera",
        c.eye().x()
            + ","
            + c.eye().y()
            + ","
            + c.eye().z()
            + ","
            + c.azimuth()
            + ","
            + c.altitude()
            + ","
            + c.fieldOfView());
    Files.createDirectories(file.getParent());
    WholeFile.write(
        file,
        out -> {
          StringBuilder text = new StringBuilder();
          values.stringPropertyNames().stream()
              .sorted()
              .forEach(k -> text.append(k).append('=').append(values.getProperty(k)).append('\n'));
          out.write(text.toString().getBytes(StandardCharsets.UTF_8));
        });
  }
}
