package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slantlight.light.LightModel;
import slantlight.light.RowHouses;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.units.Progress;

/** A building too large for the flecks of all its rooms at a time. */
class StagesTest {
  private static final ScoreOptions OPTIONS =
      ScoreOptions.standard()
          .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 120))
          .withStep(120);

  /** Rooms of 105 m2 of surface each, so that the fifteen of them take two stages. */
  @Test
  void roomsOfALaterStageShowWhatTheyShowByThemselves() {
    House house = RowHouses.boarded(RowHouses.grid(5, 3));
    LightModel light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    HouseScore all = Scorer.score(light, OPTIONS, Progress.NONE);
    for (String room : Set.of(house.rooms().get(0).id(), house.rooms().get(14).id())) {
      Set<String> ids =
          house.surfaces().stream()
              .filter(s -> s.boarded() && s.roomId().equals(room))
              .map(Surface::id)
              .collect(Collectors.toSet());
      HouseScore one = Scorer.score(light, OPTIONS.withSurfaces(ids), Progress.NONE);
      assertThat(one.surfaces()).hasSize(5);
      for (SurfaceScore s : one.surfaces()) {
        SurfaceScore same = all.surface(s.surfaceId());
        assertThat(same.joints().equals(s.joints())).as(s.surfaceId()).isTrue();
        assertThat(same.levels()).isEqualTo(s.levels());
        assertThat(same.spots()).isEqualTo(s.spots());
      }
    }
  }
}
