package slantlight.board;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import slantlight.board.Pattern.Piece;
import slantlight.board.RowChain.Cut;
import slantlight.board.RowChain.Plan;
import slantlight.board.Run.Span;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/** Turns a plan of rows into placed boards and joints in plane coordinates. */
final class LayoutDrawing {
  private final Ground ground;
  private final Plan plan;
  private final List<PlacedBoard> boards = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final Map<JointKind, Integer> count = new EnumMap<>(JointKind.class);

  LayoutDrawing(Ground ground, Plan plan) {
    this.ground = ground;
    this.plan = plan;
    int rows = plan.rows().size();
    // Walls are hung from the ceiling down, so that the gap stays at the floor.
    boolean down = ground.surface.kind() == SurfaceKind.WALL && ground.frame.t().y() > 0.5;
    for (int i = 0; i < rows; i++) {
      addRow(down ? rows - 1 - i : i);
    }
    for (int i = 0; i + 1 < plan.rows().size(); i++) {
      addRowJoint(plan.rows().get(i).row(), plan.rows().get(i + 1).row());
    }
  }

  List<PlacedBoard> boards() {
    return boards;
  }

  List<Joint> joints() {
    return joints;
  }

  /** What could not be kept. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    long hard = plan.cost().faults() / Cost.HARD;
    long soft = plan.cost().faults() % Cost.HARD;
    if (hard > 0) {
      notes.add(
          hard + " end(s) off a member or without stagger could not be avoided; add blocking.");
    }
    if (soft > 0) {
      notes.add(soft + " joint(s) at an opening's corner or narrow piece(s) could not be avoided.");
    }
    if (plan.cost().corners() > 0) {
      notes.add(
          "A row joint meets an opening near its corner; only another row, or a weightier joint,"
              + " would avoid it.");
    }
    if (!plan.proved()) {
      notes.add("The layout is good but not proved to be the best.");
    }
    return notes;
  }

  static String id(Surface surface, JointKind kind, int number) {
    return surface.id() + "#" + kind.name().charAt(0) + number;
  }

  private void addRow(int number) {
    Row row = plan.rows().get(number).row();
    for (Piece p : plan.rows().get(number).pattern().pieces()) {
      Run run = row.runs().get(p.run());
      boards.add(
          new PlacedBoard(
              boards.size() + 1,
              p.stock(),
              ground.frame.rectangle(p.from(), row.t0(), p.to(), row.t1()),
              run.area(p.from(), p.to()),
              blank(number, run, p)));
      if (p.to() < run.to() - 1e-6) {
        for (Span v : run.cut(p.to())) {
          add(JointKind.BUTT, p.to(), v.from(), p.to(), v.to());
        }
      }
    }
  }

  private Blank blank(int number, Run run, Piece p) {
    List<Cut> rows = plan.rows();
    Row row = rows.get(number).row();
    boolean lower =
        number > 0
            && !rows.get(number - 1).row().cutTop()
            && meet(rows.get(number - 1).row().reachingTop(), run.reachingDown(row.t0()), p);
    boolean upper =
        number + 1 < rows.size()
            && !row.cutTop()
            && meet(run.reachingUp(row.t1()), rows.get(number + 1).row().reachingBottom(), p);
    Span extent = run.extent(p.from(), p.to());
    double lo = lower ? row.t0() : extent.from();
    double hi = upper ? row.t1() : extent.to();
    return new Blank(
        ground.frame.rectangle(p.from(), lo, p.to(), hi),
        p.to() - p.from(),
        hi - lo,
        (lower ? 1 : 0) + (upper ? 1 : 0));
  }

  /** True when two rows meet somewhere along a piece. */
  private static boolean meet(List<Span> below, List<Span> above, Piece p) {
    List<Span> own = List.of(new Span(p.from(), p.to()));
    return !Span.common(Span.common(below, above), own).isEmpty();
  }

  private void addRowJoint(Row below, Row above) {
    JointKind kind = below.cutTop() ? JointKind.CUT : JointKind.TAPERED;
    for (Span v : Span.common(below.reachingTop(), above.reachingBottom())) {
      add(kind, v.from(), above.t0(), v.to(), above.t0());
    }
  }

  private void add(JointKind kind, double sa, double ta, double sb, double tb) {
    int number = count.getOrDefault(kind, 0) + 1;
    count.put(kind, number);
    joints.add(
        LayoutSolver.unmeasured(
            id(ground.surface, kind, number),
            kind,
            ground.frame.toPlane(sa, ta),
            ground.frame.toPlane(sb, tb)));
  }
}
