package slantlight.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.geom.Vec2;

/** The idea of the program in one picture: one joint under three lights. Not to scale. */
public final class IdeaSheet {
  private static final double PAGE = 184;
  private static final double PANEL = 54;
  private static final double GAP = 7;
  private static final double LEFT = 4;
  private static final double STRIP = 22;
  private static final double STRIP_HIGH = 34;
  private static final double BASE = 84;

  private final Pencil pencil = new Pencil();

  private IdeaSheet() {}

  /** Draws the picture. */
  public static Drawing draw() {
    return new IdeaSheet().drawing();
  }

  private Drawing drawing() {
    panel(0, "Light square on", "Both sides of the joint get", "the same light: quiet", 90, 5, 0);
    panel(
        1,
        "Light along the board",
        "One side bright, the other",
        "dark: the joint shows",
        13,
        5,
        1);
    panel(
        2, "Same light, skimmed", "A lower, wider rise tilts", "less: quiet again", 13, 1.3, 0.25);
    return pencil.drawing(
        "idea",
        "One joint under three lights",
        "Three panels. Light square on a finished joint: both flanks equally bright, nothing shows."
            + " Light running along the board: one flank bright, the other dark, the joint shows as"
            + " a line. The same light on a skimmed joint: the lower rise tilts less and is quiet.",
        PAGE,
        BASE + 24);
  }

  /**
   * One panel.
   *
   * @param angle of the light to the board, degrees
   * @param rise height of the joint on paper, mm
   * @param contrast how strongly the flanks differ, 0 to 1
   */
  private void panel(
      int place,
      String title,
      String line1,
      String line2,
      double angle,
      double rise,
      double contrast) {
    double x = LEFT + place * (PANEL + GAP);
    pencil.on("words-" + place);
    pencil.label(x, 8, title, 4.2, Mark.Anchor.START, 0, Ink.LINE, true);
    pencil.text(x, BASE + 14, line1, 3.6, Ink.LINE);
    pencil.text(x, BASE + 19, line2, 3.6, Ink.LINE);
    pencil.on("seen-" + place);
    seen(x, contrast);
    pencil.on("cut-" + place);
    cut(x, rise);
    pencil.on("light-" + place);
    light(x, angle, rise);
  }

  /** The board as an eye sees it, with the joint's two flanks. */
  private void seen(double x, double contrast) {
    double top = 13;
    pencil.box(x, top, PANEL, STRIP_HIGH, Ink.COVER);
    double middle = x + PANEL / 2;
    double flank = STRIP / 2;
    if (contrast > 0.5) {
      pencil.box(middle - flank, top, flank * 0.5, STRIP_HIGH, Ink.PAPER);
      pencil.box(middle - flank * 0.5, top, flank * 0.5, STRIP_HIGH, Ink.PAPER);
      pencil.box(middle, top, flank * 0.6, STRIP_HIGH, Ink.BOARD);
      pencil.box(middle + flank * 0.6, top, flank * 0.4, STRIP_HIGH, Ink.FAINT);
    } else if (contrast > 0) {
      pencil.box(middle, top, flank * 1.4, STRIP_HIGH, Ink.FAINT);
      pencil.box(middle + flank * 0.35, top, flank * 1.05, STRIP_HIGH, Ink.COVER);
    }
    pencil.outline(Pencil.rectangle(x, top, PANEL, STRIP_HIGH), Pen.full(Ink.SOFT, 0.2));
    pencil.text(x + 1.5, top + STRIP_HIGH - 1.8, "as seen", 2.8, Ink.SOFT);
  }

  /** The board cut across the joint, the rise much exaggerated. */
  private void cut(double x, double rise) {
    List<Vec2> surface = new ArrayList<>();
    double middle = x + PANEL / 2;
    double half = rise > 3 ? STRIP / 2 : STRIP * 0.8;
    for (double t = x; t <= x + PANEL + 1e-9; t += 0.5) {
      surface.add(new Vec2(t, BASE - height(t - middle, half, rise)));
    }
    List<Vec2> solid = new ArrayList<>(surface);
    solid.add(new Vec2(x + PANEL, BASE + 6));
    solid.add(new Vec2(x, BASE + 6));
    pencil.area(List.of(solid), Optional.of(Ink.FAINT), Optional.empty(), "", "");
    pencil.run(surface, Pen.full(Ink.LINE, 0.5));
    pencil.text(x + 1.5, BASE + 4.6, "cut, rise exaggerated", 2.8, Ink.LINE);
  }

  private static double height(double t, double half, double rise) {
    return Math.abs(t) >= half ? 0 : rise / 2 * (1 + Math.cos(Math.PI * t / half));
  }

  private void light(double x, double angle, double rise) {
    double a = Math.toRadians(angle);
    Vec2 along = new Vec2(Math.cos(a), Math.sin(a));
    double middle = x + PANEL / 2;
    double half = rise > 3 ? STRIP / 2 : STRIP * 0.8;
    for (int i = -1; i <= 1; i++) {
      double t = middle + i * 9 - (angle < 30 ? 6 : 0);
      Vec2 tip = new Vec2(t, BASE - height(t - middle, half, rise) - 0.6);
      double length = angle < 30 ? Math.min(24, (t - x - 0.5) / along.x()) : 26;
      pencil.arrow(tip.minus(along.times(length)), tip, 2.6, Pen.full(Ink.LIGHT, 0.5));
    }
  }
}
