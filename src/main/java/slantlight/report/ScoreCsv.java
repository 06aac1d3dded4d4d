package slantlight.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.decide.Showing;
import slantlight.decide.Verdict;
import slantlight.scene.Room;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.LevelScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;

/** The score of a house as tables of comma-separated values, one row a surface or one a joint. */
public final class ScoreCsv {
  private ScoreCsv() {}

  /**
   * One row a surface: the level to specify, why, how it does at levels 3 to 5, and its worst
   * moment.
   *
   * @param verdicts of the scored surfaces, in any order; a surface without one has empty cells
   */
  public static String surfaces(HouseScore score, List<Verdict> verdicts, Provenance made) {
    Csv csv =
        new Csv(
            "surface",
            "label",
            "room",
            "room label",
            "kind",
            "area m2",
            "limit",
            "level",
            "level by showing",
            "level by standard",
            "unsolved",
            "peak at 3",
            "peak at 4",
            "peak at 5",
            "band at 4",
            "clear hours trace at 4",
            "clear hours plain at 4",
            "clear hours loud at 4",
            "expected hours plain at 4",
            "joints",
            "worst joint",
            "worst at",
            "eye",
            "source",
            "grazing deg",
            "reason",
            "standard reason",
            "scene",
            "version");
    for (SurfaceScore s : score.surfaces()) {
      Surface surface = score.house().surface(s.surfaceId());
      Room room = score.house().room(surface.roomId());
      csv.text(surface.id()).text(surface.label()).text(room.id()).text(room.label());
      csv.text(word(surface.kind())).number(surface.face().area());
      csv.number(room.attention().limit());
      Optional<Verdict> verdict = verdict(verdicts, s.surfaceId());
      verdict.ifPresentOrElse(
          v -> {
            csv.number(v.level()).number(v.byShowing()).number(v.byStandard());
            csv.text(v.unsolved() ? "yes" : "no");
          },
          () -> csv.empty().empty().empty().empty());
      LevelScore four = s.atLevel(4);
      csv.number(Showing.at(s, 3)).number(Showing.at(s, 4)).number(Showing.at(s, 5));
      csv.text(word(Band.of(Showing.at(s, 4))));
      csv.number(hours(four.clearHours(), Band.TRACE)).number(hours(four.clearHours(), Band.PLAIN));
      csv.number(hours(four.clearHours(), Band.LOUD));
      csv.number(hours(four.expectedHours(), Band.PLAIN)).number(s.joints().size());
      csv.text(Showing.worstJoint(s).map(j -> j.joint().id()).orElse(""));
      peak(csv, Showing.worst(s));
      csv.text(verdict.map(Verdict::reason).orElse(""));
      csv.text(verdict.map(Verdict::standardReason).orElse(""));
      csv.text(made.sceneHash()).text(made.version()).end();
    }
    return csv.toString();
  }

  /** One row a joint: where it lies, how it does at levels 3 to 5, and its worst moment. */
  public static String joints(HouseScore score, Provenance made) {
    Csv csv =
        new Csv(
            "joint",
            "surface",
            "kind",
            "from u m",
            "from v m",
            "to u m",
            "to v m",
            "length m",
            "visible length m",
            "peak at 3",
            "peak at 4",
            "peak at 5",
            "band at 4",
            "clear hours trace at 4",
            "clear hours plain at 4",
            "clear hours loud at 4",
            "expected hours plain at 4",
            "worst at",
            "eye",
            "source",
            "grazing deg",
            "scene",
            "version");
    for (SurfaceScore s : score.surfaces()) {
      for (JointScore j : s.joints()) {
        csv.text(j.joint().id()).text(s.surfaceId()).text(word(j.joint().kind()));
        csv.number(j.joint().from().x()).number(j.joint().from().y());
        csv.number(j.joint().to().x()).number(j.joint().to().y());
        csv.number(j.joint().length()).number(j.visibleLength());
        LevelScore four = j.atLevel(4);
        csv.number(j.atLevel(3).peakShowing()).number(four.peakShowing());
        csv.number(j.atLevel(5).peakShowing()).text(word(Band.of(four.peakShowing())));
        csv.number(hours(four.clearHours(), Band.TRACE));
        csv.number(hours(four.clearHours(), Band.PLAIN));
        csv.number(hours(four.clearHours(), Band.LOUD));
        csv.number(hours(four.expectedHours(), Band.PLAIN));
        peak(csv, j.peak());
        csv.text(made.sceneHash()).text(made.version()).end();
      }
    }
    return csv.toString();
  }

  private static void peak(Csv csv, Optional<Peak> peak) {
    peak.ifPresentOrElse(
        p ->
            csv.text(p.at().toOffsetDateTime().toString())
                .text(p.eyeId())
                .text(p.source().label())
                .number(Math.toDegrees(p.grazing())),
        () -> csv.empty().empty().empty().empty());
  }

  private static Optional<Verdict> verdict(List<Verdict> verdicts, String surfaceId) {
    return verdicts.stream().filter(v -> v.surfaceId().equals(surfaceId)).findFirst();
  }

  private static double hours(List<Double> byBand, Band band) {
    return byBand.get(List.of(Band.values()).indexOf(band));
  }

  private static String word(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
