package slantlight.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slantlight.board.Layout;
import slantlight.geom.Vec3;
import slantlight.scene.Attention;
import slantlight.scene.BoardRun;
import slantlight.scene.House;
import slantlight.scene.Paint;
import slantlight.scene.Rates;
import slantlight.scene.RoomUse;
import slantlight.scene.Shade;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;
import slantlight.units.LengthUnit;
import slantlight.units.Measures;
import slantlight.units.Progress;

/** The search for remedies under a made-up physics whose answers are known beforehand. */
class RemedyFinderTest {
  private static final String CEILING = "room/ceiling";
  private static final String EAST = "room/east";

  private final House house =
      HandScores.house(RoomUse.LIVING, Attention.EVERYDAY, new Paint(0.40, Sheen.SATIN));

  /**
   * Showing at level 4 is 8, times 0.5 for turned boards, 0.8 for back-blocking, 0.9 for flat
   * paint, 1 - LRV + 0.4 for the colour, and the square root of the shade's transmittance.
   */
  private static final class Invented implements Rescorer {
    @Override
    public Lit light(House lit) {
      double shade = lit.openings().get(0).shade().map(s -> s.transmittance()).orElse(1.0);
      return (h, surfaces, layouts, backBlocked) -> score(h, surfaces, backBlocked, shade);
    }

    private static List<SurfaceScore> score(
        House h, Set<String> surfaces, Set<String> backBlocked, double shade) {
      List<SurfaceScore> out = new ArrayList<>();
      for (String id : surfaces.stream().sorted().toList()) {
        Surface s = h.surface(id);
        double showing = 8 * Math.sqrt(shade);
        showing *= s.boards().orElseThrow().run() == BoardRun.ALONG_FRAMING ? 0.5 : 1;
        showing *= backBlocked.contains(id) ? 0.8 : 1;
        showing *= s.paint().sheen() == Sheen.FLAT ? 0.9 : 1;
        showing *= 1 - s.paint().lrv() + 0.4;
        out.add(HandScores.score(h, id, showing * 1.5, showing, showing / 4));
      }
      return out;
    }
  }

  private RemedyStudy study(House h) {
    HouseScore base =
        HandScores.of(
            h,
            new Invented()
                .light(h)
                .score(h, Set.of(CEILING, EAST), Map.<String, Layout>of(), Set.of())
                .toArray(SurfaceScore[]::new));
    return RemedyFinder.study(
        base, RemedyFinder.aboveLimit(base), new Invented(), new Pricing(h), 2, Progress.NONE);
  }

  @Test
  void everySingleRemedyIsScoredByTheSamePhysics() {
    RemedyStudy study = study(house);
    assertThat(after(study, "turn the boards along the framing")).isEqualTo(4);
    assertThat(after(study, "back-block the butt joints")).isEqualTo(8 * 0.8);
    assertThat(after(study, "paint it flat")).isEqualTo(8 * 0.9);
    assertThat(after(study, "finish to level 5")).isEqualTo(2);
    assertThat(after(study, "turn the boards along the framing + finish to level 5")).isEqualTo(1);
  }

  @Test
  void remediesThatHelpAreCombined() {
    RemedyStudy study = study(house);
    Optional<RemedyLine> line =
        study.lines(CEILING).stream()
            .filter(
                l ->
                    l.level() == 4
                        && l.changes().stream().anyMatch(r -> r instanceof Remedy.TurnBoards)
                        && l.changes().stream().anyMatch(r -> r instanceof Remedy.BackBlock)
                        && l.changes().size() == 2)
            .findFirst();
    assertThat(line).isPresent();
    assertThat(line.get().after()).isEqualTo(8 * 0.5 * 0.8);
    assertThat(line.get().agree()).containsExactly(Agreement.BUILDER);
  }

  @Test
  void theColourIsNoLighterThanNeeded() {
    // White (LRV 85) leaves 8 * 0.55 = 4.4: not enough, so white itself is what is offered.
    RemedyStudy study = study(house);
    assertThat(study.lines(CEILING).stream().map(RemedyLine::words))
        .contains("paint it lighter, LRV 85 or more");
    // With the boards turned already, 4 * (1.4 - LRV) <= 2.5 needs an LRV of 0.775.
    Surface ceiling = house.surface(CEILING);
    House turned = new Remedy.TurnBoards(CEILING, BoardRun.ALONG_FRAMING).apply(house);
    assertThat(turned.surface(CEILING).face()).isEqualTo(ceiling.face());
    RemedyLine line =
        study(turned).lines(CEILING).stream()
            .filter(l -> l.changes().size() == 1)
            .filter(l -> l.changes().get(0) instanceof Remedy.LighterColour)
            .findFirst()
            .orElseThrow();
    double lrv = ((Remedy.LighterColour) line.changes().get(0)).lrv();
    assertThat(lrv).isBetween(0.775, 0.80);
    assertThat(line.solves()).isTrue();
  }

