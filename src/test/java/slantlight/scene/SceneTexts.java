package slantlight.scene;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Small scene texts to be spoilt by tests. */
final class SceneTexts {
  /** A sound scene of two rooms; every line is named by what a test may replace. */
  static final String SOUND =
      """
      {
        "slantlight": 1,
        "name": "Test house",
        "units": "ft",
        "site": { "latitude": 45, "longitude": -93, "zone": "America/Chicago" },
        "rooms": [
          { "id": "great-room", "use": "living", "height": 9,
            "outline": [[0, 0], [20, 0], [20, 14], [0, 14]],
            "openings": [
              { "id": "W1", "kind": "window", "wall": "south", "offset": 2, "width": 6,
                "sill": 1, "head": 8 },
              { "id": "P1", "kind": "passage", "wall": "north", "to": "hall", "width": 4, "height": 7 }
            ] },
          { "id": "hall", "use": "hall", "height": 8,
            "outline": [[0, "14' 4 1/2\\""], [20, "14' 4 1/2\\""], [20, 19], [0, 19]] }
        ],
        "fixtures": [
          { "id": "F1", "room": "great-room", "position": [10, 7, 8], "lumens": 800 }
        ]
      }
      """;

  private SceneTexts() {}

  /** What becomes of reading a text as the file scene.json of a folder. */
  static Read read(Path folder, String text) {
    try {
      Path file = folder.resolve("scene.json");
      Files.writeString(file, text);
      return SceneReader.read(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The faults of a text, each without its folder. */
  static List<String> faults(Path folder, String text) {
    return read(folder, text) instanceof Read.Faulty f
        ? f.faults().stream().map(x -> x.text().replace(folder + "/", "")).toList()
        : List.of();
  }
}
