package slantlight.light;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import slantlight.geom.Coverage;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.sky.SunGrid;
import slantlight.units.Workers;

/**
 * Where on its patches the sun's beam lies. A patch gives back its mean light; to a point close by
 * it matters whether the bright part of it is the near one, and as the sun moves so does that part,
 * by half a metre between two suns of the grid. Each patch is therefore cut into parts for the beam
 * alone, and those that a point sees are lit by the sun where it stands. Bounced light that comes
 * from these parts is computed from the mean, whose error dies off with each bounce.
 *
 * <p>The outline of each opening is thrown on a patch and its share of each part taken, which is
 * exact where nothing else stands in the way; what does is looked for by a ray from the part's
 * middle.
 */
final class SunFlecks {
  /** Most parts along a side of a patch. */
  private static final int MOST = 8;

  /** Smaller shares of a part are left out. */
  private static final double FAINT = 1e-6;

  private static final int OUTERMOST = 4;

  /** Mean illuminance by a sun of unit normal illuminance from which on a fleck counts. */
  private static final float BARELY = 0.01f;

  /** How many times more than under the suns of the grid a patch must shine to be worth a word. */
  private static final float NARROW = 2;

  /** Sets of suns whose flecks are kept. */
  private static final int KEPT = 3;

  private final Mesh mesh;
  private final Outlook[][] outlooks;
  private final Beam beam;
  private final double edge;
  private final SunGrid grid;
  private final Suns nodeSuns;

  /** By surface: its patches. */
  private final int[][] patchesOf;

  /** By patch: its place among those of its surface. */
  private final int[] place;

