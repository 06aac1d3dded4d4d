package slantlight.cli;

import java.io.PrintWriter;
import java.util.Locale;
import slantlight.units.Length;

/** Numbers and paragraphs as the commands print them. */
final class Words {
  private Words() {}

  /** A showing, such as 3.4 or 12. */
  static String showing(double value) {
    return String.format(Locale.ROOT, value < 9.95 ? "%.1f" : "%.0f", value);
  }

  /** A length in both systems. */
  static String length(double metres) {
    return String.format(Locale.ROOT, "%.2f m (%s)", metres, new Length(metres).feetInches());
  }

  /** A paragraph; its later lines are indented by two more than its first. */
  static void paragraph(PrintWriter out, int width, int indent, String text) {
    String lead = " ".repeat(indent);
    int n = 0;
    for (String line : TextTable.wrapped(text, width - indent - 2)) {
      out.println(lead + (n++ == 0 ? "" : "  ") + line);
    }
  }
}
