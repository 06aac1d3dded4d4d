package slantlight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.decide.Inspection;
import slantlight.decide.KeptLight;
import slantlight.decide.ReducedScorer;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;

/** When the sun shows the flaws, and where to hold a lamp. */
@Command(
    name = "inspect",
    description =
        "Tell for each surface worth it when daylight itself shows the joints within a period, from"
            + " where, and where to hold a lamp that rakes them as hard; with a list to check off.")
final class InspectCommand implements Callable<Integer> {
  @Mixin private CommonOptions common;
  @Mixin private ProgressOptions progress;
  @Mixin private OutputOptions output;
  @Mixin private SurfaceOptions which;

  @Parameters(paramLabel = "SCENE", description = "Scene file (JSON).")
  private Path scene;

  @Option(
      names = "--from",
      required = true,
      paramLabel = "DATE",
      description = "First day, such as 2026-11-02.")
  private String from;

  @Option(
      names = "--to",
      paramLabel = "DATE",
      description = "Last day (default: six days after the first).")
  private String to;

  @Override
  public Integer call() throws IOException {
    LocalDate first = date("--from", from);
    LocalDate last = to == null ? first.plusDays(6) : date("--to", to);
    if (last.isBefore(first)) {
      throw CommandFailure.usage("--to " + to + " is before --from " + from);
    }
    if (last.getYear() != first.getYear()) {
      throw CommandFailure.usage("a period stays within one calendar year: ask for each by itself");
    }
    SceneFile file = SceneFile.read(scene, common.err());
    List<Inspection> inspections;
    try (ConsoleProgress bar = progress.open()) {
      inspections = inspections(file.house(), first, last, bar);
    }
    Answer.give(new InspectionAnswer(file, first, last, inspections), output, common);
    return ExitCode.OK;
  }

  private List<Inspection> inspections(
      House house, LocalDate first, LocalDate last, ConsoleProgress bar) {
    ScoreOptions options = which.year(house);
    LightModel light = new KeptLight(Transport.of(house, TransportOptions.DEFAULT, bar));
    HouseScore year = Scorer.score(light, options, bar);
    List<String> worthIt = Inspection.worthIt(year);
    if (worthIt.isEmpty()) {
      return List.of();
    }
    TreeSet<Integer> days = new TreeSet<>();
    for (LocalDate d = first; !d.isAfter(last); d = d.plusDays(1)) {
      days.add(d.getDayOfYear());
    }
    return Inspection.of(
        year,
        ReducedScorer.daylight(light, year, first.getYear(), List.copyOf(days), options, bar));
  }

  private static LocalDate date(String option, String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      if (date.getYear() >= 1950 && date.getYear() <= 2050) {
        return date;
      }
    } catch (DateTimeException e) {
      throw CommandFailure.usage(option + " " + text + ": give a date such as 2026-11-02");
    }
    throw CommandFailure.usage(option + " " + text + ": give a year from 1950 to 2050");
  }
}
