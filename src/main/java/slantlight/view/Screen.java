package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_DEPTH_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_STENCIL_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.glClear;
import static org.lwjgl.opengl.GL11C.glClearColor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Placed;
import slantlight.view.gl.Target;

/** Draws a whole frame: the room, the sheet beside it, and what is written round them. */
final class Screen implements AutoCloseable {
  private final Canvas canvas = new Canvas();
  private final Hits hits = new Hits();
  private final Panels panels = new Panels(canvas, hits);
  private final PaintedHouse painted = new PaintedHouse();
  private final TopBar bar = new TopBar(canvas, hits);
  private final Ribbons ribbons = new Ribbons(canvas, hits);
  private final SheetPane sheets = new SheetPane(canvas, hits);
  private final ReasonCard card = new ReasonCard(canvas, hits);
  private final Legend legend = new Legend(canvas, hits);
  private final Presentation presentation = new Presentation(canvas);
  private final KeyCard keyCard = new KeyCard(canvas);
  private final Notes notes = new Notes(canvas);
  private final HoverCard hoverCard = new HoverCard(canvas);
  private final LitHouse lit = new LitHouse();
  private final SunArc sunArc = new SunArc();
  private ViewModel model;

  /** How many models were shown so far: tells one from the next. */
  private int models;

  private HouseShape shape;
  private Walker walker;
  private List<Object> filledFor = List.of();

  /** The room picture of the last frame and everything that it depends on. */
  private Target kept;

  private List<Object> keptFor = List.of();

  /** How many lights were shown so far. */
  private int lights;

