package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Surface;

/**
 * The inside surfaces cut into patches, and the patches of each surface gathered into square
 * groups. The patches of a group follow one another.
 */
final class Mesh {
  final List<Patch> patches = new ArrayList<>();

  /** First patch of each group, and the number of patches at the end. */
  final int[] groupStart;

  final int groups;
  final double[] groupArea;
  final Vec3[] groupCentre;

  /** Radius about the centre that holds the group, m. */
  final double[] groupRadius;

  /** Longer side of the box that holds the group, m. */
  final double[] groupEdge;

  /** The one ring round the group where it fills its box, else null. */
  final double[][][] groupOutline;

  /** Corners of a rectangle that holds the group, just in front of it: x, y, z of each in turn. */
  final double[][] groupCorners;

  final double[] groupReflectance;

  /** Groups of each room, ascending. */
  final int[][] roomGroups;

  private final Interior interior;
  private final List<List<Vec3>> lampsOf = new ArrayList<>();

  Mesh(House house, Interior interior, TransportOptions options) {
    this.interior = interior;
    house.rooms().forEach(r -> lampsOf.add(new ArrayList<>()));
    house.lamps().forEach(l -> lampsOf.get(interior.room(l.roomId())).add(l.position()));
    double area = house.surfaces().stream().mapToDouble(s -> s.face().area()).sum();
    double edge = Math.max(options.patchEdge(), Math.sqrt(area / options.maxPatches()));
    List<Integer> starts = new ArrayList<>();
    for (int s = 0; s < house.surfaces().size(); s++) {
      cut(house.surfaces().get(s), s, edge, options, starts);
    }
    groups = starts.size();
    groupStart = new int[groups + 1];
    for (int g = 0; g < groups; g++) {
      groupStart[g] = starts.get(g);
    }
    groupStart[groups] = patches.size();
    groupArea = new double[groups];
    groupCentre = new Vec3[groups];
    groupRadius = new double[groups];
    groupEdge = new double[groups];
    groupOutline = new double[groups][][];
    groupCorners = new double[groups][];
    groupReflectance = new double[groups];
    List<List<Integer>> byRoom = new ArrayList<>();
    for (int r = 0; r < house.rooms().size(); r++) {
      byRoom.add(new ArrayList<>());
    }
    for (int g = 0; g < groups; g++) {
      describe(house, g);
      byRoom.get(patches.get(groupStart[g]).room()).add(g);
    }
    roomGroups =
        byRoom.stream()
            .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
  }

  private Mesh(Mesh like, House house) {
    interior = like.interior;
    patches.addAll(like.patches);
    lampsOf.addAll(like.lampsOf);
    groups = like.groups;
    groupStart = like.groupStart;
    groupArea = like.groupArea;
    groupCentre = like.groupCentre;
    groupRadius = like.groupRadius;
    groupEdge = like.groupEdge;
    groupOutline = like.groupOutline;
    groupCorners = like.groupCorners;
    roomGroups = like.roomGroups;
    groupReflectance = new double[groups];
    for (int g = 0; g < groups; g++) {
      groupReflectance[g] = reflectance(house, g);
    }
  }

  /** The same patches in the paint of another house. */
  Mesh in(House repainted) {
    return new Mesh(this, repainted);
  }

  private double reflectance(House house, int g) {
    return house.surfaces().get(patches.get(groupStart[g]).surface()).paint().lrv();
  }

  private void describe(House house, int g) {
    Vec3 sum = Vec3.ZERO;
    for (int p = groupStart[g]; p < groupStart[g + 1]; p++) {
      Patch patch = patches.get(p);
      groupArea[g] += patch.area();
      sum = sum.plus(patch.centre().times(patch.area()));
    }
    groupCentre[g] = sum.times(1 / groupArea[g]);
    for (int p = groupStart[g]; p < groupStart[g + 1]; p++) {
      Patch patch = patches.get(p);
      groupRadius[g] =
          Math.max(groupRadius[g], patch.centre().distance(groupCentre[g]) + patch.edge() / 2);
    }
    box(g);
    groupReflectance[g] = reflectance(house, g);
  }

  private void box(int g) {
    double[] all = patches.get(groupStart[g]).box().clone();
    for (int p = groupStart[g]; p < groupStart[g + 1]; p++) {
      double[] box = patches.get(p).box();
      for (int k = 0; k < 2; k++) {
        all[k] = Math.min(all[k], box[k]);
        all[2 + k] = Math.max(all[2 + k], box[2 + k]);
      }
    }
    double[] ring = Rings.round(all);
    groupEdge[g] = Math.max(all[2] - all[0], all[3] - all[1]);
    groupOutline[g] = groupArea[g] > (1 - 1e-9) * Rings.area(ring) ? new double[][] {ring} : null;
    groupCorners[g] = patches.get(groupStart[g]).frame().toWorld(ring, Interior.LIFT);
  }

  private void cut(
      Surface s, int index, double edge, TransportOptions options, List<Integer> starts) {
    Face face = s.face();
    double[] outer = Rings.oriented(Rings.array(face.outer()), true);
    List<double[]> holes = new ArrayList<>();
    for (List<Vec2> h : face.holes()) {
      holes.add(Rings.oriented(Rings.array(h), false));
    }
    double[] b = Rings.bounds(outer);
    int nu = (int) Math.max(1, Math.ceil((b[2] - b[0]) / edge - 1e-9));
    int nv = (int) Math.max(1, Math.ceil((b[3] - b[1]) / edge - 1e-9));
    double du = (b[2] - b[0]) / nu;
    double dv = (b[3] - b[1]) / nv;
    int room = interior.room(s.roomId());
    int side = options.groupSide();
    for (int gv = 0; gv < nv; gv += side) {
      for (int gu = 0; gu < nu; gu += side) {
        int first = patches.size();
        for (int v = gv; v < Math.min(nv, gv + side); v++) {
          for (int u = gu; u < Math.min(nu, gu + side); u++) {
            double[] cell = {
              b[0] + u * du, b[1] + v * dv, b[0] + (u + 1) * du, b[1] + (v + 1) * dv
            };
            refine(face, outer, holes, cell, index, room, starts.size(), 0);
          }
        }
        if (patches.size() > first) {
          starts.add(first);
        }
      }
    }
  }

