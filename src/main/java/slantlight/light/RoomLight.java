package slantlight.light;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import slantlight.geom.Vec3;
import slantlight.units.Progress;
import slantlight.units.Workers;

/** Illuminance of every patch for every unit source, and for one sun that stands between nodes. */
final class RoomLight {
  final Mesh mesh;
  final Exchange exchange;
  private final Columns columns;
  private final Interior interior;
  private final SunFlecks flecks;
  private final Exposure[] exposures;

  /** Openings whose light reaches a patch. */
  private final Aperture[][] windows;

  /** Illuminance by the beam of each sun of the grid, by patch; null where none ever comes. */
  private final float[][] beams;

  /** Patches on which the sun may shine at some time of the year. */
  private final boolean[] shines;

  /** The same by group: on some patch of it. */
  private final boolean[] groupShines;

  /**
   * Illuminance by patch and column, lx per unit source: all light but the beam of the sun, which
   * is elsewhere by the next sun of the grid.
   */
  private final float[][] light;

  /** Smaller shares of a group's light are left to the mixture. */
  private static final float FAINT = 0.01f;

  /** By group. */
  private final Passed[] passed;

  /** The same by group, its mean over the group's area. */
  private final float[][] groupLight;

  /** Direct illuminance by patch and column, lx per unit source. */
  private final float[][] directLight;

  /**
   * Light on the inside surfaces.
   *
   * @param mesh of the house's surfaces
   * @param exchange between them
   * @param sunEdge edge of the parts of a patch among which the sun's beam is told apart, m
   */
  RoomLight(
      Mesh mesh,
      Exchange exchange,
      Columns columns,
      Interior interior,
      Sights sights,
      LampLight lamps,
      Beam beam,
      double sunEdge,
      Progress progress) {
    this.mesh = mesh;
    this.exchange = exchange;
    this.columns = columns;
    this.interior = interior;
    int n = mesh.patches.size();
    exposures = new Exposure[n];
    windows = new Aperture[n][];
    flecks = new SunFlecks(mesh, interior, windows, beam, sunEdge, columns.grid);
    beams = new float[n][];
    shines = new boolean[n];
    light = new float[n][];
    directLight = new float[n][];
    Tally tally = new Tally("light on the inside surfaces", n, progress);
    Workers.each(
        n,
        i -> {
          exposures[i] = expose(mesh.patches.get(i), sights.get(), lamps);
          tally.one();
        });
    flecks.findAtNodes();
    Workers.each(
        n,
        i -> {
          directLight[i] = direct(i);
          light[i] = directLight[i].clone();
        });
    progress.at("light bounced inside", 0);
    groupShines = new boolean[mesh.groups];
    for (Patch p : mesh.patches) {
      groupShines[p.group()] |= shines[p.index()];
    }
    groupLight = bounced();
    passed = passed();
    progress.at("light bounced inside", 1);
  }

  /**
   * The same light from outside and from lamps on other paint.
   *
   * @param exchange of the same surfaces, their paint changed
   */
  private RoomLight(RoomLight like, Mesh repainted, Exchange exchange) {
    this.mesh = repainted;
    this.exchange = exchange;
    columns = like.columns;
    interior = like.interior;
    flecks = like.flecks;
    beams = like.beams;
    shines = like.shines;
    groupShines = like.groupShines;
    exposures = like.exposures;
    windows = like.windows;
    directLight = like.directLight;
    light = new float[directLight.length][];
    for (int i = 0; i < light.length; i++) {
      light[i] = directLight[i].clone();
    }
    groupLight = bounced();
    passed = passed();
  }

  /** The same light from outside and from lamps on the surfaces of a house in other paint. */
  RoomLight on(Mesh repainted) {
    return new RoomLight(this, repainted, exchange.on(repainted));
  }

  /** Adds all bounces to {@link #light} and takes the beam off; the mean over each group. */
  private float[][] bounced() {
    exchange.solve(light);
    int first = columns.sun(Columns.INSIDE);
    for (int i = 0; i < light.length; i++) {
      for (int k = 0; beams[i] != null && k < beams[i].length; k++) {
        light[i][first + k] = Math.max(0, light[i][first + k] - beams[i][k]);
      }
    }
    float[][] means = new float[mesh.groups][];
    Workers.each(mesh.groups, g -> means[g] = mean(g, light));
    return means;
  }

