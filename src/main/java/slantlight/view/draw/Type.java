package slantlight.view.draw;

/**
 * A style of type.
 *
 * @param strong semi-bold instead of regular
 * @param size em, layout units
 * @param colour 0xRRGGBB
 */
public record Type(boolean strong, double size, int colour) {
  public static Type plain(double size) {
    return new Type(false, size, Palette.INK);
  }

  public static Type strong(double size) {
    return new Type(true, size, Palette.INK);
  }

  public static Type soft(double size) {
    return new Type(false, size, Palette.SOFT_INK);
  }

  public Type in(int rgb) {
    return new Type(strong, size, rgb);
  }

  /** Line to line. */
  public double line() {
    return size * 1.28;
  }
}
