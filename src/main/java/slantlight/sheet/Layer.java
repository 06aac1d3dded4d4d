package slantlight.sheet;

import java.util.List;

/**
 * Marks that belong together, drawn in order.
 *
 * @param id such as {@code joints}
 */
public record Layer(String id, List<Mark> marks) {
  public Layer {
    marks = List.copyOf(marks);
  }
}
