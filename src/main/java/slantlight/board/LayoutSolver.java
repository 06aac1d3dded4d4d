package slantlight.board;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slantlight.board.RowChain.Plan;
import slantlight.geom.Vec2;
import slantlight.scene.BoardRun;
import slantlight.scene.GivenJoint;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;

/**
 * Lays real boards on a surface: rows across or along the framing, ends on members, joints of
 * neighbouring rows staggered, openings and slopes cut truly.
 *
 * <p>The result is the optimum, in this order, of: rules broken (only where none can be kept), the
 * showing-weighted length of visible joints, row joints at an opening's corner, waste, number of
 * boards. It is exact over rows that start with a whole board from either side or are balanced
 * (across the framing) or end on any member (along it), and over joints on members (across) or on a
 * grid of one bay and the stock lengths (along). Waste and boards are told as if every piece had a
 * board of its own; {@link CuttingPlan} shares boards out.
 */
public final class LayoutSolver {
  /** A fault of the whole direction outweighs any number of faults of single joints. */
  private static final long DIRECTION_FAULT = 1_000_000_000;

  private LayoutSolver() {}

  /** The optimum by the common rules, no board fixed. */
  public static Layout solve(Surface surface, ShowWeight weight) {
    return solve(surface, weight, LayoutRules.COMMON, List.of());
  }

  /** The optimum by the given rules, no board fixed. */
  public static Layout solve(Surface surface, ShowWeight weight, LayoutRules rules) {
    return solve(surface, weight, rules, List.of());
  }

  /**
   * The optimum that keeps the fixed boards where they are. A surface that is not boarded gets an
   * empty layout; one whose joints are given gets these and no boards.
   *
   * @param weight of a metre of joint, of order 1: it is resolved to 1e-6
   * @param fixed boards to keep, as placed in an earlier layout
   * @throws ImpossibleLayoutException if the fixed boards leave no way to fill the rest
   */
  public static Layout solve(
      Surface surface, ShowWeight weight, LayoutRules rules, List<PlacedBoard> fixed) {
    if (!surface.boarded() || surface.framing().isEmpty()) {
      return empty(surface, "Not boarded.");
    }
    if (!surface.joints().isEmpty()) {
      return given(surface);
    }
    if (surface.boards().isEmpty() || surface.boards().get().sizes().isEmpty()) {
      return empty(surface, "No boards are on offer.");
    }
    BoardRun wish = surface.boards().get().run();
    List<Candidate> found = new ArrayList<>();
    for (BoardRun run : List.of(BoardRun.ACROSS_FRAMING, BoardRun.ALONG_FRAMING)) {
      if (wish == BoardRun.AUTO || wish == run) {
        Ground ground = new Ground(surface, run, weight, rules, fixed);
        Optional<Plan> plan = RowChain.solve(ground);
        if (plan.isPresent()) {
          found.add(Candidate.of(ground, plan.get()));
        }
      }
    }
    if (found.isEmpty()) {
      throw impossible(surface, fixed);
    }
    Candidate best = found.get(0);
    for (Candidate c : found) {
      best = c.cost.compareTo(best.cost) < 0 ? c : best;
    }
    return draw(best, found);
  }

  /** A direction, its optimum, and that optimum's cost with the direction's own fault. */
  private record Candidate(Ground ground, Plan plan, Cost cost, Optional<String> spacingFault) {
    static Candidate of(Ground ground, Plan plan) {
      Optional<String> fault = GypsumRules.spacingFault(ground.surface, ground.direction);
      Cost cost = plan.cost().withFaults(fault.isPresent() ? DIRECTION_FAULT : 0);
      return new Candidate(ground, plan, cost, fault);
    }
  }

  private static Layout draw(Candidate best, List<Candidate> found) {
    Surface surface = best.ground.surface;
    LayoutDrawing drawing = new LayoutDrawing(best.ground, best.plan);
    List<String> notes = new ArrayList<>();
    if (best.spacingFault.isPresent()) {
      notes.add(best.spacingFault.get());
    }
    notes.addAll(drawing.notes());
    notes.addAll(GypsumRules.controlJoints(surface));
    return new Layout(
        surface.id(),
        best.ground.direction,
        drawing.boards(),
        drawing.joints(),
        Fasteners.field(surface, drawing.boards()),
        reason(best, found),
        notes);
  }

