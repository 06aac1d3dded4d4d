package slantlight.view.draw;

import static org.lwjgl.nanovg.NanoVG.NVG_ALIGN_BASELINE;
import static org.lwjgl.nanovg.NanoVG.NVG_ALIGN_LEFT;
import static org.lwjgl.nanovg.NanoVG.NVG_HOLE;
import static org.lwjgl.nanovg.NanoVG.NVG_SOLID;
import static org.lwjgl.nanovg.NanoVG.nvgBeginFrame;
import static org.lwjgl.nanovg.NanoVG.nvgBeginPath;
import static org.lwjgl.nanovg.NanoVG.nvgCircle;
import static org.lwjgl.nanovg.NanoVG.nvgClosePath;
import static org.lwjgl.nanovg.NanoVG.nvgCreateFontMem;
import static org.lwjgl.nanovg.NanoVG.nvgEndFrame;
import static org.lwjgl.nanovg.NanoVG.nvgFill;
import static org.lwjgl.nanovg.NanoVG.nvgFillColor;
import static org.lwjgl.nanovg.NanoVG.nvgFillPaint;
import static org.lwjgl.nanovg.NanoVG.nvgFontFace;
import static org.lwjgl.nanovg.NanoVG.nvgFontSize;
import static org.lwjgl.nanovg.NanoVG.nvgLineTo;
import static org.lwjgl.nanovg.NanoVG.nvgLinearGradient;
import static org.lwjgl.nanovg.NanoVG.nvgMoveTo;
import static org.lwjgl.nanovg.NanoVG.nvgPathWinding;
import static org.lwjgl.nanovg.NanoVG.nvgRect;
import static org.lwjgl.nanovg.NanoVG.nvgResetScissor;
import static org.lwjgl.nanovg.NanoVG.nvgRestore;
import static org.lwjgl.nanovg.NanoVG.nvgRotate;
import static org.lwjgl.nanovg.NanoVG.nvgRoundedRect;
import static org.lwjgl.nanovg.NanoVG.nvgSave;
import static org.lwjgl.nanovg.NanoVG.nvgScissor;
import static org.lwjgl.nanovg.NanoVG.nvgShapeAntiAlias;
import static org.lwjgl.nanovg.NanoVG.nvgStroke;
import static org.lwjgl.nanovg.NanoVG.nvgStrokeColor;
import static org.lwjgl.nanovg.NanoVG.nvgStrokeWidth;
import static org.lwjgl.nanovg.NanoVG.nvgText;
import static org.lwjgl.nanovg.NanoVG.nvgTextAlign;
import static org.lwjgl.nanovg.NanoVG.nvgTextBounds;
import static org.lwjgl.nanovg.NanoVG.nvgTranslate;
import static org.lwjgl.nanovg.NanoVGGL3.NVG_ANTIALIAS;
import static org.lwjgl.nanovg.NanoVGGL3.NVG_STENCIL_STROKES;
import static org.lwjgl.nanovg.NanoVGGL3.nvgCreate;
import static org.lwjgl.nanovg.NanoVGGL3.nvgDelete;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.lwjgl.nanovg.NVGColor;
import org.lwjgl.nanovg.NVGPaint;
import org.lwjgl.system.MemoryUtil;
import slantlight.geom.Vec2;

/**
 * Type and vector drawing over the current framebuffer, in layout units. Everything that is written
 * is also logged as {@link Placed}.
 */
public final class Canvas implements AutoCloseable {
  /** Twice the height over its baseline, em, at which a line of type looks centred. */
  private static final double CAP = 0.58;

  /** Highest sign over the baseline and deepest letter under it, as shares of the size. */
  private static final double RISE = 0.78;

  private static final double DEPTH = 0.21;

  /** How far a plate under type hides what lies there. */
  private static final double PLATE = 0.85;