  /** Cuts cells near lamps and openings finer, where light changes fastest. */
  private void refine(
      Face face,
      double[] outer,
      List<double[]> holes,
      double[] cell,
      int surface,
      int room,
      int group,
      int depth) {
    Vec3 centre = face.frame().toWorld(new Vec2((cell[0] + cell[2]) / 2, (cell[1] + cell[3]) / 2));
    double size = Math.max(cell[2] - cell[0], cell[3] - cell[1]);
    if (depth >= 3 || !wantsMore(room, centre, size, depth)) {
      add(face, outer, holes, cell, surface, room, group);
      return;
    }
    double u = (cell[0] + cell[2]) / 2;
    double v = (cell[1] + cell[3]) / 2;
    for (int k = 0; k < 4; k++) {
      double[] part = {
        (k & 1) == 0 ? cell[0] : u,
        (k & 2) == 0 ? cell[1] : v,
        (k & 1) == 0 ? u : cell[2],
        (k & 2) == 0 ? v : cell[3]
      };
      refine(face, outer, holes, part, surface, room, group, depth + 1);
    }
  }

  private boolean wantsMore(int room, Vec3 centre, double size, int depth) {
    for (Vec3 lamp : lampsOf.get(room)) {
      if (lamp.distance(centre) < 1.2 * size) {
        return true;
      }
    }
    if (depth > 0) {
      return false;
    }
    return near(interior.apertures(), room, centre, 0.8 * size)
        || near(interior.doorways(), room, centre, 0.8 * size);
  }

  /** True where light changes much from one side of a patch to the other. */
  private boolean wantsEyes(int room, Vec3 centre, double edge) {
    double far = 2.5 * edge;
    return lampsOf.get(room).stream().anyMatch(l -> l.distance(centre) < far)
        || near(interior.apertures(), room, centre, far)
        || near(interior.doorways(), room, centre, far);
  }

  private static boolean near(List<Aperture> list, int room, Vec3 centre, double distance) {
    return list.stream().anyMatch(a -> a.room == room && a.distance(centre) < distance);
  }

  private void add(
      Face face,
      double[] outer,
      List<double[]> holes,
      double[] cell,
      int surface,
      int room,
      int group) {
    List<double[]> rings = new ArrayList<>();
    double[] part = Rings.clip(outer, cell[0], cell[1], cell[2], cell[3]);
    if (part.length == 0) {
      return;
    }
    rings.add(part);
    double area = Rings.area(part);
    for (double[] hole : holes) {
      double[] h = Rings.clip(hole, cell[0], cell[1], cell[2], cell[3]);
      if (h.length > 0) {
        rings.add(h);
        area += Rings.area(h);
      }
    }
    if (area < 1e-4 * (cell[2] - cell[0]) * (cell[3] - cell[1])) {
      return;
    }
    boolean whole =
        rings.size() == 1 && area > 0.999999 * (cell[2] - cell[0]) * (cell[3] - cell[1]);
    Vec3[] probes = spread(face, cell, whole, 2);
    Frame frame = face.frame();
    Vec3 centre;
    if (whole) {
      centre = frame.toWorld(new Vec2((cell[0] + cell[2]) / 2, (cell[1] + cell[3]) / 2));
    } else {
      Vec3[] fine = spread(face, cell, false, 7);
      Vec3 mean = Vec3.ZERO;
      for (Vec3 p : fine) {
        mean = mean.plus(p.times(1.0 / fine.length));
      }
      centre = fine.length > 0 ? nearest(fine, mean) : middle(frame, part);
    }
    double edge = Math.max(cell[2] - cell[0], cell[3] - cell[1]);
    if (probes.length == 0) {
      probes = new Vec3[] {centre};
    }
    patches.add(
        new Patch(
            patches.size(),
            group,
            surface,
            room,
            frame,
            rings.toArray(double[][]::new),
            area,
            edge,
            centre,
            probes,
            wantsEyes(room, centre, edge) ? probes : new Vec3[] {centre},
            cell));
  }

  private static Vec3 middle(Frame frame, double[] ring) {
    double[] m = Rings.middle(ring);
    return frame.toWorld(new Vec2(m[0], m[1]));
  }

  private static Vec3 nearest(Vec3[] points, Vec3 to) {
    Vec3 best = points[0];
    for (Vec3 p : points) {
      if (p.distance(to) < best.distance(to)) {
        best = p;
      }
    }
    return best;
  }

  /** Points of a cell on an even lattice, those off the face left out. */
  private static Vec3[] spread(Face face, double[] cell, boolean whole, int side) {
    List<Vec3> out = new ArrayList<>();
    for (int j = 0; j < side; j++) {
      for (int i = 0; i < side; i++) {
        Vec2 q =
            new Vec2(
                cell[0] + (cell[2] - cell[0]) * (i + 0.5) / side,
                cell[1] + (cell[3] - cell[1]) * (j + 0.5) / side);
        if (whole || face.contains(q)) {
          out.add(face.frame().toWorld(q));
        }
      }
    }
    return out.toArray(Vec3[]::new);
  }
}
