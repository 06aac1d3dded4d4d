package slantlight.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import slantlight.board.Layout;
import slantlight.board.LayoutSolver;
import slantlight.board.ShowWeight;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.Calendar;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.LevelScore;
import slantlight.score.SurfaceScore;

/** Real boards and joints with invented showing: enough to draw, without a year's computing. */
final class BenchScores {
  private BenchScores() {}

  static ViewModel of(House house) {
    List<SurfaceScore> surfaces = new ArrayList<>();
    Calendar calendar = new Calendar(List.of(1), 60, new float[1][24]);
    for (Surface s : house.surfaces()) {
      if (s.boarded()) {
        Layout layout = LayoutSolver.solve(s, ShowWeight.PLAIN);
        List<JointScore> joints =
            layout.joints().stream()
                .map(
                    j ->
                        new JointScore(
                            j, j.length(), levels(), Optional.empty(), List.of(0.5, 3.0, 7.0)))
                .toList();
        surfaces.add(
            new SurfaceScore(
                s.id(), layout, joints, levels(), Optional.empty(), calendar, Optional.empty()));
      }
    }
    return ViewModel.of(new HouseScore(house, surfaces, 2026, 60, 0, 0), List.of());
  }

  private static List<LevelScore> levels() {
    List<LevelScore> out = new ArrayList<>();
    for (int level = 3; level <= 5; level++) {
      out.add(
          new LevelScore(
              level,
              3,
              List.of(1.0, 0.0, 0.0, 0.0),
              Collections.nCopies(4, 10.0),
              Collections.nCopies(4, 5.0)));
    }
    return out;
  }
}
