package slantlight;

/**
 * How long each fuzz test changes its corpus. Jazzer takes it from an annotation only, so with
 * {@code -Pfuzz} src/test/fuzz stands in for this class, with {@code -Dfuzz.duration} filled in.
 */
public final class FuzzTime {
  public static final String EACH = "3m";

  private FuzzTime() {}
}
