package slantlight.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slantlight.board.QuantityTakeoff;
import slantlight.decide.BudgetPlan;
import slantlight.decide.Inspection;
import slantlight.decide.LampPlace;
import slantlight.decide.Option;
import slantlight.decide.Plan;
import slantlight.decide.Pricing;
import slantlight.decide.Reach;
import slantlight.decide.Remedy;
import slantlight.decide.RemedyStudy;
import slantlight.decide.Showing;
import slantlight.decide.Verdict;
import slantlight.decide.Verdicts;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.HouseScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.sheet.FrontierSheet;
import slantlight.sheet.Words;
import slantlight.units.Measures;

/** Gathers everything a report tells from the scored house. */
public final class ReportMaker {
  private static final int PICTURE_WIDTH = 640;
  private static final int PICTURE_HEIGHT = 480;
  private static final double STEEPER = 8;

  /** Contrast that nobody misses, even in a small picture. */
  private static final double SEEN_AT_ONCE = 0.2;

  private static final int MOST_WINDOWS = 3;
  private static final int MOST_FREE = 3;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  private final LightModel light;
  private final HouseScore score;
  private final House house;
  private final Measures reader;
  private final List<Verdict> verdicts;

  private ReportMaker(LightModel light, HouseScore score) {
    this.light = light;
    this.score = score;
    this.house = score.house();
    this.reader = Measures.printed(house.units());
    this.verdicts = Verdicts.of(score);
  }

  /**
   * Everything for a report. The picture of the worst moment takes a second or two.
   *
   * @param light the light the score was made with
   * @param study remedies, when they were weighed
   * @param inspections of the surfaces worth it
   */
  public static ReportData of(
      LightModel light,
      HouseScore score,
      Provenance made,
      Optional<RemedyStudy> study,
      List<Inspection> inspections) {
    ReportMaker maker = new ReportMaker(light, score);
    return new ReportData(
        score,
        maker.verdicts,
        made,
        maker.quantities(),
        study.map(maker::money),
        inspections.stream().map(maker::step).toList(),
        maker.pictures());
  }

  private List<ReportData.SurfaceQuantities> quantities() {
    QuantityTakeoff takeoff = new QuantityTakeoff(house);
    List<ReportData.SurfaceQuantities> out = new ArrayList<>();
    for (SurfaceScore s : score.surfaces()) {
      int level =
          verdicts.stream()
              .filter(v -> v.surfaceId().equals(s.surfaceId()))
              .findFirst()
              .map(Verdict::level)
              .orElse(4);
      Surface surface = house.surface(s.surfaceId());
      out.add(
          new ReportData.SurfaceQuantities(s.surfaceId(), takeoff.of(surface, s.layout(), level)));
    }
    return out;
  }

  private ReportData.Money money(RemedyStudy study) {
    Pricing pricing = new Pricing(house);
    BudgetPlan solved = BudgetPlan.of(study.menus());
    List<Plan> frontier = solved.frontier();
    Plan best = solved.cheapest(Option::solves);
    Plan marked =
        frontier.stream()
            .filter(p -> p.price() >= best.price())
            .findFirst()
            .orElseGet(() -> frontier.get(frontier.size() - 1));
    List<FrontierSheet.Step> steps =
        frontier.stream()
            .map(
                p ->
                    new FrontierSheet.Step(
                        pricing.amount(p.price()), p.excess(), words(p), p.equals(marked)))
            .toList();
    List<String> proposal = lines(marked);
    Map<String, Set<String>> free = new LinkedHashMap<>();
    study.lines().stream()
        .filter(l -> l.free() && l.after() < l.before() && l.level() <= 4)
        .filter(l -> l.changes().size() == 1)
        .forEach(
            l ->
                free.computeIfAbsent(l.words(reader), w -> new LinkedHashSet<>())
                    .add(label(l.surfaceId())));
    List<String> freeWords = new ArrayList<>();
    free.forEach(
        (words, where) ->
            freeWords.add(
                words
                    + (where.size() > MOST_FREE
                        ? " (" + where.size() + " surfaces)"
                        : " (" + String.join(", ", where) + ")")));
    return new ReportData.Money(
        pricing.byArea() ? reader.areaUnit() : pricing.unit(),
        pricing.byArea(),
        steps,
        proposal,
        freeWords.stream().limit(2).toList());
  }

