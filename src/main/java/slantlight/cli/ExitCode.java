package slantlight.cli;

/** Exit codes of every command; part of the interface, listed in the README. */
public final class ExitCode {
  /** The work was done. */
  public static final int OK = 0;

  /** A scene or data file has faults; all of them are on standard error. */
  public static final int FAULTS = 1;

  /** The command line was not understood. */
  public static final int USAGE = 2;

  /** Something could not be written; files that were to be written are as they were before. */
  public static final int OUTPUT = 3;

  /** A defect of the program. */
  public static final int INTERNAL = 4;

  /** Stopped by the user (128 + SIGINT); nothing was left half-written. */
  public static final int INTERRUPTED = 130;

  private ExitCode() {}
}
