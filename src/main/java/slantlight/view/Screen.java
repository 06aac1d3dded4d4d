package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_DEPTH_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_SCISSOR_TEST;
import static org.lwjgl.opengl.GL11C.GL_STENCIL_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.glClear;
import static org.lwjgl.opengl.GL11C.glClearColor;
import static org.lwjgl.opengl.GL11C.glDisable;
import static org.lwjgl.opengl.GL11C.glEnable;
import static org.lwjgl.opengl.GL11C.glScissor;
import static org.lwjgl.opengl.GL11C.glViewport;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Placed;
import slantlight.view.gl.Target;

/** Draws a whole frame: the room, the sheet beside it, and what is written round them. */
final class Screen implements AutoCloseable {
  private final Canvas canvas = new Canvas();
  private final Hits hits = new Hits();
  private final PaintedHouse painted = new PaintedHouse();
  private final TopBar bar = new TopBar(canvas, hits);
  private final Ribbons ribbons = new Ribbons(canvas, hits);
  private final SheetPane sheets = new SheetPane(canvas, hits);
  private final ReasonCard card = new ReasonCard(canvas, hits);
  private final Legend legend = new Legend(canvas, hits);
  private final Presentation presentation = new Presentation(canvas);
  private final KeyCard keyCard = new KeyCard(canvas);
  private final Notes notes = new Notes(canvas);
  private final LitHouse lit = new LitHouse();
  private final SunArc sunArc = new SunArc();
  private ViewModel model;
  private HouseShape shape;
  private Walker walker;
  private List<Object> filledFor = List.of();
  private List<Stop> stops = List.of();
  private Optional<LitMoment> moment = Optional.empty();
  private Box picture = new Box(0, 0, 0, 0);
  private String working = "";
  private final int samples;

  /**
   * A screen for the current context.
   *
   * @param samples samples a pixel of the as-lit picture
   */
  Screen(ViewModel model, int samples) {
    this.samples = samples;
    show(model);
  }

  /** Shows other numbers or another house from now on. */
  void show(ViewModel next) {
    model = next;
    shape = new HouseShape(next);
    walker = new Walker(next.house());
    lit.show(next, shape);
    stops = Stop.all(next);
    filledFor = List.of();
    moment = Optional.empty();
  }

  /** Shows surfaces under this light from now on. */
  void light(LitMoment next) {
    moment = Optional.of(next);
    lit.fill(next);
  }

  /** Says what is being computed; empty when nothing is. */
  void working(String words) {
    working = words;
  }

  /** Where the room picture of the last frame is, layout units. */
  Box picture() {
    return picture;
  }

  ViewModel model() {
    return model;
  }

  HouseShape shape() {
    return shape;
  }

  Hits hits() {
    return hits;
  }

  /** The type of the last frame, for the check that all of it fits. */
  List<Placed> placed() {
    return canvas.placed();
  }

  /**
   * Draws into a target.
   *
   * @param scale pixels per layout unit
   */
  void draw(Target target, Stage stage, double scale) {
    target.bind();
    hits.clear();
    canvas.begin(target.width(), target.height(), scale);
    Arrangement at = Arrangement.of(canvas.whole(), stage);
    JointColours colours = new JointColours(model, stage);
    refill(stage, colours);
    clear(stage.presenting ? Palette.NIGHT : Palette.PAPER);
    picture = stage.presenting ? Presentation.picture(canvas.whole()) : at.room();
    if (picture.w() > 0) {
      room(picture, target, stage, scale);
    }
    if (picture.w() > 0 && stage.look != Stage.Look.AS_LIT && outside(stage)) {
      SunArc.label(canvas, picture, model.house(), shape, stage);
    }
    if (stage.presenting) {
      presentation.draw(canvas.whole(), stops, stage);
      notes.draw(picture, stage, working);
    } else {
      parts(at, stage, colours);
    }
    if (stage.keyCard) {
      keyCard.draw(canvas.whole());
    }
    canvas.end();
  }

