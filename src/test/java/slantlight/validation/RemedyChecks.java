package slantlight.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import slantlight.TestHouses;
import slantlight.decide.Excess;
import slantlight.decide.LampPlace;
import slantlight.decide.Remedy;
import slantlight.decide.Showing;
import slantlight.scene.Attention;
import slantlight.scene.BoardRun;
import slantlight.scene.House;
import slantlight.score.JointScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.score.SurfaceScore;
import slantlight.units.Progress;

/** Facts about remedies, held to the whole chain from light to eye. */
public final class RemedyChecks {
  private static final String SUBJECT = "Remedies";
  private static final String PRACTICE = "common practice, no source";
  private static final String CEILING = "room/ceiling";

  private RemedyChecks() {}

  public static List<Check> all() {
    List<Check> out = new ArrayList<>();
    for (double[] size : new double[][] {{4, 4.5, 2.7}, {6, 4.8, 2.7}, {5, 3.6, 3}}) {
      out.add(turned(size));
    }
    out.add(handLamp());
    return out;
  }

  /**
   * Rooms no deeper than the longest board (4.88 m), so that boards along the light need no butt
   * joint; the window leaves half a metre of wall at either side.
   */
  private static Check turned(double[] size) {
    House house =
        TestHouses.boxRoom(size[0], size[1], size[2], 0.5, size[0] - 0.5, 0, size[2] - 0.3, 0.8);
    // The framing of the test ceiling runs north to south, toward the window.
    SurfaceScore across = score(house, BoardRun.ACROSS_FRAMING);
    SurfaceScore with = score(house, BoardRun.ALONG_FRAMING);
    double limit = Attention.SHOWPIECE.limit();
    return Check.fact(
        SUBJECT,
        String.format(
            Locale.ROOT,
            "turning the boards with the light never raises the showing of a plain ceiling lit from"
                + " one side, room %.1f m x %.1f m",
            size[0],
            size[1]),
        PRACTICE,
        "holds in peak and in excess",
        Showing.at(across, 4) > 0
            && Showing.at(with, 4) <= Showing.at(across, 4)
            && Excess.of(with, 4, limit) <= Excess.of(across, 4, limit));
  }

  private static Check handLamp() {
    House house = TestHouses.boxRoom(5, 8, 2.7, 1, 4, 0, 2.4, 0.8);
    SurfaceScore score = score(house, BoardRun.ACROSS_FRAMING);
    boolean all = !score.joints().isEmpty();
    for (JointScore j : score.joints()) {
      Optional<LampPlace> lamp = LampPlace.of(house, house.surface(CEILING), j);
      all &= lamp.isEmpty() || lamp.get().slant() >= lamp.get().worstSlant();
    }
    return Check.fact(
        SUBJECT,
        "a hand lamp held as told rakes each joint of a ceiling at least as hard as its worst"
            + " moment",
        "elementary geometry",
        "holds for every joint",
        all);
  }

  private static SurfaceScore score(House house, BoardRun run) {
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(List.of(21, 111, 172, 264, 355))
            .withStep(60)
            .withSurfaces(Set.of(CEILING));
    return Scorer.score(new Remedy.TurnBoards(CEILING, run).apply(house), options, Progress.NONE)
        .surface(CEILING);
  }
}
