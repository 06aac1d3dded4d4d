package slantlight.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.scene.BoardRun;
import slantlight.scene.Framing;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/**
 * Rules of GA-216 and ASTM C840 about a whole surface: largest framing spacing by board thickness
 * and direction (IRC Table R702.3.5 has the same numbers; from memory), and the largest area
 * between control joints (walls 30 ft; ceilings 50 ft with perimeter relief, 30 ft without; the
 * ceiling figures from memory).
 */
public final class GypsumRules {
  private static final double INCH = 0.0254;
  private static final double FOOT = 0.3048;

  private GypsumRules() {}

  /**
   * Largest framing spacing, m; 0 when that direction is not allowed at all.
   *
   * @param thickness of the board, m
   */
  static double maxSpacing(SurfaceKind kind, BoardRun run, double thickness) {
    boolean thin = thickness < 0.0115;
    if (kind == SurfaceKind.WALL) {
      return (thin ? 16 : 24) * INCH;
    }
    if (run == BoardRun.ACROSS_FRAMING) {
      return (thin ? 16 : 24) * INCH;
    }
    return thin ? 0 : 16 * INCH;
  }

  /** What this direction breaks, if anything. */
  public static Optional<String> spacingFault(Surface surface, BoardRun run) {
    Framing framing = surface.framing().orElseThrow();
    double thickness = surface.boards().orElseThrow().thickness();
    double max = maxSpacing(surface.kind(), run, thickness);
    // Metric framing at 400, 450 and 600 mm and 610 mm count as the inch spacing they stand for.
    if (framing.spacing() <= max * 1.005) {
      return Optional.empty();
    }
    String way = run == BoardRun.ACROSS_FRAMING ? "across" : "along";
    String limit =
        max == 0
            ? "is not allowed on ceilings"
            : String.format(Locale.ROOT, "needs members at %.0f mm or closer", max * 1000);
    return Optional.of(
        String.format(
            Locale.ROOT,
            "GA-216: %.1f mm board %s the framing %s; here they are at %.0f mm.",
            thickness * 1000,
            way,
            limit,
            framing.spacing() * 1000));
  }

  /** Notes on control joints. */
  static List<String> controlJoints(Surface surface) {
    double u0 = Double.POSITIVE_INFINITY;
    double u1 = Double.NEGATIVE_INFINITY;
    double v0 = Double.POSITIVE_INFINITY;
    double v1 = Double.NEGATIVE_INFINITY;
    for (Vec2 p : surface.face().outer()) {
      u0 = Math.min(u0, p.x());
      u1 = Math.max(u1, p.x());
      v0 = Math.min(v0, p.y());
      v1 = Math.max(v1, p.y());
    }
    List<String> notes = new ArrayList<>();
    if (surface.kind() == SurfaceKind.WALL && u1 - u0 > 30 * FOOT + 1e-6) {
      notes.add(
          "Control joint: walls longer than 30 ft (9.1 m) need one (GA-216); a full-height door"
              + " frame counts as one.");
    }
    double span = Math.max(u1 - u0, v1 - v0);
    if (surface.kind() == SurfaceKind.CEILING && span > 50 * FOOT + 1e-6) {
      notes.add("Control joint: ceilings longer than 50 ft (15.2 m) need one (GA-216).");
    } else if (surface.kind() == SurfaceKind.CEILING && span > 30 * FOOT + 1e-6) {
      notes.add(
          "Control joint: ceilings longer than 30 ft (9.1 m) need one unless the perimeter is"
              + " relieved (GA-216).");
    }
    return notes;
  }
}
