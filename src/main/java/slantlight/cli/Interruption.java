package slantlight.cli;

import java.util.concurrent.atomic.AtomicBoolean;

/** Says so when the user stops a command; unfinished files are removed by their writer. */
final class Interruption {
  private final AtomicBoolean over = new AtomicBoolean();

  private Interruption() {}

  /** Watches until {@link #over}. */
  static Interruption watch() {
    Interruption interruption = new Interruption();
    Runtime.getRuntime().addShutdownHook(new Thread(interruption::tell, "interruption"));
    return interruption;
  }

  /** The command has ended by itself. */
  void over() {
    over.set(true);
  }

  private void tell() {
    if (!over.get()) {
      System.err.println("\nslantlight: stopped; nothing was left half-written");
    }
  }
}
