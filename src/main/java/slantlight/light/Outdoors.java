package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import slantlight.geom.Face;
import slantlight.geom.Occluders;
import slantlight.geom.Rings;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Block;
import slantlight.scene.GroundKind;
import slantlight.scene.GroundZone;
import slantlight.scene.House;
import slantlight.scene.Room;
import slantlight.scene.Surface;
import slantlight.sky.SkyZones;
import slantlight.sky.WaterMirror;

/**
 * What is seen when looking out of an opening: sky, ground, water, blocks and the house's own outer
 * walls. Cells of ground and wall are made when first met; what they hold depends on their place
 * alone.
 */
final class Outdoors {
  private static final double FAR = 1e5;

  /** Reflectance taken for the house's own outer walls, whose paint no scene states. */
  private static final double OUTER_WALL = 0.3;

  private static final double WALL_CELL = 1.5;

  /** Edges of ground cells, m, growing with the distance from the house. */
  private static final double[] CELL_SIZES = {1, 2, 5, 15};

  private final Columns columns;
  private final Occluders shell;
  private final List<Face> faces = new ArrayList<>();
  private final List<Double> reflectances = new ArrayList<>();
  private final List<Body> bodies = new ArrayList<>();
  private final double groundZ;
  private final List<Zone> zones = new ArrayList<>();
  private final List<double[]> footprints = new ArrayList<>();
  private final double[] bounds = {1e30, 1e30, -1e30, -1e30};
  private final ConcurrentHashMap<Long, GroundCell> groundCells = new ConcurrentHashMap<>();
  private final ConcurrentHashMap<Long, FacingCell> wallCells = new ConcurrentHashMap<>();

  private record Zone(
      GroundKind kind, double[] ring, double z, double reflectance, WaterMirror mirror) {}

  Outdoors(House house, Columns columns) {
    this.columns = columns;
    for (Surface s : house.surfaces()) {
      // Seen from outside a window is a dark hole as good as a wall.
      faces.add(Face.of(s.face().frame(), s.face().outer()));
      reflectances.add(OUTER_WALL);
      for (Vec3 p : s.face().corners()) {
        bounds[0] = Math.min(bounds[0], p.x());
        bounds[1] = Math.min(bounds[1], p.y());
        bounds[2] = Math.max(bounds[2], p.x());
        bounds[3] = Math.max(bounds[3], p.y());
      }
    }
    for (Block b : house.outside().blocks()) {
      for (Face f : b.faces()) {
        faces.add(f);
        reflectances.add(b.reflectance());
      }
    }
    shell = Occluders.of(faces);
    for (Room r : house.rooms()) {
      bodies.add(
          Body.of(
              house.surfaces().stream()
                  .filter(s -> s.roomId().equals(r.id()))
                  .map(s -> Face.of(s.face().frame(), s.face().outer()))
                  .toList()));
    }
    for (Block b : house.outside().blocks()) {
      bodies.add(Body.of(b.faces()));
    }
    groundZ = house.outside().groundZ();
    for (GroundZone z : house.outside().zones()) {
      zones.add(new Zone(z.kind(), Rings.array(z.outline()), z.z(), z.reflectance(), mirrorOf(z)));
    }
    for (Room r : house.rooms()) {
      footprints.add(Rings.array(r.outline()));
    }
  }

  private static WaterMirror mirrorOf(GroundZone z) {
    return switch (z.kind()) {
      case WATER -> WaterMirror.water(z.wind());
      case ICE -> WaterMirror.ice();
      case PAVING -> z.wet() ? WaterMirror.water(0) : null;
      case GROUND, SNOW -> null;
    };
  }

  Columns columns() {
    return columns;
  }

  /** Everything that shades the outside, openings counted as closed. */
  Occluders shell() {
    return shell;
  }

  /** True when nothing stands between a point outside and the sky. */
  boolean open(double x, double y, double z, double dx, double dy, double dz) {
    return shell.any(x, y, z, dx, dy, dz, 1e-4, FAR) < 0;
  }

  /** What stands beyond the plane of an opening's glass. */
  Shade[] before(Aperture a) {
    return bodies.stream()
        .flatMap(
            b ->
                b
                    .shades(
                        a.frame, -1, p -> -a.height(p.x(), p.y(), p.z()) - a.reveal - Shade.CLEAR)
                    .stream())
        .toArray(Shade[]::new);
  }

