package slantlight.sight;

/**
 * A ridge profile {@code z = h/2 (1 + cos(2 pi x / w))} across a joint, for |x| up to w/2.
 *
 * @param height m
 * @param width full width, m
 */
public record RaisedCosine(double height, double width) {
  public RaisedCosine {
    if (!(height >= 0 && width > 0)) {
      throw new IllegalArgumentException(
          "a ridge needs a height of 0 or more and a positive width, not "
              + height
              + " and "
              + width);
    }
  }

  /** Largest slope of the flanks, pi h / w. */
  public double peakSlope() {
    return Math.PI * height / width;
  }

  /** Height at a distance x across the joint from its middle, m. */
  public double heightAt(double x) {
    return Math.abs(x) >= width / 2 ? 0 : height / 2 * (1 + Math.cos(2 * Math.PI * x / width));
  }

  /** Slope dz/dx at a distance x across the joint from its middle. */
  public double slopeAt(double x) {
    return Math.abs(x) >= width / 2 ? 0 : -peakSlope() * Math.sin(2 * Math.PI * x / width);
  }

  /** Length of the shadow that the top casts on level ground at a grazing angle in radians, m. */
  public double shadowLength(double grazing) {
    return height / Math.tan(grazing);
  }
}
