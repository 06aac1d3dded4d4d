package slantlight.sheet;

/** Text inside XML and HTML. */
public final class Xml {
  private Xml() {}

  /**
   * The text with everything escaped that could end or begin markup, in an element or in a quoted
   * attribute; characters that XML cannot hold become U+FFFD.
   */
  public static String escape(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(c -> append(out, c));
    return out.toString();
  }

  private static void append(StringBuilder out, int c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      default -> out.appendCodePoint(allowed(c) ? c : 0xfffd);
    }
  }

  /** Char of XML 1.0, section 2.2. */
  private static boolean allowed(int c) {
    return c == 0x9
        || c == 0xa
        || c == 0xd
        || (c >= 0x20 && c <= 0xd7ff)
        || (c >= 0xe000 && c <= 0xfffd)
        || c >= 0x10000;
  }
}
