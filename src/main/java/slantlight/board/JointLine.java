package slantlight.board;

import slantlight.board.Run.Span;

/**
 * A straight line on which joints may run: the show weight along it and the corners of openings
 * beside it.
 *
 * <p>The weight is sampled at equal steps, linear between samples and summed, so that any stretch
 * of the line costs two look-ups. Exact for weights linear along the line.
 */
final class JointLine {
  private final double start;
  private final double step;
  private final double[] weight;
  private final double[] sum;
  private final double[][] corners;
  private final double clearance;

  /**
   * @param weight at equal steps from end to end, both included
   * @param corners of openings nearer to the line than the clearance: place along the line and
   *     distance from it, m
   */
  JointLine(double from, double to, double[] weight, double[][] corners, double clearance) {
    start = from;
    step = (to - from) / (weight.length - 1);
    this.weight = weight;
    this.corners = corners;
    this.clearance = clearance;
    sum = new double[weight.length];
    for (int i = 1; i < sum.length; i++) {
      sum[i] = sum[i - 1] + step * (weight[i - 1] + weight[i]) / 2;
    }
  }

  /** Integral of the weight over a stretch, weighted m. */
  double over(Span span) {
    return upTo(span.to()) - upTo(span.from());
  }

  private double upTo(double place) {
    double x = (place - start) / step;
    int i = Math.max(0, Math.min(weight.length - 2, (int) x));
    double d = Math.max(0, Math.min(1, x - i));
    return sum[i] + step * (weight[i] * d + (weight[i + 1] - weight[i]) * d * d / 2);
  }

  /** Corners of openings nearer to a stretch than the clearance. */
  int cornersNear(Span span) {
    int n = 0;
    for (double[] corner : corners) {
      double beyond = Math.max(0, Math.max(span.from() - corner[0], corner[0] - span.to()));
      if (Math.hypot(beyond, corner[1]) < clearance) {
        n++;
      }
    }
    return n;
  }
}
