package slantlight.view;

import java.util.Optional;
import slantlight.geom.Vec2;

/**
 * Where the pointer rests.
 *
 * @param at where on the surface, plane coordinates, m
 * @param x of the pointer, layout units
 * @param y of the pointer
 */
record Hover(String surfaceId, Optional<String> jointId, Vec2 at, double x, double y) {
  static Hover of(Picked picked, double x, double y) {
    return new Hover(
        picked.surface().id(), picked.joint().map(j -> j.joint().id()), picked.at(), x, y);
  }
}
