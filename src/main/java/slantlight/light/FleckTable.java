package slantlight.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import slantlight.geom.Coverage;
import slantlight.units.Workers;

/** Flecks of some suns on the patches of a house, found surface by surface when first asked for. */
final class FleckTable {
  /**
   * A bundle of suns on one surface, all in few arrays: many points read it again and again.
   *
   * @param patch on which some of the suns shine, ascending, then groups
   * @param partsFrom by place in {@code patch}: where its parts begin in {@code part}; the number
   *     of parts at the end
   * @param part parts on which some of the suns shine, ascending for each patch
   * @param stride no less than the number of suns
   * @param lux for unit normal illuminance: of each patch its mean, then its parts, by sun and
   *     filled up with zeros to the stride
   */
  record Lit(int[] patch, int[] partsFrom, byte[] part, int stride, float[] lux) {
    private static final Lit NONE = new Lit(new int[0], new int[1], new byte[0], 0, new float[0]);

    /** How many patches. */
    int patches() {
      return patch.length;
    }

    /** Place in {@link #lux} of the mean of the i-th patch. */
    int mean(int i) {
      return (i + partsFrom[i]) * stride;
    }

    /** Place in {@link #lux} of a part of the i-th patch, p-th of all parts. */
    int part(int i, int p) {
      return (i + 1 + p) * stride;
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

  private final SunFlecks flecks;
  private final Suns suns;
  private final int[][] nodes;
  private final float[][] weights;
  private final AtomicReferenceArray<Lit> known;
  private final AtomicReferenceArray<Gathered> gathered;

  /** An empty table. */
  FleckTable(SunFlecks flecks, Suns suns) {
    this.flecks = flecks;
    this.suns = suns;
    known = new AtomicReferenceArray<>(flecks.surfaces() * suns.bundles());
    gathered = new AtomicReferenceArray<>(flecks.areas());
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

  int areas() {
    return flecks.areas();
  }

  int parts(int patch) {
    return flecks.parts(patch);
  }

  /** One of the four suns of the grid round a sun. */
  int node(int sun, int k) {
    return nodes[sun][k];
  }

  /** Its share in a mixture. */
  float weight(int sun, int k) {
    return weights[sun][k];
  }

  /** Illuminance of a patch by the i-th sun of a bundle. */
  float mean(int patch, int bundle, int i) {
    Lit lit = on(flecks.surface(patch), bundle);
    int k = Arrays.binarySearch(lit.patch, patch);
    return k < 0 ? 0 : lit.lux[lit.mean(k) + i];
  }

  /** Illuminance of a part of a patch by the i-th sun of a bundle. */
  float at(int patch, int part, int bundle, int i) {
    Lit lit = on(flecks.surface(patch), bundle);
    int k = Arrays.binarySearch(lit.patch, patch);
    if (k < 0) {
      return 0;
    }
    int p = Arrays.binarySearch(lit.part, lit.partsFrom[k], lit.partsFrom[k + 1], (byte) part);
    return p < 0 ? 0 : lit.lux[lit.part(k, p) + i];
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
    int[] sun = new int[suns.size()];
    int[] bundle = new int[suns.size()];
    int count = 0;
    for (int b = 0; b < suns.bundles(); b++) {
      for (int i = suns.start(b); i < suns.start(b + 1); i++) {
        if (mean(patch, b, i - suns.start(b)) > 0) {
          bundle[count] = b;
          sun[count++] = i;
        }
      }
    }
    float[][] parts = new float[flecks.parts(patch)][count];
    float[] mean = new float[count];
    for (int k = 0; k < count; k++) {
      int i = sun[k] - suns.start(bundle[k]);
      mean[k] = mean(patch, bundle[k], i);
      for (int q = 0; q < parts.length; q++) {
        parts[q][k] = at(patch, q, bundle[k], i);
      }
    }
    return new Gathered(Arrays.copyOf(sun, count), parts, mean);
  }

  /**
   * A bundle of suns on a surface. Threads that meet here may work it out twice, to the same bits.
   */
  Lit on(int surface, int bundle) {
    Lit lit = known.get(surface * suns.bundles() + bundle);
    return lit == null ? work(surface, bundle, throughOpenings(bundle)) : lit;
  }

  /** Works out all suns on some surfaces with all threads. */
  void find(int[] surfaces) {
    Workers.each(
        suns.bundles(),
        bundle -> {
          List<Map<Aperture, List<double[]>>> lit = throughOpenings(bundle);
          for (int surface : surfaces) {
            if (known.get(surface * suns.bundles() + bundle) == null) {
              work(surface, bundle, lit);
            }
          }
        });
  }

  /** Forgets all but some surfaces. */
  void keep(int[] surfaces) {
    Set<Integer> kept = IntStream.of(surfaces).boxed().collect(Collectors.toSet());
    for (int i = 0; i < known.length(); i++) {
      if (!kept.contains(i / suns.bundles())) {
        known.set(i, null);
      }
    }
  }

  /** By sun of a bundle: where it shines through openings; to be filled. */
  private List<Map<Aperture, List<double[]>>> throughOpenings(int bundle) {
    List<Map<Aperture, List<double[]>>> out = new ArrayList<>();
    for (int i = suns.start(bundle); i < suns.start(bundle + 1); i++) {
      out.add(new HashMap<>());
    }
    return out;
  }

  private Lit work(int surface, int bundle, List<Map<Aperture, List<double[]>>> lit) {
    int from = suns.start(bundle);
    int size = suns.start(bundle + 1) - from;
    List<List<Thrown>> thrown = new ArrayList<>();
    boolean dark = true;
    for (int i = 0; i < size; i++) {
      thrown.add(flecks.thrown(surface, suns.at(from + i), lit.get(i)));
      dark &= thrown.get(i).isEmpty();
    }
    Lit out = dark ? Lit.NONE : lay(surface, thrown);
    known.set(surface * suns.bundles() + bundle, out);
    return out;
  }

  /** Lays what suns throw on the patches of a surface. */
  private Lit lay(int surface, List<List<Thrown>> thrown) {
    Packing out = new Packing(thrown.size());
    int[] patches = flecks.of(surface);
    SunFlecks.Fleck[][] found = new SunFlecks.Fleck[patches.length][thrown.size()];
    for (int k = 0; k < patches.length; k++) {
      find(patches[k], thrown, found[k]);
      out.add(patches[k], found[k]);
    }
    for (int group : flecks.groupsOf(surface)) {
      out.add(flecks.number(group), flecks.together(group, found));
    }
    return out.packed();
  }

  private void find(int patch, List<List<Thrown>> thrown, SunFlecks.Fleck[] found) {
    Coverage own = flecks.own(patch);
    for (int i = 0; i < found.length; i++) {
      found[i] = thrown.get(i).isEmpty() ? null : flecks.fleck(patch, own, thrown.get(i));
    }
  }

  /** Brings the flecks of the patches of a surface into few arrays. */
  private static final class Packing {
    private final int stride;
    private int[] patch = new int[8];
    private int[] partsFrom = new int[9];
    private byte[] part = new byte[32];
    private float[] lux = new float[256];
    private int patches;
    private int parts;

    Packing(int suns) {
      stride = (suns + Terms.BLOCK - 1) / Terms.BLOCK * Terms.BLOCK;
    }

    /** Adds a patch; {@code found} is null where a sun does not shine on it. */
    void add(int index, SunFlecks.Fleck[] found) {
      if (dark(found)) {
        return;
      }
      if (patches == patch.length) {
        patch = Arrays.copyOf(patch, 2 * patches);
        partsFrom = Arrays.copyOf(partsFrom, 2 * patches + 1);
      }
      int at = place();
      int count = 0;
      for (int i = 0; i < found.length; i++) {
        if (found[i] != null) {
          lux[at + i] = found[i].mean();
          count = found[i].parts().length;
        }
      }
      patch[patches++] = index;
      for (int q = 0; q < count; q++) {
        addPart(q, found);
      }
      partsFrom[patches] = parts;
    }

    private static boolean dark(SunFlecks.Fleck[] found) {
      for (SunFlecks.Fleck fleck : found) {
        if (fleck != null) {
          return false;
        }
      }
      return true;
    }

    private void addPart(int q, SunFlecks.Fleck[] found) {
      int at = place();
      boolean any = false;
      for (int i = 0; i < found.length; i++) {
        lux[at + i] = found[i] == null ? 0 : found[i].parts()[q];
        any |= lux[at + i] != 0;
      }
      if (any) {
        part = parts < part.length ? part : Arrays.copyOf(part, 2 * parts);
        part[parts++] = (byte) q;
      }
    }

    /** Makes room for one more term. */
    private int place() {
      int at = (patches + parts) * stride;
      if (at + stride > lux.length) {
        lux = Arrays.copyOf(lux, 2 * (at + stride));
      }
      return at;
    }

    Lit packed() {
      return new Lit(
          Arrays.copyOf(patch, patches),
          Arrays.copyOf(partsFrom, patches + 1),
          Arrays.copyOf(part, parts),
          stride,
          Arrays.copyOf(lux, (patches + parts) * stride));
    }
  }
}
