package slantlight.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.Incident;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.SourceKind;
import slantlight.light.SunBeams;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;

/**
 * A room as lit at one moment, seen from an eye toward one place, with the real relief of its
 * joints at true strength unless a shot asks for more. Each pixel is LRV / pi times the light
 * vector on the tilted surface (Lambert); light is computed on a grid and interpolated, the sun's
 * beam is tested pixel by pixel. Cast shadows of the ridges are left out; so is the paint's sheen,
 * but for its share in the contrast of the worst place, to which the relief is scaled.
 */
final class LitPicture {
  private static final double HALF_VIEW = Math.tan(Math.toRadians(25));
  private static final double GRID = 0.45;
  private static final int MOST = 18;
  private static final double LIFT = 1e-3;
  private static final double MOST_GAIN = 40;

  /** Where the mean luminance of the surface comes on the screen, linear. */
  private static final double KEY = 0.42;

  private final House house;
  private final LightModel light;
  private final LightState state;
  private final int width;
  private final int height;
  private final Hit[] hits;
  private final Vec3[] sunlight;
  private final LightGrid[] grids;

  /** What a pixel sees: a surface and the place on it, or null for an opening. */
  private record Hit(int surface, Vec2 at) {}

  /**
   * One picture of a series.
   *
   * @param level finish level of every scored surface
   * @param steepness factor on the slopes of the relief; 1 is true
   */
  record Shot(int level, double steepness) {}

  private LitPicture(LightModel light, LightState state, Vec3 eye, Vec3 target, int w, int h) {
    this.house = light.house();
    this.light = light;
    this.state = state;
    this.width = w;
    this.height = h;
    this.hits = look(eye, target);
    this.grids = new LightGrid[house.surfaces().size()];
    for (Hit hit : hits) {
      if (hit != null && grids[hit.surface()] == null) {
        grids[hit.surface()] = new LightGrid(house.surfaces().get(hit.surface()));
      }
    }
    this.sunlight = sunlight();
  }

  /**
   * The same view at several levels with one exposure.
   *
   * @param shots what to show in each picture
   * @return one PNG a shot
   */
  static List<byte[]> of(
      LightModel light,
      LightState state,
      HouseScore score,
      Peak peak,
      List<Shot> shots,
      int width,
      int height) {
    Vec3 eye =
        light.house().eyes().stream()
            .filter(e -> e.id().equals(peak.eyeId()))
            .findFirst()
            .map(Eye::position)
            .orElseThrow();
    LitPicture picture = new LitPicture(light, state, eye, peak.place(), width, height);
    double gain = picture.gain(score, peak);
    double exposure = 0;
    List<byte[]> out = new ArrayList<>();
    for (Shot shot : shots) {
      double[] luminance = picture.shade(score, shot.level(), gain * shot.steepness());
      if (exposure == 0) {
        exposure = KEY / picture.centre(luminance);
      }
      out.add(picture.png(luminance, exposure));
    }
    return out;
  }

  /**
   * Factor by which the relief must be steeper in this matt picture to have, at the worst place,
   * the contrast that the score found there with the paint's sheen.
   */
  private double gain(HouseScore score, Peak peak) {
    for (SurfaceScore s : score.surfaces()) {
      for (JointScore j : s.joints()) {
        if (j.peak().isEmpty() || !j.peak().get().equals(peak)) {
          continue;
        }
        Surface surface = house.surface(s.surfaceId());
        Frame f = surface.face().frame();
        Vec2 along = j.joint().to().minus(j.joint().from()).unit();
        Vec3 across = f.u().times(-along.y()).plus(f.v().times(along.x()));
        Vec3 vector = light.incident(point(surface, f.toPlane(peak.place())), state).lightVector();
        double slope =
            RidgeTable.standard()
                .ridge(RidgeKind.of(j.joint().kind()), 4)
                .measured(j.joint().crownHeight(), j.joint().crownWidth())
                .edge()
                .peakSlope();
        double matt = slope * Math.abs(vector.dot(across)) / Math.max(1e-9, vector.dot(f.n()));
        return Math.max(1, Math.min(MOST_GAIN, peak.contrast() / Math.max(1e-9, matt)));
      }
    }
    return 1;
  }

