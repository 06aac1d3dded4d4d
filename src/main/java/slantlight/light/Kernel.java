package slantlight.light;

/**
 * The linear functionals of the light field that are wanted at one sample: each weighs the light
 * arriving from a direction, and the sum over all light is one row of the basis.
 */
public interface Kernel {
  /** How many rows this sample has. */
  int rows();

  /**
   * Weights of light from a local direction (u, v, n components; wn > 0) of unit normal
   * illuminance.
   *
   * @param out receives {@link #rows()} values
   */
  void weigh(double wu, double wv, double wn, double[] out);

  /**
   * Widest angle, in radians, under which something in a local direction may be seen and still be
   * weighed as if all of it lay in that direction.
   */
  default double widest(double wu, double wv, double wn) {
    return SMOOTH;
  }

  /** {@link #widest} of weights that go with the cosine. */
  double SMOOTH = 0.35;

  /** Illuminance and the light vector's parts along u and along v. */
  Kernel VECTOR =
      new Kernel() {
        @Override
        public int rows() {
          return 3;
        }

        @Override
        public void weigh(double wu, double wv, double wn, double[] out) {
          out[0] = wn;
          out[1] = wu;
          out[2] = wv;
        }
      };
}
