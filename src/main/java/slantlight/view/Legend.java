package slantlight.view;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.scene.Paint;
import slantlight.score.Band;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** One row under the picture that says how to read it, and takes the choices of the look. */
final class Legend {
  /** What a paint that is tried leaves as it was. */
  static final List<String> KEPT =
      List.of("bounced light stays that of the scene's paint", "bounce as in the scene's paint");

  private final Canvas canvas;
  private final Hits hits;

  Legend(Canvas canvas, Hits hits) {
    this.canvas = canvas;
    this.hits = hits;
  }

  void draw(Box row, Stage stage, String measure, Optional<String> tone) {
    canvas.fill(row, Palette.PAPER);
    canvas.fill(row.top(1), Palette.RULE);
    Box box = row.inset(16, 5);
    if (stage.look == Stage.Look.AS_LIT) {
      asLit(box, stage, tone);
    } else {
      bands(box, stage, measure);
    }
  }

  private void bands(Box box, Stage stage, String by) {
    Box rest = box;
    String measure = "joints by " + by;
    double w = canvas.width(Type.strong(13), measure);
    canvas.text(rest.left(w), Type.strong(13), Canvas.Align.LEFT, measure);
    hits.add(
        rest.left(w),
        (x, y) -> stage.measure = Dials.next(List.of(Stage.Measure.values()), stage.measure));
    rest = rest.rightOf(w + 18);
    for (Band b : Band.values()) {
      String word = Wordings.band(b) + (b == Band.QUIET ? "" : " " + number(b.from()) + "+");
      double word1 = canvas.width(Type.plain(13), word);
      if (rest.w() < word1 + 36) {
        return;
      }
      canvas.fill(rest.left(22).centred(22, 12), Palette.of(b), 1, 2);
      canvas.text(rest.rightOf(28).left(word1), Type.plain(13), Canvas.Align.LEFT, word);
      rest = rest.rightOf(28 + word1 + 16);
    }
    String note = "tint: level to specify";
    double levels = canvas.width(Type.soft(13), note) + 3 * 34 + 10;
    if (rest.w() < levels) {
      return;
    }
    Box end = rest.right(levels);
    canvas.text(end.leftOf(3 * 34 + 8), Type.soft(13), Canvas.Align.RIGHT, note);
    for (int level = 3; level <= 5; level++) {
      Box chip = end.right(3 * 34).column(level - 3, 3).inset(3, 2);
      canvas.fill(chip, Palette.ofLevel(level), 1, 3);
      canvas.frame(chip, Palette.RULE, 1, 3);
      canvas.text(chip, Type.plain(13), Canvas.Align.CENTRE, String.valueOf(level));
    }
  }

  private static String number(double v) {
    return v == Math.rint(v) ? String.format(Locale.ROOT, "%.0f", v) : String.valueOf(v);
  }

  private void asLit(Box box, Stage stage, Optional<String> tone) {
    Box rest = box;
    rest = button(rest, strength(stage), stage.strength != 1, () -> Dials.strength(stage));
    rest = button(rest, split(stage), stage.split != Stage.Split.NONE, () -> Dials.split(stage));
    rest = button(rest, swatch(stage.swatch), stage.swatch.isPresent(), () -> Dials.swatch(stage));
    if (stage.swatch.isPresent()) {
      Type type = Type.plain(13);
      for (String words : KEPT) {
        double w = canvas.width(type, words);
        if (w <= rest.w()) {
          canvas.text(rest.left(w), type, Canvas.Align.LEFT, words);
          rest = rest.rightOf(w + 16);
          break;
        }
      }
    }
    Box end = rest;
    tone.ifPresent(
        t ->
            canvas.textThatFits(
                end, Type.soft(12.5), Canvas.Align.RIGHT, List.of(t, t.split(";", 2)[0])));
  }

  private Box button(Box rest, String words, boolean on, Runnable act) {
    Type type = new Type(on, 13, on ? Palette.SHEET : Palette.INK);
    double w = canvas.width(type, words) + 20;
    if (w > rest.w()) {
      return rest;
    }
    Box b = rest.left(w);
    canvas.fill(b, on ? Palette.ACCENT : 0xe9e4d8, 1, 6);
    canvas.text(b, type, Canvas.Align.CENTRE, words);
    hits.add(b, (x, y) -> act.run());
    return rest.rightOf(w + 8);
  }

  /** Always says its factor; 1 is what is true. */
  static String strength(Stage stage) {
    return stage.strength == 1
        ? "ridges ×1, true"
        : "ridges ×" + number(stage.strength) + ", exaggerated";
  }

  static String split(Stage stage) {
    return switch (stage.split) {
      case NONE -> "level " + stage.level;
      case LEVELS -> "level " + stage.level + " | level " + stage.otherLevel;
      case PAINTS -> "scene paint | " + swatch(stage.swatch);
    };
  }

  static String swatch(Optional<Paint> paint) {
    return paint
        .map(p -> "LRV " + Math.round(100 * p.lrv()) + ", " + Wordings.sheen(p.sheen()))
        .orElse("scene paint");
  }
}
