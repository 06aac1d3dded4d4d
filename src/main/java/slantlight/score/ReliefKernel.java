package slantlight.score;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.Kernel;
import slantlight.scene.Eye;
import slantlight.scene.Paint;
import slantlight.sight.Coating;
import slantlight.sight.RidgeTable;

/**
 * The functionals of the light field that decide what a ridge shows.
 *
 * <p>Rows: for each eye the luminance of the paint toward it, the luminance it would have over bare
 * compound, and the change of the first per radian of lean toward u (where both axes are wanted,
 * also toward v); then, for telling reasons only, illuminance, light across (u) and along (v).
 */
final class ReliefKernel implements Kernel {
  static final int LUMINANCE = 0;
  static final int COMPOUND = 1;
  static final int CHANGE_ACROSS = 2;
  static final int CHANGE_ALONG = 3;

  /** Tilt of the central difference, rad: about the slope of a level 4 edge. */
  static final double TILT = 0.012;

  /** GGX falls to 1 % of its peak at three times its roughness. */
  private static final double LOBE_REACH = 2.5;

  private static final double LOBE_SHARE = 0.25;

  /** Orientations of a facet: flat, then leaning toward u, away from it, toward v, away from it. */
  private static final int FLAT = 0;

  private static final double[] LEAN_U = {0, TILT, -TILT, 0, 0};
  private static final double[] LEAN_V = {0, 0, 0, TILT, -TILT};
  private static final double COS_TILT = Math.sqrt(1 - TILT * TILT);

  private final Coating coating;
  private final Coating compound;

  /** Rows of an eye. */
  private final int perEye;

  /** Square of the cosine of the facet tilt within which the lobe is not faint. */
  private final double lobeCos2;

  /** Widest angle of what is weighed as one within the lobe, radians. */
  private final double lobeAngle;

  /** Directions to the eyes: u, v and n of each in turn. */
  private final double[] eyes;

  /** The eyes as seen from each orientation of a facet, by eye. */
  private final Coating.Side[][] towardEyes;

  private final Coating.Side[] compoundTowardEyes;

  ReliefKernel(FollowedPoint point, Coating coating, Coating compound, boolean bothAxes) {
    this.coating = coating;
    this.compound = compound;
    this.perEye = bothAxes ? 4 : 3;
    double alpha = coating.roughness();
    double reach = LOBE_REACH * alpha;
    this.lobeCos2 = Double.isNaN(alpha) ? 1 : 1 / (1 + reach * reach);
    this.lobeAngle = Math.min(SMOOTH, LOBE_SHARE * alpha);
    this.eyes = localDirections(point.sample().frame(), point.eyes());
    this.towardEyes = new Coating.Side[eyes.length / 3][];
    this.compoundTowardEyes = new Coating.Side[eyes.length / 3];
    for (int e = 0; e < towardEyes.length; e++) {
      towardEyes[e] = sides(eyes[3 * e], eyes[3 * e + 1], eyes[3 * e + 2]);
      compoundTowardEyes[e] = compound.side(eyes[3 * e + 2]);
    }
  }

  /** Kernel of a point on paint over the compound of level 4. */
  static ReliefKernel of(FollowedPoint point, Paint paint, RidgeTable table, boolean bothAxes) {
    return new ReliefKernel(
        point, Coating.of(paint), Coating.of(paint, table.roughnessGain(4)), bothAxes);
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

  /** A direction as seen from each orientation of a facet. */
  private Coating.Side[] sides(double u, double v, double n) {
    Coating.Side[] out = new Coating.Side[2 * perEye - 3];
    out[FLAT] = coating.side(n);
    for (int f = 1; f < out.length; f++) {
      out[f] = coating.side(COS_TILT * n + LEAN_U[f] * u + LEAN_V[f] * v);
    }
    return out;
  }

  /** Row of a quantity of an eye. */
  int row(int eye, int quantity) {
    return perEye * eye + quantity;
  }

  /** Row of an eye's change of luminance with lean toward u. */
  int across(int eye) {
    return row(eye, CHANGE_ACROSS);
  }

  /**
   * Row of an eye's change of luminance with lean toward v; toward u where that is all there is.
   */
  int along(int eye) {
    return row(eye, perEye - 1);
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
    Coating.Side[] in = sides(wu, wv, wn);
    Coating.Side inCompound = compound.side(wn);
    for (int eye = 0; eye < towardEyes.length; eye++) {
      Coating.Side[] to = towardEyes[eye];
      double h2 = 2 + 2 * (wu * eyes[3 * eye] + wv * eyes[3 * eye + 1] + wn * eyes[3 * eye + 2]);
      double fresnel = coating.fresnel(h2);
      int row = row(eye, 0);
      out[row + LUMINANCE] = lit(in[FLAT], to[FLAT], h2, fresnel);
      out[row + COMPOUND] =
          wn * compound.reflectance(inCompound, compoundTowardEyes[eye], h2, fresnel);
      for (int f = 1; f < to.length; f += 2) {
        double toward = lit(in[f], to[f], h2, fresnel);
        double away = lit(in[f + 1], to[f + 1], h2, fresnel);
        out[row + CHANGE_ACROSS + f / 2] = (toward - away) / (2 * TILT);
      }
    }
  }

  /**
   * Toward what an eye sees mirrored, the lobe's slope is what counts: a quarter of its width will
   * do.
   */
  @Override
  public double widest(double wu, double wv, double wn) {
    for (int e = 0; e < eyes.length; e += 3) {
      double hn = wn + eyes[e + 2];
      double h2 = 2 + 2 * (wu * eyes[e] + wv * eyes[e + 1] + wn * eyes[e + 2]);
      if (hn * hn > lobeCos2 * h2) {
        return lobeAngle;
      }
    }
    return SMOOTH;
  }

  /** Luminance toward an eye of a facet, per unit illuminance square to the light. */
  private double lit(Coating.Side in, Coating.Side to, double h2, double fresnel) {
    return in.cos() * coating.reflectance(in, to, h2, fresnel);
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

  /** Kernels are equal when they weigh every light alike. */
  @Override
  public boolean equals(Object o) {
    return o instanceof ReliefKernel k
        && perEye == k.perEye
        && coating.equals(k.coating)
        && compound.equals(k.compound)
        && Arrays.equals(eyes, k.eyes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(perEye, coating, compound, Arrays.hashCode(eyes));
  }
}
