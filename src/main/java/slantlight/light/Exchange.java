package slantlight.light;

import java.util.Arrays;
import java.util.BitSet;
import slantlight.geom.Frame;
import slantlight.geom.Lambert;
import slantlight.geom.Vec3;
import slantlight.units.Progress;
import slantlight.units.Workers;

/**
 * Diffuse light exchanged by the inside surfaces, in two levels (Cohen, Greenberg, Immel and Brock,
 * "An efficient radiosity approach for realistic image synthesis", IEEE CG&amp;A 6, 1986): groups
 * exchange all bounces among themselves; patches receive from groups and so keep their own detail.
 *
 * <p>Group factors are made symmetric (reciprocity) and scaled so that each group sees exactly its
 * share of surfaces and openings (closure); patch factors are scaled to agree with them. So energy
 * is kept to the solver's tolerance whatever the sampling.
 */
final class Exchange {
  /** Sources are solved this many at a time; fixed, so that no result depends on threads. */
  private static final int CHUNK = 64;

  private static final int MOST_SWEEPS = 200;
  private static final double TOLERANCE = 1e-6;

  /** Pairs nearer than this many radii are seen patch by patch with exact polygons. */
  private static final double NEAR = 3;

  private final Mesh mesh;
  private final Interior interior;

  /** Groups that exchange light with a group, ascending. */
  private final int[][] neighbours;

  /** Factor from a group to its neighbours. */
  private final float[][] groupFactors;

  /** Factor from a patch to its group's neighbours. */
  private final float[][] patchFactors;

  /** Share of a patch's light that leaves through openings. */
  private final double[] openShares;

  /** Factor that makes a patch's factors and its open share add up to one. */
  private final double[] rowFits;

  Exchange(Mesh mesh, Interior interior, Sights sights, Progress progress) {
    this.mesh = mesh;
    this.interior = interior;
    neighbours = new int[mesh.groups][];
    groupFactors = new float[mesh.groups][];
    patchFactors = new float[mesh.patches.size()][];
    openShares = new double[mesh.patches.size()];
    rowFits = new double[mesh.patches.size()];
    Tally tally = new Tally("light between surfaces", mesh.groups, progress);
    Workers.each(
        mesh.groups,
        g -> {
          trace(g, sights);
          tally.one();
        });
    balance();
  }

  private Exchange(Exchange like, Mesh repainted) {
    mesh = repainted;
    interior = like.interior;
    neighbours = like.neighbours;
    groupFactors = like.groupFactors;
    patchFactors = like.patchFactors;
    openShares = like.openShares;
    rowFits = like.rowFits;
  }

  /** The same exchange in other paint. */
  Exchange on(Mesh repainted) {
    return new Exchange(this, repainted);
  }

  private void trace(int g, Sights sights) {
    Patch any = mesh.patches.get(mesh.groupStart[g]);
    int[] list = candidates(g, any);
    int from = mesh.groupStart[g];
    int to = mesh.groupStart[g + 1];
    Kite kite = new Kite();
    Veil veil = new Veil(interior);
    boolean[] seen = new boolean[list.length];
    for (int p = from; p < to; p++) {
      Patch patch = mesh.patches.get(p);
      float[] row = new float[list.length];
      for (int k = 0; k < list.length; k++) {
        row[k] = (float) (factor(patch, list[k], kite, veil) / Math.PI);
        seen[k] |= row[k] > 0;
      }
      patchFactors[p] = row;
      double open = 0;
      for (Vec3 probe : patch.probes()) {
        open += sights.get().openShare(patch.room(), probe, patch.normal());
      }
      openShares[p] = open / patch.probes().length;
    }
    int kept = 0;
    for (boolean s : seen) {
      kept += s ? 1 : 0;
    }
    int[] short1 = new int[kept];
    int n = 0;
    for (int k = 0; k < list.length; k++) {
      if (seen[k]) {
        short1[n++] = list[k];
      }
    }
    for (int p = from; p < to; p++) {
      float[] row = new float[kept];
      n = 0;
      for (int k = 0; k < list.length; k++) {
        if (seen[k]) {
          row[n++] = patchFactors[p][k];
        }
      }
      patchFactors[p] = row;
    }
    neighbours[g] = short1;
  }

  /** Groups that a group's plane does not rule out. */
  private int[] candidates(int g, Patch any) {
    int[] out = new int[mesh.groups];
    int n = 0;
    Frame f = any.frame();
    for (int room : interior.near(any.room())) {
      for (int h : mesh.roomGroups[room]) {
        double r = mesh.groupRadius[h];
        Frame other = mesh.patches.get(mesh.groupStart[h]).frame();
        if (h != g
            && f.height(mesh.groupCentre[h]) > -r
            && other.height(mesh.groupCentre[g]) > -mesh.groupRadius[g]
            && mesh.patches.get(mesh.groupStart[h]).surface() != any.surface()) {
          out[n++] = h;
        }
      }
    }
    int[] list = Arrays.copyOf(out, n);
    Arrays.sort(list);
    return list;
  }

