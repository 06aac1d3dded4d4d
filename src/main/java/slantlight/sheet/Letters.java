package slantlight.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * How much room text takes: that of DejaVu Sans, the widest of the fonts that a sheet names, so
 * that text fits in whichever of them is at hand. Numbers from the font's own metrics (2.37).
 */
final class Letters {
  /** Top of the tallest letters and signs over the baseline, em. */
  static final double ASCENT = 0.82;

  /** Foot of the deepest letters under the baseline, em. */
  static final double DESCENT = 0.21;

  /** Semi-bold against regular, by the sheets' own words. */
  private static final double STRONG = 1.14;

  /** Advances from U+0020 to U+007E, hundredths of an em. */
  private static final int[] ADVANCE = {
    32, 40, 46, 84, 64, 95, 78, 27, 39, 39, 50, 84, 32, 36, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64,
    64, 64, 34, 34, 84, 84, 84, 53, 100, 68, 69, 70, 77, 63, 58, 77, 75, 29, 29, 66, 56, 86, 75, 79,
    60, 79, 69, 63, 61, 73, 68, 99, 69, 61, 69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35, 63,
    63, 28, 28, 58, 28, 97, 63, 61, 63, 63, 41, 52, 39, 63, 59, 82, 59, 59, 52, 64, 34, 64, 84
  };

  private Letters() {}

  /** Width of a line of text, mm. */
  static double width(String text, double size, boolean strong) {
    return text.codePoints().map(Letters::advance).sum() / 100.0 * size * (strong ? STRONG : 1);
  }

  private static int advance(int c) {
    if (c >= 0x20 && c < 0x20 + ADVANCE.length) {
      return ADVANCE[c - 0x20];
    }
    return switch (c) {
      case '\u00b0' -> 50;
      case '\u00d7' -> 84;
      default -> 100;
    };
  }

  /** Text in lines no wider than {@code width}; a word that is wider is cut. */
  static List<String> lines(String text, double size, double width) {
    List<String> out = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, size, false) > width) {
        out.add(cut(line, size, false, width));
        longer = word;
      }
      line = longer;
    }
    out.add(cut(line, size, false, width));
    return out;
  }

  /** As much of a text from its start as fits a width, with an ellipsis where it was cut. */
  static String cut(String text, double size, boolean strong, double width) {
    String out = text;
    for (int keep = text.codePointCount(0, text.length()) - 1;
        keep > 0 && width(out, size, strong) > width;
        keep--) {
      out = text.substring(0, text.offsetByCodePoints(0, keep)).stripTrailing() + "\u2026";
    }
    return out;
  }
}
