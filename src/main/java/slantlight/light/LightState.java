package slantlight.light;

import java.util.List;
import slantlight.sky.SkyState;

/**
 * Everything that shines at one moment.
 *
 * @param sky sun, vault and ground
 * @param lampShares share of full light of each lamp, 0 to 1, in the order of the house's lamps
 * @param sheet luminance of the sheet in a {@link ShutOpening}, cd/m2; counts for nothing elsewhere
 */
public record LightState(SkyState sky, List<Double> lampShares, double sheet) {
  public LightState {
    lampShares = List.copyOf(lampShares);
  }

  /** Light of a house without a sheet that glows. */
  public LightState(SkyState sky, List<Double> lampShares) {
    this(sky, lampShares, 0);
  }

  /** The same light with a sheet of a luminance, cd/m2. */
  LightState withSheet(double luminance) {
    return new LightState(sky, lampShares, luminance);
  }
}
