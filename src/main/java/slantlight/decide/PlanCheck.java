package slantlight.decide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;

/**
 * A plan carried out as a whole and scored again, all its changes at once: what the surfaces do to
 * each other (a lighter wall lights the next one) is in these numbers and not in the plan's.
 *
 * @param showing largest showing of each surface of the plan, at its planned level
 */
public record PlanCheck(Map<String, Double> showing) {
  public PlanCheck {
    showing = Map.copyOf(showing);
  }

  /** Scores a plan. */
  public static PlanCheck of(HouseScore base, Plan plan, Rescorer scorer) {
    if (plan.options().isEmpty()) {
      return new PlanCheck(Map.of());
    }
    House house = base.house();
    for (Remedy r : plan.changes()) {
      house = r.apply(house);
    }
    House lit = house;
    Map<String, List<Remedy>> recipes = new LinkedHashMap<>();
    for (Option o : plan.options()) {
      List<Remedy> recipe = new ArrayList<>();
      for (Remedy r : o.changes()) {
        if (r instanceof Remedy.LighterColour) {
          lit = r.apply(lit);
        }
        if (!(r instanceof Remedy.Finish)) {
          recipe.add(r);
        }
      }
      recipes.put(o.surfaceId(), recipe);
    }
    Rescorer.Lit after = scorer.light(lit);
    Set<String> reached =
        after.reached(recipes.keySet().stream().map(id -> base.surface(id)).toList());
    Map<String, List<Remedy>> elsewhere = new LinkedHashMap<>(recipes);
    elsewhere.keySet().removeAll(reached);
    recipes.keySet().retainAll(reached);
    Bench bench = new Bench(base);
    Map<String, SurfaceScore> scores = new LinkedHashMap<>();
    if (!recipes.isEmpty()) {
      scores.putAll(bench.run(after, house, recipes));
    }
    if (!elsewhere.isEmpty()) {
      // Where the plan changes no light, the light of the house as drawn is at hand.
      scores.putAll(bench.run(scorer.light(base.house()), base.house(), elsewhere));
    }
    Map<String, Double> out = new LinkedHashMap<>();
    for (Option o : plan.options()) {
      out.put(o.surfaceId(), Showing.at(scores.get(o.surfaceId()), Math.max(3, o.level())));
    }
    return new PlanCheck(out);
  }
}
