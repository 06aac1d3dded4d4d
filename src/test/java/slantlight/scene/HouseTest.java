package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.units.LengthUnit;

class HouseTest {
  private static final House FEET = TestHouses.boxRoom(5, 8, 2.7, 1, 4, 0, 2.4, 0.8);

  @Test
  void boardsOfWholeInchesAreBoughtInFeet() {
    assertThat(FEET.units()).isEqualTo(LengthUnit.FT);
  }

  @Test
  void boardsOfOtherWidthsAreBoughtInMetres() {
    assertThat(TestHouses.metric(FEET).units()).isEqualTo(LengthUnit.M);
  }

  @Test
  void oneMetricBoardIsEnough() {
    House metric = TestHouses.metric(FEET);
    List<Surface> mixed =
        FEET.surfaces().stream()
            .map(s -> s.kind() == SurfaceKind.CEILING ? metric.surface(s.id()) : s)
            .toList();
    assertThat(FEET.withSurfaces(mixed).units()).isEqualTo(LengthUnit.M);
  }

  @Test
  void withoutBoardsItIsFeet() {
    assertThat(FEET.withSurfaces(List.of(FEET.surface("room/floor"))).units())
        .isEqualTo(LengthUnit.FT);
  }
}
