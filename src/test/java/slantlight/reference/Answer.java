package slantlight.reference;

import slantlight.geom.Vec3;

/**
 * Illuminance and light vector of one point by Monte Carlo.
 *
 * @param illuminance lx
 * @param error its standard error, lx
 * @param vector light vector over the hemisphere in front of the point, lx, world
 * @param vectorError standard error of each component, lx
 */
record Answer(double illuminance, double error, Vec3 vector, Vec3 vectorError) {
  /** Mean and standard error of independent batches of (E, x, y, z). */
  static Answer of(double[][] batches) {
    double[] mean = new double[4];
    double[] error = new double[4];
    int n = batches.length;
    for (int k = 0; k < 4; k++) {
      for (double[] batch : batches) {
        mean[k] += batch[k] / n;
      }
      double square = 0;
      for (double[] batch : batches) {
        square += (batch[k] - mean[k]) * (batch[k] - mean[k]);
      }
      error[k] = Math.sqrt(square / (n - 1) / n);
    }
    return new Answer(
        mean[0],
        error[0],
        new Vec3(mean[1], mean[2], mean[3]),
        new Vec3(error[1], error[2], error[3]));
  }
}
