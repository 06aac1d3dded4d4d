package slantlight.sheet;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZonedDateTime;
import java.time.format.TextStyle;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.scene.Site;
import slantlight.score.Band;
import slantlight.score.Calendar;
import slantlight.sky.SunPath;

/** When a surface shows: day of the year across, local clock time down, coloured by band. */
public final class CalendarSheet {
  private static final double PAGE = 184;
  private static final double LEFT = 16;
  private static final double TOP = 8;
  private static final double WIDTH = 160;
  private static final double HOUR = 3.6;
  private static final Pen HATCH = Pen.full(Ink.SOFT, 0.15);
  private static final int SUN_STEP_MINUTES = 5;

  private final Calendar calendar;
  private final Site site;
  private final int year;
  private final int days;
  private final int from;
  private final int to;
  private final List<Extent> skipped;
  private final Pencil pencil = new Pencil();

  private CalendarSheet(Calendar calendar, Site site, int year) {
    this.calendar = calendar;
    this.site = site;
    this.year = year;
    days = LocalDate.of(year, 1, 1).lengthOfYear();
    Frame frame = frame(calendar);
    from = frame.from();
    to = frame.to();
    skipped = gaps();
  }

  /**
   * Where a calendar's cells lie on its sheet, mm, for finding the cell under a pointer.
   *
   * @param hour height of an hour
   * @param from first hour drawn
   * @param to last hour drawn
   */
  public record Frame(double left, double top, double width, double hour, int from, int to) {}

  /** The frame of a calendar's sheet. */
  public static Frame frame(Calendar calendar) {
    int first = 5;
    int last = 21;
    for (int row = 0; row < calendar.days().size(); row++) {
      for (int c = 0; c < calendar.columns(); c++) {
        if (calendar.showing(row, c) > 0) {
          first = Math.min(first, c * calendar.stepMinutes() / 60);
          last = Math.max(last, (c + 1) * calendar.stepMinutes() / 60 + 1);
        }
      }
    }
    return new Frame(LEFT, TOP, WIDTH, HOUR, first, Math.min(24, last));
  }

  /**
   * Draws a calendar.
   *
   * @param id safe id of the drawing
   * @param subject what it is the calendar of
   */
  public static Drawing of(Calendar calendar, Site site, int year, String id, String subject) {
    return new CalendarSheet(calendar, site, year).draw(id, subject);
  }

  private Drawing draw(String id, String subject) {
    double bottom = y(to);
    pencil.on("night").box(LEFT, TOP, WIDTH, bottom - TOP, Ink.PAPER);
    pencil.on("cells");
    cells();
    pencil.on("skipped");
    skipped.forEach(e -> pencil.hatch(e, HATCH));
    pencil.on("sun");
    sun();
    pencil.on("grid");
    grid(bottom);
    pencil.on("legend");
    double x = LEFT;
    for (Band band : Band.values()) {
      pencil.area(
          List.of(Pencil.rectangle(x, bottom + 8, 5, 3)),
          Optional.of(Ink.of(band)),
          Optional.of(Pen.full(Ink.LINE, 0.12)),
          "",
          "");
      pencil.text(x + 6.2, bottom + 10.4, Words.word(band), 2.7, Ink.LINE);
      x += 21;
    }
    pencil.line(x, bottom + 9.5, x + 8, bottom + 9.5, Pen.dashed(Ink.SUN, 0.4, 1.2));
    pencil.text(
        x + 9.5, bottom + 10.4, "sunrise and sunset; " + site.zone().getId(), 2.7, Ink.SOFT);
    double foot = bottom + 14;
    if (!skipped.isEmpty()) {
      pencil.outline(Pencil.rectangle(LEFT, bottom + 13, 5, 3), Pen.full(Ink.LINE, 0.12));
      pencil.hatch(new Extent(LEFT, bottom + 13, LEFT + 5, bottom + 16), HATCH);
      pencil.text(
          LEFT + 6.2, bottom + 15.4, "skipped as clocks go to daylight saving", 2.7, Ink.SOFT);
      foot += 5;
    }
    String title = "When it shows: " + subject + ", level 4, clear weather";
    return pencil.drawing(id, title, description(), PAGE, foot);
  }

  /** Cells whose clock time does not exist because the clocks go forward over it. */
  private List<Extent> gaps() {
    List<Extent> out = new ArrayList<>();
    ZoneRules rules = site.zone().getRules();
    for (int row = 0; row < calendar.days().size(); row++) {
      LocalDateTime midnight =
          LocalDate.ofYearDay(year, Math.min(days, calendar.days().get(row))).atStartOfDay();
      int first = -1;
      for (int c = 0; c <= calendar.columns(); c++) {
        LocalDateTime at = midnight.plusMinutes((long) c * calendar.stepMinutes());
        boolean gap = c < calendar.columns() && rules.getValidOffsets(at).isEmpty();
        if (gap && first < 0) {
          first = c;
        } else if (!gap && first >= 0) {
          out.add(
              new Extent(
                  x(edge(row)),
                  y(first * calendar.stepMinutes() / 60.0),
                  x(edge(row + 1)),
                  y(c * calendar.stepMinutes() / 60.0)));
          first = -1;
        }
      }
    }
    out.removeIf(e -> e.height() <= 0);
    return out;
  }

