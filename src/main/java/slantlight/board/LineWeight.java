package slantlight.board;

import slantlight.board.Run.Span;

/**
 * The show weight along one straight line, sampled at equal steps, linear between samples and
 * summed, so that any stretch of the line costs two look-ups. Exact for weights linear along the
 * line.
 */
final class LineWeight {
  private final double start;
  private final double step;
  private final double[] weight;
  private final double[] sum;

  /** A weight at a place on the line. */
  interface At {
    double at(double place);
  }

  LineWeight(double from, double to, double maxStep, At weightAt) {
    int cells = Math.max(1, (int) Math.ceil((to - from) / maxStep - 1e-9));
    start = from;
    step = (to - from) / cells;
    weight = new double[cells + 1];
    sum = new double[cells + 1];
    for (int i = 0; i <= cells; i++) {
      weight[i] = weightAt.at(from + i * step);
      sum[i] = i == 0 ? 0 : sum[i - 1] + step * (weight[i - 1] + weight[i]) / 2;
    }
  }

  /** Integral of the weight over a stretch, weighted m. */
  double over(Span span) {
    return upTo(span.to()) - upTo(span.from());
  }

  private double upTo(double place) {
    double x = (place - start) / step;
    int i = Math.max(0, Math.min(weight.length - 2, (int) Math.floor(x)));
    double d = Math.max(0, Math.min(1, x - i));
    return sum[i] + step * (weight[i] * d + (weight[i + 1] - weight[i]) * d * d / 2);
  }
}
