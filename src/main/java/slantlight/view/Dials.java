package slantlight.view;

import java.util.List;
import java.util.Optional;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;

/** The choices that go round when their key or button is pressed. */
final class Dials {
  private static final List<Double> STRENGTHS = List.of(1.0, 2.0, 4.0, 8.0);
  private static final double DARK = 0.12;

  private Dials() {}

  /** The element after one, the first again after the last. */
  static <T> T next(List<T> all, T now) {
    return all.get((all.indexOf(now) + 1) % all.size());
  }

  static void strength(Stage stage) {
    stage.strength = next(STRENGTHS, stage.strength);
  }

  /** The level shown, 3 to 5; the other half shows the next one up, or 3 beside 5. */
  static void level(Stage stage) {
    List<Integer> levels = List.of(3, 4, 5);
    stage.level = next(levels, stage.level);
    stage.otherLevel = next(levels, stage.level);
  }

  /** No split, two levels, two paints. */
  static void split(Stage stage) {
    stage.split = next(List.of(Stage.Split.values()), stage.split);
    if (stage.split == Stage.Split.PAINTS && stage.swatch.isEmpty()) {
      swatch(stage);
    }
  }

  /** The scene's paint or a dark one of the same sheen as was last tried. */
  static void swatch(Stage stage) {
    stage.swatch =
        stage.swatch.isPresent() ? Optional.empty() : Optional.of(new Paint(DARK, Sheen.EGGSHELL));
  }

  /** The next glossier sheen of the swatch. */
  static void sheen(Stage stage) {
    Paint p = stage.swatch.orElse(new Paint(0.8, Sheen.FLAT));
    stage.swatch = Optional.of(new Paint(p.lrv(), next(List.of(Sheen.values()), p.sheen())));
  }
}
