package slantlight.light;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import slantlight.geom.Coverage;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec3;
import slantlight.sky.SunGrid;

/**
 * Where on its patches the sun's beam lies. A patch gives back its mean light; to a point close by
 * it matters whether the bright part of it is the near one, and as the sun moves so does that part,
 * by half a metre between two suns of the grid. Each patch is therefore cut into parts for the beam
 * alone, and those that a point sees are lit by the sun where it stands. Bounced light that comes
 * from these parts is computed from the mean, whose error dies off with each bounce.
 *
 * <p>The outline of each opening is thrown on a patch and its share of each part taken, which is
 * exact; the shadows of what else stands in the way are cut out of it.
 */
final class SunFlecks {
  /** Most parts along a side of a patch. */
  private static final int MOST = 8;

  /** Smaller shares of a part are left out. */
  private static final double FAINT = 1e-6;

  /** Sets of suns whose flecks are kept. */
  private static final int KEPT = 6;

  private final Mesh mesh;
  private final Interior interior;
  private final Aperture[][] windows;
  private final Beam beam;
  private final double edge;
  private final SunGrid grid;
  private final FleckTable atNodes;

  /** By surface: its patches. */
  private final int[][] patchesOf;

  /** By surface: its groups. */
  private final int[][] groupsOf;

  private final AtomicReferenceArray<Landing> landings;

