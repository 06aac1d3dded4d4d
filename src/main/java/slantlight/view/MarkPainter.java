package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import slantlight.geom.Vec2;
import slantlight.sheet.Ink;
import slantlight.sheet.Layer;
import slantlight.sheet.Mark;
import slantlight.sheet.Pen;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** Paints the marks of a sheet on the screen. */
final class MarkPainter {
  /** Layout units a millimetre of paper: the smallest type of a sheet still reads. */
  static final double SCALE = 5.2;

  private final Canvas canvas;
  private final Vec2 corner;

  /**
   * A painter of paper.
   *
   * @param paper its corner is where the paper's is
   */
  MarkPainter(Canvas canvas, Box paper) {
    this.canvas = canvas;
    corner = new Vec2(paper.x(), paper.y());
  }

  /** Where a place of the paper is on the screen. */
  Vec2 at(Vec2 p) {
    return corner.plus(p.times(SCALE));
  }

  List<Vec2> at(List<Vec2> ring) {
    return ring.stream().map(this::at).toList();
  }

  /** Where a place of the screen is on paper, mm. */
  Vec2 paper(Vec2 p) {
    return p.minus(corner).times(1 / SCALE);
  }

  void paint(Layer layer) {
    for (Mark mark : layer.marks()) {
      if (mark instanceof Mark.Path path) {
        paint(path);
      } else if (mark instanceof Mark.Label label) {
        Type type = new Type(label.strong(), label.size() * SCALE, label.ink().onLight());
        Canvas.Align align =
            switch (label.anchor()) {
              case START -> Canvas.Align.LEFT;
              case MIDDLE -> Canvas.Align.CENTRE;
              case END -> Canvas.Align.RIGHT;
            };
        OptionalInt plate =
            label.plated() || label.ink() != Ink.LINE
                ? OptionalInt.of(Palette.SHEET)
                : OptionalInt.empty();
        Vec2 p = at(label.at());
        Vec2 whole = new Vec2(Math.rint(p.x()), Math.rint(p.y()));
        double turn = Math.toRadians(label.turnDeg());
        canvas.text(whole, turn, type, align, label.text(), plate);
      }
    }
  }

  private void paint(Mark.Path path) {
    List<List<Vec2>> rings = path.rings().stream().map(this::at).toList();
    path.fill()
        .ifPresent(
            f -> canvas.region(rings.get(0), rings.subList(1, rings.size()), f.onLight(), 1));
    path.pen()
        .ifPresent(
            pen -> {
              for (List<Vec2> ring : rings) {
                stroke(pen, ring, path.closed());
              }
            });
  }

  private void stroke(Pen pen, List<Vec2> ring, boolean closed) {
    double width = Math.max(1, pen.width() * SCALE);
    if (!pen.dashes().isEmpty()) {
      List<Vec2> run = new ArrayList<>(ring);
      if (closed) {
        run.add(ring.get(0));
      }
      dashed(pen, run, width);
    } else if (closed) {
      canvas.ring(ring, pen.ink().onLight(), width);
    } else {
      canvas.polyline(ring, pen.ink().onLight(), 1, width);
    }
  }

  private void dashed(Pen pen, List<Vec2> run, double width) {
    int dash = 0;
    double left = pen.dashes().get(0) * SCALE;
    for (int i = 1; i < run.size(); i++) {
      Vec2 from = run.get(i - 1);
      double rest = from.distance(run.get(i));
      while (rest > 1e-9) {
        double step = Math.min(rest, left);
        Vec2 to = from.lerp(run.get(i), step / rest);
        if (dash % 2 == 0) {
          canvas.line(from, to, pen.ink().onLight(), width);
        }
        from = to;
        rest -= step;
        left -= step;
        if (left <= 1e-9) {
          dash++;
          left = pen.dashes().get(dash % pen.dashes().size()) * SCALE;
        }
      }
    }
  }
}