  private Hit[] look(Vec3 eye, Vec3 target) {
    Vec3 forward = target.minus(eye).unit();
    Vec3 hint = Math.abs(forward.z()) > 0.98 ? Vec3.NORTH : Vec3.UP;
    Vec3 right = forward.cross(hint).unit();
    Vec3 up = right.cross(forward);
    Hit[] out = new Hit[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double a = HALF_VIEW * (2 * (x + 0.5) / width - 1);
        double b = HALF_VIEW * (1 - 2 * (y + 0.5) / height) * height / width;
        out[y * width + x] = first(eye, forward.plus(right.times(a)).plus(up.times(b)));
      }
    }
    return out;
  }

  /** The first surface in front of the eye along a ray. */
  private Hit first(Vec3 eye, Vec3 ray) {
    Hit best = null;
    double nearest = Double.POSITIVE_INFINITY;
    List<Surface> surfaces = house.surfaces();
    for (int i = 0; i < surfaces.size(); i++) {
      Face face = surfaces.get(i).face();
      Frame f = face.frame();
      double facing = f.n().dot(ray);
      if (facing > -1e-9) {
        continue;
      }
      double t = -f.height(eye) / facing;
      if (t > 1e-6 && t < nearest) {
        Vec2 p = f.toPlane(eye.plus(ray.times(t)));
        if (face.contains(p)) {
          nearest = t;
          best = new Hit(i, p);
        }
      }
    }
    return best;
  }

  /** The sun's beam at each pixel, as a vector toward the sun of its strength there, lx. */
  private Vec3[] sunlight() {
    Vec3[] out = new Vec3[hits.length];
    Arrays.fill(out, Vec3.ZERO);
    if (state.sky().sunNormalLux() <= 0 || state.sky().sun().z() <= 0) {
      return out;
    }
    Vec3 sun = state.sky().sun();
    List<SamplePoint> points = new ArrayList<>();
    List<Integer> pixels = new ArrayList<>();
    for (int i = 0; i < hits.length; i++) {
      if (hits[i] != null) {
        Surface s = house.surfaces().get(hits[i].surface());
        if (s.face().frame().n().dot(sun) > 0) {
          points.add(point(s, hits[i].at()));
          pixels.add(i);
        }
      }
    }
    SunBeams beams = light.beams(points);
    for (int k = 0; k < points.size(); k++) {
      double share = beams.transmittance(k, sun.x(), sun.y(), sun.z());
      if (share > 0) {
        out[pixels.get(k)] = sun.times(share * state.sky().sunNormalLux());
      }
    }
    return out;
  }

  private double[] shade(HouseScore score, int level, double steepness) {
    Relief[] relief = new Relief[house.surfaces().size()];
    for (SurfaceScore s : score.surfaces()) {
      int i = house.surfaces().indexOf(house.surface(s.surfaceId()));
      relief[i] = new Relief(s.layout().joints(), level);
    }
    double[] out = new double[hits.length];
    double brightest = 0;
    for (int i = 0; i < hits.length; i++) {
      if (hits[i] == null) {
        out[i] = Double.NaN;
        continue;
      }
      Surface s = house.surfaces().get(hits[i].surface());
      Frame f = s.face().frame();
      Vec2 slope =
          relief[hits[i].surface()] == null
              ? new Vec2(0, 0)
              : relief[hits[i].surface()].slope(hits[i].at()).times(steepness);
      Vec3 tilted = f.n().minus(f.u().times(slope.x())).minus(f.v().times(slope.y())).unit();
      double diffuse = Math.max(0, grids[hits[i].surface()].at(hits[i].at()).dot(tilted));
      double beam = Math.max(0, sunlight[i].dot(tilted));
      out[i] = s.paint().lrv() / Math.PI * (diffuse + beam);
      brightest = Math.max(brightest, out[i]);
    }
    for (int i = 0; i < out.length; i++) {
      if (Double.isNaN(out[i])) {
        out[i] = brightest * 2;
      }
    }
    return out;
  }

  /** Mean luminance of the middle of the picture. */
  private double centre(double[] luminance) {
    double sum = 0;
    int n = 0;
    for (int y = height / 3; y < 2 * height / 3; y++) {
      for (int x = width / 3; x < 2 * width / 3; x++) {
        sum += luminance[y * width + x];
        n++;
      }
    }
    return Math.max(1e-6, sum / n);
  }

  private byte[] png(double[] luminance, double exposure) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    byte[] pixels = ((java.awt.image.DataBufferByte) image.getRaster().getDataBuffer()).getData();
    for (int i = 0; i < luminance.length; i++) {
      double v = 255 * encoded(shoulder(luminance[i] * exposure)) + dither(i);
      pixels[i] = (byte) Math.max(0, Math.min(255, Math.round(v)));
    }
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(image, "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
  }

  /** Linear up to 0.8, then bending toward 1, so that contrasts below are at true strength. */
  private static double shoulder(double v) {
    return v <= 0.8 ? v : 0.8 + 0.2 * (1 - Math.exp(-(v - 0.8) / 0.2));
  }

  /** The sRGB curve (IEC 61966-2-1). */
  private static double encoded(double v) {
    return v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055;
  }

  /** Half a step of fixed noise, so that faint gradients do not break into bands. */
  private static double dither(int i) {
    int h = i * 0x9E3779B1;
    h ^= h >>> 15;
    h *= 0x85EBCA77;
    h ^= h >>> 13;
    return (h & 0xffff) / 65536.0 - 0.5;
  }

  private static SamplePoint point(Surface s, Vec2 p) {
    Frame f = s.face().frame();
    return new SamplePoint(new Frame(f.toWorld(p, LIFT), f.u(), f.v(), f.n()), s.roomId());
  }

  /** The light vector without the sun's beam on a grid over one surface. */
  private final class LightGrid {
    private final double u0;
    private final double v0;
    private final double du;
    private final double dv;
    private final int nu;
    private final int nv;
    private final Vec3[] vectors;

    LightGrid(Surface surface) {
      double lowU = Double.POSITIVE_INFINITY;
      double lowV = Double.POSITIVE_INFINITY;
      double highU = Double.NEGATIVE_INFINITY;
      double highV = Double.NEGATIVE_INFINITY;
      for (Vec2 p : surface.face().outer()) {
        lowU = Math.min(lowU, p.x());
        highU = Math.max(highU, p.x());
        lowV = Math.min(lowV, p.y());
        highV = Math.max(highV, p.y());
      }
      nu = (int) Math.max(2, Math.min(MOST, Math.ceil((highU - lowU) / GRID)));
      nv = (int) Math.max(2, Math.min(MOST, Math.ceil((highV - lowV) / GRID)));
      u0 = lowU;
      v0 = lowV;
      du = (highU - lowU) / nu;
      dv = (highV - lowV) / nv;
      vectors = new Vec3[nu * nv];
      for (int i = 0; i < nu; i++) {
        for (int j = 0; j < nv; j++) {
          Vec2 p = new Vec2(u0 + (i + 0.5) * du, v0 + (j + 0.5) * dv);
          vectors[j * nu + i] = surface.face().contains(p) ? vector(surface, p) : null;
        }
      }
    }

    private Vec3 vector(Surface surface, Vec2 p) {
      Vec3 sum = Vec3.ZERO;
      for (Incident in : light.incident(point(surface, p), state).incidents()) {
        if (in.source().kind() != SourceKind.SUN) {
          sum = sum.plus(in.direction().times(in.normalLux()));
        }
      }
      return sum;
    }

    /** Bilinear between cell middles; cells outside the face are left out of the mean. */
    Vec3 at(Vec2 p) {
      double x = Math.max(0, Math.min(nu - 1, (p.x() - u0) / du - 0.5));
      double y = Math.max(0, Math.min(nv - 1, (p.y() - v0) / dv - 0.5));
      int i = (int) Math.min(nu - 2, Math.floor(x));
      int j = (int) Math.min(nv - 2, Math.floor(y));
      Vec3 sum = Vec3.ZERO;
      double weights = 0;
      for (int k = 0; k < 4; k++) {
        Vec3 v = vectors[(j + k / 2) * nu + i + k % 2];
        double w = (k % 2 == 0 ? 1 - (x - i) : x - i) * (k / 2 == 0 ? 1 - (y - j) : y - j) + 1e-9;
        if (v != null) {
          sum = sum.plus(v.times(w));
          weights += w;
        }
      }
      return weights == 0 ? Vec3.ZERO : sum.times(1 / weights);
    }
  }
}