  /** What a ray from outside a window meets; see {@link View}. */
  void look(double x, double y, double z, double dx, double dy, double dz, View view) {
    view.clear();
    int face = shell.nearest(x, y, z, dx, dy, dz, 1e-4, FAR, view.t);
    double tFace = view.t[0];
    int ground = dz < 0 ? ground(x, y, z, dx, dy, dz, view.t) : -2;
    if (face >= 0 && (ground == -2 || tFace <= view.t[0])) {
      view.kind = SourceKind.BLOCK;
      view.mark = 1000 + face;
      view.cell = wallCell(face, x + tFace * dx, y + tFace * dy, z + tFace * dz, dx, dy, dz);
      view.cellWeight = 1;
      return;
    }
    if (ground == -2) {
      view.kind = SourceKind.SKY;
      view.mark = 1;
      view.zone = SkyZones.indexOf(dx, dy, Math.max(0, dz));
      view.zoneWeight = 1;
      view.setSky(dx, dy, Math.max(0, dz));
      return;
    }
    double t = view.t[0];
    double gx = x + t * dx;
    double gy = y + t * dy;
    double gz = z + t * dz;
    GroundCell cell = groundCell(ground, gx, gy);
    view.kind = SourceKind.GROUND;
    view.mark = 3 + ground;
    view.cell = cell;
    view.cellWeight = 1;
    if (ground >= 0 && zones.get(ground).mirror != null) {
      mirror(zones.get(ground), cell, gx, gy, gz + 1e-3, dx, dy, dz, view);
    }
  }

  /** Coarse answer to the same question: equal marks mean alike things. */
  int mark(double x, double y, double z, double dx, double dy, double dz, double[] t) {
    int face = shell.nearest(x, y, z, dx, dy, dz, 1e-4, FAR, t);
    double tFace = t[0];
    int ground = dz < 0 ? ground(x, y, z, dx, dy, dz, t) : -2;
    if (face >= 0 && (ground == -2 || tFace <= t[0])) {
      return 1000 + face;
    }
    return ground == -2 ? 1 : 3 + ground;
  }

  /** True when a mark stands for a mirror on the ground. */
  boolean isMirror(int mark) {
    return mark >= 3 && mark < 1000 && zones.get(mark - 3).mirror != null;
  }

  private void mirror(
      Zone zone,
      GroundCell place,
      double gx,
      double gy,
      double gz,
      double dx,
      double dy,
      double dz,
      View view) {
    double r = zone.mirror.reflectance(-dz);
    view.kind = SourceKind.WATER;
    view.mirror = zone.mirror;
    view.place = place;
    view.setDirection(dx, dy, dz);
    view.cellWeight = zone.kind == GroundKind.WATER ? 0 : 1 - r;
    int face = shell.nearest(gx, gy, gz, dx, dy, -dz, 1e-4, FAR, view.t);
    if (face >= 0) {
      double t = view.t[0];
      view.mirrored = wallCell(face, gx + t * dx, gy + t * dy, gz - t * dz, dx, dy, -dz);
      view.mirroredWeight = r;
    } else {
      view.zone = SkyZones.indexOf(dx, dy, -dz);
      view.zoneWeight = r;
      view.setSky(dx, dy, -dz);
    }
  }

  /** Diffuse ground met first by a downward ray, or null when a wall or a mirror is met. */
  GroundCell diffuseGround(double x, double y, double z, double dx, double dy, double dz) {
    double[] t = new double[1];
    int face = shell.nearest(x, y, z, dx, dy, dz, 1e-4, FAR, t);
    double tFace = t[0];
    int ground = ground(x, y, z, dx, dy, dz, t);
    if (ground == -2 || (face >= 0 && tFace < t[0])) {
      return null;
    }
    if (ground >= 0 && zones.get(ground).kind == GroundKind.WATER) {
      return null;
    }
    return groundCell(ground, x + t[0] * dx, y + t[0] * dy);
  }

  /** Zone met by a downward ray, -1 for the general ground, -2 when it starts below all ground. */
  private int ground(double x, double y, double z, double dx, double dy, double dz, double[] tOut) {
    double best = Double.POSITIVE_INFINITY;
    int found = -2;
    double lowest = groundZ;
    for (int i = 0; i < zones.size(); i++) {
      Zone zone = zones.get(i);
      double t = (zone.z - z) / dz;
      lowest = Math.min(lowest, zone.z);
      if (t > 1e-6 && t < best && Rings.inside(zone.ring, x + t * dx, y + t * dy)) {
        best = t;
        found = i;
      }
    }
    double t = (groundZ - z) / dz;
    if (t > 1e-6 && t < best && !hollow(x + t * dx, y + t * dy)) {
      best = t;
      found = -1;
    }
    if (found == -2) {
      // Below the general ground: the bank of a hollow or a basement's light well.
      double deep = (lowest - 0.01 - z) / dz;
      if (deep > 0) {
        best = deep;
        found = -1;
      }
    }
    tOut[0] = best;
    return found;
  }

