package slantlight.light;

/** Whether and through what the sun's beam reaches samples. Safe for several threads. */
public interface SunBeams {
  /**
   * Share of the outside beam that arrives at a sample from a unit world direction toward the sun:
   * glass, frame share and shade included, 0 when blocked or when the sun is behind the surface.
   */
  double transmittance(int sample, double dx, double dy, double dz);

  /** Index in the house's openings of the opening the beam comes through, or -1. */
  int opening(int sample, double dx, double dy, double dz);
}
