package slantlight.scene;

import java.util.List;

/**
 * The surroundings.
 *
 * @param groundZ height of the general ground, m
 * @param zones regions that differ from the general ground, topmost first
 * @param blocks opaque things
 */
public record Outside(double groundZ, List<GroundZone> zones, List<Block> blocks) {
  public Outside {
    zones = List.copyOf(zones);
    blocks = List.copyOf(blocks);
  }
}
