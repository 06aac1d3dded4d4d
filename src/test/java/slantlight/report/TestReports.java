package slantlight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slantlight.TestHouses;
import slantlight.board.Quantities;
import slantlight.board.Stock;
import slantlight.decide.Verdict;
import slantlight.scene.BoardSize;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;
import slantlight.sheet.FrontierSheet;

/** A whole report of the box room, with invented prices. */
final class TestReports {
  private TestReports() {}

  static ReportData data() {
    return data(TestScores.house());
  }

  /** The same with boards bought in millimetres. */
  static ReportData metric() {
    return data(TestHouses.metric(TestScores.house()));
  }

  /** The same with so many more walls of which little shows. */
  static ReportData withQuietWalls(int walls) {
    House h = TestScores.house();
    List<Surface> surfaces = new ArrayList<>(h.surfaces());
    List<SurfaceScore> scores = new ArrayList<>(TestScores.score(h).surfaces());
    List<Verdict> verdicts = new ArrayList<>(TestScores.verdicts());
    for (int i = 1; i <= walls; i++) {
      String id = "room/quiet-" + i;
      surfaces.add(TestHouses.named(h.surface("room/west"), id, "Quiet wall " + i));
      SurfaceScore like = scores.get(1);
      scores.add(
          new SurfaceScore(
              id,
              like.layout(),
              like.joints(),
              like.levels(),
              like.worst(),
              like.calendar(),
              like.spots()));
      String why = "Little shows on wall number " + i + ".";
      verdicts.add(new Verdict(id, 4, 4, 4, "GA-214: flat paint", why, false, List.of()));
    }
    House big = h.withSurfaces(surfaces);
    return data(new HouseScore(big, scores, 2026, 15, 420, 17_000), verdicts);
  }

  /** The same with other prices. */
  static ReportData with(ReportData.Money money) {
    ReportData d = data();
    return new ReportData(
        d.score(),
        d.verdicts(),
        d.made(),
        d.quantities(),
        Optional.of(money),
        d.inspection(),
        d.pictures());
  }

  /** The same with every label replaced. */
  static ReportData withNames(String name) {
    House h = TestScores.house();
    List<Surface> surfaces =
        h.surfaces().stream().map(s -> TestHouses.named(s, s.id(), name)).toList();
    return data(
        new House(
            name,
            name,
            h.site(),
            h.rooms(),
            surfaces,
            h.openings(),
            h.lamps(),
            h.outside(),
            h.eyes(),
            h.rates(),
            h.prescribed(),
            h.scale()));
  }

  private static ReportData data(House house) {
    return data(TestScores.score(house), TestScores.verdicts());
  }

  private static ReportData data(HouseScore score, List<Verdict> verdicts) {
    double ft = 0.3048;
    Quantities q =
        new Quantities(
            new TreeMap<>(
                Map.of(
                    new Stock(new BoardSize(4 * ft, 12 * ft), ft / 24),
                    9,
                    new Stock(new BoardSize(4 * ft, 8 * ft), ft / 24),
                    2)),
            41.6,
            46.1,
            48,
            21.5,
            0,
            520);
    return new ReportData(
        score,
        verdicts,
        TestScores.made(),
        score.surfaces().stream()
            .map(s -> new ReportData.SurfaceQuantities(s.surfaceId(), q))
            .toList(),
        Optional.of(
            new ReportData.Money(
                "USD",
                false,
                List.of(
                    new FrontierSheet.Step(0, 12.5, "as it is", false),
                    new FrontierSheet.Step(120, 6, "long boards on the ceiling", false),
                    new FrontierSheet.Step(640, 1.2, "level 5 on the ceiling", true)),
                List.of("Room ceiling: level 5"),
                List.of("turn the boards of the ceiling"))),
        List.of(
            new ReportData.InspectionStep(
                "room/ceiling",
                "18 May at 12:45",
                "in the middle of the room, looking south",
                "on the floor by the glass, aimed at the ceiling 5 m in")),
        List.of());
  }
}