  /** Pi times the factor from a patch to a group. */
  private double factor(Patch patch, int h, Kite kite, Veil veil) {
    double distance = patch.centre().distance(mesh.groupCentre[h]);
    int room = mesh.patches.get(mesh.groupStart[h]).room();
    boolean near = distance < NEAR * (mesh.groupRadius[h] + patch.edge());
    Vec3[] points = near ? patch.probes() : new Vec3[] {patch.centre()};
    Vec3 n = patch.normal();
    double sum = 0;
    for (Vec3 p : points) {
      veil.draw(patch.room(), p, n, room, mesh.groupCorners[h]);
      for (int q = mesh.groupStart[h]; q < mesh.groupStart[h + 1] && !veil.shut(); q++) {
        Patch other = mesh.patches.get(q);
        double height = other.frame().height(p);
        if (height <= 1e-6 || veil.hides(other.centre(), other.normal())) {
          continue;
        }
        if (near) {
          kite.look(other.rings(), other.frame(), p, n);
          sum += Math.max(0, kite.x * n.x() + kite.y * n.y() + kite.z * n.z());
        } else {
          Vec3 d = other.centre().minus(p);
          double d2 = d.dot(d);
          sum += Math.max(0, d.dot(n)) * height * other.area() / (d2 * d2);
        }
      }
    }
    return sum / points.length;
  }

  /** Makes group factors symmetric and closed, and patch factors agree with them. */
  private void balance() {
    int n = mesh.groups;
    double[][] flux = new double[n][];
    for (int g = 0; g < n; g++) {
      flux[g] = new double[neighbours[g].length];
      for (int p = mesh.groupStart[g]; p < mesh.groupStart[g + 1]; p++) {
        for (int k = 0; k < flux[g].length; k++) {
          flux[g][k] += mesh.patches.get(p).area() * patchFactors[p][k];
        }
      }
    }
    double[][] even = new double[n][];
    for (int g = 0; g < n; g++) {
      even[g] = new double[flux[g].length];
      for (int k = 0; k < even[g].length; k++) {
        int h = neighbours[g][k];
        int back = Arrays.binarySearch(neighbours[h], g);
        even[g][k] = back < 0 ? 0 : (flux[g][k] + flux[h][back]) / 2;
      }
    }
    double[] scale = closing(even);
    for (int g = 0; g < n; g++) {
      groupFactors[g] = new float[even[g].length];
      for (int k = 0; k < even[g].length; k++) {
        double exact = even[g][k] * scale[g] * scale[neighbours[g][k]];
        groupFactors[g][k] = (float) (exact / mesh.groupArea[g]);
        float fit = flux[g][k] > 0 ? (float) (exact / flux[g][k]) : 0;
        for (int p = mesh.groupStart[g]; p < mesh.groupStart[g + 1]; p++) {
          patchFactors[p][k] *= fit;
        }
      }
    }
    for (int p = 0; p < rowFits.length; p++) {
      double sum = 0;
      for (float f : patchFactors[p]) {
        sum += f;
      }
      rowFits[p] = sum > 0 ? Math.min(1.6, (1 - openShares[p]) / sum) : 0;
    }
  }

  /** Factors by group that close a symmetric exchange: Sinkhorn's iteration, kept symmetric. */
  private double[] closing(double[][] even) {
    int n = mesh.groups;
    double[] target = new double[n];
    for (int g = 0; g < n; g++) {
      for (int p = mesh.groupStart[g]; p < mesh.groupStart[g + 1]; p++) {
        target[g] += mesh.patches.get(p).area() * (1 - openShares[p]);
      }
    }
    double[] scale = new double[n];
    Arrays.fill(scale, 1);
    for (int sweep = 0; sweep < 100; sweep++) {
      double[] next = new double[n];
      double worst = 0;
      for (int g = 0; g < n; g++) {
        double sum = 0;
        for (int k = 0; k < even[g].length; k++) {
          sum += even[g][k] * scale[neighbours[g][k]];
        }
        sum *= scale[g];
        double fit = sum > 0 ? Math.sqrt(target[g] / sum) : 1;
        worst = Math.max(worst, Math.abs(fit - 1));
        // A room that does not close must not be made to glow: bound the correction.
        next[g] = Math.max(0.6, Math.min(1.6, scale[g] * fit));
      }
      scale = next;
      if (worst < 1e-7) {
        break;
      }
    }
    return scale;
  }

