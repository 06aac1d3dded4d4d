package slantlight.decide;

import java.util.LinkedHashMap;
import java.util.Map;
import slantlight.board.Layout;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.units.Progress;

/**
 * Scores many variants of one house against each other: coarser patches and cones, fewer points,
 * eight days of the year, half-hour steps, and the boards as first laid. Good for telling variants
 * apart, not for the levels of single joints.
 */
public final class CoarseScorer {
  private static final double PATCH = 1.2;
  private static final double CONE = 0.35;
  private static final double SUN_STEP_DEG = 10;
  private static final double SUN_EDGE = 0.3;
  private static final int DAYS_BETWEEN = 45;
  private static final int STEP = 30;
  private static final double SPACING = 2;

  private static final TransportOptions COARSE =
      new TransportOptions(
          PATCH,
          TransportOptions.DEFAULT.groupSide(),
          CONE,
          SUN_STEP_DEG,
          SUN_EDGE,
          TransportOptions.DEFAULT.maxPatches());

  private final ScoreOptions options;

  private CoarseScorer(ScoreOptions options) {
    this.options = options;
  }

  /**
   * A scorer for variants of a house.
   *
   * @param options which surfaces, year and threads
   */
  public static CoarseScorer of(House house, ScoreOptions options, Progress progress) {
    ScoreOptions coarse =
        options
            .withDays(ScoreOptions.everyDay(options.year(), DAYS_BETWEEN))
            .withStep(STEP)
            .withSpacing(SPACING);
    Map<String, Layout> layouts = new LinkedHashMap<>();
    new CoarseScorer(coarse)
        .score(house, progress)
        .surfaces()
        .forEach(s -> layouts.put(s.surfaceId(), s.layout()));
    return new CoarseScorer(coarse.withLayouts(layouts));
  }

  /** Scores a variant. */
  public HouseScore score(House house) {
    return score(house, Progress.NONE);
  }

  private HouseScore score(House house, Progress progress) {
    LightModel light = Transport.of(house, COARSE, progress);
    return Scorer.score(light, options, progress);
  }
}
