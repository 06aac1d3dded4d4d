package slantlight.board;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import slantlight.geom.Vec2;
import slantlight.scene.BoardSize;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Surface;

/**
 * Counts the material that a layout needs. Boards: one per piece, offcuts are waste. Tape: joints
 * between boards and inside corners. Corner bead: outside corners and, when asked for, the edges of
 * windows whose returns are boarded. Compound by {@link Coverage}. Screws by {@link Fasteners}.
 */
public final class QuantityTakeoff {
  private final House house;
  private final Corners corners;
  private final Coverage coverage;
  private final boolean returns;

  /**
   * A takeoff without window returns.
   *
   * @param house the house, for the corners between its surfaces
   */
  public QuantityTakeoff(House house) {
    this(house, Coverage.shipped(), false);
  }

  /**
   * A takeoff by given rules.
   *
   * @param returns true when the reveals of windows are boarded and beaded
   */
  public QuantityTakeoff(House house, Coverage coverage, boolean returns) {
    this.house = house;
    this.corners = Corners.of(house);
    this.coverage = coverage;
    this.returns = returns;
  }

  /**
   * Material for one surface.
   *
   * @param level finish level, 0 to 5; level 0 has no tape, bead or compound
   */
  public Quantities of(Surface surface, Layout layout, int level) {
    if (!surface.boarded()) {
      return new Quantities(Map.of(), 0, 0, 0, 0, 0, 0);
    }
    Map<BoardSize, Integer> boards = new HashMap<>();
    double bought = 0;
    for (PlacedBoard b : layout.boards()) {
      boards.merge(rounded(b.stock()), 1, Integer::sum);
      bought += b.stock().width() * b.stock().length();
    }
    double area = surface.face().area();
    double joints = layout.joints().stream().mapToDouble(Joint::length).sum();
    double tape = level == 0 ? 0 : joints + corners.inside(surface.id());
    double bead = level == 0 ? 0 : corners.outside(surface.id()) + returnBead(surface);
    int screws = layout.boards().isEmpty() ? 0 : Fasteners.all(surface, layout.boards()).size();
    return new Quantities(
        boards, area, bought, tape, coverage.compound(level) * area, bead, screws);
  }

  /** To 0.01 mm, so that 12 ft reached by different sums is one size. */
  private static BoardSize rounded(BoardSize b) {
    return new BoardSize(Math.round(b.width() * 1e5) / 1e5, Math.round(b.length() * 1e5) / 1e5);
  }

  /** Sum over surfaces. */
  public static Quantities sum(Collection<Quantities> parts) {
    Map<BoardSize, Integer> boards = new HashMap<>();
    double[] s = new double[5];
    int screws = 0;
    for (Quantities q : parts) {
      q.boards().forEach((size, n) -> boards.merge(size, n, Integer::sum));
      s[0] += q.netArea();
      s[1] += q.boardArea();
      s[2] += q.tape();
      s[3] += q.compound();
      s[4] += q.cornerBead();
      screws += q.fasteners();
    }
    return new Quantities(boards, s[0], s[1], s[2], s[3], s[4], screws);
  }

  /** Edges of the surface's windows with a reveal, those on the outline left out. */
  private double returnBead(Surface surface) {
    double length = 0;
    for (Opening o : house.openings()) {
      boolean counts =
          returns
              && o.surfaceId().equals(surface.id())
              && o.kind() != OpeningKind.PASSAGE
              && o.revealDepth() > 0;
      if (counts) {
        double lowest = surface.face().outer().stream().mapToDouble(Vec2::y).min().orElseThrow();
        var ring = o.face().outer();
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
          boolean onFloor = ring.get(i).y() < lowest + 1e-3 && ring.get(j).y() < lowest + 1e-3;
          length += onFloor ? 0 : ring.get(i).distance(ring.get(j));
        }
      }
    }
    return length;
  }
}
