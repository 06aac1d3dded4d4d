package slantlight.score;

import java.util.List;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.Kernel;
import slantlight.scene.Eye;
import slantlight.sight.Coating;

/**
 * The functionals of the light field that decide what a ridge shows.
 *
 * <p>Rows: for each eye the luminance of the paint toward it, the luminance it would have over bare
 * compound, and the change of the first per radian of tilt about the joint (for a spot, also about
 * the other axis); then, for telling reasons only, illuminance, light across (u) and along (v).
 */
final class ReliefKernel implements Kernel {
  static final int LUMINANCE = 0;
  static final int COMPOUND = 1;
  static final int CHANGE_ACROSS = 2;
  static final int CHANGE_ALONG = 3;

  /** Tilt of the central difference, rad: about the slope of a level 4 edge. */
  private static final double TILT = 0.012;

  private final Coating coating;
  private final Coating compound;
  private final boolean spot;
  private final double[] eyes;

  ReliefKernel(FollowedPoint point, Coating coating, Coating compound, boolean spot) {
    this.coating = coating;
    this.compound = compound;
    this.spot = spot;
    this.eyes = localDirections(point.sample().frame(), point.eyes());
  }

  private static double[] localDirections(Frame frame, List<Eye> eyes) {
    double[] out = new double[3 * eyes.size()];
    for (int e = 0; e < eyes.size(); e++) {
      Vec3 d = frame.directionToLocal(eyes.get(e).position().minus(frame.origin()).unit());
      out[3 * e] = d.x();
      out[3 * e + 1] = d.y();
      out[3 * e + 2] = d.z();
    }
    return out;
  }

  private int perEye() {
    return spot ? 4 : 3;
  }

  /** Row of a quantity of an eye. */
  int row(int eye, int quantity) {
    return perEye() * eye + quantity;
  }

  /** Rows that eyes judge by: the first ones. */
  int judged() {
    return row(eyes.length / 3, 0);
  }

  int illuminance() {
    return judged();
  }

  int lightAcross() {
    return judged() + 1;
  }

  int lightAlong() {
    return judged() + 2;
  }

  @Override
  public int rows() {
    return judged() + 3;
  }

  @Override
  public void weigh(double wu, double wv, double wn, double[] out) {
    out[illuminance()] = wn;
    out[lightAcross()] = wu;
    out[lightAlong()] = wv;
    for (int eye = 0; eye < eyes.length / 3; eye++) {
      double ou = eyes[3 * eye];
      double ov = eyes[3 * eye + 1];
      double on = eyes[3 * eye + 2];
      out[row(eye, LUMINANCE)] = coating.reflectance(wu, wv, wn, ou, ov, on) * wn;
      out[row(eye, COMPOUND)] = compound.reflectance(wu, wv, wn, ou, ov, on) * wn;
      out[row(eye, CHANGE_ACROSS)] = changePerTilt(eye, wu, wv, wn, 1, 0);
      if (spot) {
        out[row(eye, CHANGE_ALONG)] = changePerTilt(eye, wu, wv, wn, 0, 1);
      }
    }
  }

  /**
   * Change of luminance toward an eye per radian of lean toward (tu, tv), by central difference.
   */
  double changePerTilt(int eye, double wu, double wv, double wn, double tu, double tv) {
    return (flank(eye, wu, wv, wn, tu, tv, TILT) - flank(eye, wu, wv, wn, tu, tv, -TILT))
        / (2 * TILT);
  }

  /**
   * Luminance toward an eye, per unit normal illuminance from (wu, wv, wn), of a flank whose normal
   * leans by {@code s} radians toward the unit direction (tu, tv) of the surface; 0 where the light
   * or the eye is behind the flank.
   */
  double flank(int eye, double wu, double wv, double wn, double tu, double tv, double s) {
    double cos = Math.sqrt(1 - s * s); // sin s = s to 3e-7 for the steepest edge, 0.03
    double ou = eyes[3 * eye];
    double ov = eyes[3 * eye + 1];
    double on = eyes[3 * eye + 2];
    double wa = wu * tu + wv * tv;
    double oa = ou * tu + ov * tv;
    double wt = cos * wn + s * wa;
    double ot = cos * on + s * oa;
    if (wt <= 0 || ot <= 0) {
      return 0;
    }
    return wt
        * coating.reflectance(
            cos * wa - s * wn, wv * tu - wu * tv, wt, cos * oa - s * on, ov * tu - ou * tv, ot);
  }
}
