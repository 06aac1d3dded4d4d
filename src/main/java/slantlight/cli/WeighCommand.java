package slantlight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.decide.BudgetPlan;
import slantlight.decide.CoarseScorer;
import slantlight.decide.Comparison;
import slantlight.decide.Facing;
import slantlight.decide.KeptLight;
import slantlight.decide.Openings;
import slantlight.decide.Plan;
import slantlight.decide.PlanCheck;
import slantlight.decide.Pricing;
import slantlight.decide.ReducedScorer;
import slantlight.decide.RemedyFinder;
import slantlight.decide.RemedyStudy;
import slantlight.decide.Schedule;
import slantlight.decide.Verdicts;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;

/** Remedies, money and comparisons: what to do, and what it is worth. */
@Command(
    name = "weigh",
    description =
        "Weigh the remedies of a scene and spend a budget on them; or compare two scenes, a scene"
            + " without a window, or all the ways to turn the house; or print the schedule for the"
            + " trades.")
final class WeighCommand implements Callable<Integer> {
  @Mixin private CommonOptions common;
  @Mixin private ProgressOptions progress;
  @Mixin private OutputOptions output;
  @Mixin private SurfaceOptions which;

  @Parameters(index = "0", paramLabel = "SCENE", description = "Scene file (JSON).")
  private Path scene;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "OTHER",
      description = "Another scene: say what changes from the first to it.")
  private Path other;

  @Option(
      names = "--budget",
      paramLabel = "N",
      description =
          "Spend at most this, in the scene's currency, or by area (ft2, m2) without rates.")
  private Double budget;

  @Option(
      names = "--cheapest",
      paramLabel = "SHOWING",
      arity = "0..1",
      fallbackValue = "NaN",
      description =
          "The cheapest plan in which nothing shows more than this; without a number, more than"
              + " its room accepts.")
  private Double cheapest;

  @Option(
      names = "--house-wide",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "Study shades, film or moved lamps for the N worst culprits, 0 to 3; each set of them lights the"
              + " house anew (default: ${DEFAULT-VALUE}).")
  private int houseWide;

  @Option(
      names = "--without",
      paramLabel = "OPENING",
      split = ",",
      description = "Compare with the scene without these windows or doors.")
  private List<String> without = List.of();

  @Option(
      names = "--narrow",
      paramLabel = "OPENING=FACTOR",
      split = ",",
      description = "Compare with the scene with these openings narrowed, such as slider=0.5.")
  private Map<String, Double> narrow = Map.of();

  @Option(
      names = "--sweep-facing",
      paramLabel = "DEGREES",
      description = "Turn the house round in steps and say which turn is kindest.")
  private Double sweep;

  @Option(names = "--schedule", description = "Print the schedule for the trades.")
  private boolean schedule;

  @Override
  public Integer call() throws IOException {
    checkModes();
    SceneFile file = SceneFile.read(scene, common.err());
    Answer answer;
    try (ConsoleProgress bar = progress.open()) {
      answer = answer(file, bar);
    }
    Answer.give(answer, output, common);
    return ExitCode.OK;
  }

  private void checkModes() {
    int modes = 0;
    modes += other != null || !without.isEmpty() || !narrow.isEmpty() ? 1 : 0;
    modes += sweep != null ? 1 : 0;
    modes += schedule ? 1 : 0;
    modes += budget != null || cheapest != null ? 1 : 0;
    if (modes > 1) {
      throw CommandFailure.usage(
          "ask for one thing at a time: a budget, a comparison, --sweep-facing or --schedule");
    }
    if (sweep != null && !(sweep >= 1 && sweep <= 180)) {
      throw CommandFailure.usage("--sweep-facing " + sweep + ": give from 1 to 180 degrees");
    }
    if (houseWide < 0 || houseWide > 3) {
      throw CommandFailure.usage("--house-wide " + houseWide + ": give 0 to 3");
    }
    if (budget != null && !(budget >= 0 && budget <= 1e12)) {
      throw CommandFailure.usage("--budget " + budget + ": give 0 or more");
    }
  }

  private Answer answer(SceneFile file, ConsoleProgress bar) throws IOException {
    if (other != null || !without.isEmpty() || !narrow.isEmpty()) {
      return comparison(file, bar);
    }
    if (sweep != null) {
      return sweep(file, bar);
    }
    if (schedule) {
      HouseScore score = Scorer.score(file.house(), which.year(file.house()), bar);
      return new ScheduleAnswer(
          file, score.house(), Schedule.of(score, Verdicts.of(score)), score.cuttingPlan());
    }
    return remedies(file, bar);
  }

  private Answer comparison(SceneFile file, ConsoleProgress bar) throws IOException {
    House a = file.house();
    House b = other == null ? a : SceneFile.read(other, common.err()).house();
    for (String id : without) {
      b = changed(b, h -> Openings.without(h, id));
    }
    for (Map.Entry<String, Double> e : narrow.entrySet()) {
      b = changed(b, h -> Openings.narrowed(h, e.getKey(), e.getValue()));
    }
    HouseScore before = Scorer.score(a, which.year(a), bar);
    HouseScore after = Scorer.score(b, which.year(b), bar);
    return new ComparisonAnswer(file, Comparison.of(before, after));
  }

  private static House changed(House house, UnaryOperator<House> change) {
    try {
      return change.apply(house);
    } catch (IllegalArgumentException e) {
      throw CommandFailure.usage(e.getMessage());
    }
  }

  private Answer sweep(SceneFile file, ConsoleProgress bar) {
    House house = file.house();
    CoarseScorer scorer = CoarseScorer.of(house, which.year(house), bar);
    return new FacingAnswer(file, Facing.sweep(house, sweep, scorer::score, bar));
  }

  private Answer remedies(SceneFile file, ConsoleProgress bar) {
    House house = file.house();
    ScoreOptions options = which.year(house);
    LightModel light = new KeptLight(Transport.of(house, TransportOptions.DEFAULT, bar));
    HouseScore base = Scorer.score(light, options, bar);
    List<String> targets = RemedyFinder.aboveLimit(base);
    ReducedScorer scorer = ReducedScorer.of(light, base, targets, options);
    Pricing pricing = new Pricing(house);
    RemedyStudy study = RemedyFinder.study(base, targets, scorer, pricing, houseWide, bar);
    BudgetPlan solved = BudgetPlan.of(study.menus());
    Map<String, Plan> plans = new LinkedHashMap<>();
    if (budget != null) {
      solved.within(pricing.units(budget)).ifPresent(p -> plans.put("within the budget", p));
    }
    if (cheapest != null && !cheapest.isNaN()) {
      plans.put(
          "that leaves nothing above " + Words.showing(cheapest),
          solved.cheapest(o -> o.peak() <= cheapest));
    } else if (cheapest != null || budget == null) {
      plans.put("that solves most for least", solved.cheapest(slantlight.decide.Option::solves));
    }
    bar.at("the plan as a whole", 0.9);
    Map<String, PlanCheck> checks = new LinkedHashMap<>();
    plans.forEach((name, p) -> checks.put(name, PlanCheck.of(base, p, scorer)));
    return new RemediesAnswer(file, base, study, solved, plans, checks, pricing);
  }
}
