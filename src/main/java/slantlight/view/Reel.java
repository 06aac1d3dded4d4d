package slantlight.view;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import slantlight.view.gl.Pixels;

/** Where the frames of a film go. */
interface Reel extends AutoCloseable {
  void add(Pixels frame) throws IOException;

  /** Makes the file appear; without it nothing is left behind. */
  void finish() throws IOException;

  @Override
  void close() throws IOException;

  /** The reel for a path, by its ending. */
  static Reel to(Path out, int millis) throws IOException {
    String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".gif")) {
      return new GifReel(out, millis);
    }
    if (name.endsWith(".png") || name.endsWith(".apng")) {
      return new PngReel(out, millis);
    }
    return new FolderReel(out);
  }
}
