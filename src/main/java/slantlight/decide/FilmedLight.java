package slantlight.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.Incident;
import slantlight.light.IncidentField;
import slantlight.light.Kernel;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.SunBeams;
import slantlight.light.Suns;
import slantlight.scene.House;
import slantlight.sky.SunGrid;
import slantlight.units.Progress;

/**
 * The light of a house with clear film on one opening.
 *
 * <p>A film lets the same share of light through from every side, and all light of the house, its
 * bounces included, is linear in what an opening lets through. So any film lies on the straight
 * line between the bare glass and a black film: L = tau L(bare) + (1 - tau) L(black), exactly.
 *
 * @param house with the film
 * @param bare light of the house without it
 * @param black light of the house with a film that lets nothing through
 * @param tau share of light that the film lets through, 0 to 1
 */
record FilmedLight(House house, LightModel bare, LightModel black, double tau)
    implements LightModel {
  @Override
  public IncidentField incident(SamplePoint at, LightState state) {
    return mixed(at, bare.incident(at, state), black.incident(at, state));
  }

  @Override
  public IncidentField direct(SamplePoint at, LightState state) {
    return mixed(at, bare.direct(at, state), black.direct(at, state));
  }

  private IncidentField mixed(SamplePoint at, IncidentField a, IncidentField b) {
    List<Incident> out = new ArrayList<>();
    a.incidents().forEach(i -> out.add(scaled(i, tau)));
    b.incidents().forEach(i -> out.add(scaled(i, 1 - tau)));
    return new IncidentField(at, out);
  }

  private static Incident scaled(Incident i, double share) {
    return new Incident(i.direction(), share * i.normalLux(), i.source());
  }

  @Override
  public boolean sees(Vec3 a, Vec3 b) {
    return bare.sees(a, b);
  }

  @Override
  public Basis basis(List<SamplePoint> points, List<Kernel> kernels, Progress progress) {
    return new Mixed(
        bare.basis(points, kernels, progress), black.basis(points, kernels, progress), (float) tau);
  }

  @Override
  public void findFlecks(Suns suns, Set<String> roomIds) {
    bare.findFlecks(suns, roomIds);
    black.findFlecks(suns, roomIds);
  }

  @Override
  public void keepFlecks(Suns suns, Set<String> roomIds) {
    bare.keepFlecks(suns, roomIds);
    black.keepFlecks(suns, roomIds);
  }

  @Override
  public SunGrid sunGrid() {
    return bare.sunGrid();
  }

  @Override
  public SunBeams beams(List<SamplePoint> points) {
    SunBeams a = bare.beams(points);
    SunBeams b = black.beams(points);
    return new SunBeams() {
      @Override
      public double transmittance(int sample, double dx, double dy, double dz) {
        return tau * a.transmittance(sample, dx, dy, dz)
            + (1 - tau) * b.transmittance(sample, dx, dy, dz);
      }

      @Override
      public int opening(int sample, double dx, double dy, double dz) {
        return a.opening(sample, dx, dy, dz);
      }
    };
  }

  private record Blocks(Basis.Block bare, Basis.Block black) implements Basis.Block {
    @Override
    public int size() {
      return bare.size();
    }
  }

  private record Mixed(Basis bare, Basis black, float tau) implements Basis {
    @Override
    public int samples() {
      return bare.samples();
    }

    @Override
    public int rows(int sample) {
      return bare.rows(sample);
    }

    @Override
    public Block block(List<LightState> states) {
      return new Blocks(bare.block(states), black.block(states));
    }

    @Override
    public void flecks(int sample, Suns suns, int bundle, int firstRow, float[][] out) {
      float[][] dark = new float[out.length][out[0].length];
      bare.flecks(sample, suns, bundle, firstRow, out);
      black.flecks(sample, suns, bundle, firstRow, dark);
      mix(out, dark, out[0].length);
    }

    @Override
    public void evaluate(int sample, Block block, float[][] out) {
      Blocks blocks = (Blocks) block;
      int n = block.size();
      float[][] dark = new float[rows(sample)][n];
      bare.evaluate(sample, blocks.bare, out);
      black.evaluate(sample, blocks.black, dark);
      mix(out, dark, n);
    }

    private void mix(float[][] out, float[][] dark, int size) {
      for (int r = 0; r < dark.length; r++) {
        for (int m = 0; m < size; m++) {
          out[r][m] = tau * out[r][m] + (1 - tau) * dark[r][m];
        }
      }
    }
  }
}
