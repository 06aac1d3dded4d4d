package slantlight.cli;

/** Ends a command with one message for the user and an exit code; no stack trace is shown. */
public final class CommandFailure extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int exitCode;

  private CommandFailure(int exitCode, String message, Throwable cause) {
    super(message, cause);
    this.exitCode = exitCode;
  }

  /**
   * A scene or data file cannot be used.
   *
   * @param message where, what is wrong, what to do; may have several lines, one per fault
   */
  public static CommandFailure faults(String message) {
    return new CommandFailure(ExitCode.FAULTS, message, null);
  }

  /** The options contradict each other or name something that the scene does not have. */
  public static CommandFailure usage(String message) {
    return new CommandFailure(ExitCode.USAGE, message, null);
  }

  /** Something could not be written. */
  public static CommandFailure output(String message, Throwable cause) {
    return new CommandFailure(ExitCode.OUTPUT, message, cause);
  }

  int exitCode() {
    return exitCode;
  }
}
