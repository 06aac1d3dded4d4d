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

  /** A scorer that has tried much answers as one that has tried nothing. */
  @Test
  void whatIsRememberedIsWhatIsComputed() {
    Rescorer.Lit lit = scorer.light(house);
    score(lit, house, CEILING, EAST);
    House flat = new Remedy.LowerSheen(EAST, Sheen.FLAT).apply(house);
    score(lit, flat, EAST);
    lit.score(house, Set.of(EAST), Map.of(), Set.of(EAST));
    alike(lit, house, Set.of());
    alike(lit, flat, Set.of());
    alike(lit, house, Set.of(CEILING));
  }

  private void alike(Rescorer.Lit lit, House changed, Set<String> backBlocked) {
    Rescorer.Lit fresh =
        ReducedScorer.of(light, base, List.of(CEILING, EAST), options).light(house);
    List<SurfaceScore> a = lit.score(changed, Set.of(CEILING, EAST), asBuilt, backBlocked);
    List<SurfaceScore> b = fresh.score(changed, Set.of(CEILING, EAST), asBuilt, backBlocked);
    assertThat(a).extracting(SurfaceScore::surfaceId).containsExactly(CEILING, EAST);
    for (int i = 0; i < 2; i++) {
      assertThat(a.get(i).joints()).isEqualTo(b.get(i).joints());
      assertThat(a.get(i).levels()).isEqualTo(b.get(i).levels());
      assertThat(a.get(i).spots()).isEqualTo(b.get(i).spots());
    }
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