  /** Draws the room picture alone over the whole target. */
  void drawPicture(Target target, Stage stage, double scale) {
    target.bind();
    refill(stage, new JointColours(model, stage));
    room(new Box(0, 0, target.width() / scale, target.height() / scale), target, stage, scale);
  }

  private void refill(Stage stage, JointColours colours) {
    List<Object> wanted =
        List.of(
            stage.look,
            stage.measure,
            stage.surface,
            stage.joint,
            stage.measure == Stage.Measure.MOMENT ? stage.time : "");
    if (!wanted.equals(filledFor)) {
      painted.fill(model, shape, stage, colours);
      filledFor = wanted;
    }
  }

  private void parts(Arrangement at, Stage stage, JointColours colours) {
    Almanac almanac = new Almanac(model, stage.surface.filter(s -> model.score(s).isPresent()));
    bar.draw(at.bar(), model, stage, almanac.worst());
    ribbons.draw(at.ribbons(), model.house(), almanac, stage);
    if (at.sheet().w() > 0) {
      canvas.fill(at.sheet(), Palette.SHEET);
      sheets.draw(at.sheet(), model, stage, colours, Sheet.of(model.house(), stage.surface));
    }
    if (at.card().w() > 0) {
      card.draw(at.card(), model, stage, new Almanac(model, Optional.empty()));
      canvas.fill(
          new Box(at.sheet().x(), at.sheet().y(), 1, at.sheet().h() + at.card().h()), Palette.RULE);
    }
    legend.draw(at.legend(), stage, tone());
    notes.draw(at.room().w() > 0 ? at.room() : at.sheet(), stage, working);
  }

  /** How the as-lit picture turns luminance into screen values. */
  private Optional<String> tone() {
    return moment.map(
        m ->
            String.format(
                Locale.ROOT,
                "white is %,.0f cd/m²; true to 80 %% of it, then a soft shoulder",
                lit.white()));
  }

  static void clear(int rgb) {
    glClearColor((rgb >> 16 & 255) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f, 1);
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
  }

  private void room(Box box, Target target, Stage stage, double scale) {
    int x = (int) Math.round(box.x() * scale);
    int w = (int) Math.round(box.right() * scale) - x;
    int top = (int) Math.round(box.y() * scale);
    int h = (int) Math.round(box.bottom() * scale) - top;
    int y = target.height() - top - h;
    glViewport(x, y, w, h);
    glEnable(GL_SCISSOR_TEST);
    glScissor(x, y, w, h);
    if (stage.look == Stage.Look.AS_LIT && moment.isPresent()) {
      lit.meter(stage.focus, stage.surface.map(model.house()::surface));
      lit.draw(
          target, new int[] {x, y, w, h}, stage.camera, halves(stage), stage.strength, samples);
    } else {
      clear(0xefebe2);
      painted.draw(stage.camera, w, h, scale);
      if (outside(stage)) {
        sunArc.draw(model.house(), shape, stage, w, h, scale);
      }
    }
    glDisable(GL_SCISSOR_TEST);
    glViewport(0, 0, target.width(), target.height());
  }

  private boolean outside(Stage stage) {
    return walker.room(stage.camera.eye()).isEmpty();
  }

  private static List<LitHouse.Half> halves(Stage stage) {
    return switch (stage.split) {
      case NONE -> List.of(new LitHouse.Half(stage.level, stage.swatch));
      case LEVELS ->
          List.of(
              new LitHouse.Half(stage.level, stage.swatch),
              new LitHouse.Half(stage.otherLevel, stage.swatch));
      case PAINTS ->
          List.of(
              new LitHouse.Half(stage.level, Optional.empty()),
              new LitHouse.Half(stage.level, stage.swatch));
    };
  }

  @Override
  public void close() {
    lit.close();
    sunArc.close();
    painted.close();
    canvas.close();
  }
}
