package slantlight.view;

import slantlight.view.draw.Box;

/**
 * Where the parts of the window are. A part that is shut has no area. When one pane has the whole
 * window, the card comes only for what is chosen: over the room's corner, or beside the sheet.
 */
record Arrangement(Box bar, Box room, Box legend, Box sheet, Box card, Box ribbons) {
  private static final double BAR = 54;
  private static final double LEGEND = 34;
  private static final double SIDE = 392;
  private static final double CARD = 238;
  private static final double MARGIN = 14;

  static Arrangement of(Box whole, Stage stage) {
    Box none = new Box(0, 0, 0, 0);
    Box bar = whole.top(BAR);
    Box ribbons = whole.bottom(Ribbons.HEIGHT);
    Box middle = whole.underTop(BAR).aboveBottom(Ribbons.HEIGHT);
    boolean chosen = stage.surface.isPresent();
    return switch (stage.panes) {
      case BOTH -> {
        double side = Math.rint(Math.min(SIDE, Math.max(300, whole.w() * 0.31)));
        Box right = middle.right(side);
        Box left = middle.leftOf(side);
        yield new Arrangement(
            bar,
            left.aboveBottom(LEGEND),
            left.bottom(LEGEND),
            right.aboveBottom(CARD),
            right.bottom(CARD),
            ribbons);
      }
      case ROOM -> {
        Box left = middle.aboveBottom(LEGEND);
        Box card = chosen ? left.inset(MARGIN).right(SIDE - 2 * MARGIN).top(CARD) : none;
        yield new Arrangement(bar, left, middle.bottom(LEGEND), none, card, ribbons);
      }
      case SHEET -> {
        Box sheet = middle.aboveBottom(LEGEND);
        Box card = chosen ? sheet.right(SIDE) : none;
        yield new Arrangement(
            bar, none, middle.bottom(LEGEND), sheet.leftOf(card.w()), card, ribbons);
      }
    };
  }
}
