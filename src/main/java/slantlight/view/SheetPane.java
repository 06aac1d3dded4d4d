package slantlight.view;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import slantlight.board.PlacedBoard;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Eye;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Surface;
import slantlight.score.JointScore;
import slantlight.sky.Sun;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** Draws a sheet: surfaces, boards, joints, openings, eyes, north, sun and scale. */
final class SheetPane {
  private static final int PIECES = 8;
  private final Canvas canvas;
  private final Hits hits;

  SheetPane(Canvas canvas, Hits hits) {
    this.canvas = canvas;
    this.hits = hits;
  }

  /** The part of the pane that the drawing fills. */
  static Box drawing(Box pane) {
    return pane.inset(16, 10).underTop(26).aboveBottom(28);
  }

  void draw(Box pane, ViewModel model, Stage stage, JointColours colours, Sheet sheet) {
    canvas.panel(pane, Palette.SHEET, 1, 0);
    Box box = drawing(pane);
    Box head = pane.inset(16, 8).top(24);
    canvas.textThatFits(
        head.leftOf(30),
        Type.strong(15),
        Canvas.Align.LEFT,
        List.of(sheet.title(), sheet.title().replace("Elevation: ", "")));
    Function<Vec2, Vec2> to = sheet.toScreen(box);
    canvas.clip(pane);
    for (Surface s : sheet.parts()) {
      surface(box, model, stage, colours, sheet, s);
    }
    if (sheet.plan()) {
      for (Opening o : model.house().openings()) {
        if (o.kind() != OpeningKind.PASSAGE
            && Math.abs(o.face().frame().n().z()) < 0.5
            && sheet.parts().stream().anyMatch(s -> s.roomId().equals(o.roomId()))) {
          List<Vec3> c = o.face().corners();
          Vec2 a = to.apply(new Vec2(c.get(0).x(), c.get(0).y()));
          Vec2 b = to.apply(new Vec2(c.get(1).x(), c.get(1).y()));
          canvas.line(a, b, Palette.SHEET, 6);
          canvas.line(a, b, Palette.mix(Palette.GLASS, Palette.ACCENT, 0.35), 4);
        }
      }
      for (Eye e : model.house().eyes()) {
        if (sheet.parts().stream().noneMatch(s -> s.roomId().equals(e.roomId()))) {
          continue;
        }
        canvas.circle(
            to.apply(new Vec2(e.position().x(), e.position().y())), 2.4, Palette.SOFT_INK, 1);
      }
    }
    canvas.unclip();
    foot(pane.inset(16, 6).bottom(22), model, stage, sheet, box);
    hits.add(
        box,
        (x, y) ->
            sheet
                .pick(model, box, x, y)
                .ifPresent(
                    p -> {
                      stage.surface = java.util.Optional.of(p.surface().id());
                      stage.joint = p.joint().map(j -> j.joint().id());
                    }),
        (x, y) -> sheet.pick(model, box, x, y));
  }

  private void surface(
      Box box, ViewModel model, Stage stage, JointColours colours, Sheet sheet, Surface s) {
    Function<Vec2, Vec2> to = sheet.toScreen(box);
    List<Vec2> outer = sheet.screenRings(s, List.of(s.face().outer()), box).get(0);
    List<List<Vec2>> holes = sheet.screenRings(s, s.face().holes(), box);
    int tint = model.verdict(s.id()).map(v -> Palette.ofLevel(v.level())).orElse(Palette.PLASTER);
    canvas.region(outer, List.of(), tint, 1);
    for (List<Vec2> covered : sheet.screenRings(s, s.covered(), box)) {
      canvas.region(covered, List.of(), Palette.RULE, 1);
    }
    if (stage.look == Stage.Look.BOARDS) {
      s.framing()
          .ifPresent(
              f -> {
                for (List<Vec2> m : sheet.screenRings(s, Members.of(s.face(), f), box)) {
                  canvas.region(m, List.of(), Palette.SOFT_INK, 0.22);
                }
              });
    }
    model
        .score(s.id())
        .ifPresent(
            score -> {
              for (JointScore j : score.joints()) {
                joint(model, colours, sheet, s, j, to, stage.look == Stage.Look.BOARDS ? 0.6 : 1);
              }
              if (stage.look == Stage.Look.BOARDS) {
                for (PlacedBoard b : score.layout().boards()) {
                  canvas.ring(
                      sheet.screenRings(s, List.of(b.outline()), box).get(0), Palette.ACCENT, 1.2);
                }
              }
            });
    for (List<Vec2> hole : holes) {
      canvas.region(hole, List.of(), Palette.mix(Palette.SHEET, Palette.GLASS, 0.6), 1);
      canvas.ring(hole, Palette.INK, 1);
    }
    boolean chosen = stage.surface.filter(s.id()::equals).isPresent();
    canvas.ring(outer, chosen ? Palette.ACCENT : Palette.INK, chosen && sheet.plan() ? 2.6 : 1.4);
    stage
        .joint
        .flatMap(model::joint)
        .filter(j -> ViewModel.surfaceOf(j.joint().id()).equals(s.id()))
        .ifPresent(
            j ->
                canvas.ring(
                    PaintedHouse.quad(
                            j.joint(), model.featherWidth().applyAsDouble(j.joint()) + 0.05)
                        .stream()
                        .map(p -> to.apply(Sheet.onSheet(s, p, sheet.plan())))
                        .toList(),
                    Palette.INK,
                    2));
  }

