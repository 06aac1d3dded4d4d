package slantlight.light;

import java.util.List;
import java.util.Set;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.sky.SunGrid;
import slantlight.units.Progress;

/** A light that answers as another does, in all but what is overridden. */
public abstract class LightBehind implements LightModel {
  protected final LightModel light;

  /** Answers as a light does. */
  protected LightBehind(LightModel light) {
    this.light = light;
  }

  @Override
  public House house() {
    return light.house();
  }

  @Override
  public IncidentField incident(SamplePoint at, LightState state) {
    return light.incident(at, state);
  }

  @Override
  public IncidentField direct(SamplePoint at, LightState state) {
    return light.direct(at, state);
  }

  @Override
  public boolean sees(Vec3 a, Vec3 b) {
    return light.sees(a, b);
  }

  @Override
  public Basis basis(List<SamplePoint> points, List<Kernel> kernels, Progress progress) {
    return light.basis(points, kernels, progress);
  }

  @Override
  public void findFlecks(Suns suns, Set<String> roomIds) {
    light.findFlecks(suns, roomIds);
  }

  @Override
  public void keepFlecks(Suns suns, Set<String> roomIds) {
    light.keepFlecks(suns, roomIds);
  }

  @Override
  public SunGrid sunGrid() {
    return light.sunGrid();
  }

  @Override
  public SunBeams beams(List<SamplePoint> points) {
    return light.beams(points);
  }
}
