package slantlight.view;

import java.util.List;
import java.util.OptionalInt;
import slantlight.board.Joint;
import slantlight.geom.Vec2;
import slantlight.score.Band;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** Large type over a dark ground: one stop at a time, for a client across the table. */
final class Presentation {
  private static final double BAND = 176;

  /** Half the width of what is framed round a joint, and length of the frame's corners. */
  private static final double ROUND = 84;

  private static final double ARM = 18;

  private final Canvas canvas;

  Presentation(Canvas canvas) {
    this.canvas = canvas;
  }

  /** The picture's part of the window. */
  static Box picture(Box whole) {
    return whole.aboveBottom(band(whole).h());
  }

  /** The band under the picture. */
  static Box band(Box whole) {
    return whole.bottom(Math.rint(Math.min(BAND, whole.h() * 0.3)));
  }

  /** Place of the stop at hand among the stops. */
  private static int number(List<Stop> stops, Stage stage) {
    return Math.min(stage.stop, stops.size() - 1);
  }

  /** Shows where in the picture the stop's joint is: corners round the place, and its name. */
  void point(Box picture, List<Stop> stops, Stage stage) {
    if (stops.isEmpty()) {
      return;
    }
    Stop stop = stops.get(number(stops, stage));
    Vec2 at = stage.camera.project(stop.peak().place(), picture);
    if (at == null || !picture.inset(ROUND, ROUND).contains(at.x(), at.y())) {
      return;
    }
    for (int across : new int[] {-1, 1}) {
      for (int up : new int[] {-1, 1}) {
        Vec2 corner = at.plus(new Vec2(across * ROUND, up * ROUND * 0.7));
        List<Vec2> bent =
            List.of(
                corner.plus(new Vec2(-across * ARM, 0)),
                corner,
                corner.plus(new Vec2(0, -up * ARM)));
        canvas.polyline(bent, Palette.NIGHT, 0.6, 4.5);
        canvas.polyline(bent, Palette.CHALK, 1, 2);
      }
    }
    stop.joint()
        .ifPresent(
            id ->
                canvas.text(
                    at.plus(new Vec2(0, ROUND * 0.7 + 15)),
                    0,
                    Type.strong(16).in(Palette.CHALK),
                    Canvas.Align.CENTRE,
                    Joint.name(id),
                    OptionalInt.of(Palette.NIGHT)));
  }

  void draw(Box whole, List<Stop> stops, Stage stage) {
    Box band = band(whole);
    canvas.fill(band, Palette.NIGHT);
    Box box = band.inset(40, 18);
    if (stops.isEmpty()) {
      canvas.text(
          box.top(36),
          Type.strong(28).in(Palette.CHALK),
          Canvas.Align.LEFT,
          "Nothing shows in this house");
      return;
    }
    Stop stop = stops.get(number(stops, stage));
    Box side = box.right(250);
    Box main = box.leftOf(280);
    Band b = Band.of(stop.peak().showing());
    Box chip = main.top(34).left(86).centred(86, 30);
    canvas.fill(chip, Palette.of(b), 1, 6);
    boolean dark = b == Band.PLAIN || b == Band.LOUD;
    canvas.text(
        chip,
        Type.strong(19).in(dark ? Palette.CHALK : Palette.INK),
        Canvas.Align.CENTRE,
        Wordings.band(b));
    if (b == Band.LOUD) {
      canvas.frame(chip, Palette.SOFT_CHALK, 1, 6);
    }
    canvas.textThatFits(
        main.top(34).rightOf(102),
        Type.strong(29).in(Palette.CHALK),
        Canvas.Align.LEFT,
        List.of(stop.surface().label()));
    sentence(main.underTop(44), stop.sentence());
    canvas.text(
        side.top(34),
        Type.strong(25).in(Palette.CHALK),
        Canvas.Align.RIGHT,
        "Level " + stop.level());
    canvas.text(
        side.underTop(42).top(24),
        Type.plain(19).in(Palette.CHALK),
        Canvas.Align.RIGHT,
        Wordings.shortDate(stage.time) + ", " + Wordings.clock(stage.time));
    canvas.text(
        side.underTop(68).top(22),
        Type.plain(16).in(Palette.SOFT_CHALK),
        Canvas.Align.RIGHT,
        Legend.strength(stage));
    if (stage.swatch.isPresent()) {
      canvas.textThatFits(
          side.underTop(92).top(20),
          Type.plain(15).in(Palette.SOFT_CHALK),
          Canvas.Align.RIGHT,
          Legend.KEPT);
    }
    canvas.text(
        side.bottom(22),
        Type.plain(16).in(Palette.SOFT_CHALK),
        Canvas.Align.RIGHT,
        (number(stops, stage) + 1) + " of " + stops.size());
  }

  /** The sentence as large as all of it fits. */
  private void sentence(Box room, String text) {
    for (double size : new double[] {23, 21, 19, 17, 15, 13}) {
      Type type = Type.plain(size).in(Palette.CHALK);
      if (canvas.lines(type, text, room.w()).size() * type.line() <= room.h()) {
        canvas.paragraph(room, type, text);
        return;
      }
    }
  }
}
