package slantlight.score;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import slantlight.board.Joint;
import slantlight.geom.Vec2;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;

/** The fastener spots of a surface that are followed: the first in each cell of a lattice. */
final class Spots {
  /** Side of a cell, m. */
  private static final double CELL = 2;

  private Spots() {}

  static List<Vec2> chosen(Surface surface, List<Vec2> fasteners) {
    Map<Long, Vec2> cells = new LinkedHashMap<>();
    for (Vec2 p : fasteners) {
      if (!JointPath.covered(surface, p)) {
        long cell = (long) Math.floor(p.x() / CELL) * 1_000_003L + (long) Math.floor(p.y() / CELL);
        cells.merge(cell, p, (a, b) -> nearer(a, b));
      }
    }
    return new ArrayList<>(cells.values());
  }

  /** The one nearer to the middle of its cell. */
  private static Vec2 nearer(Vec2 a, Vec2 b) {
    return off(a) <= off(b) ? a : b;
  }

  private static double off(Vec2 p) {
    double x = p.x() / CELL;
    double y = p.y() / CELL;
    return Math.hypot(x - Math.floor(x) - 0.5, y - Math.floor(y) - 0.5);
  }

  /** Stand-in joint of no length that carries the spots' ridge. */
  static Joint joint(String surfaceId) {
    return new Joint(
        surfaceId + "#S",
        JointKind.SPOT,
        new Vec2(0, 0),
        new Vec2(0, 0),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }
}
