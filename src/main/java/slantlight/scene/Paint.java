package slantlight.scene;

/**
 * A coat of paint.
 *
 * @param lrv light reflectance value as a fraction, 0 to 1
 * @param sheen gloss level
 */
public record Paint(double lrv, Sheen sheen) {
  public Paint {
    if (!(lrv >= 0 && lrv <= 1)) {
      throw new IllegalArgumentException("LRV must be a fraction from 0 to 1, not " + lrv);
    }
  }
}