  private void joint(
      ViewModel model,
      JointColours colours,
      Sheet sheet,
      Surface s,
      JointScore j,
      Function<Vec2, Vec2> to,
      double alpha) {
    double width = model.featherWidth().applyAsDouble(j.joint());
    Vec2 a = j.joint().from();
    Vec2 b = j.joint().to();
    Vec2 d = b.minus(a).unit();
    Vec2 n = new Vec2(-d.y(), d.x()).times(width / 2);
    for (int i = 0; i < PIECES; i++) {
      Vec2 p = a.lerp(b, (double) i / PIECES);
      Vec2 q = a.lerp(b, (i + 1.0) / PIECES);
      List<Vec2> ring =
          List.of(p.minus(n), q.minus(n), q.plus(n), p.plus(n)).stream()
              .map(x -> to.apply(Sheet.onSheet(s, x, sheet.plan())))
              .toList();
      canvas.region(ring, List.of(), colours.at(j, (i + 0.5) / PIECES), alpha);
    }
  }

  /** Where the picture beside is taken from, when that is over the sheet. */
  void you(Box pane, Camera camera, Sheet sheet) {
    Function<Vec2, Vec2> to = sheet.toScreen(drawing(pane));
    Vec2 at = new Vec2(camera.eye().x(), camera.eye().y());
    if (!sheet.plan()
        || at.x() < sheet.low().x()
        || at.y() < sheet.low().y()
        || at.x() > sheet.high().x()
        || at.y() > sheet.high().y()) {
      return;
    }
    Vec2 p = to.apply(at);
    double a = camera.azimuth();
    Vec2 l = p.plus(new Vec2(Math.sin(a - 0.45), -Math.cos(a - 0.45)).times(26));
    Vec2 r = p.plus(new Vec2(Math.sin(a + 0.45), -Math.cos(a + 0.45)).times(26));
    canvas.region(List.of(p, l, r), List.of(), Palette.ACCENT, 0.35);
    canvas.disc(p, 4.5, Palette.ACCENT);
  }

  private void foot(Box row, ViewModel model, Stage stage, Sheet sheet, Box drawing) {
    double k = sheet.scale(drawing);
    double metres = 1;
    for (double m : new double[] {0.5, 1, 2, 5, 10}) {
      if (m * k <= 110) {
        metres = m;
      }
    }
    double y = row.midY();
    double x0 = row.x();
    double x1 = x0 + metres * k;
    canvas.line(new Vec2(x0, y), new Vec2(x1, y), Palette.INK, 1.4);
    canvas.line(new Vec2(x0, y - 4), new Vec2(x0, y + 4), Palette.INK, 1.4);
    canvas.line(new Vec2(x1, y - 4), new Vec2(x1, y + 4), Palette.INK, 1.4);
    canvas.text(
        new Box(x1 + 6, row.y(), 60, row.h()),
        Type.soft(12),
        Canvas.Align.LEFT,
        String.format(Locale.ROOT, metres < 1 ? "%.1f m" : "%.0f m", metres));
    if (sheet.plan()) {
      Vec2 c = new Vec2(row.right() - 12, row.midY());
      canvas.line(new Vec2(c.x(), c.y() + 8), new Vec2(c.x(), c.y() - 5), Palette.INK, 1.4);
      canvas.region(
          List.of(
              new Vec2(c.x() - 4, c.y() - 3),
              new Vec2(c.x() + 4, c.y() - 3),
              new Vec2(c.x(), c.y() - 10)),
          List.of(),
          Palette.INK,
          1);
      canvas.text(
          new Box(c.x() - 30, row.y(), 20, row.h()), Type.soft(12), Canvas.Align.RIGHT, "N");
      Sun sun = Almanac.sun(model.house(), stage.time);
      if (sun.altitude() > 0) {
        Vec2 d = new Vec2(Math.sin(sun.azimuth()), -Math.cos(sun.azimuth()));
        Vec2 s = new Vec2(c.x() - 54, c.y());
        canvas.disc(s.plus(d.times(8)), 4, Palette.SUN);
        canvas.line(s.plus(d.times(4)), s.minus(d.times(9)), Palette.SUN, 2);
      }
    }
  }
}
