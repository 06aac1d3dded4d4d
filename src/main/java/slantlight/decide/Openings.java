package slantlight.decide;

import java.util.List;
import java.util.stream.Stream;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Surface;

/** "Does this glass expose the ceiling?": a house without an opening, or with a narrower one. */
public final class Openings {
  /** A hole belongs to an opening when their centres are this near, m. */
  private static final double SAME = 0.02;

  private Openings() {}

  /**
   * The house with an outside opening closed up.
   *
   * @throws IllegalArgumentException if it has no such opening, or it is a passage
   */
  public static House without(House house, String id) {
    Opening opening = outside(house, id);
    Surface surface = house.surface(opening.surfaceId());
    Face f = surface.face();
    List<List<Vec2>> holes = f.holes().stream().filter(h -> !same(h, opening)).toList();
    House closed = Edits.surface(house, surface.withFace(new Face(f.frame(), f.outer(), holes)));
    return closed.withOpenings(house.openings().stream().filter(o -> !o.id().equals(id)).toList());
  }

  /**
   * The house with an outside opening scaled in width about its middle.
   *
   * @param factor above 0, at most 1
   * @throws IllegalArgumentException if it has no such opening, or it is a passage
   */
  public static House narrowed(House house, String id, double factor) {
    if (!(factor > 0 && factor <= 1)) {
      throw new IllegalArgumentException("a width factor is above 0 and at most 1, not " + factor);
    }
    Opening opening = outside(house, id);
    Surface surface = house.surface(opening.surfaceId());
    Face f = surface.face();
    List<Vec2> ring = scaled(opening.face().outer(), factor);
    List<List<Vec2>> holes =
        Stream.concat(f.holes().stream().filter(h -> !same(h, opening)), Stream.of(ring)).toList();
    House out = Edits.surface(house, surface.withFace(new Face(f.frame(), f.outer(), holes)));
    return Edits.opening(out, opening.withFace(Face.of(opening.face().frame(), ring)));
  }

  private static List<Vec2> scaled(List<Vec2> ring, double factor) {
    double middle = middle(ring).x();
    return ring.stream().map(p -> new Vec2(middle + factor * (p.x() - middle), p.y())).toList();
  }

  private static boolean same(List<Vec2> hole, Opening opening) {
    return middle(hole).distance(middle(opening.face().outer())) < SAME;
  }

  private static Vec2 middle(List<Vec2> ring) {
    Vec2 sum = new Vec2(0, 0);
    for (Vec2 p : ring) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / ring.size());
  }

  private static Opening outside(House house, String id) {
    return Edits.findOpening(house, id)
        .filter(o -> o.kind() != OpeningKind.PASSAGE)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no outside opening "
                        + id
                        + "; there are "
                        + String.join(
                            ", ",
                            house.openings().stream()
                                .filter(o -> o.kind() != OpeningKind.PASSAGE)
                                .map(Opening::id)
                                .toList())));
  }
}
