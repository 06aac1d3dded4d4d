package slantlight.cli;

import java.util.List;
import picocli.CommandLine.Option;
import slantlight.scene.House;
import slantlight.scene.Surface;

/** The surfaces that the user asks about; use it as a picocli mixin. */
final class ChosenSurfaces {
  @Option(
      names = "--surface",
      paramLabel = "ID",
      split = ",",
      description = "Only these surfaces, such as great-room/ceiling; a room's id takes all of it.")
  private List<String> only = List.of();

  /** True when the user names none and so means all. */
  boolean all() {
    return only.isEmpty();
  }

  /** The names given, sorted; "all" for none. */
  String text() {
    return all() ? "all" : String.join(" ", only.stream().sorted().toList());
  }

  /**
   * The boarded surfaces named, in the order of the house; all of them when none is named.
   *
   * @throws CommandFailure if a name fits none
   */
  List<Surface> in(House house) {
    List<Surface> boarded = house.surfaces().stream().filter(Surface::boarded).toList();
    for (String id : only) {
      if (boarded.stream().noneMatch(s -> isNamed(s, id))) {
        throw CommandFailure.usage(
            "--surface "
                + id
                + ": no boarded surface or room of that id; there are "
                + String.join(", ", boarded.stream().map(Surface::id).toList()));
      }
    }
    return boarded.stream()
        .filter(s -> only.isEmpty() || only.stream().anyMatch(id -> isNamed(s, id)))
        .toList();
  }

  private static boolean isNamed(Surface surface, String id) {
    return surface.id().equals(id) || surface.roomId().equals(id);
  }
}
