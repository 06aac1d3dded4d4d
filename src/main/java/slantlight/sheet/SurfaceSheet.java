package slantlight.sheet;

import java.util.List;
import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.SurfaceScore;
import slantlight.units.Measures;

/**
 * One surface as a page: a reflected ceiling plan or an elevation seen from inside, at a usual
 * scale, with north, a scale bar and a legend.
 */
public final class SurfaceSheet {
  private static final int[] SCALES = {5, 10, 20, 25, 50, 75, 100, 150, 200, 250, 500, 1000};
  private static final double PAGE = 184;
  private static final double LEFT = 28;
  private static final double TOP = 22;
  private static final double MAX_WIDTH = 132;
  private static final double MAX_HEIGHT = 150;
  private static final double UNDER = 13;
  private static final double FOOT = 22;
  private static final double LONGEST_BAR = 50;

  private final Measures reader;
  private final SurfaceScore score;
  private final Surface surface;
  private final boolean plan;
  private final int denominator;
  private final Extent extent;
  private final Pencil pencil;
  private final SurfacePlot plot;

  private SurfaceSheet(House house, SurfaceScore score) {
    reader = Measures.printed(house.units());
    this.score = score;
    surface = house.surface(score.surfaceId());
    plan = PaperMap.plan(surface.face().frame());
    PaperMap metres = PaperMap.upright(surface.face().frame());
    Extent size = Extent.of(metres.at(surface.face().outer()));
    denominator = denominator(size);
    double k = 1000.0 / denominator;
    PaperMap map = metres.to(k, new Vec2(LEFT - size.left() * k, TOP - size.top() * k));
    extent = Extent.of(map.at(surface.face().outer()));
    pencil = new Pencil(PAGE, extent.bottom() + UNDER + FOOT);
    plot =
        new SurfacePlot(
            house, List.of(new Part(surface, Optional.of(score), map)), Look.PAPER, pencil);
  }

  /** The largest usual scale at which a surface fits. */
  private static int denominator(Extent metres) {
    for (int d : SCALES) {
      if (metres.width() * 1000 / d <= MAX_WIDTH && metres.height() * 1000 / d <= MAX_HEIGHT) {
        return d;
      }
    }
    return SCALES[SCALES.length - 1];
  }

  /**
   * Draws a surface.
   *
   * @param id safe id of the drawing
   */
  public static Drawing of(House house, SurfaceScore score, String id) {
    return new SurfaceSheet(house, score).draw(id);
  }

  private Drawing draw(String id) {
    pencil.on("legend");
    legend(extent.bottom() + UNDER + 2);
    pencil.on("north");
    plot.north().ifPresent(up -> pencil.north(new Vec2(extent.right() + 13, TOP + 7), up, 5));
    plot.draw(Optional.of(new Vec2(14, 12)));
    return pencil.drawing(id, title(), description(), PAGE, extent.bottom() + UNDER + FOOT);
  }

  private String title() {
    return (plan ? "Reflected plan: " : "Elevation from inside: ")
        + surface.label()
        + ", 1:"
        + denominator;
  }

  private String description() {
    StringBuilder out = new StringBuilder();
    out.append(score.layout().boards().size()).append(" boards and ");
    out.append(score.joints().size()).append(" joints on ").append(surface.label());
    out.append(", drawn 1:").append(denominator).append(". ");
    for (Band band : Band.values()) {
      long count =
          score.joints().stream().filter(j -> Band.of(j.atLevel(4).peakShowing()) == band).count();
      out.append(count).append(' ').append(Words.word(band)).append(band == Band.LOUD ? "." : ", ");
    }
    return out.toString();
  }

  private void legend(double y) {
    double x = LEFT;
    for (Band band : Band.values()) {
      pencil.line(x, y, x + 11, y, Pen.of(band));
      pencil.text(x + 12.5, y + 1, Words.word(band) + range(band), 2.7, Ink.LINE);
      x += 37;
    }
    double bar = pencil.scaleBar(new Vec2(LEFT, y + 8), reader, 1000.0 / denominator, LONGEST_BAR);
    pencil.text(
        LEFT + bar + 14,
        y + 9.2,
        "1:" + denominator + " on paper; figures: showing at level 4, worst of the year",
        2.7,
        Ink.SOFT);
    String title = Letters.cut(title(), 2.9, true, PAGE - LEFT - 2);
    pencil.label(LEFT, y + 14.5, title, 2.9, Mark.Anchor.START, 0, Ink.LINE, true);
  }

  private static String range(Band band) {
    return switch (band) {
      case QUIET -> " under 1\u00d7";
      case TRACE -> " from 1\u00d7";
      case PLAIN -> " from 2.5\u00d7";
      case LOUD -> " from 6\u00d7";
    };
  }
}
