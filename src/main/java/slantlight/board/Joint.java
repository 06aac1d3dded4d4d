package slantlight.board;

import java.util.OptionalDouble;
import slantlight.geom.Vec2;
import slantlight.scene.JointKind;

/**
 * A straight joint between boards, in plane coordinates of its surface, m.
 *
 * @param id stable within the house: surface id, "#", T, B or C and a number, such as {@code
 *     great-room/ceiling#B3}
 * @param crownHeight measured crown height, m, when the user gave one
 * @param crownWidth measured crown width, m, when the user gave one
 */
public record Joint(
    String id,
    JointKind kind,
    Vec2 from,
    Vec2 to,
    OptionalDouble crownHeight,
    OptionalDouble crownWidth) {
  /** Length, m. */
  public double length() {
    return from.distance(to);
  }

  /** What a joint is called among those of its surface, such as {@code B3}, by its id. */
  public static String name(String id) {
    return id.substring(id.indexOf('#') + 1);
  }
}