  @Test
  void aShadeIsAChoiceForTheWholeHouse() {
    RemedyStudy study = study(house);
    // As it is, with the cloth, with the film.
    assertThat(study.menus()).hasSize(3);
    Menu shaded = study.menus().get(1);
    assertThat(shaded.changes().get(0)).isInstanceOf(Remedy.ShadeOpening.class);
    for (List<Option> options : shaded.surfaces()) {
      assertThat(options.get(0).peak()).isEqualTo(8 * Math.sqrt(0.2));
    }
  }

  // 8 sqrt(tau) <= 2.5 needs tau <= 0.098: the darkest film is not enough and still helps.
  @Test
  void theDarkestFilmIsOfferedWhereNoneIsEnough() {
    Menu filmed = study(house).menus().get(2);
    Remedy.ShadeOpening film = (Remedy.ShadeOpening) filmed.changes().get(0);
    assertThat(film.shade()).isEqualTo(new Shade(0.2, false));
    assertThat(film.agree()).containsExactly(Agreement.DESIGNER, Agreement.CLIENT);
    assertThat(film.words()).startsWith("film (20 % through) on the ");
  }

  /** 0.61 m are 24.02 in. */
  @Test
  void howFarALampIsMovedIsToldInTheReadersMeasures() {
    Remedy move = new Remedy.MoveLamp("room/sconce", "sconce", new Vec3(0, 0.61, 0));
    assertThat(move.words()).isEqualTo("mount the sconce 0.61 m farther off");
    assertThat(move.words(Measures.typed(LengthUnit.FT)))
        .isEqualTo("mount the sconce 2' 0\" farther off");
  }

  @Test
  void theLightestFilmThatIsEnoughIsOffered() {
    House quiet = HandScores.house(RoomUse.LIVING, Attention.EVERYDAY, new Paint(0.95, Sheen.FLAT));
    // 8 * 0.9 * 0.45 sqrt(tau) = 3.24 sqrt(tau) <= 2.5 from tau = 0.595 down.
    Menu filmed = study(quiet).menus().get(2);
    Remedy.ShadeOpening film = (Remedy.ShadeOpening) filmed.changes().get(0);
    assertThat(film.shade().transmittance()).isEqualTo(0.5);
  }

  @Test
  void freeLinesComeFirst() {
    List<RemedyLine> lines = study(house).lines(CEILING);
    assertThat(lines.get(0).free()).isTrue();
    assertThat(lines)
        .isSortedAccordingTo(Comparator.comparingLong(l -> Math.max(0, l.price().orElseThrow())));
  }

  @Test
  void ratesOverrideAreasAndAChangeWithoutARateIsNotPlannedWith() {
    Rates rates =
        new Rates(
            "coins",
            Map.of(3, 10.0, 4, 15.0, 5, 25.0),
            Optional.empty(),
            Optional.empty(),
            1.5,
            3,
            Optional.empty(),
            Optional.empty());
    House priced =
        new House(
            house.name(),
            house.note(),
            house.site(),
            house.rooms(),
            house.surfaces(),
            house.openings(),
            house.lamps(),
            house.outside(),
            house.eyes(),
            Optional.of(rates),
            house.prescribed(),
            house.scale());
    RemedyStudy study = study(priced);
    RemedyLine five = line(study, "finish to level 5");
    // 5 m x 8 m of ceiling, 10 more per m2, times 1.5 for high work.
    assertThat(five.price()).hasValue(600);
    assertThat(line(study, "back-block the butt joints").price()).isEmpty();
    assertThat(study.menus()).hasSize(1);
    Plan poor = BudgetPlan.of(study.menus()).within(0).orElseThrow();
    assertThat(poor.options()).allMatch(o -> o.level() == 4);
    assertThat(poor.allChanges()).anyMatch(r -> r instanceof Remedy.TurnBoards);
  }

  private static RemedyLine line(RemedyStudy study, String words) {
    return study.lines(CEILING).stream()
        .filter(l -> l.words().equals(words))
        .findFirst()
        .orElseThrow();
  }

  private static double after(RemedyStudy study, String words) {
    return line(study, words).after();
  }
}
