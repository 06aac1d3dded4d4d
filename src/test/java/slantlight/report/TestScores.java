package slantlight.report;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slantlight.TestHouses;
import slantlight.board.Joint;
import slantlight.board.Layout;
import slantlight.board.PlacedBoard;
import slantlight.decide.Verdict;
import slantlight.geom.Vec2;
import slantlight.light.Source;
import slantlight.light.SourceKind;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;
import slantlight.score.Calendar;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.LevelScore;
import slantlight.score.Peak;
import slantlight.score.SpotScore;
import slantlight.score.SurfaceScore;
import slantlight.sky.Weather;

/** A hand-made score of the box room: invented numbers of a likely size, for tests of writing. */
public final class TestScores {
  private static final double WIDTH = 5.2;
  private static final double DEPTH = 8;

  private TestScores() {}

  /** The box room with glass from the floor to 2.44 m in its south wall. */
  public static House house() {
    return TestHouses.boxRoom(WIDTH, DEPTH, 2.75, 0.4, 4.8, 0, 2.44, 0.85);
  }

  /** Ceiling and west wall of {@link #house()}, scored. */
  public static HouseScore score() {
    return score(house());
  }

  /** Ceiling and west wall of a box room, scored. */
  public static HouseScore score(House house) {
    List<SurfaceScore> surfaces = List.of(ceiling(house), wall(house));
    return new HouseScore(house, surfaces, 2026, 15, 420, 17_000);
  }

  public static Provenance made() {
    return new Provenance("0.0-test", "sha256:0123456789abcdef0123456789abcdef");
  }

  public static List<Verdict> verdicts() {
    return List.of(
        new Verdict(
            "room/ceiling",
            5,
            5,
            4,
            "GA-214: flat paint without critical lighting takes level 4",
            "The butt joints 3 m from the glass show plainly in May at noon, standing in the"
                + " middle, because ground light through the south window grazes the ceiling.",
            false,
            List.of("Run the boards away from the glass, with the light.")),
        new Verdict(
            "room/west",
            4,
            4,
            4,
            "GA-214: flat paint takes level 4",
            "Nothing shows.",
            false,
            List.of()));
  }

  private static SurfaceScore ceiling(House house) {
    double board = 4 * 0.3048;
    List<PlacedBoard> boards = new ArrayList<>();
    List<JointScore> joints = new ArrayList<>();
    int rows = (int) Math.ceil(DEPTH / board);
    for (int row = 0; row < rows; row++) {
      double v0 = row * board;
      double v1 = Math.min(DEPTH, v0 + board);
      double end = row % 2 == 0 ? 3.6576 : 1.6256;
      boards.add(board(boards.size() + 1, 0, v0, end, v1));
      boards.add(board(boards.size() + 1, end, v0, WIDTH, v1));
      if (row > 0) {
        double showing = 0.6 + 3.1 * Math.exp(-0.25 * (v0 - 3) * (v0 - 3));
        joints.add(
            joint(house, "room/ceiling#T" + row, JointKind.TAPERED, 0, v0, WIDTH, v0, showing));
      }
      double showing = row == 2 ? 6.8 : row == 3 ? 3.1 : 0.7 + 0.3 * row;
      joints.add(
          joint(house, "room/ceiling#B" + (row + 1), JointKind.BUTT, end, v0, end, v1, showing));
    }
    return surface("room/ceiling", boards, joints, 6.8);
  }

  private static SurfaceScore wall(House house) {
    double board = 4 * 0.3048;
    List<PlacedBoard> boards =
        List.of(
            board(1, 0, 0, 4.8768, board),
            board(2, 4.8768, 0, DEPTH, board),
            board(3, 0, board, DEPTH, 2 * board));
    List<JointScore> joints =
        List.of(
            joint(house, "room/west#T1", JointKind.TAPERED, 0, board, DEPTH, board, 0.4),
            joint(house, "room/west#B1", JointKind.BUTT, 4.8768, 0, 4.8768, board, 1.4),
            joint(house, "room/west#C1", JointKind.CUT, 0, 2 * board, DEPTH, 2 * board, 0.9));
    return surface("room/west", boards, joints, 1.4);
  }

