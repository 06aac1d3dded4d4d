package slantlight.scene;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The numbers of an LM-63 file in order, separated by blanks, commas or line breaks. */
final class Lm63Numbers {
  private final Path file;
  private final List<String> lines;
  private int line;
  private String[] fields = {};
  private int next;

  /**
   * Numbers from a line on.
   *
   * @param firstLine index of the line, from 0
   */
  Lm63Numbers(Path file, List<String> lines, int firstLine) {
    this.file = file;
    this.lines = lines;
    this.line = firstLine - 1;
  }

  /** Line of the number last read, from 1. */
  int line() {
    return Math.min(lines.size(), line + 1);
  }

  /** The next number. */
  double number(String what) throws Lm63Exception {
    if (!advance()) {
      throw new Lm63Exception(
          file,
          lines.size(),
          "the file ends where " + what + " should stand",
          "get the whole file from its maker");
    }
    String text = fields[next++];
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      throw wrong(text, what);
    }
    throw wrong(text, what);
  }

  /** The next number, a whole one within limits. */
  int whole(String what, int least, int most) throws Lm63Exception {
    double value = number(what);
    if (value != Math.rint(value) || value < least || value > most) {
      throw new Lm63Exception(
          file,
          line(),
          what + " is " + plain(value),
          "it must be a whole number from " + least + " to " + most);
    }
    return (int) value;
  }

  /** As many numbers as asked for, of one table. */
  List<Double> table(String what, int count) throws Lm63Exception {
    List<Double> out = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      if (!advance()) {
        throw new Lm63Exception(
            file,
            lines.size(),
            what + " end after " + i + " of " + count + " values",
            "the file is cut short or its counts are wrong: get the whole file from its maker");
      }
      out.add(number(what));
    }
    return out;
  }

  /** Refuses numbers after the last table. */
  void end() throws Lm63Exception {
    if (advance()) {
      throw new Lm63Exception(
          file,
          line(),
          "\"" + shortened(fields[next]) + "\" stands after the last candela value",
          "the counts of angles are wrong or the file holds more than one luminaire");
    }
  }

  private boolean advance() {
    while (next >= fields.length) {
      line++;
      if (line >= lines.size()) {
        return false;
      }
      String text = lines.get(line).replace(',', ' ').strip();
      fields = text.isEmpty() ? new String[0] : text.split("\\s+", -1);
      next = 0;
    }
    return true;
  }

  private Lm63Exception wrong(String text, String what) {
    return new Lm63Exception(
        file,
        line(),
        "\"" + shortened(text) + "\" stands where " + what + " should",
        "it must be a plain number");
  }

  /** A piece of the file for a message: not long, and without what steers a terminal. */
  static String shortened(String text) {
    String shown = text.length() <= 40 ? text : text.substring(0, 40) + "...";
    return shown.replaceAll("\\p{Cc}", "?");
  }

  static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
