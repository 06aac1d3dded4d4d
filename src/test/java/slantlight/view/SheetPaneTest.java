package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;
import slantlight.sheet.LaidHouse;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Placed;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;

class SheetPaneTest {
  private static final Box SMALL = new Box(0, 0, 310, 210);
  private static final Box USUAL = new Box(0, 0, 392, 310);
  private static final Box LARGE = new Box(0, 0, 1528, 874);

  /** On every sheet of a house, in every look, no name touches another or leaves the pane. */
  @Test
  void noNameTouchesAnotherOrLeavesThePane() {
    HouseScore score = LaidHouse.of("lake-house");
    ViewModel model = ViewModel.of(score, List.of());
    List<Optional<String>> chosen = new ArrayList<>(List.of(Optional.empty()));
    score.surfaces().stream().map(SurfaceScore::surfaceId).map(Optional::of).forEach(chosen::add);
    int names = 0;
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Canvas canvas = new Canvas()) {
      Stage stage = new Stage(Studio.at(5, 18, 12, 45), null);
      for (Optional<String> surface : chosen) {
        stage.surface = surface;
        for (Stage.Look look : List.of(Stage.Look.RISK, Stage.Look.BOARDS)) {
          stage.look = look;
          for (Box pane : List.of(SMALL, USUAL, LARGE)) {
            List<Placed> placed = draw(canvas, pane, model, stage);
            GoldenTest.fits(placed, pane);
            names += placed.size();
          }
        }
      }
      gl.check();
    }
    assertThat(names).isGreaterThan(2000);
  }

  /** What a builder looks for on a sheet is there. */
  @Test
  void aSheetShowsDimensionsOpeningsNorthAndLight() {
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Canvas canvas = new Canvas()) {
      Stage stage = new Stage(Studio.at(5, 18, 12, 45), null);
      List<String> plan = words(draw(canvas, USUAL, Studio.MODEL, stage));
      assertThat(plan).contains("5.20 m (17' 0¾\")", "8.00 m (26' 3\")", "N", "10 ft");
      assertThat(plan).contains("south window", "light, grazing 14°", "B3 6.8×");
      stage.measure = Stage.Measure.MOMENT;
      assertThat(words(draw(canvas, USUAL, Studio.MODEL, stage)))
          .contains("B3")
          .doesNotContain("light, grazing 14°");
      stage.surface = Optional.of("room/west");
      assertThat(words(draw(canvas, USUAL, Studio.MODEL, stage)))
          .contains("2.75 m (9' 0¼\")", "8.00 m (26' 3\")")
          .doesNotContain("N");
      assertThat(words(draw(canvas, SMALL, Studio.MODEL, stage)))
          .doesNotContain("8.00 m (26' 3\")");
      gl.check();
    }
  }

  private static List<Placed> draw(Canvas canvas, Box pane, ViewModel model, Stage stage) {
    canvas.begin((int) pane.w(), (int) pane.h(), 1);
    new SheetPane(canvas, new Hits())
        .draw(
            pane,
            model,
            stage,
            new JointColours(model, stage, Optional.empty()),
            Sheet.of(model.house(), stage.surface));
    canvas.end();
    return canvas.placed();
  }

  private static List<String> words(List<Placed> placed) {
    return placed.stream().map(Placed::text).toList();
  }
}
