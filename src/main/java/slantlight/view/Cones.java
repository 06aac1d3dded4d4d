package slantlight.view;

import slantlight.light.Kernel;

/**
 * Nineteen cones of light at a point of a surface: twelve round the compass of its plane for light
 * that comes in low, six for light half way up, one for light that comes in steep. Each keeps its
 * own light vector, so body colour and sheen of any tilt can be shaded from them: their sum is the
 * whole light vector, exact; the direction inside a cone is its mean.
 *
 * <p>Neighbouring cones blend linearly, so nothing jumps when a light moves.
 */
final class Cones implements Kernel {
  static final int COUNT = 19;

  /** Values a point has: three components (u, v, n) a cone. */
  static final int VALUES = 3 * COUNT;

  static final Cones KERNEL = new Cones();
  private static final int LOW = 12;
  private static final int MIDDLE = 6;

  /** Cosines of incidence at the middle of the low, middle and steep cones. */
  private static final double[] RING = {0.2, 0.6, 0.95};

  private Cones() {}

  @Override
  public int rows() {
    return VALUES;
  }

  @Override
  public void weigh(double wu, double wv, double wn, double[] out) {
    for (int i = 0; i < VALUES; i++) {
      out[i] = 0;
    }
    double low = 1 - share(wn, RING[0], RING[1]);
    double steep = share(wn, RING[1], RING[2]);
    double turn = Math.atan2(wv, wu) / (2 * Math.PI) + 1;
    round(out, 0, LOW, low, turn, wu, wv, wn);
    round(out, LOW, MIDDLE, 1 - low - steep, turn, wu, wv, wn);
    put(out, LOW + MIDDLE, steep, wu, wv, wn);
  }

  private static double share(double x, double from, double to) {
    return Math.max(0, Math.min(1, (x - from) / (to - from)));
  }

  private static void round(
      double[] out, int first, int many, double w, double turn, double wu, double wv, double wn) {
    if (w > 0) {
      double at = turn * many;
      int k = (int) Math.floor(at);
      double share = at - k;
      put(out, first + k % many, w * (1 - share), wu, wv, wn);
      put(out, first + (k + 1) % many, w * share, wu, wv, wn);
    }
  }

  private static void put(double[] out, int cone, double w, double wu, double wv, double wn) {
    out[3 * cone] += w * wu;
    out[3 * cone + 1] += w * wv;
    out[3 * cone + 2] += w * wn;
  }
}
