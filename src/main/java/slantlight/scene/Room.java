package slantlight.scene;

import java.util.List;
import slantlight.geom.Vec2;

/**
 * A room.
 *
 * @param outline floor outline in the world, m, counter-clockwise seen from above
 * @param floor height of the floor, m
 * @param height wall height to the lowest part of the ceiling, m
 */
public record Room(
    String id,
    String label,
    RoomUse use,
    Attention attention,
    List<Vec2> outline,
    double floor,
    double height) {
  public Room {
    outline = List.copyOf(outline);
  }
}
