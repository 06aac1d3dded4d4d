package slantlight.board;

/** The boards fixed by the user leave no way to fill the rest of the surface. */
public final class ImpossibleLayoutException extends RuntimeException {
  private static final long serialVersionUID = 1;

  ImpossibleLayoutException(String message) {
    super(message);
  }
}
