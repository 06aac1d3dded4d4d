package slantlight.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
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
 * exact where nothing else stands in the way; what does is looked for by rays from lit points of
 * the part.
 */
final class SunFlecks {
  /** Most parts along a side of a patch. */
  private static final int MOST = 8;

  /** Smaller shares of a part are left out. */
  private static final double FAINT = 1e-6;

  private static final int CORNERS = 4;

  /** Rays along a side of a part before which something may stand. */
  private static final int RAYS = 4;

  /** Sets of suns whose flecks are kept. */
  private static final int KEPT = 6;

  private final Mesh mesh;
  private final Interior interior;
  private final Outlook[][] outlooks;
  private final Beam beam;
  private final double edge;
  private final SunGrid grid;
  private final FleckTable atNodes;

  /** By surface: its patches. */
  private final int[][] patchesOf;

  /** By patch: its place among those of its surface. */
  private final int[] place;

  private final Map<Suns, FleckTable> tables =
      new LinkedHashMap<>(4, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Suns, FleckTable> eldest) {
          return size() > KEPT;
        }
      };

  /**
   * @param outlooks by patch, openings whose light reaches it
   * @param edge wanted edge of the parts, m
   * @param grid between whose suns light is mixed otherwise
   */
  SunFlecks(
      Mesh mesh, Interior interior, Outlook[][] outlooks, Beam beam, double edge, SunGrid grid) {
    this.interior = interior;
    this.mesh = mesh;
    this.outlooks = outlooks;
    this.beam = beam;
    this.edge = edge;
    this.grid = grid;
    place = new int[mesh.patches.size()];
    int surfaces = 1 + mesh.patches.stream().mapToInt(Patch::surface).max().orElse(-1);
    List<List<Integer>> of = new ArrayList<>();
    for (int s = 0; s < surfaces; s++) {
      of.add(new ArrayList<>());
    }
    for (Patch p : mesh.patches) {
      place[p.index()] = of.get(p.surface()).size();
      of.get(p.surface()).add(p.index());
    }
    patchesOf =
        of.stream()
            .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
    atNodes = new FleckTable(this, Suns.of(grid.nodes()));
  }

  int patches() {
    return place.length;
  }

  int surfaces() {
    return patchesOf.length;
  }

  /** The patches of a surface. */
  int[] of(int surface) {
    return patchesOf[surface];
  }

  int surface(int patch) {
    return mesh.patches.get(patch).surface();
  }

  /** Place of a patch among those of its surface. */
  int place(int patch) {
    return place[patch];
  }

  SunGrid grid() {
    return grid;
  }

  /** Parts of a patch. */
  int parts(int patch) {
    return side(patch) * side(patch);
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
    Patch p = mesh.patches.get(patch);
    return fleck(patch, own(patch), thrown(p.frame(), p.box(), p.room(), apertures(patch), sun));
  }

  /** What each sun of a bundle throws on a surface. */
  List<List<Thrown>> thrown(int surface, Suns suns, int bundle) {
    int[] patches = patchesOf[surface];
    if (patches.length == 0) {
      return List.of();
    }
    Frame plane = mesh.patches.get(patches[0]).frame();
    int room = mesh.patches.get(patches[0]).room();
    double[] box = bounds(surface);
    Set<Aperture> apertures = apertures(patches);
    List<List<Thrown>> out = new ArrayList<>();
    for (int i = suns.start(bundle); i < suns.start(bundle + 1); i++) {
      Vec3 sun = suns.at(i);
      out.add(sun.z() > 0 ? thrown(plane, box, room, apertures, sun) : List.of());
    }
    return out;
  }

  private List<Thrown> thrown(Frame plane, double[] box, int room, Set<Aperture> from, Vec3 sun) {
    List<Thrown> out = new ArrayList<>();
    for (Aperture a : from) {
      Thrown t = Thrown.on(plane, box, a, sun, beam);
      if (t != null && a.room == room) {
        out.add(t);
      } else if (t != null) {
        addThroughDoors(t, plane, box, room, out);
      }
    }
    return out;
  }

  /** Adds what of the light of another room's opening comes through each passage of a room. */
  private void addThroughDoors(Thrown t, Frame plane, double[] box, int room, List<Thrown> out) {
    double[] corners = plane.toWorld(Rings.round(box), 0);
    for (Door door : interior.doors(room)) {
      Thrown part = door.within(corners) ? t : t.through(door.corners(), plane);
      if (t.equals(part)) {
        out.add(t);
        return;
      }
      if (part != null && part.meets(box)) {
        out.add(part);
      }
    }
  }

  /** Openings that may throw light on some of the patches. */
  private Set<Aperture> apertures(int... patches) {
    Set<Aperture> out = new LinkedHashSet<>();
    for (int p : patches) {
      for (Outlook o : outlooks[p]) {
        out.add(o.aperture());
      }
    }
    return out;
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
      Outlook outlook = t.meets(patch.box()) ? outlook(index, t.aperture()) : null;
      if (outlook != null) {
        Coverage lit = new Coverage(patch.box(), side);
        for (double[] ring : patch.whole() ? new double[][] {t.ring()} : patch.rings()) {
          lit.add(patch.whole() ? ring : Rings.clip(ring, t.ring()));
        }
        float[] open = open(patch, side, lit, outlook, t);
        for (int q = 0; q < side * side; q++) {
          if (open[q] > 0) {
            parts = parts == null ? new float[side * side] : parts;
            parts[q] += (float) (t.lux() * open[q] * Math.min(1, lit.share(q) / own.share(q)));
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
   * Share of each lit part of a patch to which a beam comes, but for the outline of its opening.
   * Where it comes to the outer corners of the outermost lit parts or to none of them, so it is
   * taken to do for all between.
   */
  private float[] open(Patch patch, int side, Coverage lit, Outlook outlook, Thrown t) {
    boolean[] some = new boolean[side * side];
    float[] all = new float[some.length];
    int count = 0;
    for (int q = 0; q < some.length; q++) {
      some[q] = lit.share(q) > FAINT;
      all[q] = some[q] ? 1 : 0;
      count += some[q] ? 1 : 0;
    }
    if (count == 0 || (outlook.clear() && t.shades().isEmpty())) {
      return all;
    }
    int comes = 0;
    int[] outermost = outermost(some, side);
    for (int k = 0; k < CORNERS; k++) {
      comes += comes(patch, corner(patch, side, outermost[k], k), outlook, t) ? 1 : 0;
    }
    if (comes == CORNERS) {
      return all;
    }
    float[] out = new float[some.length];
    for (int q = 0; q < out.length && comes > 0; q++) {
      out[q] = some[q] ? share(patch, side, q, outlook, t) : 0;
    }
    return out;
  }

  /** The lit parts farthest toward (1, 1), (1, 0), (0, 1) and (0, 0). */
  private static int[] outermost(boolean[] lit, int side) {
    int[] out = new int[CORNERS];
    int[] most = new int[CORNERS];
    Arrays.fill(most, Integer.MIN_VALUE);
    for (int q = 0; q < lit.length; q++) {
      int u = q % side;
      int v = q / side;
      int[] far = {u + v, u - v, v - u, -u - v};
      for (int k = 0; k < CORNERS && lit[q]; k++) {
        if (far[k] > most[k]) {
          most[k] = far[k];
          out[k] = q;
        }
      }
    }
    return out;
  }

  /** Share of the lit places of a part to which a beam comes: all or none if its corners agree. */
  private float share(Patch patch, int side, int part, Outlook outlook, Thrown t) {
    int corners = 0;
    for (int k = 0; k < CORNERS; k++) {
      corners += comes(patch, corner(patch, side, part, k), outlook, t) ? 1 : 0;
    }
    if (corners % CORNERS == 0) {
      return corners > 0 ? 1 : 0;
    }
    int lit = 0;
    int come = 0;
    for (int i = 0; i < RAYS * RAYS; i++) {
      int row = i / RAYS;
      Vec2 place = at(patch, side, part, (i % RAYS + 0.5) / RAYS, (row + 0.5) / RAYS);
      if (Rings.inside(t.ring(), place.x(), place.y())) {
        lit++;
        come += comes(patch, place, outlook, t) ? 1 : 0;
      }
    }
    return lit == 0
        ? comes(patch, at(patch, side, part, 0.5, 0.5), outlook, t) ? 1 : 0
        : (float) come / lit;
  }

  /** Corners of a part in the order of {@link #outermost}. */
  private static Vec2 corner(Patch patch, int side, int part, int k) {
    return at(patch, side, part, k < 2 ? 1 : 0, k % 2 == 0 ? 1 : 0);
  }

  /** A place of a part, from 0 to 1 along u and v. */
  private static Vec2 at(Patch patch, int side, int part, double u, double v) {
    double[] box = patch.box();
    int row = part / side;
    return new Vec2(
        box[0] + (box[2] - box[0]) * (part % side + u) / side,
        box[1] + (box[3] - box[1]) * (row + v) / side);
  }

  private boolean comes(Patch patch, Vec2 at, Outlook outlook, Thrown t) {
    Vec3 p = patch.frame().toWorld(at, Interior.LIFT);
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
    find(atNodes, IntStream.range(0, surfaces()).toArray());
  }

  /** Finds the flecks of some suns in some rooms with all threads. */
  void find(Suns suns, int[] rooms) {
    Set<Integer> wanted = IntStream.of(rooms).boxed().collect(Collectors.toSet());
    find(
        under(suns),
        IntStream.range(0, surfaces())
            .filter(s -> patchesOf[s].length > 0)
            .filter(s -> wanted.contains(mesh.patches.get(patchesOf[s][0]).room()))
            .toArray());
  }

  private static void find(FleckTable table, int[] surfaces) {
    int bundles = table.suns().bundles();
    Workers.each(surfaces.length * bundles, i -> table.on(surfaces[i / bundles], i % bundles));
  }
}