  private final Map<Suns, FleckTable> tables =
      new LinkedHashMap<>(4, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Suns, FleckTable> eldest) {
          return size() > KEPT;
        }
      };

  /**
   * @param windows by patch, openings whose light reaches it
   * @param edge wanted edge of the parts, m
   * @param grid between whose suns light is mixed otherwise
   */
  SunFlecks(
      Mesh mesh, Interior interior, Aperture[][] windows, Beam beam, double edge, SunGrid grid) {
    this.interior = interior;
    this.mesh = mesh;
    this.windows = windows;
    this.beam = beam;
    this.edge = edge;
    this.grid = grid;
    int surfaces = 1 + mesh.patches.stream().mapToInt(Patch::surface).max().orElse(-1);
    List<List<Integer>> of = new ArrayList<>();
    for (int s = 0; s < surfaces; s++) {
      of.add(new ArrayList<>());
    }
    for (Patch p : mesh.patches) {
      of.get(p.surface()).add(p.index());
    }
    patchesOf =
        of.stream()
            .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
    groupsOf =
        IntStream.range(0, surfaces)
            .mapToObj(
                s ->
                    IntStream.range(0, mesh.groups)
                        .filter(g -> mesh.patches.get(mesh.groupStart[g]).surface() == s)
                        .toArray())
            .toArray(int[][]::new);
    landings = new AtomicReferenceArray<>(patchesOf.length);
    atNodes = new FleckTable(this, Suns.of(grid.nodes()));
  }

  int patches() {
    return mesh.patches.size();
  }

  /** Number of a group as a whole: those of the groups follow those of the patches. */
  int number(int group) {
    return patches() + group;
  }

  /** How many patches and groups. */
  int areas() {
    return patches() + mesh.groups;
  }

  int surfaces() {
    return patchesOf.length;
  }

  /** The patches of a surface. */
  int[] of(int surface) {
    return patchesOf[surface];
  }

  /** The groups of a surface. */
  int[] groupsOf(int surface) {
    return groupsOf[surface];
  }

  /** Surface of a patch or a group. */
  int surface(int area) {
    int patch = area < patches() ? area : mesh.groupStart[area - patches()];
    return mesh.patches.get(patch).surface();
  }

  SunGrid grid() {
    return grid;
  }

  /** Parts of a patch; of a group none. */
  int parts(int area) {
    return area < patches() ? side(area) * side(area) : 0;
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
   * @param parts illuminance by part, along u first; none for a group
   * @param mean of the patch
   */
  record Fleck(float[] parts, float mean) {}

  /** Flecks of one sun, found when they are asked for. */
  FleckTable under(Vec3 sun) {
    return new FleckTable(this, Suns.of(List.of(sun)));
  }

  /**
   * What one sun throws on a surface, opening by opening.
   *
   * @param lit where the sun shines through openings, as far as known
   */
  List<Thrown> thrown(int surface, Vec3 sun, Map<Aperture, List<double[]>> lit) {
    Landing on = landing(surface);
    List<Thrown> out = new ArrayList<>();
    for (int i = 0; i < on.from.length && sun.z() > 0 && sun.dot(on.plane.n()) > 0; i++) {
      Aperture a = on.from[i];
      List<double[]> rings = lit.computeIfAbsent(a, k -> beam.lit(k, sun));
      Thrown t = Thrown.on(on.plane, on.box, a, rings, on.between[i], sun);
      if (t != null) {
        out.add(t);
      }
    }
    return out;
  }

  /**
   * A surface as beams meet it.
   *
   * @param box round its patches
   * @param from openings that may throw light on it
   * @param between what may stand before each
   */
  private record Landing(Frame plane, double[] box, Aperture[] from, Shade[][] between) {}

  private Landing landing(int surface) {
    Landing known = landings.get(surface);
    if (known == null) {
      known = land(surface);
      landings.set(surface, known);
    }
    return known;
  }

  private Landing land(int surface) {
    int[] patches = patchesOf[surface];
    if (patches.length == 0) {
      return new Landing(null, null, new Aperture[0], null);
    }
    Patch first = mesh.patches.get(patches[0]);
    double[] box = bounds(surface);
    Set<Aperture> from = new LinkedHashSet<>();
    for (int p : patches) {
      from.addAll(List.of(windows[p]));
    }
    Shade[][] between =
        from.stream()
            .map(a -> interior.between(first.room(), first.frame(), box, a))
            .toArray(Shade[][]::new);
    return new Landing(first.frame(), box, from.toArray(Aperture[]::new), between);
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

  /** Share of each part of a patch that belongs to it. */
  Coverage own(int index) {
    Patch patch = mesh.patches.get(index);
    Coverage own = new Coverage(patch.box(), side(index));
    for (double[] ring : patch.rings()) {
      own.add(ring);
    }
    return own;
  }

  /** What openings throw on a patch; null when nothing of it comes there. */
  Fleck fleck(int index, Coverage own, List<Thrown> thrown) {
    Patch patch = mesh.patches.get(index);
    int side = side(index);
    float[] parts = null;
    for (Thrown t : thrown) {
      Coverage lit = null;
      boolean all = false;
      for (int i = 0; i < t.rings().size() && !all; i++) {
        if (Rings.meet(t.boxes().get(i), patch.box())) {
          all = patch.whole() && Rings.holds(t.rings().get(i), patch.box());
          if (all) {
            lit = own;
          } else {
            lit = lit == null ? new Coverage(patch.box(), side) : lit;
            add(t.rings().get(i), patch, lit);
          }
        }
      }
      if (lit != null) {
        parts = parts == null ? new float[side * side] : parts;
        shine(t, lit, own, parts);
      }
    }
    float mean = parts == null ? 0 : mean(own, parts);
    return mean == 0 ? null : new Fleck(parts, mean);
  }

  private static void shine(Thrown t, Coverage lit, Coverage own, float[] parts) {
    for (int q = 0; q < parts.length; q++) {
      if (lit.share(q) > FAINT) {
        parts[q] += (float) (t.lux() * Math.min(1, lit.share(q) / own.share(q)));
      }
    }
  }

  /**
   * Flecks of some suns on a group as a whole.
   *
   * @param found by patch of the group's surface, then sun
   */
  Fleck[] together(int group, Fleck[][] found) {
    int first = patchesOf[surface(number(group))][0];
    Fleck[] out = new Fleck[found[0].length];
    for (int i = 0; i < out.length; i++) {
      float mean = 0;
      for (int p = mesh.groupStart[group]; p < mesh.groupStart[group + 1]; p++) {
        Fleck fleck = found[p - first][i];
        double share = mesh.patches.get(p).area() / mesh.groupArea[group];
        mean += fleck == null ? 0 : (float) (share * fleck.mean());
      }
      out[i] = mean == 0 ? null : new Fleck(new float[0], mean);
    }
    return out;
  }

  private static void add(double[] ring, Patch patch, Coverage lit) {
    if (patch.whole()) {
      lit.add(ring);
      return;
    }
    for (double[] own : patch.rings()) {
      lit.add(Rings.clip(own, ring));
    }
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
  FleckTable under(Suns suns) {
    synchronized (tables) {
      return tables.computeIfAbsent(suns, s -> new FleckTable(this, s));
    }
  }

  /** Flecks of the suns of the grid. */
  FleckTable atNodes() {
    return atNodes;
  }

  /** Finds the flecks of the suns of the grid with all threads. */
  void findAtNodes() {
    atNodes.find(IntStream.range(0, surfaces()).toArray());
  }

  /** Finds the flecks of some suns in some rooms with all threads. */
  void find(Suns suns, int[] rooms) {
    under(suns).find(surfacesOf(rooms));
  }

  /** Lets go of the flecks of some suns in all other rooms. */
  void keep(Suns suns, int[] rooms) {
    under(suns).keep(surfacesOf(rooms));
  }

  private int[] surfacesOf(int[] rooms) {
    Set<Integer> wanted = IntStream.of(rooms).boxed().collect(Collectors.toSet());
    return IntStream.range(0, surfaces())
        .filter(s -> patchesOf[s].length > 0)
        .filter(s -> wanted.contains(mesh.patches.get(patchesOf[s][0]).room()))
        .toArray();
  }
}
