package slantlight.view;

import slantlight.decide.Verdicts;
import slantlight.light.LightModel;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.units.Progress;

/** Asks the score and decide packages for what is shown. */
final class Scores {
  private Scores() {}

  static ViewModel of(LightModel light, Progress progress) {
    HouseScore score = Scorer.score(light, ScoreOptions.standard(), progress);
    return ViewModel.of(score, Verdicts.of(score));
  }
}