  private final long vg = nvgCreate(NVG_ANTIALIAS | NVG_STENCIL_STROKES);
  private final List<ByteBuffer> fonts = new ArrayList<>();
  private final NVGColor colour = NVGColor.calloc();
  private final NVGColor other = NVGColor.calloc();
  private final NVGPaint paint = NVGPaint.calloc();
  private final List<Placed> placed = new ArrayList<>();
  private final List<Box> covers = new ArrayList<>();
  private Box whole = new Box(0, 0, 0, 0);
  private Box base = whole;

  /** A canvas for the current context, with the shipped fonts. */
  public Canvas() {
    font("regular", "Barlow-Regular.ttf");
    font("strong", "Barlow-SemiBold.ttf");
  }

  private void font(String name, String file) {
    try (InputStream in = Canvas.class.getResourceAsStream("/slantlight/fonts/" + file)) {
      byte[] bytes = in.readAllBytes();
      ByteBuffer buffer = MemoryUtil.memAlloc(bytes.length).put(bytes).flip();
      fonts.add(buffer);
      if (nvgCreateFontMem(vg, name, buffer, false) < 0) {
        throw new IllegalStateException("font " + file + " is not readable");
      }
    } catch (IOException e) {
      throw new IllegalStateException("font " + file + " is missing", e);
    }
  }

  /**
   * Starts a frame.
   *
   * @param scale pixels per layout unit
   */
  public void begin(int widthPixels, int heightPixels, double scale) {
    whole = new Box(0, 0, widthPixels / scale, heightPixels / scale);
    base = whole;
    placed.clear();
    covers.clear();
    nvgBeginFrame(vg, (float) whole.w(), (float) whole.h(), (float) scale);
  }

  /** Keeps all drawing of this frame inside a box. */
  public void within(Box b) {
    base = b;
    clip(b);
  }

  /** Ends the frame and sends it to the card. */
  public void end() {
    nvgEndFrame(vg);
  }

  /** The whole picture. */
  public Box whole() {
    return whole;
  }

  /** Every line of type of this frame that is not covered. */
  public List<Placed> placed() {
    return List.copyOf(placed);
  }

  /** Where this frame's panels lie. */
  public List<Box> covers() {
    return List.copyOf(covers);
  }

  /** Fills a panel over what was drawn: type under it no longer counts as placed. */
  public void panel(Box b, int rgb, double alpha, double radius) {
    placed.removeIf(p -> b.overlaps(p.bounds(), 0));
    covers.add(b);
    fill(b, rgb, alpha, radius);
  }

  public void fill(Box b, int rgb) {
    fill(b, rgb, 1, 0);
  }

  /** Fills a box, perhaps with round corners. */
  public void fill(Box b, int rgb, double alpha, double radius) {
    nvgBeginPath(vg);
    path(b, radius);
    nvgFillColor(vg, rgba(rgb, alpha, colour));
    nvgShapeAntiAlias(vg, radius > 0);
    nvgFill(vg);
    nvgShapeAntiAlias(vg, true);
  }

  /** Outlines a box. */
  public void frame(Box b, int rgb, double width, double radius) {
    nvgBeginPath(vg);
    path(b, radius);
    nvgStrokeWidth(vg, (float) width);
    nvgStrokeColor(vg, rgba(rgb, 1, colour));
    nvgStroke(vg);
  }

  private void path(Box b, double radius) {
    if (radius > 0) {
      nvgRoundedRect(
          vg, (float) b.x(), (float) b.y(), (float) b.w(), (float) b.h(), (float) radius);
    } else {
      nvgRect(vg, (float) b.x(), (float) b.y(), (float) b.w(), (float) b.h());
    }
  }

  /** Fills a box with a colour that changes from its left edge to its right. */
  public void sweep(Box b, int left, int right) {
    nvgLinearGradient(
        vg,
        (float) b.x(),
        0,
        (float) b.right(),
        0,
        rgba(left, 1, colour),
        rgba(right, 1, other),
        paint);
    nvgBeginPath(vg);
    path(b, 0);
    nvgFillPaint(vg, paint);
    nvgFill(vg);
  }

