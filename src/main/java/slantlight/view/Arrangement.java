package slantlight.view;

import slantlight.view.draw.Box;

/** Where the parts of the window are. A part that is shut has no area. */
record Arrangement(Box bar, Box room, Box legend, Box sheet, Box card, Box ribbons) {
  private static final double BAR = 54;
  private static final double LEGEND = 34;
  private static final double SIDE = 392;
  private static final double CARD = 238;

  static Arrangement of(Box whole, Stage stage) {
    Box none = new Box(0, 0, 0, 0);
    Box bar = whole.top(BAR);
    Box ribbons = whole.bottom(Ribbons.HEIGHT);
    Box middle = whole.underTop(BAR).aboveBottom(Ribbons.HEIGHT);
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
      case ROOM ->
          new Arrangement(
              bar, middle.aboveBottom(LEGEND), middle.bottom(LEGEND), none, none, ribbons);
      case SHEET ->
          new Arrangement(
              bar, none, middle.bottom(LEGEND), middle.aboveBottom(LEGEND), none, ribbons);
    };
  }
}
