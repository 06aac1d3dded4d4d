package slantlight.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How flecks of sun on patches, and on groups seen as a whole, enter a sample's rows once bounced.
 * Their weights lie in few arrays: points are asked for the flecks of thousands of suns.
 */
final class NearFlecks {
  private final int rows;

  /** Surfaces on which they lie. */
  private final int[] surfaces;

  /** By patch or group: its entry, or -1. */
  private final int[] entry;

  /** By entry: first factor of the patch as a whole, or -1. */
  private final int[] whole;

  /** By entry: where its parts begin in {@link #byPart}. */
  private final int[] partsFrom;

  /** By part of an entry: its first factor, or -1. */
  private final int[] byPart;

  /** By row from each first one. */
  private final float[] factors;

  /** By sun of the grid: its place in {@link #atNodes}, or -1. */
  private final int[] node;

  /** What the rows hold of flecks under the suns of the grid: by place, then row. */
  private final float[] atNodes;

  private NearFlecks(Gathering from, int[] node, float[] atNodes) {
    rows = from.rows;
    surfaces = from.list.stream().mapToInt(e -> from.table.surface(e.area)).distinct().toArray();
    entry = from.entry;
    whole = new int[from.list.size()];
    partsFrom = new int[whole.length];
    byPart = new int[from.list.stream().mapToInt(e -> e.byPart.length).sum()];
    float[] all = new float[rows * (whole.length + byPart.length)];
    int used = 0;
    int part = 0;
    for (int i = 0; i < whole.length; i++) {
      Entry e = from.list.get(i);
      partsFrom[i] = part;
      whole[i] = e.whole == null ? -1 : used;
      used = append(e.whole, all, used);
      for (float[] f : e.byPart) {
        byPart[part++] = f == null ? -1 : used;
        used = append(f, all, used);
      }
    }
    factors = Arrays.copyOf(all, used);
    this.node = node;
    this.atNodes = atNodes;
  }

  private static int append(float[] some, float[] all, int used) {
    if (some == null) {
      return used;
    }
    System.arraycopy(some, 0, all, used, some.length);
    return used + some.length;
  }

  /** None. */
  static NearFlecks none(RoomLight rooms) {
    return new Gathering(0, rooms.flecks(), rooms).finish(new float[0][], 0);
  }

  /**
   * By how much flecks bring a sample more than the four suns of the grid round each sun do, mixed.
   *
   * @param firstRow the first row wanted
   * @param out [row - firstRow][sun - first sun of the bundle]; overwritten
   */
  void beyondMixture(FleckTable table, int bundle, int firstRow, float[][] out) {
    int from = table.suns().start(bundle);
    int size = table.suns().start(bundle + 1) - from;
    for (float[] row : out) {
      Arrays.fill(row, 0, size, 0);
    }
    for (int i = 0; i < size && atNodes.length > 0; i++) {
      takeMixed(table, from + i, firstRow, i, out);
    }
    Terms terms = new Terms(factors, out, size);
    for (int surface : surfaces) {
      add(table.on(surface, bundle), firstRow, terms);
    }
    terms.addAll();
  }

  private void takeMixed(FleckTable table, int sun, int firstRow, int at, float[][] out) {
    for (int k = 0; k < 4; k++) {
      int place = node[table.node(sun, k)];
      float weight = table.weight(sun, k);
      if (place >= 0 && weight != 0) {
        for (int r = 0; r < out.length; r++) {
          out[r][at] -= weight * atNodes[place * rows + firstRow + r];
        }
      }
    }
  }

  /** Adds what counts of a surface's flecks. */
  private void add(FleckTable.Lit lit, int firstRow, Terms terms) {
    for (int i = 0; i < lit.patches(); i++) {
      int e = entry[lit.patch()[i]];
      if (e < 0) {
        continue;
      }
      if (whole[e] >= 0) {
        terms.add(lit.lux(), lit.mean(i), whole[e] + firstRow);
      }
      for (int p = lit.partsFrom()[i]; p < lit.partsFrom()[i + 1]; p++) {
        int factor = byPart[partsFrom[e] + lit.part()[p]];
        if (factor >= 0) {
          terms.add(lit.lux(), lit.part(i, p), factor + firstRow);
        }
      }
    }
  }

  /**
   * Weights of one patch or group: as a whole, and by part. Null where there are none.
   *
   * <p>{@code later} is the weight of what it sends by way of others: bounced light has it already
   * for the suns of the grid.
   */
  private static final class Entry {
    private final int area;
    private final float[][] byPart;
    private float[] whole;
    private float[] later;

    private Entry(int area, int parts) {
      this.area = area;
      byPart = new float[parts][];
    }
  }

  /** Gathers the weights of what a sample sees. */
  static final class Gathering {
    private final int rows;
    private final SunFlecks flecks;
    private final FleckTable table;
    private final RoomLight rooms;
    private final int[] entry;
    private final List<Entry> list = new ArrayList<>();

    /** The patch or group that was added last, and its weights so far. */
    private int group = -1;