  private List<Stop> stops = List.of();
  private Optional<LitMoment> moment = Optional.empty();
  private Optional<JointsThen> then = Optional.empty();
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
    models++;
    shape = new HouseShape(next);
    walker = new Walker(next.house());
    lit.show(next, shape);
    stops = Stop.all(next);
    filledFor = List.of();
    moment = Optional.empty();
    then = Optional.empty();
  }

  /** What is under the pointer, in the picture or on the sheet. */
  Optional<Hover> under(double x, double y, Camera camera) {
    Optional<Hits.Hit> hit = hits.top(x, y);
    Optional<Picked> picked =
        hit.isPresent()
            ? hit.get().rest().at(x, y)
            : picture.contains(x, y)
                ? Picked.along(model, camera.eye(), camera.ray(x, y, picture))
                : Optional.empty();
    return picked.map(p -> Hover.of(p, x, y));
  }

  /** Shows surfaces under this light from now on. */
  void light(LitMoment next) {
    moment = Optional.of(next);
    lights++;
    lit.fill(next);
  }

  /** Colours joints by this when its moment is set and the measure is the moment. */
  void joints(JointsThen next) {
    then = Optional.of(next);
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

  /** The type of the last frame that is not covered, for the check that all of it fits. */
  List<Placed> placed() {
    List<Placed> out = new ArrayList<>(panels.placed());
    for (Box b : canvas.covers()) {
      out.removeIf(p -> b.overlaps(p.bounds(), 0));
    }
    out.addAll(canvas.placed());
    return out;
  }

  /** Draws everything anew at the next frame, whatever has changed. */
  void forget() {
    panels.forget();
    filledFor = List.of();
    keptFor = List.of();
  }

  /** What is told when a part of a frame is done. */
  @FunctionalInterface
  interface Laps {
    Laps NONE = part -> {};

    void done(String part);
  }

  /**
   * Draws into a target.
   *
   * @param scale pixels per layout unit
   */
  void draw(Target target, Stage stage, double scale) {
    draw(target, stage, scale, Laps.NONE);
  }

  /** Draws into a target and tells when each part is done. */
  void draw(Target target, Stage stage, double scale, Laps laps) {
    hits.clear();
    Box whole = new Box(0, 0, target.width() / scale, target.height() / scale);
    Arrangement at = Arrangement.of(whole, stage);
    JointColours colours = new JointColours(model, stage, then);
    picture = stage.presenting ? Presentation.picture(whole) : at.room();
    refill(stage, colours);
    laps.done("colours of joints");
    panels.draw(
        target, scale, stage.presenting ? presented(whole, stage) : parts(at, stage, colours));
    laps.done("panels that changed");
    if (picture.w() > 0) {
      room(picture.pixels(scale, target.height()), stage, scale);
    }
    laps.done("room picture");
    target.bind();
    clear(stage.presenting ? Palette.NIGHT : Palette.PAPER);
    if (picture.w() > 0) {
      kept.copyTo(target, picture.pixels(scale, target.height()));
    }
    laps.done("room picture laid");
    panels.lay();
    laps.done("kept panels");
    canvas.begin(target.width(), target.height(), scale);
    over(at, stage, colours);
    canvas.end();
    laps.done("type over the picture");
  }

  /** Draws the room picture alone over the whole target. */
  void drawPicture(Target target, Stage stage, double scale) {
    refill(stage, new JointColours(model, stage, then));
    int[] whole = {0, 0, target.width(), target.height()};
    room(whole, stage, scale);
    kept.copyTo(target, whole);
  }

  private void refill(Stage stage, JointColours colours) {
    List<Object> wanted =
        List.of(
            stage.look,
            stage.measure,
            stage.surface,
            stage.joint,
            stage.measure == Stage.Measure.MOMENT ? List.of(stage.time, stage.weather, then) : "");
    if (!wanted.equals(filledFor)) {
      painted.fill(model, shape, stage, colours);
      filledFor = wanted;
    }
  }

  /** What moves with the camera, and what lies over everything. */
  private void over(Arrangement at, Stage stage, JointColours colours) {
    Box pane = picture.w() > 0 ? picture : at.sheet();
    boolean cornered = !stage.presenting && at.card().overlaps(pane, 0);
    if (picture.w() > 0 && stage.look != Stage.Look.AS_LIT && outside(stage)) {
      Box taken = cornered ? at.card() : new Box(0, 0, 0, 0);
      sunArc.label(canvas, picture, taken, model.house(), shape, stage);
    }
    if (stage.presenting) {
      presentation.point(picture, stops, stage);
    }
    if (!stage.presenting && at.sheet().w() > 0) {
      sheets.you(at.sheet(), stage.camera, Sheet.of(model.house(), stage.surface));
    }
    notes.draw(pane, cornered ? pane.leftOf(at.card().w() + 28) : pane, stage, working);
    if (stage.keyCard) {
      keyCard.draw(canvas.whole());
    } else {
      stage.hover.ifPresent(h -> hoverCard.draw(model, colours, stage, h));
    }
  }

  private List<Panels.Part> presented(Box whole, Stage stage) {
    return List.of(
        new Panels.Part(
            "band",
            Presentation.band(whole),
            List.of(models, stage.stop, stage.time, stage.strength, stage.swatch),
            () -> presentation.draw(whole, stops, stage)));
  }

  private List<Panels.Part> parts(Arrangement at, Stage stage, JointColours colours) {
    List<Panels.Part> out = new ArrayList<>();
    Supplier<Almanac> chosen =
        () -> new Almanac(model, stage.surface.filter(s -> model.score(s).isPresent()));
    out.add(
        new Panels.Part(
            "bar",
            at.bar(),
            List.of(models, stage.look, stage.time, stage.weather, stage.surface),
            () -> bar.draw(at.bar(), model, stage, chosen.get().worst())));
    out.add(
        new Panels.Part(
            "ribbons",
            at.ribbons(),
            List.of(models, stage.time, stage.surface),
            () -> ribbons.draw(at.ribbons(), model.house(), chosen.get(), stage)));
    if (at.sheet().w() > 0) {
      out.add(
          new Panels.Part(
              "sheet",
              at.sheet(),
              List.of(
                  models,
                  stage.look,
                  stage.measure,
                  stage.time,
                  stage.weather,
                  then,
                  stage.surface,
                  stage.joint),
              () ->
                  sheets.draw(
                      at.sheet(), model, stage, colours, Sheet.of(model.house(), stage.surface))));
    }
    if (at.card().w() > 0) {
      out.add(
          new Panels.Part(
              "card",
              at.card(),
              List.of(models, stage.surface, stage.joint),
              () -> card.draw(at.card(), model, stage, new Almanac(model, Optional.empty()))));
    }
    Optional<String> tone = tone();
    out.add(
        new Panels.Part(
            "legend",
            at.legend(),
            List.of(
                stage.look,
                stage.measure,
                stage.strength,
                stage.split,
                stage.level,
                stage.otherLevel,
                stage.swatch,
                colours.words(),
                tone),
            () -> legend.draw(at.legend(), stage, colours.words(), tone)));
    return out;
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

  /** Draws the room picture for a place of the window, unless the last one is still true. */
  private void room(int[] place, Stage stage, double scale) {
    int w = place[2];
    int h = place[3];
    boolean asLit = stage.look == Stage.Look.AS_LIT && moment.isPresent();
    List<Object> wanted =
        asLit
            ? List.of(
                models,
                lights,
                w,
                h,
                stage.camera,
                halves(stage),
                stage.strength,
                stage.focus,
                stage.surface)
            : List.of(models, filledFor, w, h, scale, stage.camera, stage.time.toLocalDate());
    if (wanted.equals(keptFor)) {
      return;
    }
    if (kept == null || kept.width() != w || kept.height() != h) {
      if (kept != null) {
        kept.close();
      }
      kept = new Target(w, h, samples);
    }
    kept.bind();
    if (asLit) {
      lit.meter(stage.focus, stage.surface.map(model.house()::surface), stage.camera.eye());
      lit.draw(kept, new int[] {0, 0, w, h}, stage.camera, halves(stage), stage.strength, samples);
    } else {
      clear(0xefebe2);
      painted.draw(stage.camera, w, h, scale);
      if (outside(stage)) {
        sunArc.draw(model.house(), shape, stage, w, h, scale);
      }
    }
    keptFor = wanted;
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
    panels.close();
    if (kept != null) {
      kept.close();
    }
    canvas.close();
  }
}
