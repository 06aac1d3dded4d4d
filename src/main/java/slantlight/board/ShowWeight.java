package slantlight.board;

import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;

/** How much a metre of joint would show at a place: what the layout minimises first. */
@FunctionalInterface
public interface ShowWeight {
  /** Every joint counts the same, butt and cut joints three times a tapered one. */
  ShowWeight PLAIN = (at, along, kind) -> kind == JointKind.TAPERED ? 1 : 3;

  /**
   * Weight per metre, at least 0.
   *
   * @param at plane coordinates, m
   * @param along unit direction of the joint in the plane
   */
  double at(Vec2 at, Vec2 along, JointKind kind);

  /** This weight where the surface is in view, nothing under tile, cabinets and wardrobes. */
  default ShowWeight whereUncovered(Surface surface) {
    if (surface.covered().isEmpty()) {
      return this;
    }
    return (at, along, kind) ->
        surface.covered().stream().anyMatch(ring -> Face.inside(ring, at))
            ? 0
            : at(at, along, kind);
  }
}
