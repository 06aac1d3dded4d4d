package slantlight.scene;

import java.util.List;

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
}
