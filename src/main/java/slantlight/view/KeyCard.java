package slantlight.view;

import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** The card of all keys. */
final class KeyCard {
  private static final double ROW = 25;
  private static final double KEYS = 96;
  private final Canvas canvas;

  KeyCard(Canvas canvas) {
    this.canvas = canvas;
  }

  void draw(Box whole) {
    Box card = whole.centred(Math.min(whole.w() - 20, 780), Math.min(whole.h() - 20, 560));
    canvas.panel(whole, Palette.NIGHT, 0.72, 0);
    canvas.panel(card, Palette.SHEET, 1, 10);
    Box box = card.inset(30, 22);
    canvas.text(box.top(30), Type.strong(21), Canvas.Align.LEFT, "Keys");
    Box body = box.underTop(42);
    for (int i = 0; i < Keys.ALL.size(); i++) {
      Keys.Group group = Keys.ALL.get(i);
      Box column = body.column(i % 2, 2).leftOf(12);
      Box rest = i < 2 ? column : column.underTop(ROW * 10.5);
      canvas.text(
          rest.top(ROW), Type.strong(15).in(Palette.ACCENT), Canvas.Align.LEFT, group.title());
      rest = rest.underTop(ROW);
      for (Keys.Row row : group.rows()) {
        canvas.text(rest.top(ROW).left(KEYS), Type.strong(14), Canvas.Align.LEFT, row.keys());
        canvas.text(rest.top(ROW).rightOf(KEYS), Type.plain(14), Canvas.Align.LEFT, row.does());
        rest = rest.underTop(ROW);
      }
    }
  }
}
