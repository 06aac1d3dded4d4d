package slantlight.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import slantlight.view.gl.Pixels;

/** Numbered PNG files in a folder. */
final class FolderReel implements Reel {
  private final Path folder;
  private int count;

  FolderReel(Path folder) throws IOException {
    this.folder = folder;
    Files.createDirectories(folder);
  }

  @Override
  public void add(Pixels frame) throws IOException {
    frame.write(folder.resolve(String.format(Locale.ROOT, "frame-%04d.png", ++count)));
  }

  @Override
  public void finish() {}

  @Override
  public void close() {}
}
