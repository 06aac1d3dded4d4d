package slantlight.score;

import java.util.Arrays;
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

  /** How many times what the probes of a run show is the most that its other states may. */
  private static final float MARGIN = 1.2f;

  /** The same of the suns of the grid round a run. */
  private static final float FAR_MARGIN = 2.5f;

  private static final int BATCH = Ingredients.Menu.LONGEST;

  private final PointOptics optics;
  private final ReliefKernel kernel;
  private final SunBeams beams;
  private final int sample;
  private final LitYear year;
  private final Ingredients.Menu menu;
  private final Ingredients.Kitchen kitchen;
  private final Vec3 normal;

  /** Steepness under which a beam may leave a flank of a level's edge in the dark. */
  private final double[] flats = new double[3];

  private final double flattest;

  /** The rows under each state of the run at hand, the beam included: [row][state]. */
  private final float[][] rows;

  /** Eyes to which the run at hand may show more than is known. */
  private final boolean[] promising;

  /** The rows under a corner light of a run. */
  private final float[] cornerRows;

  /** The sun's beam at each state of the run; null where none arrives. */
  private final Beam[] lit = new Beam[BATCH];

  /** Change of luminance per radian over luminance, by state of the run. */
  private final float[] tilts = new float[BATCH];

  /** Contrast between compound and paper, by state of the run. */
  private final float[] steps = new float[BATCH];

  /** By how much a state's showing may exceed what is known, by state of the run. */
  private final float[] excess = new float[BATCH];

  /**
   * The sun's beam at one state.
   *
   * @param lux illuminance square to it
   * @param from local direction
   * @param weights of the point's rows
   * @param steepness tangent, nearly, of its grazing angle as the lean sees it
   */
  private record Beam(float lux, Vec3 from, double[] weights, double steepness) {}

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
    this.menu = year.menu();
    this.kitchen = kitchen;
    this.promising = new boolean[optics.eyes()];
    this.cornerRows = new float[kernel.judged()];
    this.rows = new float[kernel.judged()][BATCH];
    this.normal = optics.frame().n();
    for (int level = 0; level < 3; level++) {
      // The rows lean by the kernel's tilt: a beam that grazes by less has one of them in the dark.
      flats[level] = Math.max(CLIP_REACH * optics.edgeSlope(level), ReliefKernel.TILT);
    }
    this.flattest = Math.max(flats[0], Math.max(flats[1], flats[2]));
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
    RunBounds bounds = new RunBounds(optics, kitchen, menu);
    // What the point shows at its worst rules out most of the rest: hence the promising first.
    for (int run : bounds.mostPromisingFirst()) {
      follow(run, bounds, showing, own, worst);
    }
    return worst;
  }

  private void follow(int run, RunBounds bounds, float[][] showing, float[] own, Worst worst) {
    int from = menu.start(run);
    int to = menu.start(run + 1);
    boolean sunny = false;
    for (int s = from; s < to; s++) {
      lit[s - from] = beam(s);
      sunny |= lit[s - from] != null;
    }
    probe(run, bounds, own);
    for (int eye = 0; eye < optics.eyes(); eye++) {
      boolean sharp = promising[eye];
      if (sharp || sunny || !ruledOut(run, eye, bounds, showing, own)) {
        int first = kernel.row(eye, 0);
        int end = kernel.row(eye + 1, 0);
        kitchen.cook(menu, from, to, rows, first, end);
        shine(to - from, first, end);
        for (boolean done = false; !done; sharp = true) {
          if (sharp) {
            kitchen.sharpen(menu, run, rows, first, end);
          }
          done = judgeRun(eye, from, to - from, sharp, showing, own, worst);
        }
      }
    }
  }

  /**
   * Notes which eyes a run may show more than is known of the point. Its corner lights tell where
   * that is out of the question; elsewhere its probes do, flecks where they are.
   */
  private void probe(int run, RunBounds bounds, float[] own) {
    int corners = menu.corners(run);
    Arrays.fill(promising, false);
    int from = promising.length;
    int to = 0;
    for (int eye = 0; eye < promising.length; eye++) {
      if (mayExceed(run, eye, bounds, own)) {
        from = Math.min(from, eye);
        to = eye + 1;
      }
    }
    for (int corner = 0; corner < corners && from < to; corner++) {
      kitchen.corner(menu, run, corner, cornerRows);
      for (int eye = from; eye < to; eye++) {
        promising[eye] |= mayExceed(run, eye, bounds, own) && cornerExceeds(eye, own);
      }
    }
    if (corners == 0) {
      Arrays.fill(promising, true);
    } else {
      askProbes(run, own);
    }
  }

  /** False when the bound of a run rules out that it shows an eye more than is known. */
  private static boolean mayExceed(int run, int eye, RunBounds bounds, float[] own) {
    for (int level = 0; level < 3; level++) {
      if (!(FAR_MARGIN * bounds.most(run, eye, level) <= own[level])) {
        return true;
      }
    }
    return false;
  }

  private boolean cornerExceeds(int eye, float[] own) {
    float luminance = optics.luminance(eye, cornerRows);
    float tilt = optics.change(eye, cornerRows) / luminance;
    return exceeds(eye, luminance, tilt, optics.contrast(eye, cornerRows), FAR_MARGIN, own);
  }

  /** Keeps promising those eyes to which a probe shows enough. */
  private void askProbes(int run, float[] own) {
    int from = 0;
    int to = promising.length;
    while (from < to && !promising[from]) {
      from++;
    }
    while (to > from && !promising[to - 1]) {
      to--;
    }
    if (from == to) {
      return;
    }
    int first = kernel.row(from, 0);
    int end = kernel.row(to, 0);
    kitchen.cook(menu, menu.start(run), menu.probed(run), rows, first, end);
    kitchen.sharpenProbes(menu, run, rows, first, end);
    for (int eye = from; eye < to; eye++) {
      promising[eye] = promising[eye] && probesExceed(eye, menu.probed(run) - menu.start(run), own);
    }
  }

  private boolean probesExceed(int eye, int size, float[] own) {
    float[] luminance = rows[kernel.row(eye, ReliefKernel.LUMINANCE)];
    changes(eye, size);
    contrasts(luminance, rows[kernel.row(eye, ReliefKernel.COMPOUND)], tilts, steps, size);
    for (int m = 0; m < size; m++) {
      if (exceeds(eye, luminance[m], tilts[m], steps[m], MARGIN, own)) {
        return true;
      }
    }
    return false;
  }

  /** True when an eye is shown more than is known by a light, with a margin. */
  private boolean exceeds(
      int eye, float luminance, float tilt, float step, float margin, float[] own) {
    for (int level = 0; level < 3 && luminance > DARK; level++) {
      if (!(margin * pooled(eye, level, tilt, step, luminance) <= own[level])) {
        return true;
      }
    }
    return false;
  }

  private float pooled(int eye, int level, float tilt, float step, float luminance) {
    return optics.pooled(
        tilt * optics.relief(eye, level).at(luminance),
        step * optics.mismatch(eye, level).at(luminance));
  }

  /** True when a run without beam cannot show an eye more than is known of any of its states. */
  private boolean ruledOut(int run, int eye, RunBounds bounds, float[][] showing, float[] own) {
    for (int level = 0; level < 3; level++) {
      float most = bounds.most(run, eye, level);
      if (!(most <= own[level])) {
        return false;
      }
      for (int s = menu.start(run); s < menu.start(run + 1); s++) {
        if (most > showing[level][s]) {
          return false;
        }
      }
    }
    return true;
  }

  /** The sun's beam as it arrives at a state, or null. */
  private Beam beam(int s) {
    double lux = year.beam(s);
    double[] suns = year.suns();
    double x = suns[3 * s];
    double y = suns[3 * s + 1];
    double z = suns[3 * s + 2];
    if (lux <= 0 || x * normal.x() + y * normal.y() + z * normal.z() <= 0) {
      return null;
    }
    float arriving = (float) (lux * beams.transmittance(sample, x, y, z));
    if (arriving <= 0) {
      return null;
    }
    Vec3 from = optics.frame().directionToLocal(new Vec3(x, y, z));
    double[] weights = new double[kernel.rows()];
    kernel.weigh(from.x(), from.y(), from.z(), weights);
    return new Beam(arriving, from, weights, from.z() / optics.lean().part(from.x(), from.y()));
  }

  /** Adds the beams of a run to the rows. */
  private void shine(int size, int first, int end) {
    for (int m = 0; m < size; m++) {
      if (lit[m] != null) {
        for (int r = first; r < end; r++) {
          rows[r][m] += (float) (lit[m].lux * lit[m].weights[r]);
        }
      }
    }
  }

  /**
   * Judges a run by one eye: what cannot exceed what is known is ruled out for all at once.
   *
   * @param sharp true when the rows hold flecks of sun where they are
   * @return false when they do not and should
   */
  private boolean judgeRun(
      int eye, int from, int size, boolean sharp, float[][] showing, float[] own, Worst worst) {
    float[] luminance = rows[kernel.row(eye, ReliefKernel.LUMINANCE)];
    changes(eye, size);
    contrasts(luminance, rows[kernel.row(eye, ReliefKernel.COMPOUND)], tilts, steps, size);
    float brightest = brightest(luminance, size);
    Arrays.fill(excess, 0, size, 0);
    float two = RunBounds.ROUNDING * optics.pooled(1, 1);
    for (int level = 0; level < 3; level++) {
      exceed(
          two,
          tilts,
          optics.relief(eye, level).most(brightest),
          steps,
          optics.mismatch(eye, level).most(brightest),
          showing[level],
          from,
          own[level],
          excess,
          size);
    }
    for (int m = 0; m < size; m++) {
      if ((excess[m] > 0 || (lit[m] != null && lit[m].steepness <= flattest))
          && !judge(eye, from + m, m, sharp, showing, own, worst)) {
        return false;
      }
    }
    return true;
  }

  private boolean judge(
      int eye, int state, int m, boolean sharp, float[][] showing, float[] own, Worst worst) {
    float luminance = rows[kernel.row(eye, ReliefKernel.LUMINANCE)][m];
    if (!(luminance > DARK)) {
      return true;
    }
    Beam beam = lit[m];
    for (int level = 0; level < 3; level++) {
      boolean exact = beam != null && beam.steepness <= flats[level];
      float tilt = exact ? flanks(eye, level, m) : tilts[m];
      float s = pooled(eye, level, tilt, steps[m], luminance);
      if (!sharp && MARGIN * s > own[level] && year.clear(state)) {
        return false;
      }
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
    return true;
  }

  /** Relative change of luminance with tilt, and the contrast of the step. */
  private static void contrasts(
      float[] luminance, float[] compound, float[] change, float[] step, int size) {
    for (int m = 0; m < size; m++) {
      change[m] = change[m] / luminance[m];
      step[m] = Math.abs(compound[m] - luminance[m]) / (compound[m] + luminance[m]);
    }
  }

  private static float brightest(float[] luminance, int size) {
    float most = 0;
    for (int m = 0; m < size; m++) {
      most = Math.max(most, luminance[m]);
    }
    return most;
  }

  /**
   * Pooled, two signals are no more than their sum, nor than two as strong as the stronger: most
   * states are ruled out by this alone.
   *
   * @param two what two signals of strength 1 are, pooled
   */
  private static void exceed(
      float two,
      float[] tilt,
      float relief,
      float[] step,
      float mismatch,
      float[] known,
      int from,
      float own,
      float[] excess,
      int size) {
    for (int m = 0; m < size; m++) {
      float a = tilt[m] * relief;
      float b = step[m] * mismatch;
      float most = Math.min(a + b, two * Math.max(a, b));
      excess[m] = Math.max(excess[m], most - Math.min(known[from + m], own));
    }
  }

  /** Magnitude of the change of luminance toward an eye per radian of lean, by state. */
  private void changes(int eye, int size) {
    optics.lean().parts(rows[kernel.across(eye)], rows[kernel.along(eye)], tilts, size);
  }

  /**
   * Relative change per radian under a grazing beam: Michelson contrast of the two flanks at the
   * edge's slope over that slope.
   */
  private float flanks(int eye, int level, int m) {
    double slope = optics.edgeSlope(level);
    Vec3 w = lit[m].from;
    double lean = optics.lean().part(w.x(), w.y());
    double tu = optics.lean() == Lean.U ? 1 : optics.lean() == Lean.V ? 0 : w.x() / lean;
    double tv = optics.lean() == Lean.U ? 0 : optics.lean() == Lean.V ? 1 : w.y() / lean;
    // What is not the beam changes evenly with tilt; the beam itself is taken flank by flank.
    double rest = withoutBeam(eye, ReliefKernel.LUMINANCE, m);
    double change = 0;
    if (tu != 0) {
      change += tu * withoutBeam(eye, ReliefKernel.CHANGE_ACROSS, m);
    }
    if (tv != 0) {
      change += tv * withoutBeam(eye, ReliefKernel.CHANGE_ALONG, m);
    }
    double beam = lit[m].lux;
    double toward =
        rest + slope * change + beam * kernel.flank(eye, w.x(), w.y(), w.z(), tu, tv, slope);
    double away =
        rest - slope * change + beam * kernel.flank(eye, w.x(), w.y(), w.z(), tu, tv, -slope);
    double sum = toward + away;
    return sum > 0 ? (float) (Math.abs(toward - away) / sum / slope) : tilts[m];
  }

  private double withoutBeam(int eye, int quantity, int m) {
    int row = kernel.row(eye, quantity);
    return rows[row][m] - lit[m].lux * lit[m].weights[row];
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
