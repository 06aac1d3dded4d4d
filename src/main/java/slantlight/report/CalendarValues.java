package slantlight.report;

import java.time.LocalDate;
import java.util.Locale;
import java.util.stream.Collectors;
import slantlight.score.Calendar;
import slantlight.sheet.CalendarSheet;
import slantlight.sheet.Drawing;

/** A calendar's values for the page's script: two digits of base 36 a cell, in tenths. */
final class CalendarValues {
  private static final int MOST = 36 * 36 - 1;

  private CalendarValues() {}

  static String of(Calendar calendar, int year, Drawing drawing) {
    StringBuilder cells = new StringBuilder();
    for (int row = 0; row < calendar.days().size(); row++) {
      for (int c = 0; c < calendar.columns(); c++) {
        float showing = calendar.showing(row, c);
        int tenths = showing <= 0 ? 0 : Math.max(1, Math.round(showing * 10));
        String digits = Integer.toString(Math.min(MOST, tenths), 36);
        cells.append(digits.length() < 2 ? "0" : "").append(digits);
      }
    }
    CalendarSheet.Frame f = CalendarSheet.frame(calendar);
    return String.format(
        Locale.ROOT,
        "{\"year\":%d,\"length\":%d,\"step\":%d,\"columns\":%d,\"left\":%s,\"top\":%s,\"width\":%s,"
            + "\"hour\":%s,\"from\":%d,\"to\":%d,\"page\":%s,\"high\":%s,\"days\":[%s],"
            + "\"cells\":\"%s\"}",
        year,
        LocalDate.of(year, 1, 1).lengthOfYear(),
        calendar.stepMinutes(),
        calendar.columns(),
        f.left(),
        f.top(),
        f.width(),
        f.hour(),
        f.from(),
        f.to(),
        drawing.width(),
        drawing.height(),
        calendar.days().stream().map(String::valueOf).collect(Collectors.joining(",")),
        cells);
  }
}