  private static String reason(Candidate best, List<Candidate> found) {
    String way = way(best.ground.direction);
    if (found.size() < 2) {
      boolean asked = best.ground.surface.boards().orElseThrow().run() != BoardRun.AUTO;
      return "Boards run " + way + (asked ? ", as the scene says." : ": the only way that fits.");
    }
    Candidate other =
        found.get(0).ground.direction == best.ground.direction ? found.get(1) : found.get(0);
    String otherWay = way(other.ground.direction);
    if (best.spacingFault.isEmpty() && other.spacingFault.isPresent()) {
      return "Boards run " + way + ": GA-216 does not allow them " + otherWay + " here.";
    }
    if (best.cost.faults() < other.cost.faults()) {
      return "Boards run " + way + ": " + otherWay + " the layout rules cannot all be kept.";
    }
    return "Boards run "
        + way
        + ": their joints weigh "
        + less(best.cost.showing(), other.cost.showing())
        + otherWay
        + " ("
        + lengths(best)
        + ", against "
        + lengths(other)
        + ").";
  }

  /** How two sums of weighted joint compare, the first no larger. */
  private static String less(long best, long other) {
    long percent = other == 0 ? 0 : Math.round(100.0 * (other - best) / other);
    return percent < 1 ? "as much as " : percent + " % less than ";
  }

  private static String way(BoardRun run) {
    return run == BoardRun.ACROSS_FRAMING ? "across the framing" : "along the framing";
  }

  private static String lengths(Candidate c) {
    boolean feet = c.ground.surface.boards().orElseThrow().inInches();
    List<Joint> joints = new LayoutDrawing(c.ground, c.plan).joints();
    double butt = 0;
    double tapered = 0;
    for (Joint j : joints) {
      if (j.kind() == JointKind.TAPERED) {
        tapered += j.length();
      } else {
        butt += j.length();
      }
    }
    return amount(tapered, feet) + " tapered, " + amount(butt, feet) + " butt or cut";
  }

  private static String amount(double metres, boolean feet) {
    if (metres < 5e-3) {
      return "none";
    }
    return feet ? rounded(metres / 0.3048, 0) + " ft" : rounded(metres, 1) + " m";
  }

  /** As {@code %.1f} would print it, without the locale data that a format reads first. */
  private static String rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private static ImpossibleLayoutException impossible(Surface surface, List<PlacedBoard> fixed) {
    StringBuilder numbers = new StringBuilder();
    for (PlacedBoard b : fixed) {
      numbers.append(numbers.isEmpty() ? "" : ", ").append(b.number());
    }
    return new ImpossibleLayoutException(
        surface.id()
            + ": no board on offer fills what the fixed boards ("
            + numbers
            + ") leave; release one of them, or allow longer or wider boards.");
  }

  private static Layout empty(Surface surface, String reason) {
    return new Layout(
        surface.id(), BoardRun.ACROSS_FRAMING, List.of(), List.of(), List.of(), reason);
  }

  /** The joints that are already up; their direction is that of the longest tapered run. */
  private static Layout given(Surface surface) {
    List<Joint> joints = new ArrayList<>();
    Map<JointKind, Integer> count = new EnumMap<>(JointKind.class);
    Vec2 across = surface.framing().orElseThrow().across();
    double acrossLength = 0;
    double alongLength = 0;
    for (GivenJoint g : surface.joints()) {
      int n = count.merge(g.kind(), 1, Integer::sum);
      joints.add(
          new Joint(
              LayoutDrawing.id(surface, g.kind(), n),
              g.kind(),
              g.from(),
              g.to(),
              g.crownHeight(),
              g.crownWidth()));
      Vec2 d = g.to().minus(g.from());
      double sign = g.kind() == JointKind.TAPERED ? 1 : -1;
      acrossLength += sign * Math.abs(d.dot(across));
      alongLength += sign * Math.abs(d.cross(across));
    }
    return new Layout(
        surface.id(),
        acrossLength >= alongLength ? BoardRun.ACROSS_FRAMING : BoardRun.ALONG_FRAMING,
        List.of(),
        joints,
        Fasteners.onMembers(surface),
        "Joints as given in the scene.");
  }

  /** No measured crown. */
  static Joint unmeasured(String id, JointKind kind, Vec2 from, Vec2 to) {
    return new Joint(id, kind, from, to, OptionalDouble.empty(), OptionalDouble.empty());
  }
}
