package slantlight.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;
import slantlight.units.Progress;

/**
 * How a house shows when it is turned on its lot, with all that is drawn around it.
 *
 * @param turnDeg turn from the drawing, degrees clockwise seen from above
 * @param excess weighted showing above the limits at the baseline levels, see {@link Excess}
 * @param above how many surfaces show more than their room bears
 * @param worst largest showing of any surface, unfinished service rooms left out
 * @param worstSurfaceId where that is; empty text when nothing shows at all
 */
public record Facing(
    double turnDeg, double excess, int above, double worst, String worstSurfaceId) {
  private static final Comparator<Facing> KINDEST =
      Comparator.comparingDouble(Facing::excess)
          .thenComparingDouble(Facing::worst)
          .thenComparingDouble(Facing::turnDeg);

  /**
   * Scores every turn of a full circle.
   *
   * @param stepDeg degrees between turns, at least 1
   * @param scorer scores a turned house
   */
  public static List<Facing> sweep(
      House house, double stepDeg, Function<House, HouseScore> scorer, Progress progress) {
    if (!(stepDeg >= 1 && stepDeg <= 180)) {
      throw new IllegalArgumentException("a step is from 1 to 180 degrees, not " + stepDeg);
    }
    List<Facing> out = new ArrayList<>();
    int steps = (int) Math.ceil(360 / stepDeg - 1e-9);
    for (int i = 0; i < steps; i++) {
      progress.at("turning the house", i / (double) steps);
      double turn = i * stepDeg;
      House turned = Turn.clockwise(Math.toRadians(turn)).house(house);
      out.add(of(turn, i == 0 ? scorer.apply(house) : scorer.apply(turned)));
    }
    return out;
  }

  /** The turn that leaves least above the limits, then shows least, then turns least. */
  public static Facing kindest(List<Facing> sweep) {
    return sweep.stream().min(KINDEST).orElseThrow();
  }

  /** The turn that leaves most above the limits. */
  public static Facing harshest(List<Facing> sweep) {
    return sweep.stream().max(KINDEST).orElseThrow();
  }

  private static Facing of(double turnDeg, HouseScore score) {
    double excess = 0;
    int above = 0;
    double worst = 0;
    String where = "";
    House house = score.house();
    for (SurfaceScore s : score.surfaces()) {
      Attention attention = house.room(house.surface(s.surfaceId()).roomId()).attention();
      int level = Math.max(3, Baseline.level(house, s));
      if (Verdicts.excused(attention, Baseline.level(house, s))) {
        continue;
      }
      double showing = Showing.at(s, level);
      if (Baseline.tooMuch(house, s)) {
        excess += Excess.of(s, level, attention.limit());
        above++;
      }
      if (showing > worst) {
        worst = showing;
        where = s.surfaceId();
      }
    }
    return new Facing(turnDeg, excess, above, worst, where);
  }
}
