package slantlight.view;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import slantlight.board.Joint;
import slantlight.decide.Verdict;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.SurfaceScore;

/**
 * What there is to show. The numbers are made elsewhere; the viewer only draws them.
 *
 * @param house the scene
 * @param score empty while it is still being computed
 * @param verdicts one per scored surface
 * @param featherWidth width to which a joint is finished at its surface's level, m
 */
public record ViewModel(
    House house,
    Optional<HouseScore> score,
    List<Verdict> verdicts,
    ToDoubleFunction<Joint> featherWidth) {
  public ViewModel {
    verdicts = List.copyOf(verdicts);
  }

  /** A house of which nothing is known yet. */
  static ViewModel unscored(House house) {
    return new ViewModel(house, Optional.empty(), List.of(), j -> 0.3);
  }

  /** A scored house, each joint as wide as it is finished at its surface's level. */
  static ViewModel of(HouseScore score, List<Verdict> verdicts) {
    Map<String, Integer> levels = new HashMap<>();
    verdicts.forEach(v -> levels.put(v.surfaceId(), Math.max(3, v.level())));
    return new ViewModel(
        score.house(),
        Optional.of(score),
        verdicts,
        j -> RidgeStrips.ridge(j, levels.getOrDefault(surfaceOf(j.id()), 4)).crown().width());
  }

  /** The score of a surface, if it has one. */
  Optional<SurfaceScore> score(String surfaceId) {
    return score.flatMap(
        s -> s.surfaces().stream().filter(x -> x.surfaceId().equals(surfaceId)).findFirst());
  }

  Optional<Verdict> verdict(String surfaceId) {
    return verdicts.stream().filter(v -> v.surfaceId().equals(surfaceId)).findFirst();
  }

  Optional<JointScore> joint(String jointId) {
    return score.flatMap(
        s ->
            s.surfaces().stream()
                .flatMap(x -> x.joints().stream())
                .filter(j -> j.joint().id().equals(jointId))
                .findFirst());
  }

  /** Id of the surface a joint lies on. */
  static String surfaceOf(String jointId) {
    return jointId.substring(0, jointId.indexOf('#'));
  }
}
