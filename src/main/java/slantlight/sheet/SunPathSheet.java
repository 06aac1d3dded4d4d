package slantlight.sheet;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Site;
import slantlight.sky.Sun;
import slantlight.sky.SunPath;

/**
 * The sky of the site as a disc: north at the top, zenith in the middle, horizon at the rim,
 * altitude linear along the radius; the sun's paths by clock time, the skyline, and the outlook of
 * every window as an arc outside the rim.
 */
public final class SunPathSheet {
  private static final double PAGE = 184;
  private static final double KEY = 140;
  private static final double RING = 3.2;
  private static final int MINUTES = 10;
  private static final int STEP = 15;

  private final Site site;
  private final int year;
  private final Vec2 middle;
  private final double rim;
  private final double ring;
  private final Pencil pencil;
  private final List<Opening> windows;
  private final Map<Integer, List<Opening>> outlooks = new TreeMap<>();

  /** Dots of the sun's paths that bear their clock hour. */
  private final Map<Vec2, Integer> hours = new LinkedHashMap<>();

  private SunPathSheet(House house, int year) {
    this.site = house.site();
    this.year = year;
    windows =
        house.openings().stream()
            .filter(o -> o.kind() != OpeningKind.PASSAGE && level(o) > 0.2)
            .toList();
    for (Opening o : windows) {
      int facing = (int) (Math.round(Math.toDegrees(azimuth(o)) / STEP) * STEP) % 360;
      outlooks.computeIfAbsent(facing, f -> new ArrayList<>()).add(o);
    }
    int many = Math.max(1, outlooks.size());
    ring = Math.min(RING, 26.0 / many);
    rim = (KEY - 27 - 2 * ring * many) / 2;
    double reach = rim + 9 + ring * many;
    middle = new Vec2(reach + 6, reach + 6);
    pencil = new Pencil(PAGE, 2 * middle.y());
  }

  /**
   * Draws the site's sky.
   *
   * @param id safe id of the drawing
   */
  public static Drawing of(House house, int year, String id) {
    return new SunPathSheet(house, year).draw(id);
  }

  private Drawing draw(String id) {
    pencil.on("sky");
    pencil.circle(middle.x(), middle.y(), rim, Optional.of(Ink.PAPER), Optional.empty());
    skyline();
    grid();
    pencil.on("sun");
    path(LocalDate.of(year, 12, 21), true);
    path(LocalDate.of(year, 3, 20), false);
    path(LocalDate.of(year, 6, 21), true);
    pencil.on("windows");
    double end = windows();
    pencil.on("names");
    hours.forEach(
        (dot, hour) ->
            pencil.place(
                new Lettering(Integer.toString(hour), 2.3, Ink.LINE, false).around(dot, 0.8)));
    for (int altitude = 30; altitude < 90; altitude += 30) {
      Vec2 ring = at(0, Math.toRadians(altitude)).plus(new Vec2(0.4, 0));
      Lettering degrees = new Lettering(altitude + "\u00b0", 2.4, Ink.SOFT, false);
      pencil.place(degrees.along(ring, ring.plus(new Vec2(5, 0)), 0, 0, 0.5));
    }
    String title = "The sun over the site and what each window looks toward";
    String description =
        String.format(
            java.util.Locale.ROOT,
            "Sun paths for 21 June, 20 March and 21 December at %.2f degrees north, %.2f degrees"
                + " east, in clock time of %s. %s",
            site.latitudeDeg(),
            site.longitudeDeg(),
            site.zone().getId(),
            outlookWords());
    return pencil.drawing(id, title, description, PAGE, Math.max(2 * middle.y(), end + 4));
  }

  private String outlookWords() {
    StringBuilder out = new StringBuilder();
    for (Opening o : windows) {
      out.append(o.label()).append(" looks toward azimuth ");
      out.append(Math.round(Math.toDegrees(azimuth(o)))).append(" degrees. ");
    }
    return out.toString().trim();
  }

  private void skyline() {
    if (site.skyline().isEmpty()) {
      return;
    }
    List<Vec2> inner = new ArrayList<>();
    List<Vec2> rim = new ArrayList<>();
    for (int a = 0; a < 360; a += 2) {
      double azimuth = Math.toRadians(a);
      inner.add(at(azimuth, Math.max(0, site.skylineAltitude(azimuth))));
      rim.add(at(azimuth, 0));
    }
    pencil.fill(List.of(rim, inner), Ink.GROUND);
  }

