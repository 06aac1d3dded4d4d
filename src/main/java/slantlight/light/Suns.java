package slantlight.light;

import java.util.Arrays;
import java.util.Collection;
import java.util.stream.DoubleStream;
import slantlight.geom.Vec3;

/** Places of the sun, in bundles of suns that stand close together. */
public final class Suns {
  private static final int BUNDLE = 32;

  private final double[] directions;
  private final int[] starts;
  private final int hash;

  /**
   * @param directions unit vectors toward the suns, x, y and z of each in turn; those not above the
   *     horizon shine on nothing
   * @param starts first sun of each bundle, and the number of suns
   */
  public Suns(double[] directions, int[] starts) {
    this.directions = directions.clone();
    this.starts = starts.clone();
    this.hash = Arrays.hashCode(directions);
  }

  /** Suns bundled in their order. */
  static Suns of(Collection<Vec3> suns) {
    int[] starts = new int[(suns.size() + BUNDLE - 1) / BUNDLE + 1];
    for (int b = 0; b < starts.length; b++) {
      starts[b] = Math.min(suns.size(), b * BUNDLE);
    }
    return new Suns(
        suns.stream().flatMapToDouble(d -> DoubleStream.of(d.x(), d.y(), d.z())).toArray(), starts);
  }

  int size() {
    return directions.length / 3;
  }

  int bundles() {
    return starts.length - 1;
  }

  /** First sun of a bundle; of the number of bundles, the number of suns. */
  int start(int bundle) {
    return starts[bundle];
  }

  Vec3 at(int sun) {
    return new Vec3(directions[3 * sun], directions[3 * sun + 1], directions[3 * sun + 2]);
  }

  /** Equal when all suns stand alike and are bundled alike. */
  @Override
  public boolean equals(Object o) {
    return o == this
        || (o instanceof Suns s
            && Arrays.equals(directions, s.directions)
            && Arrays.equals(starts, s.starts));
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