    private int patch = -1;
    private final float[] weights;

    Gathering(int rows, SunFlecks flecks, RoomLight rooms) {
      this.rows = rows;
      this.flecks = flecks;
      this.rooms = rooms;
      table = flecks.atNodes();
      weights = new float[rows];
      entry = new int[table.areas()];
      Arrays.fill(entry, -1);
    }

    /**
     * Adds a piece of a patch, or a group.
     *
     * @param of the patch, or -1 for the group as a whole
     * @param box bounds of the piece; null for all of the patch
     * @param byRow the receiver's weights of its direction
     * @param light multiplies them
     */
    void add(int in, int of, double[] box, double[] byRow, double light) {
      if (in != group || of != patch) {
        passOn();
        group = in;
        patch = of;
      }
      addTo(weights, byRow, light);
      if (!rooms.mayShine(in, of)) {
        return;
      }
      Entry e = entry(of < 0 ? flecks.number(in) : of);
      if (box == null) {
        e.whole = e.whole == null ? new float[rows] : e.whole;
        addTo(e.whole, byRow, light);
        return;
      }
      int[] parts = flecks.covered(of, box);
      for (int q : parts) {
        e.byPart[q] = e.byPart[q] == null ? new float[rows] : e.byPart[q];
        addTo(e.byPart[q], byRow, light / parts.length);
      }
    }

    private void addTo(float[] sums, double[] byRow, double light) {
      for (int r = 0; r < rows; r++) {
        sums[r] += (float) (byRow[r] * light);
      }
    }

    private Entry entry(int area) {
      if (entry[area] < 0) {
        entry[area] = list.size();
        list.add(new Entry(area, table.parts(area)));
      }
      return list.get(entry[area]);
    }

    /** Notes what the patch added last passes on from flecks on groups. */
    private void passOn() {
      if (patch >= 0) {
        RoomLight.Passed from = rooms.passedTo(group);
        float[] shares = from.shares()[rooms.placeInGroup(group, patch)];
        for (int k = 0; k < shares.length; k++) {
          Entry e = entry(flecks.number(from.groups()[k]));
          e.later = e.later == null ? new float[rows] : e.later;
          Product.add(e.later, shares[k], weights);
        }
      }
      Arrays.fill(weights, 0);
    }

    /**
     * Adds the flecks of the suns of the grid to a sample's rows.
     *
     * @param out by row, then column
     * @param firstSun column of the first sun of the grid
     */
    NearFlecks finish(float[][] out, int firstSun) {
      passOn();
      int nodes = table.suns().size();
      float[][] sums = new float[rows][nodes];
      float[][] spare = new float[rows][nodes];
      for (Entry e : list) {
        addTo(sums, e.area, terms(e), spare);
      }
      for (int r = 0; r < rows; r++) {
        for (int k = 0; k < nodes; k++) {
          out[r][firstSun + k] += sums[r][k];
        }
      }
      for (Entry e : list) {
        if (e.later != null) {
          addTo(sums, e.area, new float[][] {e.later}, spare);
          e.whole = e.whole == null ? new float[rows] : e.whole;
          Product.add(e.whole, 1, e.later);
        }
      }
      int[] node = new int[nodes];
      float[] all = new float[nodes * rows];
      int count = 0;
      for (int k = 0; k < nodes; k++) {
        node[k] = -1;
        for (int r = 0; r < rows; r++) {
          all[count * rows + r] = sums[r][k];
          node[k] = sums[r][k] == 0 ? node[k] : count;
        }
        count += node[k] < 0 ? 0 : 1;
      }
      return new NearFlecks(this, node, Arrays.copyOf(all, count * rows));
    }

    /** Weights of an area as a whole, then by part. */
    private static float[][] terms(Entry e) {
      float[][] out = new float[1 + e.byPart.length][];
      out[0] = e.whole;
      System.arraycopy(e.byPart, 0, out, 1, e.byPart.length);
      return out;
    }

    private void addTo(float[][] out, int area, float[][] weights, float[][] spare) {
      FleckTable.Gathered lit = table.all(area);
      int[] sun = lit.sun();
      if (sun.length == 0) {
        return;
      }
      float[][] terms = new float[weights.length][];
      float[] factors = new float[weights.length * rows];
      int[] start = new int[weights.length];
      int count = 0;
      for (int t = 0; t < weights.length; t++) {
        if (weights[t] != null) {
          terms[count] = t == 0 ? lit.mean() : lit.parts()[t - 1];
          start[count] = count * rows;
          System.arraycopy(weights[t], 0, factors, count++ * rows, rows);
        }
      }
      for (float[] row : spare) {
        Arrays.fill(row, 0, sun.length, 0);
      }
      Product.add(spare, rows, terms, count, factors, start, sun.length);
      for (int r = 0; r < rows; r++) {
        for (int i = 0; i < sun.length; i++) {
          out[r][sun[i]] += spare[r][i];
        }
      }
    }
  }
}
