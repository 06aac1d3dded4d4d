package slantlight.decide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import slantlight.board.Layout;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.IncidentField;
import slantlight.light.Kernel;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.SunBeams;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.score.SpotScore;
import slantlight.score.SurfaceScore;
import slantlight.units.Progress;

/**
 * Scores changed houses with {@link Scorer} on few days: those on which a surface in question shows
 * most as it is, and days spread over the year for what shows most after the change.
 */
public final class ReducedScorer implements Rescorer {
  /** Days between the days spread over the year. */
  private static final int SPREAD = 30;

  /** Most days taken from one surface's joints. */
  private static final int PER_SURFACE = 3;

  private final LightModel drawn;
  private final ScoreOptions options;

  private ReducedScorer(LightModel drawn, ScoreOptions options) {
    this.drawn = drawn;
    this.options = options;
  }

  /**
   * A scorer for some surfaces.
   *
   * @param light the light of the house as drawn
   * @param base their score over the year
   * @param options how it was made; its days and surfaces are replaced
   */
  public static ReducedScorer of(
      LightModel light, HouseScore base, List<String> surfaces, ScoreOptions options) {
    TreeSet<Integer> days = new TreeSet<>(spread(options.year()));
    for (String id : surfaces) {
      days.addAll(worstDays(base.surface(id)));
    }
    return new ReducedScorer(light, options.withDays(List.copyOf(days)));
  }

  /** Days spread over a year, for a first look. */
  public static List<Integer> spread(int year) {
    return ScoreOptions.everyDay(year, SPREAD);
  }

  private static List<Integer> worstDays(SurfaceScore score) {
    List<Integer> out = new ArrayList<>();
    score.joints().stream()
        .flatMap(j -> j.peak().stream())
        .sorted((a, b) -> Double.compare(b.showing(), a.showing()))
        .map(p -> p.at().getDayOfYear())
        .distinct()
        .limit(PER_SURFACE)
        .forEach(out::add);
    score.spots().flatMap(SpotScore::peak).ifPresent(p -> out.add(p.at().getDayOfYear()));
    return out;
  }

  /**
   * Scores the surfaces worth an inspection on the days of a period with every lamp out.
   *
   * @param days days of the year, ascending
   * @param options how the year was scored
   */
  public static HouseScore daylight(
      HouseScore year, int calendarYear, List<Integer> days, ScoreOptions options, Progress p) {
    Map<String, Layout> layouts = new LinkedHashMap<>();
    year.surfaces().forEach(s -> layouts.put(s.surfaceId(), s.layout()));
    return Scorer.score(
        Edits.unlit(year.house()),
        new ScoreOptions(
            calendarYear,
            days,
            options.stepMinutes(),
            Set.copyOf(Inspection.worthIt(year)),
            options.spacing(),
            options.eye(),
            layouts,
            options.backBlocked(),
            options.threads()),
        p);
  }

  @Override
  public Lit light(House house) {
    return under(
        house.equals(drawn.house())
            ? drawn
            : Transport.of(house, TransportOptions.DEFAULT, Progress.NONE));
  }

  private Lit under(LightModel light) {
    return (changed, surfaces, layouts, backBlocked) ->
        Scorer.score(
            new SameLight(light, changed),
            options.withSurfaces(surfaces).withLayouts(layouts).withBackBlocked(backBlocked),
            Progress.NONE);
  }

  /** The light of one house in another that differs in boards, levels and paint only. */
  private record SameLight(LightModel light, House house) implements LightModel {
    @Override
    public IncidentField incident(SamplePoint at, LightState state) {
      return light.incident(at, state);
    }

    @Override
    public IncidentField direct(SamplePoint at, LightState state) {
      return light.direct(at, state);
    }

    @Override
    public boolean sees(Vec3 a, Vec3 b) {
      return light.sees(a, b);
    }

    @Override
    public Basis basis(List<SamplePoint> points, List<Kernel> kernels, Progress progress) {
      return light.basis(points, kernels, progress);
    }

    @Override
    public SunBeams beams(List<SamplePoint> points) {
      return light.beams(points);
    }
  }
}
