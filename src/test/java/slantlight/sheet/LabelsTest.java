package slantlight.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slantlight.geom.Vec2;
import slantlight.score.HouseScore;

/**
 * Text on the sheets of the shipped scenes, measured by the shipped font itself: the letters' boxes
 * come from Java's own text layout, not from the sheets.
 */
class LabelsTest {
  /** Layers whose small filled marks are symbols. */
  private static final Set<String> SYMBOLS = Set.of("openings", "lamps", "people", "light", "sun");

  /** A filled mark no larger than this both ways is a symbol, mm. */
  private static final double SYMBOL = 4.5;

  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
  private static final Font REGULAR = font("Barlow-Regular.ttf");
  private static final Font STRONG = font("Barlow-SemiBold.ttf");

  private static Font font(String file) {
    try (InputStream in = LabelsTest.class.getResourceAsStream("/slantlight/fonts/" + file)) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Drawing> sheets(HouseScore score) {
    List<Drawing> out = new ArrayList<>();
    out.add(SunPathSheet.of(score.house(), 2026, "sun-path"));
    score.surfaces().forEach(s -> out.add(SurfaceSheet.of(score.house(), s, "sheet")));
    score.surfaces().stream()
        .flatMap(s -> SectionSheet.of(score.house(), s, "section").stream())
        .forEach(out::add);
    return out;
  }

  @ParameterizedTest
  @ValueSource(strings = {"lake-house", "one-room", "wide-glass", "narrow-glass"})
  void noTextLiesOnOtherTextOrOnASymbolOrOffThePaper(String scene) {
    List<Drawing> sheets = sheets(LaidHouse.of(scene));
    assertThat(sheets).hasSizeGreaterThan(2);
    int texts = 0;
    for (Drawing d : sheets) {
      List<Mark.Label> labels = labels(d);
      List<Area> boxes = labels.stream().map(l -> new Area(box(l))).toList();
      Rectangle2D paper = new Rectangle2D.Double(0, 0, d.width(), d.height());
      List<Area> symbols = symbols(d);
      for (int i = 0; i < boxes.size(); i++) {
        String where = d.title() + ": " + labels.get(i).text();
        assertThat(paper.contains(boxes.get(i).getBounds2D())).as(where + " off paper").isTrue();
        for (int j = 0; j < i; j++) {
          assertThat(common(boxes.get(i), boxes.get(j)))
              .as(where + " over " + labels.get(j).text())
              .isZero();
        }
        for (Area symbol : symbols) {
          boolean written = symbol.getBounds2D().contains(boxes.get(i).getBounds2D());
          assertThat(written ? 0 : common(boxes.get(i), symbol)).as(where + " on symbol").isZero();
        }
      }
      texts += labels.size();
    }
    assertThat(texts).as(scene).isGreaterThan(60);
  }

  /**
   * A strong line runs under a name only where all places are taken; then it is broken there by a
   * plate of paper, so that no letter is struck through.
   */
  @Test
  void fewNamesInterruptAStrongLineAndNoneIsStruckThrough() {
    int texts = 0;
    int interrupting = 0;
    for (String scene : List.of("lake-house", "one-room", "wide-glass", "narrow-glass")) {
      for (Drawing d : sheets(LaidHouse.of(scene))) {
        List<Mark> marks = d.layers().stream().flatMap(l -> l.marks().stream()).toList();
        for (int i = 0; i < marks.size(); i++) {
          if (marks.get(i) instanceof Mark.Label label) {
            texts++;
            int ground = label.plated() ? i : ground(label, marks.subList(0, i));
            assertThat(crossed(label, marks.subList(ground + 1, marks.size())))
                .as(d.title() + ": " + label.text())
                .isFalse();
            if (label.plated() && crossed(label, marks.subList(0, i))) {
              interrupting++;
            }
          }
        }
      }
    }
    assertThat(texts).isGreaterThan(800);
    assertThat(interrupting).as("of " + texts).isLessThan(texts / 50);
  }

  /** Text is not wider than the sheets take it to be, in the shipped font. */
  @Test
  void textFitsTheRoomTakenForIt() {
    HouseScore score = LaidHouse.of("lake-house");
    for (Drawing d : sheets(score)) {
      for (Mark.Label l : labels(d)) {
        Area outside = new Area(box(l));
        outside.subtract(new Area(path(l.outline(0.1), true)));
        assertThat(size(outside)).as(l.text()).isLessThan(1e-6);
      }
    }
  }

  @Test
  void theFirstClearPlaceIsTakenElseTheOneThatCrossesLeast() {
    Clearance clearance = new Clearance(new Extent(0, 0, 100, 100));
    Lettering name = new Lettering("name", 3, Ink.LINE, false);
    List<Mark.Label> places =
        Stream.of(10, 30, 50).map(y -> name.at(new Vec2(50, y), Mark.Anchor.MIDDLE)).toList();
    assertThat(clearance.best(places).map(Clearance.Place::label)).contains(places.get(0));
    clearance.keepOff(places.get(0));
    assertThat(clearance.best(places).map(Clearance.Place::label)).contains(places.get(1));
    clearance.keepOff(line(29, 0.8));
    assertThat(clearance.best(places).map(Clearance.Place::label)).contains(places.get(2));
    clearance.keepOff(line(49, 0.2));
    Clearance.Place least = clearance.best(places).orElseThrow();
    assertThat(least).isEqualTo(new Clearance.Place(places.get(2), true));
    clearance.keepOff(Pencil.rectangle(40, 20, 20, 40));
    assertThat(clearance.best(places)).isEmpty();
    assertThat(clearance.best(List.of(name.at(new Vec2(99, 80), Mark.Anchor.START)))).isEmpty();
  }

  private static Mark line(double y, double width) {
    return new Mark.Path(
        List.of(List.of(new Vec2(0, y), new Vec2(100, y))),
        false,
        Optional.empty(),
        Optional.of(Pen.full(Ink.LINE, width)),
        "",
        "");
  }

  private static List<Mark.Label> labels(Drawing d) {
    return d.layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .toList();
  }

  private static List<Area> symbols(Drawing d) {
    List<Area> out = new ArrayList<>();
    for (Layer layer : d.layers()) {
      for (Mark mark : layer.marks()) {
        if (SYMBOLS.contains(layer.id()) && mark instanceof Mark.Path p && p.fill().isPresent()) {
          Shape shape = path(p.rings().get(0), true);
          Rectangle2D b = shape.getBounds2D();
          if (Math.max(b.getWidth(), b.getHeight()) < SYMBOL) {
            out.add(new Area(shape));
          }
        }
      }
    }
    return out;
  }

  /** Whether a joint, an outline or another line of half a millimetre or more runs through. */
  private static boolean crossed(Mark.Label label, List<Mark> marks) {
    Area box = new Area(box(label));
    for (Mark mark : marks) {
      if (mark instanceof Mark.Path p && p.pen().filter(x -> x.width() >= 0.5).isPresent()) {
        java.awt.BasicStroke pen =
            new java.awt.BasicStroke(
                (float) p.pen().orElseThrow().width(),
                java.awt.BasicStroke.CAP_BUTT,
                java.awt.BasicStroke.JOIN_BEVEL);
        for (List<Vec2> ring : p.rings()) {
          Shape stroke = pen.createStrokedShape(path(ring, p.closed()));
          if (stroke.intersects(box.getBounds2D()) && common(box, new Area(stroke)) > 0) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** The last filled mark on which the whole label lies, or -1. */
  private static int ground(Mark.Label label, List<Mark> before) {
    Rectangle2D box = box(label).getBounds2D();
    for (int i = before.size() - 1; i >= 0; i--) {
      if (before.get(i) instanceof Mark.Path p
          && p.fill().isPresent()
          && path(p.rings().get(0), true).contains(box)) {
        return i;
      }
    }
    return -1;
  }

  private static Shape box(Mark.Label l) {
    Font font = (l.strong() ? STRONG : REGULAR).deriveFont(100f);
    Rectangle2D r = font.createGlyphVector(CONTEXT, l.text()).getVisualBounds();
    double advance = font.getStringBounds(l.text(), CONTEXT).getWidth();
    double shift =
        switch (l.anchor()) {
          case START -> 0;
          case MIDDLE -> -advance / 2;
          case END -> -advance;
        };
    AffineTransform t = AffineTransform.getTranslateInstance(l.at().x(), l.at().y());
    t.rotate(Math.toRadians(l.turnDeg()));
    t.scale(l.size() / 100, l.size() / 100);
    t.translate(shift, 0);
    return t.createTransformedShape(r);
  }

  private static Path2D path(List<Vec2> ring, boolean closed) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < ring.size(); i++) {
      if (i == 0) {
        path.moveTo(ring.get(i).x(), ring.get(i).y());
      } else {
        path.lineTo(ring.get(i).x(), ring.get(i).y());
      }
    }
    if (closed) {
      path.closePath();
    }
    return path;
  }

  private static double common(Area a, Area b) {
    Area both = new Area(a);
    both.intersect(b);
    return size(both);
  }

  private static double size(Area a) {
    Rectangle2D b = a.getBounds2D();
    return a.isEmpty() ? 0 : b.getWidth() * b.getHeight();
  }
}
