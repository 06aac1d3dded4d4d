package slantlight.board;

import java.math.BigDecimal;
import java.util.Comparator;
import slantlight.scene.BoardSize;
import slantlight.units.Length;
import slantlight.units.LengthUnit;

/**
 * A kind of board that is bought: a size and a thickness, m. The thinner, then the narrower, then
 * the shorter come first.
 */
public record Stock(BoardSize size, double thickness) implements Comparable<Stock> {
  private static final Comparator<Stock> ORDER =
      Comparator.comparingDouble(Stock::thickness)
          .thenComparingDouble(s -> s.size.width())
          .thenComparingDouble(s -> s.size.length());

  /** To 0.01 mm, so that 12 ft reached by different sums is one size. */
  public Stock {
    size = new BoardSize(rounded(size.width()), rounded(size.length()));
    thickness = rounded(thickness);
  }

  private static double rounded(double metres) {
    return Math.round(metres * 1e5) / 1e5;
  }

  /** As the trade calls it: {@code 48 in x 12 ft, 1/2 in} or {@code 1200 x 3000 mm, 12.5 mm}. */
  public String name() {
    return name(" x ");
  }

  /** The same for print. */
  public String printedName() {
    return name(" \u00d7 ");
  }

  private String name(String by) {
    String width = inFeet() ? widthName() : Long.toString(millimetres(size.width()));
    return width + by + lengthName() + ", " + thicknessName();
  }

  /** Width and thickness, such as {@code 48 in wide, 1/2 in thick}. */
  public String section() {
    return widthName() + " wide, " + thicknessName() + " thick";
  }

  private String widthName() {
    return inFeet()
        ? Math.round(size.width() / LengthUnit.IN.metres()) + " in"
        : millimetres(size.width()) + " mm";
  }

  /** Such as {@code 12 ft} or {@code 3000 mm}. */
  public String lengthName() {
    return inFeet()
        ? Math.round(size.length() / LengthUnit.FT.metres()) + " ft"
        : millimetres(size.length()) + " mm";
  }

  private String thicknessName() {
    return inFeet()
        ? new Length(thickness).feetInches().replace("\"", " in")
        : BigDecimal.valueOf(Math.round(1e4 * thickness), 1).stripTrailingZeros().toPlainString()
            + " mm";
  }

  private boolean inFeet() {
    return whole(size.width() / LengthUnit.IN.metres())
        && whole(size.length() / LengthUnit.FT.metres());
  }

  private static long millimetres(double metres) {
    return Math.round(1000 * metres);
  }

  private static boolean whole(double d) {
    return Math.abs(d - Math.rint(d)) < 1e-3;
  }

  /** m2. */
  public double area() {
    return size.width() * size.length();
  }

  @Override
  public int compareTo(Stock o) {
    return ORDER.compare(this, o);
  }
}
