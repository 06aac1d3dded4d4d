package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import slantlight.geom.Vec2;
import slantlight.scene.Surface;
import slantlight.sheet.Layer;
import slantlight.sheet.Part;
import slantlight.sheet.Pencil;
import slantlight.sheet.SurfacePlot;
import slantlight.sky.Sun;
import slantlight.units.Measures;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** Draws a sheet, and over it what is chosen, framing, eyes and the sun of the moment. */
final class SheetPane {
  private static final double EDGE = 16;
  private static final double HEAD = 32;
  private static final double FOOT = 30;

  /** From the drawing to its dimension lines, mm. */
  private static final double DIMENSIONS = 5.8;

  /** Round the drawing for dimensions and the names of openings. */
  private static final double MARGIN = 50;

  /** Height of a pane from which on dimensions are drawn. */
  private static final double ROOMY = 260;

  private static final double NORTH = 2.6;

  /** Longest scale bar. */
  private static final double BAR = 110;

  /** Drawn over joints here, since those are wide. */
  private static final String BOARDS = "boards";

  private final Canvas canvas;
  private final Hits hits;

  SheetPane(Canvas canvas, Hits hits) {
    this.canvas = canvas;
    this.hits = hits;
  }

  /** The part of the pane that the surfaces fill. */
  static Box drawing(Box pane) {
    Box middle = pane.underTop(HEAD).aboveBottom(FOOT);
    return roomy(pane)
        ? middle.rightOf(MARGIN + 4).leftOf(MARGIN / 2).underTop(MARGIN).aboveBottom(MARGIN / 2)
        : middle.inset(EDGE, 13);
  }

  /** Whether dimensions leave room enough for what they measure. */
  private static boolean roomy(Box pane) {
    return pane.h() >= ROOMY;
  }

  void draw(Box pane, ViewModel model, Stage stage, JointColours colours, Sheet sheet) {
    canvas.panel(pane, Palette.SHEET, 1, 0);
    canvas.textThatFits(
        pane.inset(EDGE, 8).top(24),
        Type.strong(15),
        Canvas.Align.LEFT,
        List.of(sheet.title(), sheet.title().replace("Elevation: ", "")));
    canvas.clip(pane);
    Box box = drawing(pane);
    MarkPainter painter = new MarkPainter(canvas, pane);
    List<Part> parts = new ArrayList<>();
    for (Surface s : sheet.parts()) {
      parts.add(new Part(s, model.score(s.id()), sheet.map(s, box, painter)));
    }
    Pencil pencil = new Pencil(pane.w() / MarkPainter.SCALE, pane.h() / MarkPainter.SCALE);
    SurfacePlot plot =
        new SurfacePlot(model.house(), parts, new ScreenLook(model, stage, colours), pencil);
    Box foot = pane.inset(EDGE, 0).bottom(FOOT);
    Vec2 north = painter.paper(new Vec2(foot.right() - 12, foot.midY() - 1));
    keepOff(pencil, painter, pane.top(HEAD));
    keepOff(pencil, painter, foot.right(100));
    pencil.on("foot");
    pencil.scaleBar(
        painter.paper(new Vec2(foot.x(), foot.midY())),
        Measures.printed(model.house().units()),
        sheet.scale(box) / MarkPainter.SCALE,
        BAR / MarkPainter.SCALE);
    plot.north().ifPresent(up -> pencil.north(north, up, NORTH));
    plot.draw(roomy(pane) ? Optional.of(new Vec2(DIMENSIONS, DIMENSIONS)) : Optional.empty());
    List<Layer> layers = pencil.drawing("sheet", sheet.title(), "", pane.w(), pane.h()).layers();
    for (Layer layer : layers) {
      if (!layer.id().equals(BOARDS)) {
        painter.paint(layer);
      }
      if (layer.id().equals("joints")) {
        parts.forEach(p -> framing(p, stage, painter));
        layers.stream().filter(l -> l.id().equals(BOARDS)).forEach(painter::paint);
        parts.forEach(p -> chosen(p, model, stage, painter, sheet.plan()));
      }
    }
    if (sheet.plan()) {
      sun(Almanac.sun(model.house(), stage.time), painter.at(north).plus(new Vec2(-46, 0)));
    }
    canvas.unclip();
    hits.add(
        box,
        (x, y) ->
            sheet
                .pick(model, box, x, y)
                .ifPresent(
                    p -> {
                      stage.surface = Optional.of(p.surface().id());
                      stage.joint = p.joint().map(j -> j.joint().id());
                    }),
        (x, y) -> sheet.pick(model, box, x, y));
  }

  private static void keepOff(Pencil pencil, MarkPainter painter, Box b) {
    pencil.keepOff(
        List.of(
            painter.paper(new Vec2(b.x(), b.y())),
            painter.paper(new Vec2(b.right(), b.y())),
            painter.paper(new Vec2(b.right(), b.bottom())),
            painter.paper(new Vec2(b.x(), b.bottom()))));
  }

  private void framing(Part p, Stage stage, MarkPainter painter) {
    if (stage.look == Stage.Look.BOARDS && p.surface().framing().isPresent()) {
      for (List<Vec2> m : Members.of(p.surface().face(), p.surface().framing().get())) {
        canvas.region(painter.at(p.map().at(m)), List.of(), Palette.SOFT_INK, 0.22);
      }
    }
  }

  private void chosen(Part p, ViewModel model, Stage stage, MarkPainter painter, boolean plan) {
    String id = p.surface().id();
    if (stage.surface.filter(id::equals).isPresent()) {
      List<Vec2> outer = painter.at(p.map().at(p.surface().face().outer()));
      canvas.ring(outer, Palette.ACCENT, plan ? 2.6 : 1.4);
    }
    stage
        .joint
        .flatMap(model::joint)
        .map(j -> j.joint())
        .filter(j -> ViewModel.surfaceOf(j.id()).equals(id))
        .ifPresent(
            j -> {
              double wide = model.featherWidth().applyAsDouble(j) + 0.05;
              List<Vec2> quad = painter.at(p.map().at(PaintedHouse.quad(j, wide)));
              canvas.ring(quad, Palette.INK, 2);
            });
  }

  /** The sun on its side of a plan, with a ray toward the middle. */
  private void sun(Sun sun, Vec2 at) {
    if (sun.altitude() > 0) {
      Vec2 d = new Vec2(Math.sin(sun.azimuth()), -Math.cos(sun.azimuth()));
      canvas.disc(at.plus(d.times(8)), 4, Palette.SUN);
      canvas.line(at.plus(d.times(4)), at.minus(d.times(9)), Palette.SUN, 2);
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
}
