package slantlight.light;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReferenceArray;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/**
 * Where on its patches the sun's beam lies. A patch gives back its mean light; to a point close by
 * it matters whether the bright part of it is the near one. Each patch is therefore cut into parts
 * for the beam alone: what a part has above or below its patch's mean, for every sun of the grid.
 * Bounced light that comes from these parts is computed from the mean, whose error dies off with
 * each bounce.
 */
final class SunGrain {
  /** Most parts along a side of a patch. */
  private static final int MOST = 8;

  private final Beam beam;
  private final Columns columns;
  private final double edge;
  private final float[][] means;
  private final AtomicReferenceArray<Grain> known;

  /**
   * What the parts of one patch have above the patch's mean, lx per unit normal illuminance.
   *
   * @param nodes suns of the grid for which parts differ, ascending
   * @param above by part, then place in {@code nodes}
   */
  record Grain(int[] nodes, float[][] above) {
    static final Grain NONE = new Grain(new int[0], new float[0][]);

    boolean none() {
      return nodes.length == 0;
    }
  }

  /**
   * @param edge wanted edge of the parts, m
   * @param patches how many patches there are
   */
  SunGrain(Beam beam, Columns columns, double edge, int patches) {
    this.beam = beam;
    this.columns = columns;
    this.edge = edge;
    this.means = new float[patches][];
    this.known = new AtomicReferenceArray<>(patches);
  }

  /** Keeps a patch's mean illuminance by the beam of each sun of the grid; null for none at all. */
  void mean(int patch, float[] byNode) {
    means[patch] = byNode;
  }

  /** The grain of a patch. Threads that meet here may work it out twice, to the same bits. */
  Grain of(Patch patch) {
    Grain grain = known.get(patch.index());
    if (grain == null) {
      grain = means[patch.index()] == null ? Grain.NONE : work(patch, means[patch.index()]);
      known.set(patch.index(), grain);
    }
    return grain;
  }

  /** Parts along a side of a patch. */
  int side(Patch patch) {
    return (int) Math.max(1, Math.min(MOST, Math.round(patch.edge() / edge)));
  }

  private Grain work(Patch patch, float[] mean) {
    int side = side(patch);
    int[] nodes = new int[mean.length];
    float[][] above = new float[side * side][mean.length];
    int count = 0;
    for (int k = 0; k < mean.length; k++) {
      if (mean[k] > 0 && side > 1) {
        float[] parts = above(patch, mean[k], columns.nodes.get(k));
        if (parts != null) {
          for (int q = 0; q < parts.length; q++) {
            above[q][count] = parts[q];
          }
          nodes[count++] = k;
        }
      }
    }
    if (count == 0) {
      return Grain.NONE;
    }
    for (int q = 0; q < above.length; q++) {
      above[q] = Arrays.copyOf(above[q], count);
    }
    return new Grain(Arrays.copyOf(nodes, count), above);
  }

  /**
   * What each part has above the mean under one sun, or null when all are alike: the beam is looked
   * for at the middle of each, and scaled so that the parts together have the mean.
   */
  float[] above(Patch patch, double mean, Vec3 sun) {
    int side = side(patch);
    double[] box = patch.box();
    float[] out = new float[side * side];
    boolean[] there = new boolean[out.length];
    boolean whole = patch.whole();
    double cos = sun.dot(patch.normal());
    double sum = 0;
    int count = 0;
    for (int q = 0; q < out.length; q++) {
      double u = box[0] + (box[2] - box[0]) * (q % side + 0.5) / side;
      int row = q / side;
      double v = box[1] + (box[3] - box[1]) * (row + 0.5) / side;
      there[q] = whole || Rings.inside(patch.rings()[0], u, v);
      if (there[q]) {
        Vec3 p = patch.frame().toWorld(new Vec2(u, v), Interior.LIFT);
        Aperture a = beam.through(patch.room(), p.x(), p.y(), p.z(), sun.x(), sun.y(), sun.z());
        if (a != null) {
          out[q] = (float) (cos * a.transmittance(Beam.cosine(a, sun.x(), sun.y(), sun.z())));
        }
        sum += out[q];
        count++;
      }
    }
    if (!(sum > 0)) {
      return null;
    }
    float scale = (float) (mean * count / sum);
    boolean alike = true;
    for (int q = 0; q < out.length; q++) {
      out[q] = there[q] ? (float) (out[q] * scale - mean) : 0;
      alike &= Math.abs(out[q]) < 1e-3 * mean;
    }
    return alike ? null : out;
  }

  /** Parts that a piece of a patch covers. */
  int[] covered(Patch patch, double[] piece) {
    int side = side(patch);
    double[] box = patch.box();
    int u0 = part(piece[0] + 1e-9, box[0], box[2], side);
    int u1 = part(piece[2] - 1e-9, box[0], box[2], side);
    int v0 = part(piece[1] + 1e-9, box[1], box[3], side);
    int v1 = part(piece[3] - 1e-9, box[1], box[3], side);
    int[] out = new int[(u1 - u0 + 1) * (v1 - v0 + 1)];
    int i = 0;
    for (int v = v0; v <= v1; v++) {
      for (int u = u0; u <= u1; u++) {
        out[i++] = v * side + u;
      }
    }
    return out;
  }

  private static int part(double place, double from, double to, int side) {
    return (int) Math.max(0, Math.min(side - 1, (place - from) / (to - from) * side));
  }
}
