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
    double inches = size.width() / LengthUnit.IN.metres();
    double feet = size.length() / LengthUnit.FT.metres();
    if (whole(inches) && whole(feet)) {
      String thick = new Length(thickness).feetInches().replace("\"", " in");
      return Math.round(inches) + " in x " + Math.round(feet) + " ft, " + thick;
    }
    return Math.round(1000 * size.width())
        + " x "
        + Math.round(1000 * size.length())
        + " mm, "
        + BigDecimal.valueOf(Math.round(1e4 * thickness), 1).stripTrailingZeros().toPlainString()
        + " mm";
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
