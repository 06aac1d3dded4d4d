package slantlight.score;

import slantlight.board.Joint;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.scene.Eye;
import slantlight.scene.JointKind;
import slantlight.sight.EyeModel;
import slantlight.sight.GainTable;
import slantlight.sight.JointRidge;
import slantlight.sight.RaisedCosine;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;

/** Ridge, paint and eyes of one followed point, made ready for many moments. */
final class PointOptics {
  private final FollowedPoint point;
  private final ReliefKernel kernel;
  private final Lean lean;
  private final double[] slopes = new double[3];
  private final double[] crowns = new double[3];
  private final GainCurve[][] relief;
  private final GainCurve[][] mismatch;
  private final Pooling pooling;

  /** Ridges of a joint at levels 3, 4 and 5. */
  static JointRidge[] ridges(RidgeTable table, Joint joint, boolean backBlocked) {
    JointRidge[] out = new JointRidge[3];
    for (int level = 3; level <= 5; level++) {
      JointRidge r =
          table.ridge(
              backBlocked && joint.kind() == JointKind.BUTT
                  ? RidgeKind.BACK_BLOCKED
                  : RidgeKind.of(joint.kind()),
              level);
      out[level - 3] = r.measured(joint.crownHeight(), joint.crownWidth());
    }
    return out;
  }

  /**
   * Optics of a point.
   *
   * @param kernel of the point; with both axes unless the lean is {@link Lean#U}
   * @param ridges at levels 3, 4 and 5
   */
  PointOptics(
      FollowedPoint point,
      ReliefKernel kernel,
      RidgeTable table,
      JointRidge[] ridges,
      Lean lean,
      EyeModel eye) {
    this.point = point;
    this.lean = lean;
    this.kernel = kernel;
    this.relief = new GainCurve[point.eyes().size()][3];
    this.mismatch = new GainCurve[point.eyes().size()][3];
    this.pooling = Pooling.of(eye.quickExponent());
    for (int level = 0; level < 3; level++) {
      slopes[level] = ridges[level].edge().peakSlope();
      crowns[level] = ridges[level].crown().height();
      for (int e = 0; e < point.eyes().size(); e++) {
        Vec3 to = toEye(point.eyes().get(e));
        double distance = to.length();
        EyeModel judge = lean == Lean.ALL ? spotEye(eye, ridges[level].crown(), distance) : eye;
        double foreshortening = EyeChoice.foreshortening(to);
        relief[e][level] =
            new GainCurve(GainTable.of(ridges[level], distance, foreshortening, judge));
        // The lobe's change is computed for level 4 and goes with the gain in roughness.
        double share = table.roughnessGain(level + 3) / table.roughnessGain(4);
        mismatch[e][level] =
            new GainCurve(stepTable(ridges[level], distance, foreshortening, judge, share));
      }
    }
  }

  /** Acuity for a ridge at 100 cd/m2, a bright daylit wall. */
  static EyeChoice.Acuity acuity(JointRidge ridge, EyeModel eye) {
    return (distance, foreshortening) ->
        eye.pooled(
            shown(ridge.crown(), distance, foreshortening, eye),
            shown(ridge.edge(), distance, foreshortening, eye));
  }

  /**
   * The eye for a spot: a joint runs through the field of view, a spot fills only its own size and
   * its surround, over which Barten's model sums less.
   */
  private static EyeModel spotEye(EyeModel eye, RaisedCosine crown, double distance) {
    double fieldDeg = 2 * Math.toDegrees(Math.atan(crown.width() / distance));
    return new EyeModel(eye.fieldFactor(), eye.quickExponent(), Math.min(eye.fieldDeg(), fieldDeg));
  }

  private static double shown(
      RaisedCosine part, double distance, double foreshortening, EyeModel eye) {
    double u = EyeModel.frequency(part.width(), distance, foreshortening);
    return part.peakSlope() * eye.gain(u, 100);
  }

  /** Showing per unit contrast between compound and paper: one period is two bands wide. */
  private static double[] stepTable(
      JointRidge ridge, double distance, double foreshortening, EyeModel eye, double share) {
    double u = EyeModel.frequency(2 * ridge.crown().width(), distance, foreshortening);
    double[] out = new double[GainTable.NODES];
    for (int i = 0; i < out.length; i++) {
      double luminance = Math.pow(2, GainTable.FIRST_LOG2 + (double) i / GainTable.PER_OCTAVE);
      out[i] = share * eye.gain(u, luminance);
    }
    return out;
  }

  private Vec3 toEye(Eye eye) {
    return lean.turned(frame().directionToLocal(eye.position().minus(frame().origin())));
  }

  Frame frame() {
    return point.sample().frame();
  }

  FollowedPoint point() {
    return point;
  }

  int eyes() {
    return relief.length;
  }

  Lean lean() {
    return lean;
  }

  ReliefKernel kernel() {
    return kernel;
  }

  /** Luminance toward an eye, out of the kernel's rows. */
  float luminance(int eye, float[] rows) {
    return rows[kernel.row(eye, ReliefKernel.LUMINANCE)];
  }

  /** Luminance that the paint would have over bare compound. */
  float compound(int eye, float[] rows) {
    return rows[kernel.row(eye, ReliefKernel.COMPOUND)];
  }

  /** Contrast between compound and paper. */
  float contrast(int eye, float[] rows) {
    float compound = compound(eye, rows);
    float luminance = luminance(eye, rows);
    return Math.abs(compound - luminance) / (compound + luminance);
  }

  /** Magnitude of the change of luminance toward an eye per radian of lean. */
  float change(int eye, float[] rows) {
    return (float) lean.part(rows[kernel.across(eye)], rows[kernel.along(eye)]);
  }

  /** Peak slope of the edge at a level index (0 = level 3). */
  double edgeSlope(int level) {
    return slopes[level];
  }

  /** Height of the crown at a level index (0 = level 3), m. */
  double crownHeight(int level) {
    return crowns[level];
  }

  GainCurve relief(int eye, int level) {
    return relief[eye][level];
  }

  GainCurve mismatch(int eye, int level) {
    return mismatch[eye][level];
  }

  /** Showing of two independent contrasts together. */
  float pooled(float a, float b) {
    return pooling.of(a, b);
  }
}
