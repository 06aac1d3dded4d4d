package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import slantlight.geom.Coverage;

/** Flecks of some suns on the patches of a house, found surface by surface when first asked for. */
final class FleckTable {
  /**
   * A bundle of suns on one patch, from the first to the last that shines on it.
   *
   * @param first of these suns
   * @param parts illuminance by part, then sun, for unit normal illuminance
   * @param mean of the patch, by sun
   */
  record Lit(int first, float[][] parts, float[] mean) {
    private static final Lit NEVER = new Lit(0, new float[0][], new float[0]);

    boolean dark() {
      return mean.length == 0;
    }
  }

  /**
   * Suns that shine on one patch.
   *
   * @param sun ascending
   * @param parts illuminance by part, then place in {@code sun}
   * @param mean of the patch, by place in {@code sun}
   */
  record Gathered(int[] sun, float[][] parts, float[] mean) {}

  /** Of a surface on which no sun shines. */
  private static final Lit[] DARK = {};

  private final SunFlecks flecks;
  private final Suns suns;
  private final int[][] nodes;
  private final float[][] weights;
  private final AtomicReferenceArray<Lit[]> known;
  private final AtomicReferenceArray<Gathered> gathered;

  /** An empty table. */
  FleckTable(SunFlecks flecks, Suns suns) {
    this.flecks = flecks;
    this.suns = suns;
    known = new AtomicReferenceArray<>(flecks.surfaces() * suns.bundles());
    gathered = new AtomicReferenceArray<>(flecks.patches());
    int n = suns.size();
    nodes = new int[n][4];
    weights = new float[n][4];
    for (int i = 0; i < n; i++) {
      flecks.grid().weights(suns.at(i), nodes[i], weights[i]);
    }
  }

  Suns suns() {
    return suns;
  }

  int surface(int patch) {
    return flecks.surface(patch);
  }

  /** Place of a patch among those of its surface. */
  int place(int patch) {
    return flecks.place(patch);
  }

  /** One of the four suns of the grid round a sun. */
  int node(int sun, int k) {
    return nodes[sun][k];
  }

  /** Its share in a mixture. */
  float weight(int sun, int k) {
    return weights[sun][k];
  }

  /** The suns of a bundle that shine on a patch. */
  Lit of(int patch, int bundle) {
    Lit[] lit = on(flecks.surface(patch), bundle);
    return lit.length == 0 ? Lit.NEVER : lit[flecks.place(patch)];
  }

  /** All suns that shine on a patch, one after another. */
  Gathered all(int patch) {
    Gathered all = gathered.get(patch);
    if (all == null) {
      all = gather(patch);
      gathered.set(patch, all);
    }
    return all;
  }

  private Gathered gather(int patch) {
    List<Lit> lit = new ArrayList<>();
    for (int bundle = 0; bundle < suns.bundles(); bundle++) {
      lit.add(of(patch, bundle));
    }
    int[] sun =
        lit.stream()
            .flatMapToInt(
                l ->
                    IntStream.range(0, l.mean().length)
                        .filter(i -> l.mean()[i] > 0)
                        .map(i -> l.first() + i))
            .toArray();
    float[][] parts = new float[flecks.parts(patch)][sun.length];
    float[] mean = new float[sun.length];
    int at = 0;
    for (Lit l : lit) {
      for (int i = 0; i < l.mean().length; i++) {
        if (l.mean()[i] > 0) {
          for (int q = 0; q < parts.length; q++) {
            parts[q][at] = l.parts()[q][i];
          }
          mean[at++] = l.mean()[i];
        }
      }
    }
    return new Gathered(sun, parts, mean);
  }

  /**
   * The suns of a bundle that shine on the patches of a surface, by place of the patch; none when
   * all are dark. Threads that meet here may work it out twice, to the same bits.
   */
  Lit[] on(int surface, int bundle) {
    int i = surface * suns.bundles() + bundle;
    Lit[] lit = known.get(i);
    if (lit == null) {
      lit = work(surface, bundle);
      known.set(i, lit);
    }
    return lit;
  }

  private Lit[] work(int surface, int bundle) {
    int[] patches = flecks.of(surface);
    int from = suns.start(bundle);
    int size = suns.start(bundle + 1) - from;
    List<List<Thrown>> thrown = flecks.thrown(surface, suns, bundle);
    if (thrown.stream().allMatch(List::isEmpty)) {
      return DARK;
    }
    Lit[] out = new Lit[patches.length];
    for (int k = 0; k < out.length; k++) {
      Coverage own = flecks.own(patches[k]);
      SunFlecks.Fleck[] found = new SunFlecks.Fleck[size];
      for (int i = 0; i < size; i++) {
        found[i] = thrown.get(i).isEmpty() ? null : flecks.fleck(patches[k], own, thrown.get(i));
      }
      out[k] = lit(patches[k], from, found);
    }
    return out;
  }

  private Lit lit(int patch, int from, SunFlecks.Fleck[] found) {
    int parts = flecks.parts(patch);
    int first = 0;
    int end = found.length;
    while (first < end && found[first] == null) {
      first++;
    }
    while (end > first && found[end - 1] == null) {
      end--;
    }
    if (first == end) {
      return Lit.NEVER;
    }
    float[][] byPart = new float[parts][end - first];
    float[] mean = new float[end - first];
    for (int i = first; i < end; i++) {
      for (int q = 0; q < parts && found[i] != null; q++) {
        byPart[q][i - first] = found[i].parts()[q];
      }
      mean[i - first] = found[i] == null ? 0 : found[i].mean();
    }
    return new Lit(from + first, byPart, mean);
  }
}
