package slantlight.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * The scene files that a command was given, each once, in an order that depends on their names
 * alone: neither on the order of the arguments nor on the system or language.
 *
 * @param scenes sorted by name
 * @param faults what is wrong with the arguments themselves, a line each
 */
record SceneList(List<Listed> scenes, List<String> faults) {
  private static final String ENDING = ".json";

  /**
   * One scene file.
   *
   * @param path as the user may recognise it
   * @param name path below the deepest folder that holds all scenes, with slashes, without .json
   */
  record Listed(Path path, String name) {
    /** Folder of the file, absolute. */
    Path folder() {
      return path.toAbsolutePath().normalize().getParent();
    }
  }

  /**
   * Files as they are named, and the scene files that lie in the folders named.
   *
   * @throws CommandFailure if there is no deepest folder that holds them all
   */
  static SceneList of(List<Path> named) throws IOException {
    List<String> faults = new ArrayList<>();
    List<Path> files = new ArrayList<>();
    for (Path path : named) {
      if (!Files.isDirectory(path)) {
        files.add(path);
        continue;
      }
      List<Path> inside = in(path);
      if (inside.isEmpty()) {
        faults.add(path + ": the folder holds no scene files (*.json); folders in it are not read");
      }
      files.addAll(inside);
    }
    return new SceneList(listed(files), faults);
  }

  private static List<Path> in(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries
          .filter(p -> p.getFileName().toString().endsWith(ENDING))
          .filter(p -> !p.getFileName().toString().startsWith("."))
          .filter(Files::isRegularFile)
          .toList();
    }
  }

  private static List<Listed> listed(List<Path> files) {
    if (files.isEmpty()) {
      return List.of();
    }
    Path common = parent(files.get(0));
    for (Path file : files) {
      while (common != null && !parent(file).startsWith(common)) {
        common = common.getParent();
      }
    }
    if (common == null) {
      throw CommandFailure.usage("scenes on different drives cannot share a run: use one for each");
    }
    Path root = common;
    TreeSet<Listed> sorted =
        new TreeSet<>(
            Comparator.comparing(Listed::name)
                .thenComparing(l -> l.path().toAbsolutePath().normalize()));
    files.forEach(f -> sorted.add(new Listed(f, name(root, f))));
    return List.copyOf(sorted);
  }

  private static Path parent(Path file) {
    Path parent = file.toAbsolutePath().normalize().getParent();
    if (parent == null) {
      throw CommandFailure.usage(file + ": name a scene file or a folder of them");
    }
    return parent;
  }

  private static String name(Path root, Path file) {
    Path below = root.relativize(file.toAbsolutePath().normalize());
    String name =
        StreamSupport.stream(below.spliterator(), false)
            .map(Path::toString)
            .collect(Collectors.joining("/"));
    return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
  }
}
