package slantlight.strength;

import java.io.IOException;
import java.nio.file.Path;
import slantlight.scene.WholeFile;

/** Writes one file again and again, a digit at a time, until the process is killed. */
final class EndlessWriter {
  /** Bytes of each content. */
  static final int SIZE = 300_000;

  private EndlessWriter() {}

  /** Prints a line after each content; the first argument names the file. */
  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[0]);
    for (int i = 0; ; i++) {
      byte[] part = new byte[SIZE / 100];
      java.util.Arrays.fill(part, (byte) ('0' + i % 10));
      WholeFile.write(
          file,
          out -> {
            for (int k = 0; k < 100; k++) {
              out.write(part);
            }
          });
      System.out.write('\n');
      System.out.flush();
    }
  }
}
