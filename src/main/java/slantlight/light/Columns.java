package slantlight.light;

import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import slantlight.geom.Vec3;
import slantlight.sky.SkyState;
import slantlight.sky.SkyZones;
import slantlight.sky.SunGrid;

/**
 * The unit sources, in the order of every response array.
 *
 * <p>Dense columns: sky zones (source: luminance), level ground lit by nine parts of the vault and
 * by the sun as if nothing stood on it (source: illuminance), once for the general ground per unit
 * reflectance and once for ground zones of fixed reflectance; ground luminance stated outright; the
 * sheet in a {@link ShutOpening} (source: luminance); lamps. Then one column for each node of the
 * sun's grid in each of three groups: light of the sun bounced inside, off blocks or off water;
 * what shadows take from the general ground per unit reflectance; what they take from ground of
 * fixed reflectance. Taking shadows as deficits leaves open ground exact between the nodes.
 */
final class Columns {
  static final int LUMPS = 21;
  static final int LUMP_GENERAL = SkyZones.COUNT;
  static final int LUMP_FIXED = LUMP_GENERAL + LUMPS;
  static final int OPEN_GENERAL = LUMP_FIXED + LUMPS;
  static final int OPEN_FIXED = OPEN_GENERAL + 1;
  static final int STATED = OPEN_FIXED + 1;
  static final int SHEET = STATED + 1;
  static final int LAMPS = SHEET + 1;

  /** Groups of sun columns. */
  static final int INSIDE = 0;

  static final int GENERAL = 1;
  static final int FIXED = 2;
  static final int GROUPS = 3;

  private static final int[] LUMP_OF = new int[SkyZones.COUNT];

  static {
    for (int z = 0; z < SkyZones.COUNT; z++) {
      Vec3 d = SkyZones.direction(z);
      double altitude = Math.toDegrees(d.altitude());
      double turn = d.azimuth() / (2 * Math.PI);
      int eighth = (int) Math.floor(8 * turn + 0.5) & 7;
      int quarter = (int) Math.floor(4 * turn + 0.5) & 3;
      LUMP_OF[z] =
          altitude < 24 ? eighth : altitude < 48 ? 8 + eighth : altitude < 72 ? 16 + quarter : 20;
    }
  }

  final int lamps;
  final SunGrid grid;
  final List<Vec3> nodes;

  /** Unit vectors of the nodes: x, y and z of each in turn. */
  final double[] suns;

  /** The nodes as a set. */
  final Set<Vec3> standing;

  final int dense;
  final int total;

  Columns(int lamps, SunGrid grid) {
    this.lamps = lamps;
    this.grid = grid;
    this.nodes = grid.nodes();
    this.suns = nodes.stream().flatMapToDouble(d -> DoubleStream.of(d.x(), d.y(), d.z())).toArray();
    this.standing = Set.copyOf(nodes);
    this.dense = LAMPS + lamps;
    this.total = dense + GROUPS * nodes.size();
  }

  /** Part of the vault a zone belongs to: sectors in bands of 24 degrees, and the top. */
  static int lumpOf(int zone) {
    return LUMP_OF[zone];
  }

  /** First column of a sun group. */
  int sun(int group) {
    return dense + group * nodes.size();
  }

  /** Strengths of the dense sources at one moment, column c at {@code offset + c * stride}. */
  void fill(LightState state, float[] out, int offset, int stride) {
    if (state.lampShares().size() != lamps) {
      throw new IllegalArgumentException(
          "the state has " + state.lampShares().size() + " lamp shares, the house " + lamps);
    }
    SkyState sky = state.sky();
    SkyZones.luminances(sky, out, offset, stride);
    double[] lump = new double[LUMPS];
    double sum = 0;
    for (int z = 0; z < SkyZones.COUNT; z++) {
      double e = out[offset + z * stride] * SkyZones.solidAngle(z) * SkyZones.direction(z).z();
      lump[LUMP_OF[z]] += e;
      sum += e;
    }
    double scale = sum > 0 ? sky.diffuseHorizontalLux() / sum : 0;
    double general = generalFactor(sky);
    double fixed = fixedFactor(sky);
    for (int k = 0; k < LUMPS; k++) {
      out[offset + (LUMP_GENERAL + k) * stride] = (float) (general * lump[k] * scale);
      out[offset + (LUMP_FIXED + k) * stride] = (float) (fixed * lump[k] * scale);
    }
    double beam = sky.sunNormalLux() * Math.max(0, sky.sun().z());
    out[offset + OPEN_GENERAL * stride] = (float) (general * beam);
    out[offset + OPEN_FIXED * stride] = (float) (fixed * beam);
    out[offset + STATED * stride] =
        Double.isNaN(sky.groundLuminance()) ? 0 : (float) sky.groundLuminance();
    out[offset + SHEET * stride] = (float) state.sheet();
    for (int l = 0; l < lamps; l++) {
      out[offset + (LAMPS + l) * stride] = state.lampShares().get(l).floatValue();
    }
  }

  /** Reflectance of the general ground, 0 when its luminance is stated outright. */
  static double generalFactor(SkyState sky) {
    return Double.isNaN(sky.groundLuminance()) ? sky.groundReflectance() : 0;
  }

  /** 1, or 0 when the luminance of all diffuse ground is stated outright. */
  static double fixedFactor(SkyState sky) {
    return Double.isNaN(sky.groundLuminance()) ? 1 : 0;
  }

  /** Dense part of a response's value. */
  double denseValue(float[] response, float[] sources) {
    double sum = 0;
    for (int c = 0; c < dense; c++) {
      sum += (double) response[c] * sources[c];
    }
    return sum;
  }
}