  /** True where a zone lies below the general ground, which is cut away over it. */
  private boolean hollow(double x, double y) {
    for (Zone zone : zones) {
      if (zone.z < groundZ - 1e-6 && Rings.inside(zone.ring, x, y)) {
        return true;
      }
    }
    return false;
  }

  private GroundCell groundCell(int zone, double x, double y) {
    double away =
        Math.max(Math.max(bounds[0] - x, x - bounds[2]), Math.max(bounds[1] - y, y - bounds[3]));
    boolean general = zone < 0 || zones.get(zone).kind == GroundKind.GROUND;
    double reflectance = zone < 0 ? 1 : zones.get(zone).reflectance;
    int level = away < 3 ? 0 : away < 10 ? 1 : away < 30 ? 2 : away < 90 ? 3 : 4;
    if (level == 4) {
      return groundCells.computeIfAbsent(
          key(zone + 2, 4, 0, 0), k -> new GroundCell(shell, new double[0], general, reflectance));
    }
    double size = CELL_SIZES[level];
    long ix = (long) Math.floor((x - bounds[0]) / size);
    long iy = (long) Math.floor((y - bounds[1]) / size);
    return groundCells.computeIfAbsent(
        key(zone + 2, level, ix, iy),
        k -> {
          double x0 = bounds[0] + ix * size;
          double y0 = bounds[1] + iy * size;
          double height = zone < 0 ? groundZ : zones.get(zone).z;
          return new GroundCell(shell, probes(x0, y0, size, height), general, reflectance);
        });
  }

  /** Four places of a square cell, those under the house left out unless all are. */
  private double[] probes(double x0, double y0, double size, double z) {
    List<Double> list = new ArrayList<>();
    for (int pass = 0; pass < 2 && list.isEmpty(); pass++) {
      for (int i = 0; i < 4; i++) {
        double x = x0 + size * (0.25 + 0.5 * (i & 1));
        double y = y0 + size * (0.25 + 0.5 * (i >> 1));
        if (pass == 1 || footprints.stream().noneMatch(f -> Rings.inside(f, x, y))) {
          list.add(x);
          list.add(y);
          list.add(z + 1e-3);
        }
      }
    }
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private FacingCell wallCell(
      int face, double x, double y, double z, double dx, double dy, double dz) {
    Face f = faces.get(face);
    Vec3 n = f.frame().n();
    boolean front = n.x() * dx + n.y() * dy + n.z() * dz < 0;
    Vec2 at = f.frame().toPlane(new Vec3(x, y, z));
    long iu = (long) Math.floor(at.x() / WALL_CELL);
    long iv = (long) Math.floor(at.y() / WALL_CELL);
    return wallCells.computeIfAbsent(
        key(2 * face + (front ? 1 : 0), 0, iu, iv),
        k -> {
          double[] points = new double[12];
          int n4 = 0;
          for (int i = 0; i < 4; i++) {
            Vec2 q =
                new Vec2(
                    (iu + 0.25 + 0.5 * (i & 1)) * WALL_CELL,
                    (iv + 0.25 + 0.5 * (i >> 1)) * WALL_CELL);
            if (f.contains(q)) {
              put(points, n4++, f.frame().toWorld(q, front ? 1e-3 : -1e-3));
            }
          }
          if (n4 == 0) {
            put(points, n4++, f.frame().toWorld(middle(f, iu, iv), front ? 1e-3 : -1e-3));
          }
          return new FacingCell(
              this,
              front ? n : n.times(-1),
              java.util.Arrays.copyOf(points, 3 * n4),
              reflectances.get(face) / Math.PI,
              0);
        });
  }

  /** Middle of what a cell holds of a face. */
  private static Vec2 middle(Face f, long iu, long iv) {
    double u = iu * WALL_CELL;
    double v = iv * WALL_CELL;
    double[] part = Rings.clip(Rings.array(f.outer()), u, v, u + WALL_CELL, v + WALL_CELL);
    if (part.length == 0) {
      return f.centroid();
    }
    double[] m = Rings.middle(part);
    return new Vec2(m[0], m[1]);
  }

  private static void put(double[] points, int i, Vec3 p) {
    points[3 * i] = p.x();
    points[3 * i + 1] = p.y();
    points[3 * i + 2] = p.z();
  }

  private static long key(int what, int level, long i, long j) {
    return ((long) what << 44) ^ ((long) level << 41) ^ ((i & 0xFFFFF) << 20) ^ (j & 0xFFFFF);
  }
}
