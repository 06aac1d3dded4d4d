package slantlight.view;

import java.util.List;
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
