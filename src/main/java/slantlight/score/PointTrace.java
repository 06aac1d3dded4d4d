package slantlight.score;

import slantlight.geom.Vec3;
import slantlight.light.SunBeams;

/**
 * Follows one point through states of light and tells its showing at levels 3, 4 and 5.
 *
 * <p>A flank tilted by s about the joint sends the eye the luminance L(s). The two flanks of a
 * component of slope s differ by the Michelson contrast s q with q = (dL/ds) / L, so the pooled
 * showing is |q| K(L), K from the eye (all components share q). The sun's beam is added moment by
 * moment, and where it grazes by less than a few slopes both flanks are computed as they are, the
 * one that turns away clipped. The step from paper to compound adds a second contrast that does not
 * depend on tilt; the two are pooled by Quick's rule.
 */
final class PointTrace {
  /** Beams that graze by less than this many slopes are computed flank by flank. */
  private static final double CLIP_REACH = 3;

  /** Darkest luminance judged, cd/m2. */
  private static final float DARK = 1e-4f;

  private final PointOptics optics;
  private final ReliefKernel kernel;
  private final SunBeams beams;
  private final int sample;
  private final LitYear year;
  private final Ingredients.Kitchen kitchen;
  private final float[] rows;
  private final double[] weights;
  private final Vec3 normal;

  /** The sun's beam at the state at hand: illuminance square to it, lx, and local direction. */
  private float beam;

  private Vec3 beamFrom;

  /**
   * Readies a point.
   *
   * @param kitchen the point's rows under each ingredient of the year
   */
  PointTrace(
      PointOptics optics, SunBeams beams, int sample, LitYear year, Ingredients.Kitchen kitchen) {
    this.optics = optics;
    this.kernel = optics.kernel();
    this.beams = beams;
    this.sample = sample;
    this.year = year;
    this.kitchen = kitchen;
    this.rows = new float[kernel.judged()];
    this.weights = new double[kernel.rows()];
    this.normal = optics.frame().n();
  }

  /**
   * Raises {@code showing} to this point's where it shows more.
   *
   * @param showing [level - 3][state of the year]
   * @param own [level - 3] receives the point's largest clear-weather showing
   * @return the point's own worst state and eye at level 4
   */
  Worst follow(float[][] showing, float[] own) {
    Worst worst = new Worst();
    for (int s = 0; s < year.states(); s++) {
      light(s);
      for (int eye = 0; eye < optics.eyes(); eye++) {
        judge(eye, s, showing, own, worst);
      }
    }
    return worst;
  }

  /** Makes the rows of a state, its beam included. */
  private void light(int s) {
    kitchen.cook(year.menu(), s, rows, rows.length);
    double lux = year.beam(s);
    double[] suns = year.suns();
    double x = suns[3 * s];
    double y = suns[3 * s + 1];
    double z = suns[3 * s + 2];
    beam =
        lux > 0 && x * normal.x() + y * normal.y() + z * normal.z() > 0
            ? (float) (lux * beams.transmittance(sample, x, y, z))
            : 0;
    if (beam > 0) {
      beamFrom = optics.frame().directionToLocal(new Vec3(x, y, z));
      kernel.weigh(beamFrom.x(), beamFrom.y(), beamFrom.z(), weights);
      for (int r = 0; r < rows.length; r++) {
        rows[r] += (float) (beam * weights[r]);
      }
    }
  }

  private void judge(int eye, int state, float[][] showing, float[] own, Worst worst) {
    float luminance = rows[kernel.row(eye, ReliefKernel.LUMINANCE)];
    if (!(luminance > DARK)) {
      return;
    }
    float compound = rows[kernel.row(eye, ReliefKernel.COMPOUND)];
    float q = change(eye) / luminance;
    float step = Math.abs(compound - luminance) / (compound + luminance);
    for (int level = 0; level < 3; level++) {
      float tilt = beam > 0 ? flanks(eye, level, q) : q;
      GainCurve relief = optics.relief(eye, level);
      GainCurve mismatch = optics.mismatch(eye, level);
      float known = Math.min(showing[level][state], own[level]);
      // Pooled, two signals are no more than their sum: most are ruled out by this alone.
      if (tilt * relief.most() + step * mismatch.most() <= known) {
        continue;
      }
      float s = optics.pooled(tilt * relief.at(luminance), step * mismatch.at(luminance));
      if (s > showing[level][state]) {
        showing[level][state] = s;
      }
      if (s > own[level] && year.clear(state)) {
        own[level] = s;
        if (level == 1) {
          worst.put(s, state, eye);
        }
      }
    }
  }

  /** Magnitude of the change of luminance toward an eye per radian of lean. */
  private float change(int eye) {
    float across = rows[kernel.row(eye, ReliefKernel.CHANGE_ACROSS)];
    if (optics.lean() == Lean.U) {
      return Math.abs(across);
    }
    float along = rows[kernel.row(eye, ReliefKernel.CHANGE_ALONG)];
    return optics.lean() == Lean.V
        ? Math.abs(along)
        : (float) Math.sqrt(across * across + along * along);
  }

  /**
   * Relative change per radian under a beam: Michelson contrast of the two flanks at the edge's
   * slope over that slope, exact where the beam grazes.
   */
  private float flanks(int eye, int level, float q) {
    double slope = optics.edgeSlope(level);
    Vec3 w = beamFrom;
    double lean = optics.lean().part(w.x(), w.y());
    // The rows lean by the kernel's tilt: a beam that grazes by less has one of them in the dark.
    if (w.z() > Math.max(CLIP_REACH * slope, ReliefKernel.TILT) * lean) {
      return q;
    }
    double tu = optics.lean() == Lean.U ? 1 : optics.lean() == Lean.V ? 0 : w.x() / lean;
    double tv = optics.lean() == Lean.U ? 0 : optics.lean() == Lean.V ? 1 : w.y() / lean;
    // What is not the beam changes evenly with tilt; the beam itself is taken flank by flank.
    double rest = withoutBeam(eye, ReliefKernel.LUMINANCE);
    double change = 0;
    if (tu != 0) {
      change += tu * withoutBeam(eye, ReliefKernel.CHANGE_ACROSS);
    }
    if (tv != 0) {
      change += tv * withoutBeam(eye, ReliefKernel.CHANGE_ALONG);
    }
    double toward =
        rest + slope * change + beam * kernel.flank(eye, w.x(), w.y(), w.z(), tu, tv, slope);
    double away =
        rest - slope * change + beam * kernel.flank(eye, w.x(), w.y(), w.z(), tu, tv, -slope);
    double sum = toward + away;
    return sum > 0 ? (float) (Math.abs(toward - away) / sum / slope) : q;
  }

  private double withoutBeam(int eye, int quantity) {
    return rows[kernel.row(eye, quantity)] - beam * weights[kernel.row(eye, quantity)];
  }

  /** The worst state and eye of a point. */
  static final class Worst {
    private float showing;
    private int state = -1;
    private int eye = -1;

    private void put(float s, int newState, int newEye) {
      showing = s;
      state = newState;
      eye = newEye;
    }

    float showing() {
      return showing;
    }

    int state() {
      return state;
    }

    int eye() {
      return eye;
    }
  }
}
