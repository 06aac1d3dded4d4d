package slantlight.light;

import java.util.List;
import slantlight.sky.SkyState;

/**
 * Everything that shines at one moment.
 *
 * @param sky sun, vault and ground
 * @param lampShares share of full light of each lamp, 0 to 1, in the order of the house's lamps
 */
public record LightState(SkyState sky, List<Double> lampShares) {
  public LightState {
    lampShares = List.copyOf(lampShares);
  }
}
