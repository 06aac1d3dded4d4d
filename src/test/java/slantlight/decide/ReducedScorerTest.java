package slantlight.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slantlight.board.Layout;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.Paint;
import slantlight.scene.RoomUse;
import slantlight.scene.Shade;
import slantlight.scene.Sheen;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.score.SurfaceScore;
import slantlight.units.Progress;

class ReducedScorerTest {
  private static final String CEILING = "room/ceiling";
  private static final String EAST = "room/east";

  private final House house =
      HandScores.house(RoomUse.LIVING, Attention.EVERYDAY, new Paint(0.6, Sheen.SATIN));
  private final LightModel light =
      new KeptLight(Transport.of(house, TransportOptions.DEFAULT, Progress.NONE));
  private final ScoreOptions options =
      ScoreOptions.standard()
          .withSurfaces(Set.of(CEILING, EAST))
          .withDays(List.of(80))
          .withStep(60)
          .withSpacing(2);
  private final HouseScore base = Scorer.score(light, options, Progress.NONE);
  private final Map<String, Layout> asBuilt =
      Map.of(
          CEILING, base.surface(CEILING).layout(),
          EAST, base.surface(EAST).layout());
  private final ReducedScorer scorer =
      ReducedScorer.of(light, base, List.of(CEILING, EAST), options);

  private List<SurfaceScore> score(Rescorer.Lit lit, House changed, String... ids) {
    return lit.score(changed, Set.of(ids), asBuilt, Set.of());
  }

  @Test
  void whatWasTriedIsNotComputedAgain() {
    List<SurfaceScore> first = score(scorer.light(house), house, CEILING, EAST);
    House flat = new Remedy.LowerSheen(EAST, Sheen.FLAT).apply(house);
    List<SurfaceScore> second = score(scorer.light(house), flat, CEILING, EAST);
    assertThat(first).extracting(SurfaceScore::surfaceId).containsExactly(CEILING, EAST);
    assertThat(second).extracting(SurfaceScore::surfaceId).containsExactly(CEILING, EAST);
    assertThat(second.get(0)).isSameAs(first.get(0));
    assertThat(second.get(1)).isNotEqualTo(first.get(1));
  }

  @Test
  void alsoWhatWasTriedBesideOthersIsWhatItIsAlone() {
    SurfaceScore beside = score(scorer.light(house), house, CEILING, EAST).get(1);
    ReducedScorer fresh = ReducedScorer.of(light, base, List.of(CEILING, EAST), options);
    SurfaceScore alone = score(fresh.light(house), house, EAST).get(0);
    assertThat(alone.joints()).isEqualTo(beside.joints());
    assertThat(alone.levels()).isEqualTo(beside.levels());
    assertThat(alone.spots()).isEqualTo(beside.spots());
  }

  @Test
  void backBlockingAndOtherBoardsAreTriedByThemselves() {
    Rescorer.Lit lit = scorer.light(house);
    SurfaceScore as = score(lit, house, CEILING).get(0);
    assertThat(lit.score(house, Set.of(CEILING), asBuilt, Set.of(CEILING)).get(0)).isNotSameAs(as);
    assertThat(lit.score(house, Set.of(CEILING), Map.of(), Set.of()).get(0)).isNotSameAs(as);
  }

  @Test
  void everyShadeHasItsOwnLight() {
    Opening window = house.openings().get(0);
    double bare = showing(house);
    double film = showing(Edits.opening(house, window.withShade(new Shade(0.3, false))));
    double cloth = showing(Edits.opening(house, window.withShade(new Shade(0.3, true))));
    assertThat(film).isNotEqualTo(bare);
    assertThat(cloth).isNotEqualTo(bare).isNotEqualTo(film);
  }

  /** A house with one window behind film is lit alike everywhere, only darker. */
  @Test
  void filmOnTheOnlyWindowReachesEverySurface() {
    Opening window = house.openings().get(0);
    House filmed = Edits.opening(house, window.withShade(new Shade(0.3, false)));
    assertThat(scorer.light(filmed).reached(base.surfaces())).containsExactly(CEILING, EAST);
    assertThat(scorer.light(house).reached(base.surfaces())).isEmpty();
  }

  private double showing(House lit) {
    return Showing.at(score(scorer.light(lit), lit, CEILING).get(0), 4);
  }
}
