package slantlight.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import slantlight.TestHouses;
import slantlight.board.Layout;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.score.SurfaceScore;
import slantlight.units.Progress;

/**
 * What halving each step of the computation does to the largest showing of the year at level 4. The
 * aim is 2 %; where a default misses it the row has a wider bound and says so.
 */
final class ConvergenceChecks {
  private static final String SUBJECT = "How fine is fine enough";
  private static final String SOURCE = "convergence: a default must not decide the answer";
  private static final TransportOptions USUAL = TransportOptions.DEFAULT;

  /** Change of a room's largest showing that a halved step may make. */
  private static final double AIM = 0.02;

  /** Change of any surface that docs/model.md states for the default mesh. */
  private static final double ANY_SURFACE = 0.1;

  private static final String MESH = "patches halved, 0.3 to 0.15 m";
  private static final String GROUPS = "later bounces between patches, not groups of nine";
  private static final String TIMES = "time steps halved, 10 to 5 minutes, every day";
  private static final String POINTS = "followed points of joints twice as close, 0.5 to 0.25 m";

  /**
   * A room to be computed again with finer steps.
   *
   * @param surfaces some of its surfaces, the one that shows most first
   * @param wider bounds of the steps that miss the aim
   */
  private record Room(String name, House house, List<String> surfaces, Map<String, Double> wider) {
    double bound(String step) {
      return wider.getOrDefault(step, AIM);
    }
  }

  private ConvergenceChecks() {}

  static List<Check> all() {
    List<Room> rooms =
        List.of(
            new Room(
                "box room 4 m x 5 m",
                TestHouses.boxRoom(4, 5, 2.6, 1, 3, 0.3, 2.2, 0.8),
                List.of("room/east", "room/south", "room/ceiling"),
                // A joint of 0.3 m below the sill has one point, at its middle, and shows most at
                // its upper end.
                Map.of(POINTS, 0.05)),
            new Room(
                "demo scene one-room",
                Rooms.scene("one-room"),
                List.of("living/wall-north", "living/wall-east", "living/ceiling"),
                Map.of(POINTS, 0.1)),
            new Room(
                "bedroom of the lake house, alone",
                Rooms.scene("lake-house").alone("bedroom"),
                List.of("bedroom/ceiling", "bedroom/wall-north", "bedroom/wall-east"),
                Map.of(POINTS, 0.1)));
    List<Check> out = new ArrayList<>();
    for (Room room : rooms) {
      out.addAll(light(room));
    }
    return out;
  }

  /** Steps of the light, and of the points that look at it, on every thirtieth day. */
  private static List<Check> light(Room room) {
    Map<String, TransportOptions> steps =
        Map.of(
            MESH,
            USUAL.withPatchEdge(USUAL.patchEdge() / 2),
            GROUPS,
            options(1, USUAL.coneAngle(), USUAL.sunEdge()),
            "cones through openings halved, 0.12 to 0.06 rad",
            options(USUAL.groupSide(), USUAL.coneAngle() / 2, USUAL.sunEdge()),
            "parts of a patch that tell where sun lies halved, 0.15 to 0.075 m",
            options(USUAL.groupSide(), USUAL.coneAngle(), USUAL.sunEdge() / 2));
    ScoreOptions few = days(room, 30);
    Transport light = Transport.of(room.house(), USUAL, Progress.NONE);
    HouseScore usual = Scorer.score(light, few, Progress.NONE);
    ScoreOptions sameBoards = few.withLayouts(layouts(usual));
    List<Check> out = new ArrayList<>();
    double any = 0;
    for (String step : steps.keySet().stream().sorted().toList()) {
      Transport finer = Transport.of(room.house(), steps.get(step), Progress.NONE);
      HouseScore score = Scorer.score(finer, sameBoards, Progress.NONE);
      out.add(largest(room, step, usual, score));
      any = Math.max(any, worst(usual, score));
    }
    out.add(
        row(
            room.name()
                + ", any of these: the surface that moves most, of "
                + room.surfaces().size(),
            any,
            ANY_SURFACE));
    HouseScore closer = Scorer.score(light, sameBoards.withSpacing(0.25), Progress.NONE);
    out.add(largest(room, POINTS, usual, closer));
    out.add(times(room, light));
    return out;
  }

  /** The time step, on every day of the year, on the surface that shows most. */
  private static Check times(Room room, Transport light) {
    ScoreOptions whole = days(room, 1).withSurfaces(Set.of(room.surfaces().get(0)));
    HouseScore usual = Scorer.score(light, whole, Progress.NONE);
    HouseScore finer =
        Scorer.score(
            light,
            whole.withLayouts(layouts(usual)).withStep(whole.stepMinutes() / 2),
            Progress.NONE);
    return largest(room, TIMES, usual, finer);
  }

  private static Check largest(Room room, String step, HouseScore usual, HouseScore finer) {
    double before = usual.surfaces().stream().mapToDouble(ConvergenceChecks::peak).max().orElse(0);
    double after = finer.surfaces().stream().mapToDouble(ConvergenceChecks::peak).max().orElse(0);
    return row(
        room.name() + ", " + step + ": largest showing", change(before, after), room.bound(step));
  }

  private static Check row(String what, double change, double bound) {
    return new Check(
        SUBJECT,
        what,
        SOURCE,
        "moves by at most " + percent(AIM),
        "by less than " + ((int) (100 * change) + 1) + " %",
        bound == AIM ? "within " + percent(AIM) : "wider bound: within " + percent(bound),
        change <= bound);
  }

  private static double worst(HouseScore usual, HouseScore finer) {
    return usual.surfaces().stream()
        .mapToDouble(s -> change(peak(s), peak(finer.surface(s.surfaceId()))))
        .max()
        .orElseThrow();
  }

  private static double peak(SurfaceScore s) {
    return s.atLevel(4).peakShowing();
  }

  private static double change(double before, double after) {
    return before > 0 ? Math.abs(after / before - 1) : Double.POSITIVE_INFINITY;
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  private static ScoreOptions days(Room room, int every) {
    return ScoreOptions.standard()
        .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, every))
        .withSurfaces(Set.copyOf(room.surfaces()));
  }

  private static Map<String, Layout> layouts(HouseScore score) {
    return score.surfaces().stream()
        .collect(Collectors.toMap(SurfaceScore::surfaceId, SurfaceScore::layout));
  }

  private static TransportOptions options(int groupSide, double cone, double sunEdge) {
    return new TransportOptions(
        USUAL.patchEdge(), groupSide, cone, USUAL.sunStepDeg(), sunEdge, USUAL.maxPatches());
  }
}
