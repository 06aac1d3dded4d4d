package slantlight.view;

import java.util.List;
import java.util.Optional;
import slantlight.score.Peak;
import slantlight.sky.Sun;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** Name of the house, the three looks, and what time and light it is. */
final class TopBar {
  private final Canvas canvas;
  private final Hits hits;

  TopBar(Canvas canvas, Hits hits) {
    this.canvas = canvas;
    this.hits = hits;
  }

  void draw(Box bar, ViewModel model, Stage stage, Optional<Peak> shown) {
    canvas.fill(bar, Palette.PAPER);
    canvas.fill(bar.bottom(1), Palette.RULE);
    Box box = bar.inset(16, 6);
    double tabs = 330;
    Box middle = box.centred(tabs, 32);
    Box left = new Box(box.x(), box.y(), middle.x() - box.x() - 16, box.h());
    canvas.textThatFits(
        left.top(23), Type.strong(18), Canvas.Align.LEFT, List.of(model.house().name()));
    canvas.textThatFits(
        left.bottom(18),
        Type.soft(12.5),
        Canvas.Align.LEFT,
        List.of(model.house().note(), "a forecast, no warranty of appearance"));
    Stage.Look[] looks = Stage.Look.values();
    String[] words = {"Risk", "Boards", "As lit"};
    canvas.fill(middle, 0xe9e4d8, 1, 7);
    for (int i = 0; i < looks.length; i++) {
      Box tab = middle.column(i, looks.length).inset(2, 2);
      Stage.Look look = looks[i];
      boolean on = stage.look == look;
      if (on) {
        canvas.fill(tab, Palette.ACCENT, 1, 6);
      }
      canvas.text(
          tab, new Type(on, 15, on ? Palette.SHEET : Palette.INK), Canvas.Align.CENTRE, words[i]);
      hits.add(tab, (x, y) -> stage.look = look);
    }
    Box right = new Box(middle.right() + 16, box.y(), box.right() - middle.right() - 16, box.h());
    Sun sun = Almanac.sun(model.house(), stage.time);
    canvas.textThatFits(
        right.top(23),
        Type.strong(18),
        Canvas.Align.RIGHT,
        List.of(
            Wordings.clock(stage.time) + "  ·  " + Wordings.date(stage.time),
            Wordings.clock(stage.time) + "  ·  " + Wordings.shortDate(stage.time)));
    String sky = Wordings.sun(sun) + "  ·  " + Wordings.weather(stage.weather);
    int lamps = Almanac.lampsOn(model.house(), stage.time).size();
    String lit = lamps == 0 ? "" : "  ·  " + lamps + (lamps == 1 ? " lamp on" : " lamps on");
    String source = shown.map(p -> "  ·  " + p.source().label()).orElse("");
    canvas.textThatFits(
        right.bottom(18),
        Type.soft(12.5),
        Canvas.Align.RIGHT,
        List.of(sky + lit + source, sky + source, sky + lit, sky));
  }
}
