package slantlight.decide;

import java.util.ArrayList;
import java.util.List;
import slantlight.board.CuttingPlan;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.SurfaceScore;

/** The schedule for the trades: what to do on every surface. */
public final class Schedule {
  /** For every surface at level 3 or above (GA-214). */
  public static final String PRIMER =
      "A coat of drywall primer before the paint evens paper and compound (GA-214, levels 3 to 5).";

  private Schedule() {}

  /**
   * A row per scored surface.
   *
   * @param verdicts as {@link Verdicts#of} gives them for the score
   */
  public static List<ScheduleRow> of(HouseScore score, List<Verdict> verdicts) {
    List<ScheduleRow> out = new ArrayList<>();
    for (Verdict v : verdicts) {
      out.add(row(score.house(), score.surface(v.surfaceId()), v));
    }
    return out;
  }

  private static ScheduleRow row(House house, SurfaceScore score, Verdict verdict) {
    Surface surface = house.surface(score.surfaceId());
    double tapered = 0;
    double butt = 0;
    for (JointScore j : score.joints()) {
      if (j.joint().kind() == JointKind.TAPERED) {
        tapered += j.joint().length();
      } else {
        butt += j.joint().length();
      }
    }
    return new ScheduleRow(
        surface.id(),
        surface.label(),
        house.room(surface.roomId()).label(),
        verdict.level(),
        FinishLevel.of(verdict.level()).work(),
        RegionalScale.name(house.scale(), verdict.level()),
        surface.face().area() * (1 - Verdicts.coveredShare(surface)),
        tapered,
        butt,
        score.layout().run(),
        CuttingPlan.of(List.of(surface), List.of(score.layout())).order(),
        verdict.notes());
  }
}
