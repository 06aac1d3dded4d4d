package slantlight.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.board.Quantities;
import slantlight.scene.BoardSize;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.HouseScore;
import slantlight.sheet.FrontierSheet;

/** A whole report of the box room, with invented prices. */
final class TestReports {
  private TestReports() {}

  static ReportData data() {
    return data(TestScores.house());
  }

  /** The same with every label replaced. */
  static ReportData withNames(String name) {
    House h = TestScores.house();
    List<Surface> surfaces =
        h.surfaces().stream()
            .map(
                s ->
                    new Surface(
                        s.id(),
                        name,
                        s.roomId(),
                        s.kind(),
                        s.face(),
                        s.paint(),
                        s.boarded(),
                        s.framing(),
                        s.boards(),
                        s.level(),
                        s.covered(),
                        s.joints()))
            .toList();
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
    HouseScore score = TestScores.score(house);
    double ft = 0.3048;
    Quantities q =
        new Quantities(
            Map.of(new BoardSize(4 * ft, 12 * ft), 9, new BoardSize(4 * ft, 8 * ft), 2),
            41.6,
            46.1,
            48,
            21.5,
            0,
            520);
    return new ReportData(
        score,
        TestScores.verdicts(),
        TestScores.made(),
        List.of(
            new ReportData.SurfaceQuantities("room/ceiling", q),
            new ReportData.SurfaceQuantities("room/west", q)),
        Optional.of(
            new ReportData.Money(
                "USD",
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