  private final Map<Suns, Table> tables =
      new LinkedHashMap<>(4, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Suns, Table> eldest) {
          return size() > KEPT;
        }
      };

  /**
   * @param outlooks by patch, openings whose light reaches it
   * @param edge wanted edge of the parts, m
   * @param grid between whose suns light is mixed otherwise
   */
  SunFlecks(Mesh mesh, Outlook[][] outlooks, Beam beam, double edge, SunGrid grid) {
    this.mesh = mesh;
    this.outlooks = outlooks;
    this.beam = beam;
    this.edge = edge;
    this.grid = grid;
    this.nodeSuns = Suns.of(grid.nodes());
    place = new int[mesh.patches.size()];
    int surfaces = 1 + mesh.patches.stream().mapToInt(Patch::surface).max().orElse(-1);
    List<List<Integer>> of = IntStream.range(0, surfaces).mapToObj(s -> list()).toList();
    for (Patch p : mesh.patches) {
      place[p.index()] = of.get(p.surface()).size();
      of.get(p.surface()).add(p.index());
    }
    patchesOf =
        of.stream()
            .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
  }

  private static List<Integer> list() {
    return new ArrayList<>();
  }

  /** Parts along a side of a patch. */
  int side(int patch) {
    return (int) Math.max(1, Math.min(MOST, Math.round(mesh.patches.get(patch).edge() / edge)));
  }

  /** Parts that a piece of a patch covers. */
  int[] covered(int patch, double[] piece) {
    int side = side(patch);
    double[] box = mesh.patches.get(patch).box();
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

  /**
   * A sun's beam on one patch, for unit normal illuminance.
   *
   * @param parts illuminance by part, along u first
   * @param mean of the patch
   */
  record Fleck(float[] parts, float mean) {}

  /** The beam of one sun on a patch; null when it does not come there. */
  Fleck under(Vec3 sun, int patch) {
    if (sun.z() <= 0) {
      return null;
    }
    List<Thrown> thrown = new ArrayList<>();
    for (Outlook o : outlooks[patch]) {
      Patch p = mesh.patches.get(patch);
      Thrown t = Thrown.on(p.frame(), p.box(), o.aperture(), sun, beam);
      if (t != null) {
        thrown.add(t);
      }
    }
    return fleck(patch, own(patch), thrown);
  }

  /** Box round all patches of a surface. */
  private double[] bounds(int surface) {
    double[] out = mesh.patches.get(patchesOf[surface][0]).box().clone();
    for (int p : patchesOf[surface]) {
      double[] box = mesh.patches.get(p).box();
      out[0] = Math.min(out[0], box[0]);
      out[1] = Math.min(out[1], box[1]);
      out[2] = Math.max(out[2], box[2]);
      out[3] = Math.max(out[3], box[3]);
    }
    return out;
  }

  /** Share of each part that belongs to the patch. */
  private Coverage own(int index) {
    Patch patch = mesh.patches.get(index);
    Coverage own = new Coverage(patch.box(), side(index));
    for (double[] ring : patch.rings()) {
      own.add(ring);
    }
    return own;
  }

  private Fleck fleck(int index, Coverage own, List<Thrown> thrown) {
    Patch patch = mesh.patches.get(index);
    int side = side(index);
    float[] parts = null;
    for (Thrown t : thrown) {
      Outlook outlook = t.meets(patch.box()) ? outlook(index, t.aperture()) : null;
      if (outlook != null) {
        Coverage lit = new Coverage(patch.box(), side);
        for (double[] ring : patch.whole() ? new double[][] {t.ring()} : patch.rings()) {
          lit.add(patch.whole() ? ring : Rings.clip(ring, t.ring()));
        }
        boolean[] open = open(patch, side, lit, outlook, t);
        for (int q = 0; q < side * side; q++) {
          if (open[q]) {
            parts = parts == null ? new float[side * side] : parts;
            parts[q] += (float) (t.lux() * Math.min(1, lit.share(q) / own.share(q)));
          }
        }
      }
    }
    return parts == null ? null : new Fleck(parts, mean(own, parts));
  }

  private Outlook outlook(int patch, Aperture a) {
    for (Outlook o : outlooks[patch]) {
      if (o.aperture() == a) {
        return o;
      }
    }
    return null;
  }

  /**
   * The parts of a patch to which a beam comes. Where it comes to the outermost lit parts or to
   * none of them, so it is taken to do for those between.
   */
  private boolean[] open(Patch patch, int side, Coverage lit, Outlook outlook, Thrown t) {
    boolean[] out = new boolean[side * side];
    int count = 0;
    for (int q = 0; q < out.length; q++) {
      out[q] = lit.share(q) > FAINT;
      count += out[q] ? 1 : 0;
    }
    if (count == 0 || (outlook.clear() && t.shades().isEmpty())) {
      return out;
    }
    if (count > OUTERMOST) {
      int comes = 0;
      for (int q : outermost(out, side)) {
        comes += comes(patch, side, q, outlook, t) ? 1 : 0;
      }
      if (comes == OUTERMOST) {
        return out;
      }
      if (comes == 0) {
        return new boolean[side * side];
      }
    }
    for (int q = 0; q < out.length; q++) {
      out[q] = out[q] && comes(patch, side, q, outlook, t);
    }
    return out;
  }

  /** The lit parts farthest along each diagonal. */
  private static int[] outermost(boolean[] lit, int side) {
    int[] out = new int[OUTERMOST];
    int[] most = {Integer.MIN_VALUE, Integer.MIN_VALUE, Integer.MIN_VALUE, Integer.MIN_VALUE};
    for (int q = 0; q < lit.length; q++) {
      int u = q % side;
      int v = q / side;
      int[] far = {u + v, u - v, v - u, -u - v};
      for (int k = 0; k < OUTERMOST && lit[q]; k++) {
        if (far[k] > most[k]) {
          most[k] = far[k];
          out[k] = q;
        }
      }
    }
    return out;
  }

  private boolean comes(Patch patch, int side, int part, Outlook outlook, Thrown t) {
    double[] box = patch.box();
    int row = part / side;
    double u = box[0] + (box[2] - box[0]) * (part % side + 0.5) / side;
    double v = box[1] + (box[3] - box[1]) * (row + 0.5) / side;
    Vec3 p = patch.frame().toWorld(new Vec2(u, v), Interior.LIFT);
    return (outlook.clear() && !t.maybeShaded(p))
        || beam.open(t.aperture(), outlook.clear(), p, t.sun());
  }

  private static float mean(Coverage own, float[] parts) {
    double sum = 0;
    double all = 0;
    for (int q = 0; q < parts.length; q++) {
      sum += own.share(q) * parts[q];
      all += own.share(q);
    }
    return (float) (sum / all);
  }

  /** Flecks of some suns, found when they are asked for. */
  Table under(Suns suns) {
    synchronized (tables) {
      return tables.computeIfAbsent(suns, Table::new);
    }
  }

  /** Finds the flecks of some suns beforehand, every surface by one thread. */
  void find(Suns suns) {
    Table table = under(suns);
    for (int b = 0; b < suns.bundles(); b++) {
      int bundle = b;
      Workers.each(
          patchesOf.length,
          s -> {
            if (patchesOf[s].length > 0) {
              table.of(patchesOf[s][0], bundle);
            }
          });
    }
  }

  /**
   * A bundle of suns on one patch, from the first to the last that shines on it.
   *
   * @param first of these suns
   * @param parts illuminance by part, then sun, for unit normal illuminance
   * @param mean of the patch, by sun
   * @param narrow the largest mean of a sun round which all four suns of the grid make far less of
   *     the patch shine; 0 when there is none
   */
  record Lit(int first, float[][] parts, float[] mean, float narrow) {
    private static final Lit NEVER = new Lit(0, new float[0][], new float[0], 0);

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

  /**
   * A bundle of suns on the patches of one surface.
   *
   * @param lit by place of the patch; none when all are dark
   * @param narrow whether some patch has narrow flecks
   */
  record OnSurface(Lit[] lit, boolean narrow) {
    private static final OnSurface DARK = new OnSurface(new Lit[0], false);
  }

  /** The flecks of some suns. */
  final class Table {
    private final Suns suns;
    private final int[][] nodes;
    private final float[][] weights;

    /** By surface, then bundle: by patch of the surface. */
    private final AtomicReferenceArray<OnSurface> known;

    private final AtomicReferenceArray<Gathered> gathered =
        new AtomicReferenceArray<>(mesh.patches.size());

    private Table(Suns suns) {
      this.suns = suns;
      known = new AtomicReferenceArray<>(patchesOf.length * suns.bundles());
      int n = suns.start(suns.bundles());
      nodes = new int[n][4];
      weights = new float[n][4];
      for (int i = 0; i < n; i++) {
        grid.weights(suns.at(i), nodes[i], weights[i]);
      }
    }

    Suns suns() {
      return suns;
    }

    int surface(int patch) {
      return mesh.patches.get(patch).surface();
    }

    int place(int patch) {
      return place[patch];
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
      Lit[] lit = on(mesh.patches.get(patch).surface(), bundle).lit;
      return lit.length == 0 ? Lit.NEVER : lit[place[patch]];
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
      float[][] parts = new float[side(patch) * side(patch)][sun.length];
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

    /** The suns of a bundle that shine on the patches of a surface. */
    OnSurface on(int surface, int bundle) {
      int i = surface * suns.bundles() + bundle;
      OnSurface lit = known.get(i);
      if (lit == null) {
        // One thread works it out while others wait for it: it is dearer than the wait.
        synchronized (patchesOf[surface]) {
          lit = known.get(i);
          if (lit == null) {
            lit = work(surface, bundle);
            known.set(i, lit);
          }
        }
      }
      return lit;
    }

    private OnSurface work(int surface, int bundle) {
      int[] patches = patchesOf[surface];
      int from = suns.start(bundle);
      int size = suns.start(bundle + 1) - from;
      List<List<Thrown>> thrown = thrown(surface, from, size);
      if (thrown.stream().allMatch(List::isEmpty)) {
        return OnSurface.DARK;
      }
      Lit[] out = new Lit[patches.length];
      boolean narrow = false;
      for (int k = 0; k < out.length; k++) {
        Coverage own = own(patches[k]);
        Fleck[] found = new Fleck[size];
        for (int i = 0; i < size; i++) {
          found[i] = thrown.get(i).isEmpty() ? null : fleck(patches[k], own, thrown.get(i));
        }
        out[k] = lit(patches[k], from, found);
        narrow |= out[k].narrow > 0;
      }
      return new OnSurface(out, narrow);
    }

    /** What each sun of a bundle throws on a surface. */
    private List<List<Thrown>> thrown(int surface, int from, int size) {
      Set<Aperture> apertures = new LinkedHashSet<>();
      for (int p : patchesOf[surface]) {
        for (Outlook o : outlooks[p]) {
          apertures.add(o.aperture());
        }
      }
      Frame plane = mesh.patches.get(patchesOf[surface][0]).frame();
      double[] box = bounds(surface);
      List<List<Thrown>> out = new ArrayList<>();
      for (int i = from; i < from + size; i++) {
        List<Thrown> list = new ArrayList<>();
        for (Aperture a : apertures) {
          Thrown t = suns.at(i).z() > 0 ? Thrown.on(plane, box, a, suns.at(i), beam) : null;
          if (t != null) {
            list.add(t);
          }
        }
        out.add(list);
      }
      return out;
    }

    private Lit lit(int patch, int from, Fleck[] found) {
      int parts = side(patch) * side(patch);
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
      float narrow = 0;
      for (int i = first; i < end; i++) {
        for (int q = 0; q < parts && found[i] != null; q++) {
          byPart[q][i - first] = found[i].parts()[q];
        }
        mean[i - first] = found[i] == null ? 0 : found[i].mean();
        if (mean[i - first] > narrow && isNarrow(patch, from + i, mean[i - first])) {
          narrow = mean[i - first];
        }
      }
      return new Lit(from + first, byPart, mean, narrow);
    }

    private boolean isNarrow(int patch, int sun, float mean) {
      boolean narrow = mean > BARELY && !suns.equals(nodeSuns);
      for (int k = 0; k < 4 && narrow; k++) {
        int node = nodes[sun][k];
        Lit there = under(nodeSuns).of(patch, nodeSuns.bundleOf(node));
        int i = node - there.first;
        narrow = i < 0 || i >= there.mean.length || NARROW * there.mean[i] < mean;
      }
      return narrow;
    }
  }
}
