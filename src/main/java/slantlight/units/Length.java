package slantlight.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length, m, read from and written in the ways people on a building site write it: {@code 14' 6
 * 1/2"}, {@code 6ft 2in}, {@code 5/8 in}, {@code 4.42 m}, {@code 150 mm}.
 */
public record Length(double metres) {
  /** What a person may write, for messages. */
  public static final String FORMS = "a number or a string such as \"14' 6 1/2\\\"\" or \"4.42 m\"";

  private static final String NUMBER =
      "(?:(?:(\\d{1,9})(?:\\s+|-))?(\\d{1,9})\\s*/\\s*(\\d{1,9})|(\\d{1,12}(?:\\.\\d*)?|\\.\\d+))";
  private static final Pattern FEET_INCHES =
      Pattern.compile(
          "([+-]?)\\s*"
              + NUMBER
              + "\\s*(?:feet|foot|ft\\.?|')(?:\\s*-?\\s*"
              + NUMBER
              + "\\s*(?:inches|inch|in\\.?|\"))?");
  private static final Pattern SINGLE =
      Pattern.compile("([+-]?)\\s*" + NUMBER + "\\s*(inches|inch|in\\.?|\"|mm|cm|m|)");
  private static final long INCHES_PER_FOOT = 12;

  /**
   * Reads a length.
   *
   * @param text what the person wrote; ASCII or typographic primes, fractions and minus signs
   * @param bare the unit of a number without one
   * @return empty when the text is no length
   */
  public static Optional<Length> parse(String text, LengthUnit bare) {
    if (text.length() > 80) {
      return Optional.empty();
    }
    String s = plain(text);
    Matcher feet = FEET_INCHES.matcher(s);
    if (feet.matches()) {
      double inches = feet.group(7) == null && feet.group(9) == null ? 0 : number(feet, 6);
      return signed(
          feet.group(1),
          number(feet, 2) * LengthUnit.FT.metres() + inches * LengthUnit.IN.metres());
    }
    Matcher one = SINGLE.matcher(s);
    if (!one.matches()) {
      return Optional.empty();
    }
    return signed(one.group(1), number(one, 2) * unit(one.group(6), bare).metres());
  }

  private static Optional<Length> signed(String sign, double metres) {
    return Double.isFinite(metres)
        ? Optional.of(new Length(sign.equals("-") ? -metres : metres))
        : Optional.empty();
  }

  private static double number(Matcher m, int group) {
    if (m.group(group + 3) != null) {
      return Double.parseDouble(m.group(group + 3));
    }
    String whole = m.group(group);
    return (whole == null ? 0 : Double.parseDouble(whole))
        + Double.parseDouble(m.group(group + 1)) / Double.parseDouble(m.group(group + 2));
  }

  private static LengthUnit unit(String word, LengthUnit bare) {
    return switch (word) {
      case "" -> bare;
      case "m" -> LengthUnit.M;
      case "cm" -> LengthUnit.CM;
      case "mm" -> LengthUnit.MM;
      default -> LengthUnit.IN;
    };
  }

  /** Lower case, ASCII primes and minus, fractions spelled with a slash. */
  private static String plain(String text) {
    StringBuilder out = new StringBuilder();
    for (char c : text.strip().toLowerCase(Locale.ROOT).toCharArray()) {
      switch (c) {
        case '\u2032', '\u2019', '\u2018' -> out.append('\'');
        case '\u2033', '\u201d', '\u201c' -> out.append('"');
        case '\u2212', '\u2010', '\u2011', '\u2013' -> out.append('-');
        case '\u00a0', '\u2009', '\u202f' -> out.append(' ');
        case '\u2044' -> out.append('/');
        case '\u00bd' -> out.append(" 1/2");
        case '\u00bc' -> out.append(" 1/4");
        case '\u00be' -> out.append(" 3/4");
        case '\u215b' -> out.append(" 1/8");
        case '\u215c' -> out.append(" 3/8");
        case '\u215d' -> out.append(" 5/8");
        case '\u215e' -> out.append(" 7/8");
        default -> out.append(c);
      }
    }
    return out.toString().replace("''", "\"").strip();
  }

  /** Feet and inches to the nearest 1/16 in, such as {@code 14' 6 1/2"} or {@code 5/8"}. */
  public String feetInches() {
    return feetInches(16);
  }

  /**
   * Feet and inches to the nearest part of an inch, such as {@code 17' 0 3/4"}.
   *
   * @param parts of an inch, a power of two
   */
  String feetInches(int parts) {
    long all = Math.round(Math.abs(metres) / LengthUnit.IN.metres() * parts);
    long feet = all / (INCHES_PER_FOOT * parts);
    long inches = all / parts % INCHES_PER_FOOT;
    StringBuilder out = new StringBuilder(metres < 0 && all > 0 ? "-" : "");
    if (feet > 0) {
      out.append(feet).append("' ");
    }
    long top = all % parts;
    if (feet > 0 || inches > 0 || top == 0) {
      out.append(inches).append(top > 0 ? " " : "");
    }
    if (top > 0) {
      long common = Long.lowestOneBit(top);
      out.append(top / common).append('/').append(parts / common);
    }
    return out.append('"').toString();
  }

  /** Metres to the millimetre, such as {@code 4.42 m}. */
  public String metric() {
    return decimal(metres, 3) + " m";
  }

  /** Whole millimetres, such as {@code 150 mm}. */
  public String millimetres() {
    return decimal(metres * 1000, 0) + " mm";
  }

  /** Written in the manner of a scene drawn in that unit. */
  public String format(LengthUnit unit) {
    return switch (unit) {
      case FT, IN -> feetInches();
      case MM -> millimetres();
      case M, CM -> metric();
    };
  }

  private static String decimal(double value, int digits) {
    BigDecimal d = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
    return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
  }
}
