package slantlight.scene;

import java.nio.file.Path;
import java.util.List;

/** What became of reading a scene file. */
public sealed interface Read {
  /**
   * The scene is sound.
   *
   * @param warnings things that are allowed but probably not meant
   * @param lampFiles photometry files that the scene names, absolute, each once
   */
  record Ok(House house, List<Fault> warnings, List<Path> lampFiles) implements Read {
    public Ok {
      warnings = List.copyOf(warnings);
      lampFiles = List.copyOf(lampFiles);
    }
  }

  /** The scene has faults, in the order of the file; nothing was resolved. */
  record Faulty(List<Fault> faults) implements Read {
    public Faulty {
      faults = List.copyOf(faults);
    }
  }
}
