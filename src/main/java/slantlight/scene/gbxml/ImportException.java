package slantlight.scene.gbxml;

/** A file that gives no scene; the message says where, what is wrong and what to do. */
public final class ImportException extends Exception {
  private static final long serialVersionUID = 1;

  ImportException(String message) {
    super(message);
  }

  ImportException(String message, Throwable cause) {
    super(message, cause);
  }
}
