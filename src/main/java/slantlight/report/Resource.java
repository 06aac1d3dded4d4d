package slantlight.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Files shipped inside the program. */
final class Resource {
  private Resource() {}

  static byte[] bytes(String path) {
    try (InputStream in = Resource.class.getResourceAsStream("/slantlight/" + path)) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: " + path);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + path + " of the program", e);
    }
  }

  static String text(String path) {
    return new String(bytes(path), StandardCharsets.UTF_8);
  }
}
