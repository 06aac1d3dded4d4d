package slantlight.view.gl;

/** There is no OpenGL 3.3 here; the message says what was tried and what to do. */
public final class GlUnavailable extends RuntimeException {
  public GlUnavailable(String message) {
    super(message);
  }
}