  double openShare(int patch) {
    return openShares[patch];
  }

  /** Share of a group's evenly bounced light that leaves through openings. */
  double groupOpenShare(int group) {
    double sum = 0;
    for (int p = mesh.groupStart[group]; p < mesh.groupStart[group + 1]; p++) {
      sum += openShares[p] * mesh.patches.get(p).area();
    }
    return sum / mesh.groupArea[group];
  }

  /** Factor from a patch to a group. */
  double patchFactor(int patch, int group) {
    int k = Arrays.binarySearch(neighbours[mesh.patches.get(patch).group()], group);
    return k < 0 ? 0 : patchFactors[patch][k];
  }

  /** Groups that send a group light, ascending. */
  int[] neighbours(int group) {
    return neighbours[group];
  }

  /** Factors from a patch to the neighbours of its group. */
  float[] factors(int patch) {
    return patchFactors[patch];
  }

  /**
   * Turns direct illuminances into total illuminances, in place, for many sources at once.
   *
   * @param light illuminance by patch and source, lx
   */
  void solve(float[][] light) {
    int[] bright = bright(light);
    Workers.each(
        (bright.length + CHUNK - 1) / CHUNK,
        c -> {
          int end = Math.min(bright.length, (c + 1) * CHUNK);
          solve(light, Arrays.copyOfRange(bright, c * CHUNK, end));
        });
  }

  /** Sources of which any light comes in: a sun behind the house brings none. */
  private static int[] bright(float[][] light) {
    BitSet bright = new BitSet();
    for (float[] bySource : light) {
      for (int c = 0; c < bySource.length; c++) {
        if (bySource[c] != 0) {
          bright.set(c);
        }
      }
    }
    return bright.stream().toArray();
  }

  private void solve(float[][] light, int[] sources) {
    int width = sources.length;
    int n = mesh.groups;
    float[][] direct = new float[n][width];
    float[][] once = new float[n][width];
    for (int g = 0; g < n; g++) {
      throwOn(g, direct(light, g, sources), direct[g], once);
    }
    float[][] exitance = bounceOn(once, width);
    float[] sum = new float[width];
    for (int g = 0; g < n; g++) {
      System.arraycopy(once[g], 0, sum, 0, width);
      gather(sum, neighbours[g], groupFactors[g], exitance);
      spread(g, sum, direct, exitance, light, sources);
    }
  }

  /** Light of some sources on the patches of a group. */
  private float[][] direct(float[][] light, int g, int[] sources) {
    int start = mesh.groupStart[g];
    float[][] out = new float[mesh.groupStart[g + 1] - start][sources.length];
    for (int i = 0; i < out.length; i++) {
      float[] from = light[start + i];
      for (int c = 0; c < sources.length; c++) {
        out[i][c] = from[sources[c]];
      }
    }
    return out;
  }

  /**
   * Bounces a group's direct light for the first time. It leaves from the patches themselves, so a
   * sun patch keeps its place.
   *
   * @param in direct light of its patches
   * @param direct its exitance is added to
   * @param once groups whose light is added to
   */
  private void throwOn(int g, float[][] in, float[] direct, float[][] once) {
    double rho = (float) mesh.groupReflectance[g];
    int start = mesh.groupStart[g];
    int[] all = new int[in.length];
    double[] thrown = new double[in.length];
    for (int i = 0; i < in.length; i++) {
      double area = mesh.patches.get(start + i).area();
      all[i] = i;
      float share = (float) (rho * area / mesh.groupArea[g]);
      for (int c = 0; c < in[i].length; c++) {
        direct[c] += share * in[i][c];
      }
      thrown[i] = area * rho * rowFits[start + i];
    }
    float[] factors = new float[in.length];
    for (int k = 0; k < neighbours[g].length; k++) {
      int h = neighbours[g][k];
      for (int i = 0; i < in.length; i++) {
        factors[i] = (float) (thrown[i] * patchFactors[start + i][k] / mesh.groupArea[h]);
      }
      gather(once[h], all, factors, in);
    }
  }