  private static PlacedBoard board(int number, double u0, double v0, double u1, double v1) {
    double ft = 0.3048;
    double length = Math.ceil((u1 - u0) / ft - 1e-9) * ft;
    return new PlacedBoard(
        number,
        new BoardSize(4 * ft, length),
        TestHouses.rectangle(u0, v0, u1, v1),
        (u1 - u0) * (v1 - v0));
  }

  private static SurfaceScore surface(
      String id, List<PlacedBoard> boards, List<JointScore> joints, double peak) {
    Layout layout =
        new Layout(
            id,
            BoardRun.ACROSS_FRAMING,
            boards,
            joints.stream().map(JointScore::joint).toList(),
            List.of(new Vec2(0.4, 0.3), new Vec2(0.8, 0.3)),
            "Across the framing there is less butt joint in the raking light.");
    Optional<Peak> worst =
        joints.stream()
            .map(j -> j.peak().orElseThrow())
            .max((a, b) -> Double.compare(a.showing(), b.showing()));
    SpotScore spots = new SpotScore(2, 2, levels(peak / 4), Optional.empty());
    return new SurfaceScore(
        id, layout, joints, levels(peak), worst, calendar(peak), Optional.of(spots));
  }

  private static JointScore joint(
      House house,
      String id,
      JointKind kind,
      double u0,
      double v0,
      double u1,
      double v1,
      double showing) {
    Joint joint =
        new Joint(
            id,
            kind,
            new Vec2(u0, v0),
            new Vec2(u1, v1),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    Surface surface = house.surface(id.substring(0, id.indexOf('#')));
    Vec2 middle = joint.from().lerp(joint.to(), 0.5);
    ZonedDateTime at = ZonedDateTime.of(2026, 5, 18, 12, 45, 0, 0, ZoneId.of("America/Chicago"));
    Peak peak =
        new Peak(
            showing,
            showing * 0.0042,
            at,
            Weather.CLEAR,
            surface.face().frame().toWorld(middle),
            "room/eye",
            2.5,
            new Source(SourceKind.GROUND, "room/window", "ground light through the south window"),
            0.72,
            Math.toRadians(14),
            Double.NaN,
            860,
            2.28);
    List<Double> profile = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      profile.add(showing * (0.6 + 0.4 * Math.sin(Math.PI * i / 8)));
    }
    return new JointScore(joint, joint.length(), levels(showing), Optional.of(peak), profile);
  }

  private static List<LevelScore> levels(double showing) {
    List<LevelScore> out = new ArrayList<>();
    double[] factors = {1.8, 1, 0.17};
    for (int i = 0; i < 3; i++) {
      double s = showing * factors[i];
      out.add(
          new LevelScore(
              3 + i,
              s,
              List.of(0.5, 0.3, 0.15, 0.05),
              List.of(4380.0, 210 * s, 90 * s, s > 6 ? 40 * s : 0),
              List.of(4380.0, 110 * s, 40 * s, s > 6 ? 20 * s : 0)));
    }
    return out;
  }

  private static Calendar calendar(double peak) {
    List<Integer> days = new ArrayList<>();
    for (int day = 1; day <= 365; day += 7) {
      days.add(day);
    }
    float[][] showing = new float[days.size()][96];
    for (int row = 0; row < days.size(); row++) {
      double season = Math.cos(2 * Math.PI * (days.get(row) - 172) / 365.0);
      double half = 4.6 + 2.6 * season;
      for (int column = 0; column < 96; column++) {
        double hour = column / 4.0 - 12.75;
        double x = Math.abs(hour) / half;
        showing[row][column] = x >= 1 ? 0 : (float) (peak * (0.75 + 0.25 * season) * (1 - x * x));
      }
    }
    return new Calendar(days, 15, showing);
  }
}