  private String words(Plan plan) {
    List<String> lines = lines(plan);
    return lines.isEmpty() ? "the house as it is" : String.join("; ", lines);
  }

  private List<String> lines(Plan plan) {
    List<String> out = new ArrayList<>(words(plan.changes()));
    plan.options().stream()
        .filter(o -> !o.asItIs())
        .forEach(o -> out.add(label(o.surfaceId()) + ": " + String.join(", ", words(o.changes()))));
    return out;
  }

  private List<String> words(List<Remedy> changes) {
    return changes.stream().map(c -> c.words(reader)).toList();
  }

  private String label(String surfaceId) {
    return house.surface(surfaceId).label();
  }

  private ReportData.InspectionStep step(Inspection i) {
    List<String> windows =
        i.windows().stream()
            .limit(MOST_WINDOWS)
            .map(
                w ->
                    DAY.format(w.day())
                        + ", "
                        + w.from()
                        + " to "
                        + w.to()
                        + " ("
                        + Words.times(w.showing())
                        + ")")
            .toList();
    String stand =
        i.best()
            .map(
                p ->
                    house.eyes().stream()
                        .filter(e -> e.id().equals(p.eyeId()))
                        .findFirst()
                        .map(e -> e.label())
                        .orElse("in the room"))
            .orElse("in the room");
    return new ReportData.InspectionStep(
        i.surfaceId(),
        windows.isEmpty() ? "daylight does not show it; use the lamp" : String.join("; ", windows),
        stand,
        i.lamp().map(this::lamp).orElse("no place found; sweep by hand"));
  }

  private String lamp(LampPlace l) {
    return String.format(
        Locale.ROOT,
        "%s beside joint %s, %s off the board, about %.0f\u00b0 to it%s",
        reader.distance(l.across()),
        Words.shortId(l.jointId()),
        reader.gap(l.height()),
        Math.toDegrees(l.grazing()),
        l.reachable() ? "" : " (the place lies beyond the surface; come as near as you can)");
  }

  private List<ReportData.Picture> pictures() {
    Optional<SurfaceScore> worst =
        score.surfaces().stream()
            .max((a, b) -> Double.compare(Showing.at(a, 4), Showing.at(b, 4)))
            .filter(s -> Showing.worst(s).isPresent())
            .filter(s -> Showing.at(s, 4) >= Band.TRACE.from());
    if (worst.isEmpty()) {
      return List.of();
    }
    SurfaceScore s = worst.get();
    Peak peak = Showing.worst(s).orElseThrow();
    LightState state = Reach.stateAt(house, peak);
    int recommended =
        verdicts.stream()
            .filter(v -> v.surfaceId().equals(s.surfaceId()))
            .mapToInt(Verdict::level)
            .findFirst()
            .orElse(4);
    List<LitPicture.Shot> shots = new ArrayList<>();
    double steeper = Math.min(STEEPER, SEEN_AT_ONCE / Math.max(1e-6, peak.contrast()));
    for (double steepness : steeper < 2 ? new double[] {1} : new double[] {1, steeper}) {
      shots.add(new LitPicture.Shot(4, steepness));
      if (recommended > 4) {
        shots.add(new LitPicture.Shot(recommended, steepness));
      }
    }
    List<byte[]> png =
        LitPicture.of(light, state, score, peak, shots, PICTURE_WIDTH, PICTURE_HEIGHT);
    List<ReportData.Picture> out = new ArrayList<>();
    for (int i = 0; i < shots.size(); i++) {
      LitPicture.Shot shot = shots.get(i);
      boolean real = shot.steepness() == 1;
      String more = String.format(Locale.ROOT, "ridges %.0f times as steep", shot.steepness());
      String shows = Words.times(Showing.at(s, shot.level()));
      String what = label(s.surfaceId()) + " at level " + shot.level();
      out.add(
          new ReportData.Picture(
              png.get(i),
              what
                  + (real ? ", as lit on " : ", " + more + ", on ")
                  + Words.when(peak)
                  + ", showing "
                  + shows,
              (real ? "As lit, at true strength: level " : Answer.capital(more) + ": level ")
                  + shot.level()
                  + " ("
                  + shows
                  + ")"));
    }
    return out;
  }
}