  public void line(Vec2 a, Vec2 b, int rgb, double width) {
    polyline(List.of(a, b), rgb, 1, width);
  }

  /** Draws an open line. */
  public void polyline(List<Vec2> points, int rgb, double alpha, double width) {
    nvgBeginPath(vg);
    trace(points);
    nvgStrokeWidth(vg, (float) width);
    nvgStrokeColor(vg, rgba(rgb, alpha, colour));
    nvgStroke(vg);
  }

  /** Outlines a ring. */
  public void ring(List<Vec2> points, int rgb, double width) {
    nvgBeginPath(vg);
    trace(points);
    nvgClosePath(vg);
    nvgStrokeWidth(vg, (float) width);
    nvgStrokeColor(vg, rgba(rgb, 1, colour));
    nvgStroke(vg);
  }

  /** Fills a region with holes. */
  public void region(List<Vec2> outer, List<List<Vec2>> holes, int rgb, double alpha) {
    nvgBeginPath(vg);
    trace(outer);
    nvgClosePath(vg);
    nvgPathWinding(vg, NVG_SOLID);
    for (List<Vec2> hole : holes) {
      trace(hole);
      nvgClosePath(vg);
      nvgPathWinding(vg, NVG_HOLE);
    }
    nvgFillColor(vg, rgba(rgb, alpha, colour));
    nvgFill(vg);
  }

  private void trace(List<Vec2> points) {
    for (int i = 0; i < points.size(); i++) {
      Vec2 p = points.get(i);
      if (i == 0) {
        nvgMoveTo(vg, (float) p.x(), (float) p.y());
      } else {
        nvgLineTo(vg, (float) p.x(), (float) p.y());
      }
    }
  }

  public void disc(Vec2 at, double radius, int rgb) {
    nvgBeginPath(vg);
    nvgCircle(vg, (float) at.x(), (float) at.y(), (float) radius);
    nvgFillColor(vg, rgba(rgb, 1, colour));
    nvgFill(vg);
  }

  public void circle(Vec2 at, double radius, int rgb, double width) {
    nvgBeginPath(vg);
    nvgCircle(vg, (float) at.x(), (float) at.y(), (float) radius);
    nvgStrokeWidth(vg, (float) width);
    nvgStrokeColor(vg, rgba(rgb, 1, colour));
    nvgStroke(vg);
  }

  /** Keeps drawing inside a box until {@link #unclip}. */
  public void clip(Box b) {
    nvgScissor(vg, (float) b.x(), (float) b.y(), (float) b.w(), (float) b.h());
  }

  public void unclip() {
    if (base.equals(whole)) {
      nvgResetScissor(vg);
    } else {
      clip(base);
    }
  }

  /** Width of a line of type. */
  public double width(Type type, String text) {
    return advance(type, text);
  }

  /** Where a line of type stands in its box. */
  public enum Align {
    LEFT,
    CENTRE,
    RIGHT
  }

  /** Writes one line, vertically centred. It is the caller's duty that it fits. */
  public void text(Box room, Type type, Align align, String text) {
    double w = width(type, text);
    double x =
        switch (align) {
          case LEFT -> room.x();
          case CENTRE -> room.midX() - w / 2;
          case RIGHT -> room.right() - w;
        };
    write(x, room.midY() + CAP * type.size() / 2, type, text, room);
  }

  /**
   * Writes the first of several wordings that fits, so that narrow windows say less instead of
   * cutting words.
   *
   * @return true when one fitted
   */
  public boolean textThatFits(Box room, Type type, Align align, List<String> wordings) {
    for (String wording : wordings) {
      if (width(type, wording) <= room.w()) {
        text(room, type, align, wording);
        return true;
      }
    }
    return false;
  }

  /**
   * Writes a label on a plate, only where it neither leaves {@code room} nor touches other type.
   */
  public boolean label(Vec2 centre, Box room, Type type, String text) {
    double w = width(type, text);
    Box b = new Box(centre.x() - w / 2, centre.y() - type.size() / 2, w, type.size());
    if (!room.holds(b, 0) || placed.stream().anyMatch(p -> p.bounds().overlaps(b, 0))) {
      return false;
    }
    fill(b.inset(-3, 0), Palette.PAPER, PLATE, 3);
    text(b, type, Align.LEFT, text);
    return true;
  }