  private Exposure expose(Patch patch, Sight sight, LampLight lamps) {
    Exposure out = new Exposure(1, columns.lamps);
    Vec3 n = patch.normal();
    double share = 1.0 / patch.eyes().length;
    double[] w = new double[1];
    java.util.Set<Aperture> seen = new java.util.LinkedHashSet<>();
    for (Aperture a : interior.reach(patch.room())) {
      if (a.room == patch.room()) {
        seen.add(a);
      }
    }
    for (Vec3 p : patch.eyes()) {
      sight.outside(
          patch.room(),
          p,
          n,
          (a, dx, dy, dz, weight, view) -> {
            w[0] = share * Math.max(0, dx * n.x() + dy * n.y() + dz * n.z());
            seen.add(a);
            out.add(view, w, weight);
          });
      lamps.at(
          patch.room(),
          p,
          n,
          (lamp, dx, dy, dz, lux) -> {
            w[0] = share * (dx * n.x() + dy * n.y() + dz * n.z());
            out.addLamp(lamp, w, lux);
          });
    }
    windows[patch.index()] = seen.toArray(Aperture[]::new);
    return out;
  }

  private float[] direct(int i) {
    float[][] out = new float[1][columns.total];
    exposures[i].addTo(out, columns);
    int first = columns.sun(Columns.INSIDE);
    FleckTable.Gathered lit = flecks.atNodes().all(i);
    if (lit.sun().length > 0) {
      beams[i] = new float[columns.nodes.size()];
      for (int k = 0; k < lit.sun().length; k++) {
        beams[i][lit.sun()[k]] = lit.mean()[k];
        out[0][first + lit.sun()[k]] += lit.mean()[k];
      }
    }
    shines[i] = beams[i] != null || mayShine(mesh.patches.get(i), windows[i]);
    return out[0];
  }

  /** Suns of the grid stand no farther than this from others, as a sine with a margin. */
  private static final double NEXT = 0.2;

