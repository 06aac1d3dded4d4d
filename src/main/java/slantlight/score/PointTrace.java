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
  private final int judged;

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
    this.rows = new float[kernel.rows()];
    this.weights = new double[kernel.rows()];
    this.normal = optics.frame().n();
    this.judged = kernel.judged();
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
    Ingredients.Menu menu = year.menu();
    for (int s = 0; s < year.states(); s++) {
      kitchen.cook(menu, s, rows, judged);
      addBeam(s);
      for (int eye = 0; eye < optics.eyes(); eye++) {
        judge(eye, s, showing, own, worst);
      }
    }
    return worst;
  }

  private void addBeam(int s) {
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
      for (int r = 0; r < judged; r++) {
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
    float across = rows[kernel.row(eye, ReliefKernel.CHANGE_ACROSS)];
    float along = optics.spot() ? rows[kernel.row(eye, ReliefKernel.CHANGE_ALONG)] : 0;
    float change =
        optics.spot() ? (float) Math.sqrt(across * across + along * along) : Math.abs(across);
    float q = change / luminance;
    float step = Math.abs(compound - luminance) / (compound + luminance);
    for (int level = 0; level < 3; level++) {
      float tilt = beam > 0 ? flanks(eye, level, luminance, q) : q;
      float s =
          optics.pooled(
              tilt * optics.relief(eye, level).at(luminance),
              step * optics.mismatch(eye, level).at(luminance));
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

  /**
   * Relative change per radian under a beam: Michelson contrast of the two flanks at the edge's
   * slope over that slope, exact where the beam grazes.
   */
  private float flanks(int eye, int level, float luminance, float q) {
    double slope = optics.edgeSlope(level);
    Vec3 w = beamFrom;
    double lean = optics.spot() ? Math.hypot(w.x(), w.y()) : Math.abs(w.x());
    if (w.z() > CLIP_REACH * slope * lean) {
      return q;
    }
    double tu = optics.spot() ? w.x() / lean : 1;
    double tv = optics.spot() ? w.y() / lean : 0;
    double rest = luminance - beam * kernel.flank(eye, w.x(), w.y(), w.z(), tu, tv, 0);
    double change = tu * rows[kernel.row(eye, ReliefKernel.CHANGE_ACROSS)];
    if (optics.spot()) {
      change += tv * rows[kernel.row(eye, ReliefKernel.CHANGE_ALONG)];
    }
    change -= beam * kernel.changePerTilt(eye, w.x(), w.y(), w.z(), tu, tv);
    double toward =
        rest + slope * change + beam * kernel.flank(eye, w.x(), w.y(), w.z(), tu, tv, slope);
    double away =
        rest - slope * change + beam * kernel.flank(eye, w.x(), w.y(), w.z(), tu, tv, -slope);
    double sum = toward + away;
    return sum > 0 ? (float) (Math.abs(toward - away) / sum / slope) : q;
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
