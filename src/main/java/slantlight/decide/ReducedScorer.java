package slantlight.decide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import slantlight.board.Layout;
import slantlight.light.LightBehind;
import slantlight.light.LightModel;
import slantlight.light.ShutOpening;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.Shade;
import slantlight.score.HouseScore;
import slantlight.score.JointMemory;
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

  /** Days this near have nearly the same sun: its declination moves 0.4 degrees a day at most. */
  private static final int NEAR = 6;

  private static final Shade BLACK = new Shade(0, false);

  /** Lights of changed houses that are kept: the plan is often one of the last. */
  private static final int LIGHTS = 4;

  /** Shut openings whose light is kept. */
  private static final int SHUT = 2;

  private final Known drawn;
  private final ScoreOptions options;
  private final Map<House, Known> lights = latest(LIGHTS);
  private final Map<String, Optional<ShutOpening>> shut = latest(SHUT);

  private ReducedScorer(LightModel drawn, ScoreOptions options) {
    this.drawn = new Known(drawn);
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
      worstDays(base.surface(id)).limit(1).forEach(days::add);
      base.surface(id)
          .spots()
          .flatMap(SpotScore::peak)
          .ifPresent(p -> days.add(p.at().getDayOfYear()));
    }
    for (String id : surfaces) {
      worstDays(base.surface(id))
          .limit(PER_SURFACE)
          .filter(d -> days.subSet(d - NEAR, d + NEAR + 1).isEmpty())
          .forEach(days::add);
    }
    return new ReducedScorer(light, options.withDays(List.copyOf(days)));
  }

  /** Days spread over a year, for a first look. */
  public static List<Integer> spread(int year) {
    return ScoreOptions.everyDay(year, SPREAD);
  }

  /** Days of the joints' peaks, the worst joint's first. */
  private static Stream<Integer> worstDays(SurfaceScore score) {
    return score.joints().stream()
        .flatMap(j -> j.peak().stream())
        .sorted((a, b) -> Double.compare(b.showing(), a.showing()))
        .map(p -> p.at().getDayOfYear())
        .distinct();
  }

  /**
   * Scores the surfaces worth an inspection on the days of a period with every lamp out.
   *
   * @param light of the house, its lamps included
   * @param days days of the year, ascending
   * @param options how the year was scored
   */
  public static HouseScore daylight(
      LightModel light,
      HouseScore year,
      int calendarYear,
      List<Integer> days,
      ScoreOptions options,
      Progress p) {
    Map<String, Layout> layouts = new LinkedHashMap<>();
    year.surfaces().forEach(s -> layouts.put(s.surfaceId(), s.layout()));
    return Scorer.score(
        new SameLight(light, Edits.unlit(year.house())),
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

  /** A memory that forgets what was not asked for longest. */
  private static <K, V> Map<K, V> latest(int most) {
    return new LinkedHashMap<>(16, 0.75f, true) {
      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > most;
      }
    };
  }

  @Override
  public Lit light(House house) {
    return known(house);
  }

  private Known known(House house) {
    if (house.equals(drawn.light.house())) {
      return drawn;
    }
    Known known = lights.get(house);
    if (known == null) {
      known = new Known(lightOf(house));
      lights.put(house, known);
    }
    return known;
  }

  private LightModel lightOf(House house) {
    return reshaded(house)
        .flatMap(o -> behindShade(house, o))
        .or(() -> drawn.light.changed(house))
        .orElseGet(
            () -> new KeptLight(Transport.of(house, TransportOptions.DEFAULT, Progress.NONE)));
  }

  /** The one opening whose shade is another than in the house as drawn, if that is all. */
  private Optional<Opening> reshaded(House house) {
    House before = drawn.light.house();
    for (Opening o : house.openings()) {
      Optional<Opening> old = Edits.findOpening(before, o.id());
      if (old.isPresent() && !old.get().equals(o)) {
        boolean all =
            o.shade().isPresent()
                && o.equals(old.get().withShade(o.shade().get()))
                && Edits.opening(house, old.get()).equals(before);
        return all ? Optional.of(o) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** The light behind another shade, mixed from lights that serve several shades. */
  private Optional<LightModel> behindShade(House house, Opening o) {
    Shade shade = o.shade().orElseThrow();
    boolean film = !shade.diffusing() && shade.transmittance() > 0;
    boolean bare = Edits.findOpening(drawn.light.house(), o.id()).orElseThrow().shade().isEmpty();
    if (film && !bare) {
      return Optional.empty();
    }
    House black = Edits.opening(house, o.withShade(BLACK));
    return shut(o.id())
        .map(
            s ->
                film
                    ? new FilmedLight(house, drawn.light, s.of(black), shade.transmittance())
                    : s.of(house));
  }

  private Optional<ShutOpening> shut(String openingId) {
    return shut.computeIfAbsent(openingId, drawn.light::shut);
  }

  /** A light, and what joints showed in it: plans try again what remedies tried before. */
  private final class Known implements Lit {
    private final LightModel light;
    private final JointMemory memory = new JointMemory();

    Known(LightModel light) {
      this.light = light;
    }

    @Override
    public List<SurfaceScore> score(
        House changed, Set<String> surfaces, Map<String, Layout> layouts, Set<String> blocked) {
      return Scorer.score(
              new SameLight(light, changed),
              options.withSurfaces(surfaces).withLayouts(layouts).withBackBlocked(blocked),
              memory,
              Progress.NONE)
          .surfaces();
    }

    @Override
    public Set<String> reached(List<SurfaceScore> asDrawn) {
      return Reach.of(drawn.light, light, asDrawn);
    }
  }

  /** The light of one house in another that differs in boards, levels and paint only. */
  private static final class SameLight extends LightBehind {
    private final House house;

    SameLight(LightModel light, House house) {
      super(light);
      this.house = house;
    }

    @Override
    public House house() {
      return house;
    }
  }
}
