package slantlight.board;

import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import slantlight.geom.Vec2;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Surface;

/**
 * Counts the material that a layout needs. Boards by {@link CuttingPlan}: what is left of one
 * serves other pieces. Tape: joints between boards and inside corners. Corner bead: outside corners
 * and, when asked for, the edges of windows whose returns are boarded. Compound by {@link
 * Coverage}. Screws by {@link Fasteners}.
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
      return new Quantities(new TreeMap<>(), 0, 0, 0, 0, 0, 0);
    }
    CuttingPlan plan = CuttingPlan.of(List.of(surface), List.of(layout));
    double area = surface.face().area();
    double joints = layout.joints().stream().mapToDouble(Joint::length).sum();
    double tape = level == 0 ? 0 : joints + corners.inside(surface.id());
    double bead = level == 0 ? 0 : corners.outside(surface.id()) + returnBead(surface);
    int screws = layout.boards().isEmpty() ? 0 : Fasteners.all(surface, layout.boards()).size();
    return new Quantities(
        plan.order(),
        plan.pieces().isEmpty() ? 0 : area,
        plan.area(),
        tape,
        coverage.compound(level) * area,
        bead,
        screws);
  }

  /**
   * Sum over surfaces. Fewer boards than the surfaces' own together, since what one leaves serves
   * another.
   *
   * @param plan for all these surfaces
   */
  public static Quantities sum(Collection<Quantities> parts, CuttingPlan plan) {
    double[] s = new double[4];
    int screws = 0;
    for (Quantities q : parts) {
      s[0] += q.netArea();
      s[1] += q.tape();
      s[2] += q.compound();
      s[3] += q.cornerBead();
      screws += q.fasteners();
    }
    return new Quantities(plan.order(), s[0], plan.area(), s[1], s[2], s[3], screws);
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
