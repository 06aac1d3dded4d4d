package slantlight.view;

import java.time.LocalDate;
import java.time.Month;
import java.time.ZonedDateTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.scene.House;
import slantlight.score.Peak;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** Two strips of time: the hours of the day with the sun's height, and the days of the year. */
final class Ribbons {
  static final double HEIGHT = 118;
  private static final double LABEL = 92;
  private static final int DAY_SKY = 0xcfe0e6;
  private static final int DUSK = 0x8d8fa3;
  private static final double GAP = 6;

  private final Canvas canvas;
  private final Hits hits;

  Ribbons(Canvas canvas, Hits hits) {
    this.canvas = canvas;
    this.hits = hits;
  }

  void draw(Box box, House house, Almanac almanac, Stage stage) {
    canvas.fill(box, Palette.PAPER);
    canvas.line(new Vec2(box.x(), box.y()), new Vec2(box.right(), box.y()), Palette.RULE, 1);
    Box inner = box.inset(14, 8);
    double half = (inner.h() - GAP) / 2;
    day(inner.top(half), house, almanac, stage);
    year(inner.bottom(half), almanac, stage);
  }

  private void day(Box row, House house, Almanac almanac, Stage stage) {
    head(row.left(LABEL), "Day", Wordings.clock(stage.time));
    Box strip = row.rightOf(LABEL).aboveBottom(15);
    Box hours = row.rightOf(LABEL).bottom(14);
    LocalDate date = stage.time.toLocalDate();
    ZonedDateTime midnight = date.atStartOfDay(stage.time.getZone());
    double[] showing = almanac.day(date);
    int steps = showing.length;
    List<Vec2> path = new ArrayList<>();
    double cells = strip.h() * 0.34;
    Box sky = strip.aboveBottom(cells);
    for (int i = 0; i < steps; i++) {
      ZonedDateTime at = midnight.plusMinutes((long) i * Almanac.STEP_MINUTES);
      double altitude = Almanac.sun(house, at).altitude();
      canvas.fill(snapped(sky.column(i, steps)), skyColour(altitude));
      path.add(
          new Vec2(
              sky.x() + sky.w() * i / steps,
              sky.bottom() - 1 - (sky.h() - 3) * Math.max(0, Math.sin(altitude))));
      if (!Almanac.lampsOn(house, at).isEmpty()) {
        canvas.fill(snapped(sky.column(i, steps).top(3)), Palette.SUN);
      }
    }
    canvas.polyline(path, Palette.SUN, 1, 1.6);
    cells(strip.bottom(cells), showing);
    for (int h = 0; h <= 24; h += 3) {
      double x = strip.x() + strip.w() * h / 24;
      canvas.line(
          new Vec2(x, strip.bottom()), new Vec2(x, strip.bottom() + 3), Palette.SOFT_INK, 1);
      if (h > 0 && h < 24) {
        canvas.text(
            new Box(x - 20, hours.y(), 40, hours.h()),
            Type.soft(11.5),
            Canvas.Align.CENTRE,
            String.format(Locale.ROOT, "%02d:00", h));
      }
    }
    double share = stage.time.toLocalTime().toSecondOfDay() / 86400.0;
    hand(strip, share);
    hits.add(
        row.rightOf(LABEL),
        (x, y) -> {
          double s = Math.max(0, Math.min(0.9999, (x - strip.x()) / strip.w()));
          long minutes = Math.round(s * 24 * 12) * 5;
          stage.time = midnight.plusMinutes(Math.min(minutes, 24 * 60 - 5));
        });
  }

  /** Edges on whole layout units, so that neighbours leave no seam. */
  private static Box snapped(Box b) {
    double x = Math.round(b.x() + 1e-6);
    return new Box(x, b.y(), Math.round(b.right() + 1e-6) - x, b.h());
  }

  private static int skyColour(double altitude) {
    double low = Math.toRadians(-12);
    if (altitude < low) {
      return Palette.mix(Palette.NIGHT, 0x38404b, 0.6);
    }
    if (altitude < 0) {
      return Palette.mix(0x38404b, DUSK, 1 - altitude / low);
    }
    return Palette.mix(DUSK, DAY_SKY, Math.min(1, altitude / Math.toRadians(12)));
  }

  private void year(Box row, Almanac almanac, Stage stage) {
    head(row.left(LABEL), "Year", Wordings.shortDate(stage.time));
    Box strip = row.rightOf(LABEL).aboveBottom(15);
    Box months = row.rightOf(LABEL).bottom(14);
    cells(strip, almanac.year());
    int year = stage.time.getYear();
    for (Month m : Month.values()) {
      double x0 = strip.x() + strip.w() * (m.firstDayOfYear(false) - 1) / 365;
      double w = strip.w() * m.length(false) / 365;
      canvas.line(
          new Vec2(x0, strip.bottom()), new Vec2(x0, strip.bottom() + 3), Palette.SOFT_INK, 1);
      canvas.textThatFits(
          new Box(x0, months.y(), w, months.h()),
          Type.soft(11.5),
          Canvas.Align.CENTRE,
          List.of(
              m.getDisplayName(TextStyle.SHORT, Locale.ENGLISH),
              m.getDisplayName(TextStyle.NARROW, Locale.ENGLISH)));
    }
    Optional<Peak> worst = almanac.worst();
    worst.ifPresent(
        p -> {
          double x = strip.x() + strip.w() * (Math.min(365, p.at().getDayOfYear()) - 0.5) / 365;
          canvas.region(
              List.of(
                  new Vec2(x - 5, strip.y() - 5),
                  new Vec2(x + 5, strip.y() - 5),
                  new Vec2(x, strip.y() + 3)),
              List.of(),
              Palette.INK,
              1);
        });
    hand(strip, (Math.min(365, stage.time.getDayOfYear()) - 0.5) / 365);
    hits.add(
        row.rightOf(LABEL),
        (x, y) -> {
          double s = Math.max(0, Math.min(0.9999, (x - strip.x()) / strip.w()));
          LocalDate date = LocalDate.ofYearDay(year, 1 + (int) (s * 365));
          stage.time = stage.time.with(date);
        });
  }

  private void cells(Box strip, double[] showing) {
    canvas.fill(strip, 0xe7e3d9);
    int n = showing.length;
    for (int from = 0; from < n; ) {
      int to = from + 1;
      int rgb = Palette.ofShowing(showing[from]);
      while (to < n
          && (showing[to] > 0) == (showing[from] > 0)
          && Palette.ofShowing(showing[to]) == rgb) {
        to++;
      }
      if (showing[from] > 0) {
        double x = strip.x() + strip.w() * from / n;
        canvas.fill(snapped(new Box(x, strip.y(), strip.w() * (to - from) / n, strip.h())), rgb);
      }
      from = to;
    }
  }

  private void head(Box box, String title, String value) {
    canvas.text(box.top(box.h() / 2), Type.soft(12), Canvas.Align.LEFT, title);
    canvas.text(box.bottom(box.h() / 2 + 2), Type.strong(16), Canvas.Align.LEFT, value);
  }

  private void hand(Box strip, double share) {
    double x = strip.x() + strip.w() * share;
    canvas.line(new Vec2(x, strip.y() - 4), new Vec2(x, strip.bottom() + 2), Palette.SHEET, 5);
    canvas.line(new Vec2(x, strip.y() - 4), new Vec2(x, strip.bottom() + 2), Palette.ACCENT, 2.4);
    canvas.disc(new Vec2(x, strip.y() - 3), 5, Palette.ACCENT);
    canvas.disc(new Vec2(x, strip.y() - 3), 2, Palette.SHEET);
  }
}