  private void grid() {
    Pen thin = Pen.full(Ink.FAINT, 0.18);
    for (int altitude = 0; altitude < 90; altitude += 30) {
      double radius = rim * (90 - altitude) / 90;
      pencil.circle(
          middle.x(),
          middle.y(),
          radius,
          Optional.empty(),
          Optional.of(altitude == 0 ? Pen.full(Ink.SOFT, 0.35) : thin));
    }
    String[] names = {"N", "E", "S", "W"};
    for (int i = 0; i < 12; i++) {
      Vec2 end = at(Math.toRadians(30 * i), 0);
      pencil.run(List.of(middle, end), thin);
      if (i % 3 == 0) {
        Vec2 out = end.plus(end.minus(middle).unit().times(4));
        pencil.label(
            out.x(), out.y() + 1.2, names[i / 3], 3.4, Mark.Anchor.MIDDLE, 0, Ink.LINE, true);
      }
    }
  }

  private void path(LocalDate day, boolean named) {
    List<Vec2> up = new ArrayList<>();
    for (int m = 0; m < 24 * 60; m += MINUTES) {
      ZonedDateTime at = day.atStartOfDay(site.zone()).plusMinutes(m);
      Sun sun =
          SunPath.at(site.latitudeDeg(), site.longitudeDeg(), site.elevation(), at.toInstant());
      if (sun.altitude() <= 0) {
        stroke(up);
        continue;
      }
      Vec2 p = at(sun.azimuth(), sun.altitude());
      up.add(p);
      if (at.getMinute() == 0) {
        pencil.circle(p.x(), p.y(), 0.8, Optional.of(Ink.SUN), Optional.empty());
        if (named && at.getHour() % 2 == 0) {
          hours.put(p, at.getHour());
        }
      }
    }
    stroke(up);
  }

  private void stroke(List<Vec2> up) {
    if (up.size() > 1) {
      pencil.run(up, Pen.full(Ink.SUN, 0.45));
    }
    up.clear();
  }

  /** The windows' arcs and their key; returns how far down the key reaches. */
  private double windows() {
    double keyY = middle.y() - rim;
    double wide = PAGE - KEY - 2;
    pencil.label(KEY, keyY, "Windows", 3.2, Mark.Anchor.START, 0, Ink.LINE, true);
    double y = keyY + 6;
    int number = 1;
    for (Map.Entry<Integer, List<Opening>> e : outlooks.entrySet()) {
      double radius = rim + 9 + ring * (number - 1);
      double facing = Math.toRadians(e.getKey());
      List<Vec2> arc = new ArrayList<>();
      for (int d = -60; d <= 60; d += 4) {
        arc.add(around(facing + Math.toRadians(d), radius));
      }
      List<String> names = e.getValue().stream().map(Opening::label).distinct().toList();
      pencil.run(arc, Pen.full(Ink.GLASS_EDGE, 0.7), String.join(", ", names), "");
      Vec2 tip = around(facing, radius);
      pencil.circle(tip.x(), tip.y(), 1.9, Optional.of(Ink.GLASS_EDGE), Optional.empty());
      pencil.label(
          tip.x(), tip.y() + 0.9, "" + number, 2.5, Mark.Anchor.MIDDLE, 0, Ink.PAPER, true);
      pencil.label(
          KEY,
          y,
          number + "  toward " + e.getKey() + "\u00b0",
          2.9,
          Mark.Anchor.START,
          0,
          Ink.LINE,
          true);
      y += 4;
      for (String line : Letters.lines(String.join(", ", names), 2.6, wide - 4)) {
        pencil.text(KEY + 4, y, line, 2.6, Ink.LINE);
        y += 3.8;
      }
      y += 1.2;
      number++;
    }
    y += 2;
    for (String line :
        Letters.lines(
            "Arcs reach 60\u00b0 to either side. Paths of 21 June, 20 March and 21 December;"
                + " figures are clock hours. Site: "
                + place()
                + ".",
            2.5,
            wide)) {
      pencil.text(KEY, y, line, 2.5, Ink.SOFT);
      y += 3.8;
    }
    return y;
  }

  private Vec2 around(double azimuth, double radius) {
    return middle.plus(new Vec2(Math.sin(azimuth), -Math.cos(azimuth)).times(radius));
  }

  private String place() {
    return String.format(
        java.util.Locale.ROOT,
        "%.2f\u00b0 %s, %.2f\u00b0 %s",
        Math.abs(site.latitudeDeg()),
        site.latitudeDeg() < 0 ? "S" : "N",
        Math.abs(site.longitudeDeg()),
        site.longitudeDeg() < 0 ? "W" : "E");
  }

  private static Vec3 outward(Opening o) {
    return o.face().frame().n().times(-1);
  }

  /** Length of the outlook's level part: 1 for a window in a wall, 0 for one in a flat roof. */
  private static double level(Opening o) {
    return Math.hypot(outward(o).x(), outward(o).y());
  }

  private static double azimuth(Opening o) {
    return outward(o).azimuth();
  }

  private Vec2 at(double azimuth, double altitude) {
    double radius = rim * (1 - altitude / (Math.PI / 2));
    return middle.plus(new Vec2(Math.sin(azimuth), -Math.cos(azimuth)).times(radius));
  }
}
