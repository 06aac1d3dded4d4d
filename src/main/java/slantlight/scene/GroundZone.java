package slantlight.scene;

import java.util.List;
import slantlight.geom.Vec2;

/**
 * A region of the ground outside that differs from the rest.
 *
 * @param outline world x, y, m
 * @param z height of its surface, m
 * @param reflectance diffuse reflectance, 0 to 1
 * @param wet true when paving carries a film of water
 * @param wind wind speed over water, m/s, at 12.5 m (Cox and Munk 1954)
 */
public record GroundZone(
    String id,
    String label,
    GroundKind kind,
    List<Vec2> outline,
    double z,
    double reflectance,
    boolean wet,
    double wind) {
  public GroundZone {
    outline = List.copyOf(outline);
  }
}
