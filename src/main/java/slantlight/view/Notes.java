package slantlight.view;

import java.util.List;
import slantlight.geom.Vec2;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** Words over the picture: what is computed now, what is wrong with an edit, the split's halves. */
final class Notes {
  private final Canvas canvas;

  Notes(Canvas canvas) {
    this.canvas = canvas;
  }

  /**
   * Writes over a picture.
   *
   * @param free the part of it in which words may stand
   */
  void draw(Box picture, Box free, Stage stage, String working) {
    Box box = free.inset(14);
    if (!working.isEmpty()) {
      tag(box.top(28), working, Palette.SHEET, Palette.INK);
      box = box.underTop(34);
    }
    if (stage.notice.isPresent()) {
      notice(box, stage.notice.get());
    }
    if (stage.look == Stage.Look.AS_LIT && stage.split != Stage.Split.NONE) {
      halves(picture, stage);
    }
  }

  private void tag(Box row, String words, int ground, int ink) {
    double w = canvas.width(Type.plain(13.5), words) + 22;
    if (w <= row.w()) {
      canvas.panel(row.left(w), ground, 0.94, 6);
      canvas.text(row.left(w), Type.plain(13.5).in(ink), Canvas.Align.CENTRE, words);
    }
  }

  private void notice(Box box, String words) {
    Type type = Type.plain(14).in(Palette.SHEET);
    Box room = box.left(Math.min(box.w(), 620)).inset(12, 8);
    List<String> lines = canvas.lines(type, words, room.w());
    double h = lines.size() * type.line();
    Box card = new Box(box.x(), box.y(), room.w() + 24, h + 16);
    canvas.panel(card, 0x7a2a16, 1, 6);
    canvas.paragraph(new Box(room.x(), room.y(), room.w(), h), type, words);
  }

  private void halves(Box picture, Stage stage) {
    canvas.line(
        new Vec2(picture.midX(), picture.y()),
        new Vec2(picture.midX(), picture.bottom()),
        Palette.SHEET,
        1.6);
    boolean levels = stage.split == Stage.Split.LEVELS;
    String left = levels ? "level " + stage.level : "scene paint";
    String right = levels ? "level " + stage.otherLevel : Legend.swatch(stage.swatch);
    Box row = picture.inset(0, 12).bottom(28);
    Type type = Type.strong(15);
    double wl = canvas.width(type, left) + 20;
    double wr = canvas.width(type, right) + 20;
    Box l = new Box(picture.midX() - 12 - wl, row.y(), wl, row.h());
    Box r = new Box(picture.midX() + 12, row.y(), wr, row.h());
    canvas.panel(l, Palette.SHEET, 0.94, 6);
    canvas.text(l, type, Canvas.Align.CENTRE, left);
    canvas.panel(r, Palette.SHEET, 0.94, 6);
    canvas.text(r, type, Canvas.Align.CENTRE, right);
  }
}