  /** Exitance of groups from their light of the first bounce on. */
  private float[][] bounceOn(float[][] once, int width) {
    int n = mesh.groups;
    float[][] exitance = new float[n][width];
    float[] largest = new float[width];
    for (int g = 0; g < n; g++) {
      for (int c = 0; c < width; c++) {
        exitance[g][c] = (float) mesh.groupReflectance[g] * once[g][c];
        largest[c] = Math.max(largest[c], Math.abs(exitance[g][c]));
      }
    }
    float[] sum = new float[width];
    boolean[] still = new boolean[1];
    for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
      still[0] = true;
      for (int g = 0; g < n; g++) {
        System.arraycopy(once[g], 0, sum, 0, width);
        gather(sum, neighbours[g], groupFactors[g], exitance);
        settle(exitance[g], sum, (float) mesh.groupReflectance[g], largest, still);
      }
      if (still[0]) {
        break;
      }
    }
    return exitance;
  }

  /**
   * Gives a group's bounced light to its patches, in proportion to what each sees, so that the
   * group's mean stays what the exchange of groups says.
   */
  private void spread(
      int g, float[] mean, float[][] first, float[][] later, float[][] light, int[] sources) {
    int width = mean.length;
    int start = mesh.groupStart[g];
    int count = mesh.groupStart[g + 1] - start;
    float[][] part = new float[count][width];
    float[] ratio = new float[width];
    for (int i = 0; i < count; i++) {
      gather(part[i], neighbours[g], patchFactors[start + i], first);
      gather(part[i], neighbours[g], patchFactors[start + i], later);
      float share = (float) (mesh.patches.get(start + i).area() / mesh.groupArea[g]);
      for (int c = 0; c < width; c++) {
        ratio[c] += share * part[i][c];
      }
    }
    for (int c = 0; c < width; c++) {
      ratio[c] = ratio[c] == 0 ? 0 : mean[c] / ratio[c];
    }
    for (int i = 0; i < count; i++) {
      float[] out = light[start + i];
      for (int c = 0; c < width; c++) {
        out[sources[c]] += ratio[c] == 0 ? mean[c] : ratio[c] * part[i][c];
      }
    }
  }

  private static void settle(
      float[] exitance, float[] sum, float reflectance, float[] largest, boolean[] still) {
    float move = 0;
    for (int c = 0; c < sum.length; c++) {
      float next = reflectance * sum[c];
      move = Math.max(move, Math.abs(next - exitance[c]) - (float) TOLERANCE * largest[c]);
      exitance[c] = next;
    }
    still[0] &= move <= 0;
  }

  /** Adds scaled arrays in turn, four to a pass: the sum is then read and written less often. */
  private static void gather(float[] sum, int[] list, float[] factors, float[][] terms) {
    int k = 0;
    for (; k + 4 <= list.length; k += 4) {
      float fa = factors[k];
      float fb = factors[k + 1];
      float fc = factors[k + 2];
      float fd = factors[k + 3];
      float[] a = terms[list[k]];
      float[] b = terms[list[k + 1]];
      float[] c = terms[list[k + 2]];
      float[] d = terms[list[k + 3]];
      for (int i = 0; i < sum.length; i++) {
        sum[i] =
            Math.fma(fd, d[i], Math.fma(fc, c[i], Math.fma(fb, b[i], Math.fma(fa, a[i], sum[i]))));
      }
    }
    for (; k < list.length; k++) {
      float f = factors[k];
      float[] x = terms[list[k]];
      for (int i = 0; i < sum.length; i++) {
        sum[i] = Math.fma(f, x[i], sum[i]);
      }
    }
  }

  /** Light vector of a patch of unit luminance, clipped to the front of the receiver. */
  static final class Kite {
    double x;
    double y;
    double z;
    private double[] corners = new double[64];
    private double[] clipped = new double[128];
    private final double[] vector = new double[3];

    void look(double[][] rings, Frame f, Vec3 p, Vec3 n) {
      vector[0] = 0;
      vector[1] = 0;
      vector[2] = 0;
      for (double[] ring : rings) {
        addRing(ring, f, p, n);
      }
      x = vector[0];
      y = vector[1];
      z = vector[2];
    }

    private void addRing(double[] ring, Frame f, Vec3 p, Vec3 n) {
      int count = ring.length / 2;
      if (corners.length < 3 * count) {
        corners = new double[3 * count];
        clipped = new double[6 * count + 6];
      }
      double ox = f.origin().x() - p.x();
      double oy = f.origin().y() - p.y();
      double oz = f.origin().z() - p.z();
      boolean behind = false;
      for (int i = 0; i < count; i++) {
        double u = ring[2 * i];
        double v = ring[2 * i + 1];
        double cx = ox + f.u().x() * u + f.v().x() * v;
        double cy = oy + f.u().y() * u + f.v().y() * v;
        double cz = oz + f.u().z() * u + f.v().z() * v;
        corners[3 * i] = cx;
        corners[3 * i + 1] = cy;
        corners[3 * i + 2] = cz;
        behind |= cx * n.x() + cy * n.y() + cz * n.z() < 0;
      }
      if (!behind) {
        Lambert.add(corners, count, vector);
        return;
      }
      int kept = Lambert.clip(corners, count, n.x(), n.y(), n.z(), clipped);
      if (kept > 0) {
        Lambert.add(clipped, kept, vector);
      }
    }
  }
}