  private String description() {
    StringBuilder out = new StringBuilder("Worst band of each month: ");
    for (Month month : Month.values()) {
      float most = 0;
      for (int row = 0; row < calendar.days().size(); row++) {
        if (LocalDate.ofYearDay(year, Math.min(days, calendar.days().get(row))).getMonth()
            == month) {
          for (int c = 0; c < calendar.columns(); c++) {
            most = Math.max(most, calendar.showing(row, c));
          }
        }
      }
      out.append(month == Month.JANUARY ? "" : ", ");
      out.append(month.getDisplayName(TextStyle.FULL, Locale.ENGLISH)).append(' ');
      out.append(Words.word(Band.of(most)));
    }
    return out.append('.').toString();
  }

  /** Cells of one band joined into one mark, neighbours of a day into one rectangle. */
  private void cells() {
    Map<Band, List<List<Vec2>>> byBand = new EnumMap<>(Band.class);
    for (int row = 0; row < calendar.days().size(); row++) {
      double x0 = x(edge(row));
      double x1 = x(edge(row + 1));
      int start = 0;
      for (int c = 1; c <= calendar.columns(); c++) {
        if (c == calendar.columns() || state(row, c) != state(row, start)) {
          Band band = state(row, start);
          if (band != null) {
            double y0 = y(start * calendar.stepMinutes() / 60.0);
            double y1 = y(c * calendar.stepMinutes() / 60.0);
            byBand
                .computeIfAbsent(band, b -> new ArrayList<>())
                .add(Pencil.rectangle(x0, y0, x1 - x0, y1 - y0));
          }
          start = c;
        }
      }
    }
    byBand.forEach(
        (band, rings) -> pencil.area(rings, Optional.of(Ink.of(band)), Optional.empty(), "", ""));
  }

  private Band state(int row, int column) {
    float showing = calendar.showing(row, column);
    return showing > 0 ? Band.of(showing) : null;
  }

  /** Day number at which a row's column of cells begins: halfway between its neighbours. */
  private double edge(int row) {
    List<Integer> list = calendar.days();
    if (row == 0) {
      return 1;
    }
    return row == list.size() ? days + 1 : (list.get(row - 1) + list.get(row)) / 2.0;
  }

  private void sun() {
    List<Vec2> rise = new ArrayList<>();
    List<Vec2> set = new ArrayList<>();
    for (int day = 1; day <= days; day += day + 2 > days ? 1 : 2) {
      LocalDate date = LocalDate.ofYearDay(year, day);
      boolean up = altitude(date, 0) > 0;
      for (int m = SUN_STEP_MINUTES; m < 24 * 60; m += SUN_STEP_MINUTES) {
        boolean now = altitude(date, m) > 0;
        if (now != up) {
          double hour = (m - SUN_STEP_MINUTES / 2.0) / 60;
          if (hour >= from && hour <= to) {
            (now ? rise : set).add(new Vec2(x(day), y(hour)));
          }
          up = now;
        }
      }
    }
    for (List<Vec2> curve : List.of(rise, set)) {
      if (curve.size() > 1) {
        pencil.run(curve, Pen.dashed(Ink.SUN, 0.4, 1.2));
      }
    }
  }

  private double altitude(LocalDate date, int minute) {
    ZonedDateTime at = date.atStartOfDay(site.zone()).plusMinutes(minute);
    return SunPath.at(site.latitudeDeg(), site.longitudeDeg(), site.elevation(), at.toInstant())
        .altitude();
  }

  private void grid(double bottom) {
    Pen thin = Pen.full(Ink.FAINT, 0.18);
    for (Month month : Month.values()) {
      LocalDate first = LocalDate.of(year, month, 1);
      double x = x(first.getDayOfYear());
      pencil.line(x, TOP, x, bottom, thin);
      double middle = x(first.getDayOfYear() + first.lengthOfMonth() / 2.0);
      String name = month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
      pencil.centred(middle, bottom + 4, name, 2.8, Ink.SOFT);
    }
    for (int hour = from + from % 2; hour <= to; hour += 2) {
      pencil.line(LEFT, y(hour), LEFT + WIDTH, y(hour), thin);
      pencil.label(
          LEFT - 2,
          y(hour) + 1,
          String.format(Locale.ROOT, "%02d:00", hour),
          2.8,
          Mark.Anchor.END,
          0,
          Ink.SOFT,
          false);
    }
    pencil.outline(Pencil.rectangle(LEFT, TOP, WIDTH, bottom - TOP), Pen.full(Ink.SOFT, 0.25));
  }

  private double x(double day) {
    return LEFT + WIDTH * (day - 1) / days;
  }

  private double y(double hour) {
    return TOP + HOUR * (Math.max(from, Math.min(to, hour)) - from);
  }
}
