package slantlight;

/** Stands in for the class of this name when the build is told how long to fuzz. */
public final class FuzzTime {
  public static final String EACH = "${fuzz.duration}";

  private FuzzTime() {}
}
