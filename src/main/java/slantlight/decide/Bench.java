package slantlight.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slantlight.board.Layout;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;

/**
 * Tries recipes (lists of changes) on surfaces. Changes that leave the light alone act on their own
 * surface only, so one run tries a different recipe on every surface at once.
 */
final class Bench {
  private final Map<String, Layout> asBuilt = new HashMap<>();

  /** A recipe and what came of it. */
  record Trial(List<Remedy> changes, SurfaceScore score) {
    Trial {
      changes = List.copyOf(changes);
    }
  }

  /**
   * @param base the score whose layouts stay where a recipe does not touch the boards
   */
  Bench(HouseScore base) {
    for (SurfaceScore s : base.surfaces()) {
      asBuilt.put(s.surfaceId(), s.layout());
    }
  }

  /** Tries one recipe on each surface, in one run. */
  Map<String, SurfaceScore> run(Rescorer.Lit lit, House house, Map<String, List<Remedy>> recipes) {
    House changed = house;
    Set<String> backBlocked = new LinkedHashSet<>();
    Map<String, Layout> layouts = new HashMap<>();
    for (Map.Entry<String, List<Remedy>> e : recipes.entrySet()) {
      boolean sameBoards = true;
      for (Remedy r : e.getValue()) {
        changed = r.apply(changed);
        if (r instanceof Remedy.BackBlock) {
          backBlocked.add(e.getKey());
        }
        sameBoards &= !(r instanceof Remedy.TurnBoards || r instanceof Remedy.MoreBoards);
      }
      if (sameBoards) {
        layouts.put(e.getKey(), asBuilt.get(e.getKey()));
      }
    }
    Map<String, SurfaceScore> out = new LinkedHashMap<>();
    for (SurfaceScore s : lit.score(changed, recipes.keySet(), layouts, backBlocked)) {
      out.put(s.surfaceId(), s);
    }
    return out;
  }

  /** Tries several recipes on each surface, in as many runs as the longest list. */
  Map<String, List<Trial>> runAll(
      Rescorer.Lit lit, House house, Map<String, List<List<Remedy>>> recipes) {
    Map<String, List<Trial>> out = new LinkedHashMap<>();
    recipes.keySet().forEach(id -> out.put(id, new ArrayList<>()));
    for (int i = 0; ; i++) {
      Map<String, List<Remedy>> round = new LinkedHashMap<>();
      for (Map.Entry<String, List<List<Remedy>>> e : recipes.entrySet()) {
        if (i < e.getValue().size()) {
          round.put(e.getKey(), e.getValue().get(i));
        }
      }
      if (round.isEmpty()) {
        return out;
      }
      run(lit, house, round)
          .forEach((id, score) -> out.get(id).add(new Trial(round.get(id), score)));
    }
  }
}
