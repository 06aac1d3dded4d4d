package slantlight.units;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * How a reader is told lengths, areas and volumes: in feet and inches, square feet and US gallons,
 * or in metres, square metres and litres.
 *
 * @param unit of the reader; feet and inches count as one manner, all metric units as the other
 * @param ascii true where no other characters are sure to arrive, as on a terminal
 */
public record Measures(LengthUnit unit, boolean ascii) {
  /** Metres, for what programs read. */
  public static final Measures METRIC = typed(LengthUnit.M);

  /** By definition, 231 cubic inches. */
  private static final double LITRES_PER_US_GALLON = 231 * 0.254 * 0.254 * 0.254;

  /** m2. */
  public static final double SQUARE_FOOT = LengthUnit.FT.metres() * LengthUnit.FT.metres();

  private static final double[] ROUND_FEET = {1, 2, 5, 10, 20, 50, 100};
  private static final double[] ROUND_METRES = {0.5, 1, 2, 5, 10, 20, 50};

  /** For a terminal. */
  public static Measures typed(LengthUnit unit) {
    return new Measures(unit, true);
  }

  /** For paper and for a window of our own, with fractions and powers as print has them. */
  public static Measures printed(LengthUnit unit) {
    return new Measures(unit, false);
  }

  /** To the quarter inch or the centimetre, such as {@code 17' 0 3/4"} or {@code 5.20 m}. */
  public String length(double metres) {
    return unit.imperial() ? feetInches(metres, 4) : format("%.2f m", metres);
  }

  /** From one length to another; one length where they are within half a centimetre. */
  public String span(double low, double high) {
    if (high - low < 5e-3) {
      return length(low);
    }
    return unit.imperial()
        ? length(low) + " to " + length(high)
        : format("%.2f to %.2f m", low, high);
  }

  /** How far off something stands, to the inch or the decimetre. */
  public String distance(double metres) {
    return unit.imperial() ? feetInches(metres, 1) : format("%.1f m", metres);
  }

  /**
   * A short length, to the quarter inch (below an inch the sixteenth) or the millimetre; less than
   * one of them is told as that.
   */
  public String gap(double metres) {
    double inch = LengthUnit.IN.metres();
    double least = unit.imperial() ? inch / 16 : LengthUnit.MM.metres();
    if (metres < least) {
      return "less than " + gap(least);
    }
    return unit.imperial()
        ? feetInches(metres, metres < inch ? 16 : 4)
        : format("%.0f mm", 1000 * metres);
  }

  /** Many lengths together, such as {@code 144 ft} or {@code 43.9 m}. */
  public String total(double metres) {
    return unit.imperial()
        ? format("%,.0f ft", metres / LengthUnit.FT.metres())
        : format("%,.1f m", metres);
  }

  /** An area, given in square metres. */
  public String area(double squareMetres) {
    String number =
        unit.imperial()
            ? format("%,.0f", squareMetres / SQUARE_FOOT)
            : format("%,.1f", squareMetres);
    return number + " " + areaUnit();
  }

  /** What areas are told in. */
  public String areaUnit() {
    if (unit.imperial()) {
      return ascii ? "ft2" : "sq ft";
    }
    return ascii ? "m2" : "m\u00b2";
  }

  /** A volume, given in litres. */
  public String volume(double litres) {
    return unit.imperial()
        ? format("%,.1f US gal", litres / LITRES_PER_US_GALLON)
        : format("%,.0f l", litres);
  }

  /** The longest round length that is no longer than so many metres; the shortest if none is. */
  public double round(double most) {
    double one = (unit.imperial() ? LengthUnit.FT : LengthUnit.M).metres();
    double[] steps = unit.imperial() ? ROUND_FEET : ROUND_METRES;
    double round = steps[0];
    for (double step : steps) {
      round = step * one <= most * (1 + 1e-9) ? step : round;
    }
    return round * one;
  }

  /** A round length in a single unit, such as {@code 10 ft} or {@code 0.5 m}. */
  public String single(double metres) {
    LengthUnit one = unit.imperial() ? LengthUnit.FT : LengthUnit.M;
    DecimalFormat number = new DecimalFormat("0.#", DecimalFormatSymbols.getInstance(Locale.ROOT));
    return number.format(metres / one.metres()) + (unit.imperial() ? " ft" : " m");
  }

  private String feetInches(double metres, int partsOfAnInch) {
    String typed = new Length(metres).feetInches(partsOfAnInch);
    return ascii
        ? typed
        : typed
            .replaceFirst(" ?1/4\"", "\u00bc\"")
            .replaceFirst(" ?1/2\"", "\u00bd\"")
            .replaceFirst(" ?3/4\"", "\u00be\"");
  }

  private static String format(String form, Object... numbers) {
    return String.format(Locale.ROOT, form, numbers);
  }
}