  private boolean mayShine(Patch patch, Aperture[] from) {
    for (Vec3 sun : columns.nodes) {
      if (sun.dot(patch.normal()) > -NEXT) {
        for (Aperture a : from) {
          if (a.cloth == null && sun.dot(a.frame.n()) < NEXT) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private float[] mean(int g, float[][] by) {
    float[] out = new float[by[mesh.groupStart[g]].length];
    for (int p = mesh.groupStart[g]; p < mesh.groupStart[g + 1]; p++) {
      Product.add(out, (float) (mesh.patches.get(p).area() / mesh.groupArea[g]), by[p]);
    }
    return out;
  }

  /**
   * Illuminance by column of a patch, or of a whole group when the patch is -1; the sun's beam on
   * it left out.
   */
  float[] response(int group, int patch) {
    return patch < 0 ? groupLight[group] : light[patch];
  }

  /**
   * What of the sun's beam on groups comes to the patches of a group, bounced once.
   *
   * @param groups on which the sun may shine and that may send a patch a share to speak of
   * @param shares by patch of the group, then place in {@code groups}: of the mean illuminance
   */
  record Passed(int[] groups, float[][] shares) {}

  private Passed[] passed() {
    Passed[] out = new Passed[mesh.groups];
    Workers.each(out.length, g -> out[g] = passed(g));
    return out;
  }

  private Passed passed(int group) {
    int[] neighbours = exchange.neighbours(group);
    int first = mesh.groupStart[group];
    float[][] all = new float[mesh.groupStart[group + 1] - first][neighbours.length];
    int[] groups = new int[neighbours.length];
    int count = 0;
    for (int k = 0; k < neighbours.length; k++) {
      boolean speaks = false;
      for (int p = 0; p < all.length && groupShines[neighbours[k]]; p++) {
        all[p][count] = (float) (exchange.factors(first + p)[k] * reflectance(neighbours[k]));
        speaks |= all[p][count] > FAINT;
      }
      groups[count] = neighbours[k];
      count += speaks ? 1 : 0;
    }
    int kept = count;
    return new Passed(
        Arrays.copyOf(groups, kept),
        Arrays.stream(all).map(s -> Arrays.copyOf(s, kept)).toArray(float[][]::new));
  }

  /** What of the sun's beam on groups comes to the patches of a group, bounced once. */
  Passed passedTo(int group) {
    return passed[group];
  }

  /** Place of a patch in its group. */
  int placeInGroup(int group, int patch) {
    return patch - mesh.groupStart[group];
  }

  /** Where the sun's beam lies on the patches. */
  SunFlecks flecks() {
    return flecks;
  }

  /** False when the sun's beam never comes to a patch, or to a group when the patch is -1. */
  boolean mayShine(int group, int patch) {
    return patch < 0 ? groupShines[group] : shines[patch];
  }

  double reflectance(int group) {
    return mesh.groupReflectance[group];
  }

  /**
   * One moment's light, the sun where it really stands. The patches are solved when they are first
   * asked for: what comes straight from outside needs none of them.
   */
  Moment moment(LightState state) {
    return new Moment(state);
  }

  /** Illuminance of every patch without and with bounce, lx, and the means of groups with it. */
  private record Inside(double[] direct, double[] total, double[] groupMeans) {}

  private Inside solve(Moment moment) {
    LightState state = moment.state();
    double[] factors = moment.factors;
    Map<OutsideCell, double[]> cellSun = new ConcurrentHashMap<>();
    int n = mesh.patches.size();
    float[][] bySun = new float[n][1];
    if (moment.shines) {
      Workers.each(
          n,
          i -> {
            double[] groups = new double[Columns.GROUPS];
            exposures[i].addSun(0, state.sky().sun(), cellSun, groups);
            groups[Columns.INSIDE] += moment.flecks.mean(i, 0, 0);
            bySun[i][0] =
                (float) (factors[0] * groups[0] + factors[1] * groups[1] + factors[2] * groups[2]);
          });
    }
    double[] direct = new double[n];
    for (int i = 0; i < n; i++) {
      direct[i] = bySun[i][0];
    }
    if (moment.shines) {
      exchange.solve(bySun);
    }
    double[] total = new double[n];
    Workers.each(
        n,
        i -> {
          total[i] = bySun[i][0] + columns.denseValue(light[i], moment.sources);
          direct[i] += columns.denseValue(directLight[i], moment.sources);
        });
    double[] means = new double[mesh.groups];
    for (Patch p : mesh.patches) {
      means[p.group()] += total[p.index()] * p.area() / mesh.groupArea[p.group()];
    }
    return new Inside(direct, total, means);
  }

  /** The light of one moment on every patch. */
  final class Moment {
    private final LightState state;
    private final float[] sources = new float[columns.dense];
    private final double[] factors;
    private final boolean shines;
    private final Map<OutsideCell, Double> luminances = new ConcurrentHashMap<>();
    private final FleckTable flecks;
    private final Map<Integer, float[]> fleck = new ConcurrentHashMap<>();
    private volatile Inside solved;

    private Moment(LightState state) {
      this.state = state;
      columns.fill(state, sources, 0, 1);
      double lux = state.sky().sunNormalLux();
      this.factors =
          new double[] {
            lux, lux * Columns.generalFactor(state.sky()), lux * Columns.fixedFactor(state.sky())
          };
      this.flecks = RoomLight.this.flecks.under(state.sky().sun());
      this.shines = lux > 0 && state.sky().sun().z() > 0;
    }

    /** Without a lock: two threads may both solve, to the same bits, but none waits for another. */
    private Inside inside() {
      Inside known = solved;
      if (known == null) {
        known = solve(this);
        solved = known;
      }
      return known;
    }

    LightState state() {
      return state;
    }

    /** Illuminance of a patch, lx. */
    double illuminance(int patch) {
      return inside().total[patch];
    }

    /**
     * Luminance of a piece of a patch, cd/m2.
     *
     * @param patch its number, or -1 for the mean of its group
     * @param box bounds of the piece in the patch's plane, or null for all of the patch
     */
    double luminance(int group, int patch, double[] box) {
      double lux = patch < 0 ? inside().groupMeans[group] : inside().total[patch];
      if (box != null && shines) {
        float[] above = fleck.computeIfAbsent(patch, this::above);
        int[] covered = RoomLight.this.flecks.covered(patch, box);
        for (int k = 0; k < covered.length && above.length > 0; k++) {
          lux += factors[0] * above[covered[k]] / covered.length;
        }
      }
      return Math.max(0, lux) * reflectance(group) / Math.PI;
    }

    /** What the beam lays on each part above the patch's mean; empty when it lays none. */
    private float[] above(int index) {
      float mean = flecks.mean(index, 0, 0);
      float[] above = new float[mean == 0 ? 0 : RoomLight.this.flecks.parts(index)];
      for (int q = 0; q < above.length; q++) {
        above[q] = flecks.at(index, q, 0, 0) - mean;
      }
      return above;
    }

    /** Luminance of something outside, cd/m2. */
    double luminance(OutsideCell cell) {
      return luminances.computeIfAbsent(
          cell,
          c -> {
            double l = columns.denseValue(c.response(columns), sources);
            if (shines) {
              double[] g = Exposure.sunOf(c, state.sky().sun());
              l += factors[0] * g[0] + factors[1] * g[1] + factors[2] * g[2];
            }
            return Math.max(0, l);
          });
    }

    /** Flux that enters, is absorbed by surfaces and leaves again through openings, lm. */
    EnergyBalance balance() {
      double[] direct = inside().direct;
      double[] total = inside().total;
      double in = 0;
      double kept = 0;
      double out = 0;
      for (Patch p : mesh.patches) {
        int i = p.index();
        double rho = reflectance(p.group());
        in += direct[i] * p.area();
        kept += total[i] * (1 - rho) * p.area();
        // Light leaves straight from where it falls; what is bounced again leaves evenly by group.
        out +=
            rho
                * p.area()
                * (direct[i] * exchange.openShare(i)
                    + (total[i] - direct[i]) * exchange.groupOpenShare(p.group()));
      }
      return new EnergyBalance(in, kept, out);
    }
  }

  List<Patch> patches() {
    return mesh.patches;
  }

  int roomOf(String id) {
    return interior.room(id);
  }
}
