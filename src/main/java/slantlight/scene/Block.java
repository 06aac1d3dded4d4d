package slantlight.scene;

import java.util.List;
import slantlight.geom.Face;

/**
 * Something opaque outside: overhang, deck, neighbour, tree line.
 *
 * @param faces its sides; light from either side of a face is stopped
 * @param reflectance diffuse reflectance, 0 to 1
 */
public record Block(String id, String label, List<Face> faces, double reflectance) {
  public Block {
    faces = List.copyOf(faces);
  }
}
