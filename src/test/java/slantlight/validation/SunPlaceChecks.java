package slantlight.validation;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import slantlight.board.Layout;
import slantlight.scene.House;
import slantlight.scene.Site;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.score.SurfaceScore;
import slantlight.sky.SunPath;
import slantlight.units.Progress;

/**
 * The year mixes bounced light of suns 5 degrees apart and puts flecks of sun close to a point
 * where the sun of the moment makes them. Here each joint is scored again with the sun traced
 * exactly where it stands at that joint's peak of the year.
 */
final class SunPlaceChecks {
  private static final String SUBJECT = "Suns between the places of the grid";
  private static final String SOURCE = "the same program with the sun where it is at that moment";

  /** Median, 95 % and worst that were stated before anything was computed, as shares. */
  private static final double[] STATED = {0.01, 0.05, 0.15};

  /** How far peaks are off, as shares: of every joint, and of the worst joint of each surface. */
  private record Off(List<Double> joints, List<Double> surfaces) {
    void add(Off o) {
      joints.addAll(o.joints);
      surfaces.addAll(o.surfaces);
    }
  }

  private SunPlaceChecks() {}

  static List<Check> all() {
    House lake = Rooms.scene("lake-house");
    Off rooms = new Off(new ArrayList<>(), new ArrayList<>());
    for (String room : List.of("laundry", "garage")) {
      rooms.add(off(lake.alone(room)));
    }
    Off one = off(Rooms.scene("one-room"));
    return List.of(
        row("one-room, every joint", one.joints()),
        row("one-room, worst joint of each surface", one.surfaces()),
        row("laundry and garage of the lake house, alone, every joint", rooms.joints()),
        row(
            "laundry and garage of the lake house, alone, worst joint of each surface",
            rooms.surfaces()));
  }

  private static Off off(House house) {
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 10))
            .withStep(20);
    HouseScore year = Scorer.score(house, options, Progress.NONE);
    Map<String, Layout> layouts =
        year.surfaces().stream()
            .collect(Collectors.toMap(SurfaceScore::surfaceId, SurfaceScore::layout));
    Map<ZonedDateTime, Set<String>> asked = new LinkedHashMap<>();
    for (SurfaceScore s : year.surfaces()) {
      byDay(house, s)
          .forEach(p -> asked.computeIfAbsent(p.at(), k -> new HashSet<>()).add(s.surfaceId()));
    }
    Map<ZonedDateTime, HouseScore> exact = new HashMap<>();
    asked.forEach((at, ids) -> exact.put(at, exact(house, at, options.withSurfaces(ids), layouts)));
    Off out = new Off(new ArrayList<>(), new ArrayList<>());
    for (SurfaceScore s : year.surfaces()) {
      for (JointScore j : s.joints()) {
        for (Peak p : j.peak().stream().filter(q -> day(house, q)).toList()) {
          double there = showing(exact.get(p.at()).surface(s.surfaceId()), j);
          double share = Math.abs(p.showing() / there - 1);
          out.joints().add(share);
          if (s.worst().equals(j.peak())) {
            out.surfaces().add(share);
          }
        }
      }
    }
    return out;
  }

  private static HouseScore exact(
      House house, ZonedDateTime at, ScoreOptions options, Map<String, Layout> layouts) {
    ScoreOptions once = options.withDays(List.of(1)).withStep(720).withLayouts(layouts);
    return Scorer.score(Rooms.still(house, at), once, Progress.NONE);
  }

  private static List<Peak> byDay(House house, SurfaceScore s) {
    return s.joints().stream().flatMap(j -> j.peak().stream()).filter(p -> day(house, p)).toList();
  }

  private static boolean day(House house, Peak p) {
    Site site = house.site();
    return SunPath.at(site.latitudeDeg(), site.longitudeDeg(), site.elevation(), p.at().toInstant())
            .altitude()
        > 0;
  }

  private static double showing(SurfaceScore surface, JointScore joint) {
    return surface.joints().stream()
        .filter(j -> j.joint().id().equals(joint.joint().id()))
        .mapToDouble(j -> j.atLevel(4).peakShowing())
        .findFirst()
        .orElseThrow();
  }

  private static Check row(String what, List<Double> off) {
    double[] sorted = off.stream().mapToDouble(d -> d).sorted().toArray();
    double median = sorted[sorted.length / 2];
    double most = sorted[(int) Math.floor(0.95 * (sorted.length - 1))];
    double worst = sorted[sorted.length - 1];
    return new Check(
        SUBJECT,
        what + ": peak of the year off by (median, 95 %, worst of " + sorted.length + ")",
        SOURCE,
        figures(STATED),
        figures(median, most, worst),
        "not above",
        median <= STATED[0] && most <= STATED[1] && worst <= STATED[2]);
  }

  /** Shares as whole percents, rounded up: the digits after do not mean anything. */
  private static String figures(double... shares) {
    return Arrays.stream(shares)
        .mapToObj(s -> String.format(Locale.ROOT, "%.0f %%", Math.ceil(100 * s)))
        .collect(Collectors.joining(", "));
  }
}
