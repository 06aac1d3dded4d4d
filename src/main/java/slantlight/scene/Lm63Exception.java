package slantlight.scene;

import java.nio.file.Path;

/** A photometric file that cannot be used: where, what is wrong and what to do. */
public final class Lm63Exception extends Exception {
  private static final long serialVersionUID = 1;

  private final int line;

  Lm63Exception(Path file, int line, String problem, String remedy) {
    super(file + (line > 0 ? ", line " + line : "") + ": " + problem + "; " + remedy);
    this.line = line;
  }

  /** Line of the file, from 1; 0 when the fault is not in a line. */
  public int line() {
    return line;
  }
}
