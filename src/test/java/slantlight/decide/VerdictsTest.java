package slantlight.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slantlight.TestHouses;
import slantlight.geom.Vec2;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.scene.Paint;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.score.SurfaceScore;

class VerdictsTest {
  private static final Paint WHITE = new Paint(0.85, Sheen.FLAT);
  private static final String CEILING = "room/ceiling";
  private static final String EAST = "room/east";

  private final House living = HandScores.house(RoomUse.LIVING, Attention.EVERYDAY, WHITE);

  @Test
  void theLowestLevelUnderTheLimitStands() {
    Verdict v = Verdicts.of(living, HandScores.score(living, CEILING, 4.0, 0.9, 0.2));
    assertThat(v.byShowing()).isEqualTo(4);
    assertThat(v.level()).isEqualTo(4);
    assertThat(v.unsolved()).isFalse();
  }

  @Test
  void showingAboveTheLimitIsCriticalLightAndAsksForLevelFive() {
    Verdict v = Verdicts.of(living, HandScores.score(living, CEILING, 6.0, 3.3, 0.6));
    assertThat(v.byShowing()).isEqualTo(5);
    assertThat(v.byStandard()).isEqualTo(5);
    assertThat(v.standardReason()).contains("critical");
  }

  @Test
  void theStricterStands() {
    House gloss =
        HandScores.house(RoomUse.KITCHEN, Attention.EVERYDAY, new Paint(0.8, Sheen.SEMI_GLOSS));
    Verdict v = Verdicts.of(gloss, HandScores.score(gloss, EAST, 0.4, 0.3, 0.1));
    assertThat(v.byShowing()).isEqualTo(3);
    assertThat(v.byStandard()).isEqualTo(5);
    assertThat(v.level()).isEqualTo(5);
  }

  @Test
  void aSurfaceStillShowingAtLevelFiveIsUnsolved() {
    House show = HandScores.house(RoomUse.LIVING, Attention.SHOWPIECE, WHITE);
    Verdict v = Verdicts.of(show, HandScores.score(show, CEILING, 9, 7, 1.4));
    assertThat(v.level()).isEqualTo(5);
    assertThat(v.unsolved()).isTrue();
    assertThat(v.reason())
        .endsWith("level 5 leaves 1.4, above the room's limit of 1.0 for 400 hours a year.");
  }

  @ParameterizedTest
  @EnumSource(
      value = RoomUse.class,
      names = {"CLOSET", "LAUNDRY"})
  void serviceRoomsEarnLevelFiveByShowingOnly(RoomUse use) {
    House h = HandScores.house(use, Attention.SERVICE, new Paint(0.8, Sheen.SEMI_GLOSS));
    assertThat(Verdicts.of(h, HandScores.score(h, EAST, 5.9, 5, 3)).level()).isLessThan(5);
    assertThat(Verdicts.of(h, HandScores.score(h, EAST, 12, 9, 3)).level()).isEqualTo(5);
  }

  @ParameterizedTest
  @EnumSource(
      value = RoomUse.class,
      names = {"GARAGE", "STORAGE", "ATTIC", "PLENUM"})
  void unfinishedRoomsEarnMoreOnlyWhereTheSceneLooksHarder(RoomUse use) {
    Paint paint = new Paint(0.8, Sheen.SEMI_GLOSS);
    House service = HandScores.house(use, Attention.SERVICE, paint);
    Verdict v = Verdicts.of(service, HandScores.score(service, EAST, 40, 30, 10));
    assertThat(v.level()).isLessThan(3);
    assertThat(v.unsolved()).isFalse();
    House everyday = HandScores.house(use, Attention.EVERYDAY, paint);
    assertThat(Verdicts.of(everyday, HandScores.score(everyday, EAST, 12, 9, 2)).level())
        .isEqualTo(5);
  }

  @Test
  void aTiledWallIsASubstrate() {
    House bath = HandScores.house(RoomUse.BATH, Attention.EVERYDAY, WHITE);
    Surface wall = bath.surface(EAST);
    List<List<Vec2>> all = List.of(wall.face().outer());
    House tiled = Edits.surface(bath, HandScores.surface(wall, WHITE, OptionalInt.empty(), all));
    Verdict v = Verdicts.of(tiled, HandScores.unseen(EAST));
    assertThat(v.level()).isEqualTo(2);
    assertThat(v.standardReason()).contains("tile");
  }

  @Test
  void aLevelFixedByTheUserStandsAndIsQuestioned() {
    Surface wall = living.surface(EAST);
    House fixed =
        Edits.surface(living, HandScores.surface(wall, WHITE, OptionalInt.of(4), List.of()));
    SurfaceScore score = HandScores.score(fixed, EAST, 6, 4, 1);
    Verdict v = Verdicts.of(fixed, score);
    assertThat(v.level()).isEqualTo(4);
    assertThat(v.notes()).anyMatch(n -> n.contains("level 5 is called for"));
  }

  @Test
  void theReasonSaysWhatWhenFromWhereAndThroughWhat() {
    Verdict v = Verdicts.of(living, HandScores.score(living, CEILING, 6, 3.3, 0.6));
    assertThat(v.reason())
        .isEqualTo(
            "Butt joint B1 shows plainly, 3.3 times the noticeable at level 4 on 21 December at"
                + " 15:10, seen from standing in the middle: ground light through the south window"
                + " grazes it at 8 degrees; level 5 leaves 0.6.");
  }

  @Test
  void boardsAcrossTheLightAreTold() {
    // Framing of the test ceiling runs north to south, so boards across it run east to west,
    // square to the light of the south window.
    Verdict v = Verdicts.of(living, HandScores.score(living, CEILING, 6, 3.3, 0.6));
    assertThat(TestHouses.offer().sizes()).isNotEmpty();
    assertThat(v.notes()).anyMatch(n -> n.contains("across the light from the south window"));
  }

  @Test
  void anUnseenSurfaceAsksForNothingByShowing() {
    Verdict v = Verdicts.of(living, HandScores.unseen(EAST));
    assertThat(v.byShowing()).isZero();
    assertThat(v.level()).isEqualTo(4);
  }
}
