package slantlight.view.draw;

/**
 * A line of type as it was placed, for the check that nothing is clipped or overlaps.
 *
 * @param bounds what the glyphs cover
 * @param room where it was allowed to be
 */
public record Placed(String text, Box bounds, Box room) {}
