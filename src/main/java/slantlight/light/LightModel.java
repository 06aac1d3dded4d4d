package slantlight.light;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.sky.SunGrid;
import slantlight.units.Progress;

/**
 * Light in one house. Built once; all methods may be called from several threads and give the same
 * bits whatever the number of threads.
 */
public interface LightModel {
  House house();

  /**
   * Every cone of light at a sample at one moment, with exact (not interpolated) sun: the slow,
   * complete answer for one point.
   */
  IncidentField incident(SamplePoint at, LightState state);

  /**
   * The cones of light that arrive straight from outside and from lamps, bounced light left out:
   * cheap, for saying which source does what at one moment.
   */
  IncidentField direct(SamplePoint at, LightState state);

  /** True when nothing opaque stands between two points of the house; glass does not hinder. */
  boolean sees(Vec3 a, Vec3 b);

  /**
   * Responses of each sample's rows to every unit source, all light included but the sun's own beam
   * at the sample.
   *
   * @param kernels one per point
   */
  Basis basis(List<SamplePoint> points, List<Kernel> kernels, Progress progress);

  /**
   * The light of a house that differs in paint and in what its openings let through, sharing what
   * stays the same; empty when it differs in more or this light has nothing to share.
   */
  default Optional<LightModel> changed(House other) {
    return Optional.empty();
  }

  /**
   * Finds with all threads the flecks of some suns that will be asked of a {@link Basis}, lest
   * threads that follow neighbouring points find them twice.
   *
   * @param roomIds rooms in which the samples lie
   */
  void findFlecks(Suns suns, Set<String> roomIds);

  /**
   * Lets go of flecks of some suns that points in none of some rooms ask for. Should they be asked
   * for again, they are found again.
   */
  void keepFlecks(Suns suns, Set<String> roomIds);

  /** Suns between which the responses of a {@link Basis} are mixed, flecks of sun apart. */
  SunGrid sunGrid();

  /**
   * The light of this house with an opening shut; empty when this light has nothing to share.
   *
   * @param openingId id of an opening to the outside
   */
  default Optional<ShutOpening> shut(String openingId) {
    return Optional.empty();
  }

  /** Tests of the sun's own beam at the given points. */
  SunBeams beams(List<SamplePoint> points);
}
