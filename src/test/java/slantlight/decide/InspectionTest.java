package slantlight.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec2;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.scene.Paint;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;
import slantlight.score.Calendar;
import slantlight.score.HouseScore;
import slantlight.units.LengthUnit;
import slantlight.units.Measures;

class InspectionTest {
  private final House house =
      HandScores.house(RoomUse.LIVING, Attention.EVERYDAY, new Paint(0.85, Sheen.FLAT));

  @Test
  void windowsAreTheStretchesThatReachTheThreshold() {
    float[] first = new float[24];
    first[8] = 1.0f;
    first[9] = 2.0f;
    first[10] = 0.99f;
    first[15] = 3.0f;
    float[] second = new float[24];
    second[23] = 1.5f;
    Calendar calendar = new Calendar(List.of(355, 356), 60, new float[][] {first, second});
    assertThat(Inspection.windows(calendar, 2026))
        .containsExactly(window(21, 15, 16, 3.0), window(21, 8, 10, 2.0), window(22, 23, 0, 1.5));
  }

  @Test
  void quietSurfacesAreNotWorthIt() {
    HouseScore year =
        HandScores.of(
            house,
            HandScores.score(house, "room/ceiling", 6, 3.3, 1),
            HandScores.score(house, "room/east", 0.9, 0.8, 0.1),
            HandScores.unseen("room/west"));
    assertThat(Inspection.worthIt(year)).containsExactly("room/ceiling");
    List<Inspection> all = Inspection.of(year, HandScores.of(house));
    assertThat(all).hasSize(1);
    assertThat(all.get(0).windows()).isEmpty();
    assertThat(all.get(0).lamp()).isPresent();
    assertThat(all.get(0).items())
        .containsExactly(
            new Inspection.Item(
                "room/ceiling#B1",
                "butt joint B1",
                new Inspection.Stretch(new Vec2(1, 1), new Vec2(3, 1), false),
                3.3));
    Inspection.Stretch where = all.get(0).items().get(0).where();
    assertThat(where.words(Measures.METRIC)).isEqualTo("1.00 to 3.00 m from the left, 1.00 m deep");
    // 1 m = 39.37 in, 3 m = 118.11 in.
    assertThat(where.words(Measures.typed(LengthUnit.IN)))
        .isEqualTo("3' 3 1/4\" to 9' 10\" from the left, 3' 3 1/4\" deep");
  }

  private static Inspection.Window window(int day, int from, int to, double showing) {
    return new Inspection.Window(
        LocalDate.of(2026, 12, day), LocalTime.of(from, 0), LocalTime.of(to, 0), showing);
  }
}
