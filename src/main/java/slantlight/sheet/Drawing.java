package slantlight.sheet;

import java.util.List;

/**
 * A finished sheet.
 *
 * @param id safe to use in a file name and as an XML id
 * @param title what it shows
 * @param description the same in words, for a person who cannot see it
 * @param width mm
 * @param height mm
 * @param layers drawn in order
 */
public record Drawing(
    String id, String title, String description, double width, double height, List<Layer> layers) {
  public Drawing {
    layers = List.copyOf(layers);
  }
}
