package slantlight.scene;

import java.io.BufferedOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Files that appear whole or not at all: written beside their place under a temporary name, flushed
 * to the disk, then moved. If the program is interrupted, the temporary file is removed.
 */
public final class WholeFile {
  private static final Set<Path> UNFINISHED = ConcurrentHashMap.newKeySet();
  private static final AtomicLong COUNT = new AtomicLong();
  private static final int BUFFER = 1 << 16;
  private static volatile boolean stopping;

  static {
    Runtime.getRuntime().addShutdownHook(new Thread(WholeFile::removeUnfinished, "unfinished"));
  }

  private WholeFile() {}

  /** Writes the content of a file. */
  @FunctionalInterface
  public interface Content {
    /** Writes everything; the stream is closed by the caller. */
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * Writes a file, replacing what is there. Something that is no file, such as a pipe, is written
   * straight.
   *
   * @throws IOException if anything fails; the file is then as it was before
   */
  public static void write(Path file, Content content) throws IOException {
    if (Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file)) {
      try (OutputStream out = Files.newOutputStream(file)) {
        content.writeTo(out);
      }
      return;
    }
    Path temporary = temporaryFor(file);
    try {
      try (OutputStream out = new BufferedOutputStream(begun(temporary), BUFFER)) {
        content.writeTo(out);
      }
      move(temporary, file);
    } catch (IOException e) {
      if (stopping) {
        throw new CancellationException("interrupted while writing " + file);
      }
      throw e;
    } finally {
      Files.deleteIfExists(temporary);
      UNFINISHED.remove(temporary);
    }
  }

  /** Writes a text in UTF-8. */
  public static void write(Path file, String text) throws IOException {
    write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static Path temporaryFor(Path file) {
    String name =
        "."
            + file.getFileName()
            + "."
            + ProcessHandle.current().pid()
            + "-"
            + COUNT.incrementAndGet();
    return file.toAbsolutePath().resolveSibling(name + ".part");
  }

  /** Opens a temporary file, unless the program is being stopped: then none may be left behind. */
  private static OutputStream begun(Path temporary) throws IOException {
    synchronized (UNFINISHED) {
      if (stopping) {
        throw new CancellationException("interrupted");
      }
      UNFINISHED.add(temporary);
      return synced(temporary);
    }
  }

  private static OutputStream synced(Path file) throws IOException {
    return new FileOutputStream(file.toFile()) {
      @Override
      public void close() throws IOException {
        if (getFD().valid()) {
          getFD().sync();
        }
        super.close();
      }
    };
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void removeUnfinished() {
    synchronized (UNFINISHED) {
      stopping = true;
      for (Path path : UNFINISHED) {
        try {
          Files.deleteIfExists(path);
        } catch (IOException e) {
          System.err.println("cannot remove " + path + ": " + e.getMessage());
        }
      }
    }
  }
}
