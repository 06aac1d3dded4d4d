package slantlight.scene;

import java.nio.file.Path;
import java.util.Optional;
import slantlight.scene.file.Binder;
import slantlight.scene.file.Faults;
import slantlight.scene.file.Node;
import slantlight.scene.file.SceneFile;
import slantlight.scene.file.TreeReader;
import slantlight.scene.resolve.Resolver;
import slantlight.units.LengthUnit;

/**
 * Reads a scene file. All faults are found in one pass and told together; a scene with a fault
 * gives no house.
 */
public final class SceneReader {
  private SceneReader() {}

  /**
   * Reads and resolves a scene. Photometry files are looked for in the scene's folder and below.
   *
   * @return the house, or every fault; never an exception for what is in the file
   */
  public static Read read(Path file) {
    Faults faults = new Faults(file.toString());
    Faults warnings = new Faults(file.toString());
    Optional<Node> tree = TreeReader.read(file, faults);
    if (tree.isEmpty()) {
      return new Read.Faulty(faults.sorted());
    }
    Binder binder = new Binder(faults, units(tree.get()));
    Optional<SceneFile> scene = binder.scene(tree.get());
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (scene.isEmpty()) {
      return new Read.Faulty(faults.sorted());
    }
    Resolver resolver = new Resolver(binder, warnings, scene.get(), folder);
    Optional<House> house = resolver.house();
    return house.isPresent()
        ? new Read.Ok(house.get(), warnings.sorted(), resolver.lampFiles())
        : new Read.Faulty(faults.sorted());
  }

  /** The file's unit, needed to read every other number; metres while it is missing or wrong. */
  private static LengthUnit units(Node tree) {
    if (tree instanceof Node.Obj o && o.get("units").orElse(null) instanceof Node.Text t) {
      for (LengthUnit unit : LengthUnit.values()) {
        if (unit.name().equalsIgnoreCase(t.value().strip())) {
          return unit;
        }
      }
    }
    return LengthUnit.M;
  }
}
