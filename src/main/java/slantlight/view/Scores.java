package slantlight.view;

import java.util.Optional;
import slantlight.decide.Verdicts;
import slantlight.light.LightModel;
import slantlight.score.HouseScore;
import slantlight.score.JointMoments;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.units.Progress;

/** Asks the score and decide packages for what is shown. */
final class Scores {
  private Scores() {}

  /** A scored house and what tells its joints' showing at single moments. */
  record Scored(ViewModel model, Optional<JointMoments> moments) {}

  static Scored of(LightModel light, Progress progress) {
    Scorer.Followed followed = Scorer.follow(light, ScoreOptions.standard(), progress);
    HouseScore score = followed.score();
    return new Scored(ViewModel.of(score, Verdicts.of(score)), Optional.of(followed.moments()));
  }
}
