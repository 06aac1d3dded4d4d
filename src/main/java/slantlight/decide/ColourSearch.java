package slantlight.decide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slantlight.decide.Bench.Trial;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;

/** Finds the darkest lighter colour that is light enough, by bisection on the LRV. */
final class ColourSearch {
  /** Ceiling white. */
  private static final double WHITE = 0.85;

  /** Colours at or above this LRV are light already. */
  private static final double LIGHT = 0.70;

  /** Halvings: from 0.75 wide to steps of about 0.02. */
  private static final int HALVINGS = 5;

  private final House house;
  private final Bench bench;
  private final Judge judge;

  ColourSearch(House house, Bench bench, Judge judge) {
    this.house = house;
    this.bench = bench;
    this.judge = judge;
  }

  /** One trial for each surface that white would help: the colour that is enough, else white. */
  Map<String, List<Trial>> search(Rescorer.Lit lit, HouseScore before) {
    Map<String, Double> high = new LinkedHashMap<>();
    Map<String, Double> low = new LinkedHashMap<>();
    for (SurfaceScore s : before.surfaces()) {
      double lrv = house.surface(s.surfaceId()).paint().lrv();
      if (lrv < LIGHT) {
        high.put(s.surfaceId(), WHITE);
        low.put(s.surfaceId(), lrv);
      }
    }
    if (high.isEmpty()) {
      return Map.of();
    }
    Map<String, Trial> best = trials(lit, high);
    best.entrySet()
        .removeIf(e -> showing(e.getValue()) > 0.99 * showing(before.surface(e.getKey())));
    low.keySet().retainAll(best.keySet());
    low.keySet().removeIf(id -> !enough(best.get(id)));
    for (int i = 0; i < HALVINGS && !low.isEmpty(); i++) {
      Map<String, Double> middle = new LinkedHashMap<>();
      low.forEach((id, l) -> middle.put(id, (l + high.get(id)) / 2));
      trials(lit, middle)
          .forEach(
              (id, t) -> {
                if (enough(t)) {
                  high.put(id, middle.get(id));
                  best.put(id, t);
                } else {
                  low.put(id, middle.get(id));
                }
              });
    }
    Map<String, List<Trial>> out = new LinkedHashMap<>();
    best.forEach((id, t) -> out.put(id, List.of(t)));
    return out;
  }

  private Map<String, Trial> trials(Rescorer.Lit lit, Map<String, Double> lrv) {
    Map<String, List<Remedy>> recipes = new LinkedHashMap<>();
    lrv.forEach((id, l) -> recipes.put(id, List.of(new Remedy.LighterColour(id, l))));
    Map<String, Trial> out = new LinkedHashMap<>();
    bench
        .run(lit, house, recipes)
        .forEach((id, score) -> out.put(id, new Trial(recipes.get(id), score)));
    return out;
  }

  private double showing(Trial t) {
    return showing(t.score());
  }

  private double showing(SurfaceScore s) {
    return Baseline.showing(house, s);
  }

  private boolean enough(Trial t) {
    return judge.borne(t.score(), Math.max(3, Baseline.level(house, t.score())));
  }
}
