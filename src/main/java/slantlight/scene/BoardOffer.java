package slantlight.scene;

import java.util.List;
import slantlight.units.LengthUnit;

/**
 * The boards that may be hung on a surface.
 *
 * @param sizes stock sizes on offer
 * @param thickness m
 * @param run direction of the long edges
 * @param carry longest board that can be carried in, m; infinite when nothing hinders
 */
public record BoardOffer(List<BoardSize> sizes, double thickness, BoardRun run, double carry) {
  public BoardOffer {
    sizes = List.copyOf(sizes);
  }

  /** True when every board is a whole number of inches wide: its buyer measures in feet. */
  public boolean inInches() {
    return sizes.stream()
        .map(b -> b.width() / LengthUnit.IN.metres())
        .allMatch(w -> Math.abs(w - Math.rint(w)) < 1e-6);
  }
}
