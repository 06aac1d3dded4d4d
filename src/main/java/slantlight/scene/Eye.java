package slantlight.scene;

import slantlight.geom.Vec3;

/**
 * A place from which a person looks.
 *
 * @param label such as "standing by the north wall"
 * @param seated true for a seated eye
 */
public record Eye(String id, String label, String roomId, Vec3 position, boolean seated) {}
