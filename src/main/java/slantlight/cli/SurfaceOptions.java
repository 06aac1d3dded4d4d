package slantlight.cli;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Option;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.ScoreOptions;

/** Which surfaces, and how many threads; use it as a picocli mixin. */
final class SurfaceOptions {
  @Option(
      names = "--surface",
      paramLabel = "ID",
      split = ",",
      description = "Only these surfaces, such as great-room/ceiling; a room's id takes all of it.")
  private List<String> only = List.of();

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Worker threads (default: one for each core).")
  private int threads = Runtime.getRuntime().availableProcessors();

  /** The whole year of the chosen surfaces. */
  ScoreOptions year(House house) {
    if (threads < 1) {
      throw CommandFailure.usage("--threads " + threads + ": give at least 1");
    }
    return ScoreOptions.standard().withSurfaces(ids(house)).withThreads(threads);
  }

  private Set<String> ids(House house) {
    List<Surface> boarded = house.surfaces().stream().filter(Surface::boarded).toList();
    Set<String> ids = new LinkedHashSet<>();
    for (String wanted : only) {
      List<String> found =
          boarded.stream()
              .filter(s -> s.id().equals(wanted) || s.roomId().equals(wanted))
              .map(Surface::id)
              .toList();
      if (found.isEmpty()) {
        throw CommandFailure.usage(
            "--surface "
                + wanted
                + ": no boarded surface or room of that id; there are "
                + String.join(", ", boarded.stream().map(Surface::id).toList()));
      }
      ids.addAll(found);
    }
    return ids;
  }
}
