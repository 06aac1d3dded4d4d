package slantlight.cli;

import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.ScoreOptions;

/** Which surfaces, and how many threads; use it as a picocli mixin. */
final class SurfaceOptions {
  @Mixin private ChosenSurfaces chosen;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Worker threads (default: one for each core).")
  private int threads = Runtime.getRuntime().availableProcessors();

  /** The whole year of the chosen surfaces. */
  ScoreOptions year(House house) {
    return ScoreOptions.standard().withSurfaces(ids(house)).withThreads(threads());
  }

  /** The chosen surfaces as named, sorted, for the record of a result. */
  String text() {
    return chosen.text();
  }

  /**
   * Worker threads.
   *
   * @throws CommandFailure if there are none
   */
  int threads() {
    if (threads < 1) {
      throw CommandFailure.usage("--threads " + threads + ": give at least 1");
    }
    return threads;
  }

  private Set<String> ids(House house) {
    return chosen.all()
        ? Set.of()
        : chosen.in(house).stream().map(Surface::id).collect(Collectors.toSet());
  }
}