  /** Breaks text into lines no wider than {@code width}. */
  public List<String> lines(Type type, String text, double width) {
    List<String> out = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.length() == 0 ? word : line + " " + word;
      if (line.length() > 0 && width(type, longer) > width) {
        out.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    out.add(line.toString());
    return out;
  }

  /**
   * Writes text broken into lines from the top of a box.
   *
   * @return the rest of the box below the last line
   */
  public Box paragraph(Box room, Type type, String text) {
    Box rest = room;
    for (String line : lines(type, text, room.w())) {
      text(rest.top(type.line()), type, Align.LEFT, line);
      rest = rest.underTop(type.line());
    }
    return rest;
  }

  /**
   * Writes one line from, round or up to a point of its baseline.
   *
   * @param turn clockwise, radians
   * @param plate rgb laid under the letters; empty for none
   */
  public void text(Vec2 at, double turn, Type type, Align align, String text, OptionalInt plate) {
    double w = width(type, text);
    double x =
        switch (align) {
          case LEFT -> 0;
          case CENTRE -> -w / 2;
          case RIGHT -> -w;
        };
    Box level = line(x, 0, w, type);
    nvgSave(vg);
    nvgTranslate(vg, (float) at.x(), (float) at.y());
    nvgRotate(vg, (float) turn);
    plate.ifPresent(rgb -> fill(level.inset(-3, 0), rgb, PLATE, 3));
    nvgFillColor(vg, rgba(type.colour(), 1, colour));
    style(type);
    nvgText(vg, (float) x, 0, text);
    nvgRestore(vg);
    Vec2 right = new Vec2(Math.cos(turn), Math.sin(turn));
    Vec2 down = new Vec2(-right.y(), right.x());
    Vec2 middle = at.plus(right.times(level.midX())).plus(down.times(level.midY()));
    double wide = Math.abs(right.x()) * level.w() + Math.abs(down.x()) * level.h();
    double high = Math.abs(right.y()) * level.w() + Math.abs(down.y()) * level.h();
    Box bounds = new Box(middle.x() - wide / 2, middle.y() - high / 2, wide, high);
    placed.add(new Placed(text, bounds, base));
  }

  /** What the letters of a line cover, by the shipped font's metrics. */
  private static Box line(double x, double baseline, double width, Type type) {
    return new Box(x, baseline - RISE * type.size(), width, (RISE + DEPTH) * type.size());
  }

  private void write(double x, double baseline, Type type, String text, Box room) {
    style(type);
    nvgFillColor(vg, rgba(type.colour(), 1, colour));
    nvgText(vg, (float) x, (float) baseline, text);
    double w = advance(type, text);
    placed.add(
        new Placed(
            text,
            line(x, baseline, w, type),
            new Box(room.x(), room.y() - type.size(), room.w(), room.h() + 2 * type.size())));
  }

  private double advance(Type type, String text) {
    style(type);
    return nvgTextBounds(vg, 0, 0, text, (float[]) null);
  }

  private void style(Type type) {
    nvgFontFace(vg, type.strong() ? "strong" : "regular");
    nvgFontSize(vg, (float) type.size());
    nvgTextAlign(vg, NVG_ALIGN_LEFT | NVG_ALIGN_BASELINE);
  }

  private static NVGColor rgba(int rgb, double alpha, NVGColor out) {
    return out.r((rgb >> 16 & 255) / 255f)
        .g((rgb >> 8 & 255) / 255f)
        .b((rgb & 255) / 255f)
        .a((float) alpha);
  }

  @Override
  public void close() {
    nvgDelete(vg);
    fonts.forEach(MemoryUtil::memFree);
    colour.free();
    other.free();
    paint.free();
  }
}
