package slantlight.light;

/**
 * Where the light of one moment goes, lm.
 *
 * @param entered light that falls on inside surfaces straight from outside and from lamps
 * @param absorbed light kept by the surfaces
 * @param escaped bounced light that leaves through openings
 */
public record EnergyBalance(double entered, double absorbed, double escaped) {
  /** Share of the light entered that is not accounted for. */
  public double imbalance() {
    return entered == 0 ? 0 : Math.abs(entered - absorbed - escaped) / entered;
  }
}
