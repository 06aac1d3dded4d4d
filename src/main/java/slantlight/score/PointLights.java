package slantlight.score;

import java.util.List;
import java.util.stream.IntStream;
import slantlight.light.Basis;
import slantlight.light.Kernel;
import slantlight.light.LightModel;
import slantlight.light.SamplePoint;
import slantlight.light.SunBeams;
import slantlight.units.Progress;

/**
 * The light at the points of one joint. Tens of kilobytes to half a megabyte a point: to be let go
 * when the points have been followed.
 *
 * @param sample of each point in the basis and the beams, or -1 when no eye sees it
 */
record PointLights(List<PointOptics> points, int[] sample, Basis basis, SunBeams beams) {
  /** Computes it. */
  static PointLights of(LightModel light, List<PointOptics> points) {
    List<PointOptics> seen = points.stream().filter(p -> p.eyes() > 0).toList();
    List<SamplePoint> samples = seen.stream().map(p -> p.point().sample()).toList();
    List<Kernel> kernels = seen.stream().map(p -> (Kernel) p.kernel()).toList();
    int[] sample = IntStream.range(0, points.size()).map(i -> before(points, i)).toArray();
    return new PointLights(
        points, sample, light.basis(samples, kernels, Progress.NONE), light.beams(samples));
  }

  /** How many points before one are seen, or -1 when it is not. */
  private static int before(List<PointOptics> points, int i) {
    return points.get(i).eyes() == 0
        ? -1
        : (int) points.subList(0, i).stream().filter(p -> p.eyes() > 0).count();
  }
}
