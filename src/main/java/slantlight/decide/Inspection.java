package slantlight.decide;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Year;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slantlight.board.Joint;
import slantlight.geom.Vec2;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;
import slantlight.score.Band;
import slantlight.score.Calendar;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.units.Measures;

/**
 * How to find the flaws of one surface before primer and paint.
 *
 * @param windows when daylight itself shows them within the period, best first
 * @param best the best moment of the period, with its eye; empty when daylight does not show them
 * @param lamp where to hold a lamp instead, or as well
 * @param items the joints to check, worst first
 */
public record Inspection(
    String surfaceId,
    String label,
    List<Window> windows,
    Optional<Peak> best,
    Optional<LampPlace> lamp,
    List<Item> items) {
  public Inspection {
    windows = List.copyOf(windows);
    items = List.copyOf(items);
  }

  /**
   * A stretch of one day in which a joint at level 4 can be noticed by daylight.
   *
   * @param from first minute, local clock time
   * @param to minute after the last; midnight at the end of the day
   * @param showing largest showing in it
   */
  public record Window(LocalDate day, LocalTime from, LocalTime to, double showing) {}

  /**
   * A line of the check-off list.
   *
   * @param showing largest showing of the year at level 4
   */
  public record Item(String jointId, String name, Stretch where, double showing) {}

  /**
   * Where a joint lies.
   *
   * @param from its corner nearest the surface's lower left corner seen from inside, from there, m
   * @param to the corner opposite, m
   * @param wall true on a wall, false on a ceiling
   */
  public record Stretch(Vec2 from, Vec2 to, boolean wall) {
    static Stretch of(Surface surface, Joint joint) {
      List<Vec2> outer = surface.face().outer();
      Vec2 corner =
          new Vec2(
              outer.stream().mapToDouble(Vec2::x).min().orElseThrow(),
              outer.stream().mapToDouble(Vec2::y).min().orElseThrow());
      Vec2 a = joint.from().minus(corner);
      Vec2 b = joint.to().minus(corner);
      return new Stretch(
          new Vec2(Math.min(a.x(), b.x()), Math.min(a.y(), b.y())),
          new Vec2(Math.max(a.x(), b.x()), Math.max(a.y(), b.y())),
          surface.kind() == SurfaceKind.WALL);
    }

    /** In the reader's measures. */
    public String words(Measures reader) {
      return reader.span(from.x(), to.x())
          + " from the left, "
          + reader.span(from.y(), to.y())
          + (wall ? " up" : " deep");
    }
  }

  /**
   * The surfaces worth it: those with a joint that reaches {@link Band#TRACE} at level 4 at some
   * moment of the year.
   *
   * @param year the whole year, lamps included
   * @param daylight the days of the period with every lamp out; surfaces it lacks get no windows
   */
  public static List<Inspection> of(HouseScore year, HouseScore daylight) {
    List<Inspection> out = new ArrayList<>();
    for (SurfaceScore s : year.surfaces()) {
      if (Showing.at(s, 4) >= Band.TRACE.from()) {
        out.add(of(year.house(), s, daylight));
      }
    }
    return out;
  }

  /** The ids of the surfaces worth it. */
  public static List<String> worthIt(HouseScore year) {
    return year.surfaces().stream()
        .filter(s -> Showing.at(s, 4) >= Band.TRACE.from())
        .map(SurfaceScore::surfaceId)
        .toList();
  }

  private static Inspection of(House house, SurfaceScore year, HouseScore daylight) {
    Surface surface = house.surface(year.surfaceId());
    Optional<SurfaceScore> period =
        daylight.surfaces().stream()
            .filter(s -> s.surfaceId().equals(year.surfaceId()))
            .findFirst();
    return new Inspection(
        surface.id(),
        surface.label(),
        period.map(p -> windows(p.calendar(), daylight.year())).orElse(List.of()),
        period.flatMap(Showing::worst).filter(p -> p.showing() >= Band.TRACE.from()),
        Showing.worstJoint(year).flatMap(j -> LampPlace.of(house, surface, j)),
        items(surface, year));
  }

  /** The longest run of showing steps around each day's best, best day first. */
  static List<Window> windows(Calendar calendar, int year) {
    List<Window> out = new ArrayList<>();
    for (int row = 0; row < calendar.days().size(); row++) {
      LocalDate day = Year.of(year).atDay(calendar.days().get(row));
      int from = -1;
      double best = 0;
      for (int c = 0; c <= calendar.columns(); c++) {
        double showing = c < calendar.columns() ? calendar.showing(row, c) : 0;
        boolean shows = showing >= Band.TRACE.from();
        if (shows && from < 0) {
          from = c;
          best = 0;
        }
        best = Math.max(best, showing);
        if (!shows && from >= 0) {
          out.add(window(day, from, c, calendar.stepMinutes(), best));
          from = -1;
        }
      }
    }
    out.sort(
        Comparator.comparingDouble(Window::showing)
            .reversed()
            .thenComparing(Window::day)
            .thenComparing(Window::from));
    return out;
  }

  private static Window window(LocalDate day, int from, int to, int step, double showing) {
    return new Window(
        day,
        LocalTime.MIDNIGHT.plusMinutes((long) from * step),
        LocalTime.MIDNIGHT.plusMinutes((long) to * step),
        showing);
  }

  private static List<Item> items(Surface surface, SurfaceScore score) {
    return score.joints().stream()
        .filter(j -> j.atLevel(4).peakShowing() >= Band.TRACE.from())
        .sorted(
            Comparator.comparingDouble((JointScore j) -> -j.atLevel(4).peakShowing())
                .thenComparing(j -> j.joint().id()))
        .map(
            j ->
                new Item(
                    j.joint().id(),
                    Wording.jointName(j.joint()),
                    Stretch.of(surface, j.joint()),
                    j.atLevel(4).peakShowing()))
        .toList();
  }
}
