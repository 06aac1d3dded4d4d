package slantlight.decide;

import java.lang.ref.SoftReference;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import slantlight.light.Basis;
import slantlight.light.Kernel;
import slantlight.light.LightBehind;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.ShutOpening;
import slantlight.light.Suns;
import slantlight.scene.House;
import slantlight.units.Progress;

/**
 * A light that remembers what it brought to points asked for before: most remedies leave most
 * points and their paint as they were. What is remembered is let go when memory runs short, and
 * then computed again to the same bits.
 */
public final class KeptLight extends LightBehind {
  private final Map<Point, Place> kept = new ConcurrentHashMap<>();

  /** Remembers a light from now on. */
  public KeptLight(LightModel light) {
    super(light);
  }

  private record Point(SamplePoint at, Kernel kernel) {}

  private record Place(SoftReference<Basis> basis, int index) {}

  @Override
  public Basis basis(List<SamplePoint> points, List<Kernel> kernels, Progress progress) {
    Basis[] source = new Basis[points.size()];
    int[] index = new int[points.size()];
    List<Integer> missing = new ArrayList<>();
    for (int i = 0; i < source.length; i++) {
      Place place = kept.get(new Point(points.get(i), kernels.get(i)));
      source[i] = place == null ? null : place.basis.get();
      if (source[i] == null) {
        index[i] = missing.size();
        missing.add(i);
      } else {
        index[i] = place.index;
      }
    }
    Basis fresh =
        light.basis(
            missing.stream().map(points::get).toList(),
            missing.stream().map(kernels::get).toList(),
            progress);
    SoftReference<Basis> reference = new SoftReference<>(fresh);
    for (int i : missing) {
      source[i] = fresh;
      kept.put(new Point(points.get(i), kernels.get(i)), new Place(reference, index[i]));
    }
    return new Gathered(fresh, source, index);
  }

  @Override
  public Optional<LightModel> changed(House other) {
    return light.changed(other).map(KeptLight::new);
  }

  @Override
  public Optional<ShutOpening> shut(String openingId) {
    return light.shut(openingId).map(s -> s.with(KeptLight::new));
  }

  /** Samples of several bases of one light, whose blocks are the same. */
  private record Gathered(Basis any, Basis[] source, int[] index) implements Basis {
    @Override
    public int samples() {
      return source.length;
    }

    @Override
    public int rows(int sample) {
      return source[sample].rows(index[sample]);
    }

    @Override
    public Block block(List<LightState> states) {
      return any.block(states);
    }

    @Override
    public void flecks(int sample, Suns suns, int bundle, int firstRow, float[][] out) {
      source[sample].flecks(index[sample], suns, bundle, firstRow, out);
    }

    @Override
    public void evaluate(int sample, Block block, float[][] out) {
      source[sample].evaluate(index[sample], block, out);
    }
  }
}
