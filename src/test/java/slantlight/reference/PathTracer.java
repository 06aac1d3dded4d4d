package slantlight.reference;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.LightState;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.sky.SkyState;

/**
 * Light at a point by tracing paths backward (Kajiya, "The rendering equation", SIGGRAPH 1986): an
 * answer to hold the program's own transport against, with no code of it. Rays leave the point over
 * a stratified hemisphere; where one meets a surface, a path goes on by diffuse bounces, and at
 * each bounce a point of one opening, the sun and one lamp are asked for their light outright.
 *
 * <p>Errors come from independent batches, so they hold for stratified rays too. The seed fixes the
 * answer to the bit.
 */
final class PathTracer {
  private static final int ROULETTE_AFTER = 4;
  private static final int LONGEST = 200;

  private final House house;
  private final Scenery scenery;
  private final SkyState sky;
  private final List<Double> lampShares;
  private final boolean wallsExchange;
  private final double[] paneAreas;
  private final double paneArea;
  private final double[][] paneBoxes;

  /**
   * @param wallsExchange true to follow the light that outside walls throw on one another and on
   *     the ground, which the program leaves out
   */
  PathTracer(House house, LightState state, boolean wallsExchange) {
    this.house = house;
    this.scenery = new Scenery(house);
    this.sky = state.sky();
    this.lampShares = state.lampShares();
    this.wallsExchange = wallsExchange;
    int n = scenery.panes.length;
    paneAreas = new double[n];
    paneBoxes = new double[n][];
    double total = 0;
    for (int i = 0; i < n; i++) {
      List<Vec2> ring = scenery.panes[i].opening.face().outer();
      double u0 = ring.stream().mapToDouble(Vec2::x).min().orElseThrow();
      double u1 = ring.stream().mapToDouble(Vec2::x).max().orElseThrow();
      double v0 = ring.stream().mapToDouble(Vec2::y).min().orElseThrow();
      double v1 = ring.stream().mapToDouble(Vec2::y).max().orElseThrow();
      paneBoxes[i] = new double[] {u0, v0, u1 - u0, v1 - v0};
      paneAreas[i] = (u1 - u0) * (v1 - v0);
      total += paneAreas[i];
    }
    paneArea = total;
  }

  /**
   * Illuminance and light vector.
   *
   * @param batches independent batches, at least 2
   * @param side rays per side of the stratified square of one batch
   */
  Answer at(Frame frame, int batches, int side, long seed) {
    double[][] sums =
        IntStream.range(0, batches)
            .parallel()
            .mapToObj(b -> batch(frame, side, new SplittableRandom(seed * 1_000_003L + b)))
            .toArray(double[][]::new);
    return Answer.of(sums);
  }

  private double[] batch(Frame frame, int side, SplittableRandom random) {
    double[] sum = new double[4];
    Path path = new Path(random);
    Vec3 o = frame.origin();
    Vec3 n = frame.n();
    double weight = 2 * Math.PI / ((double) side * side);
    for (int i = 0; i < side; i++) {
      for (int k = 0; k < side; k++) {
        // Uniform over the hemisphere: cos(theta) uniform in (0, 1) (Archimedes' hat box).
        double cos = (i + random.nextDouble()) / side;
        double phi = 2 * Math.PI * (k + random.nextDouble()) / side;
        Vec3 d = direction(frame, cos, phi);
        add(sum, d, n, path.seen(o.x(), o.y(), o.z(), d.x(), d.y(), d.z()) * weight);
      }
    }
    Vec3 s = sky.sun();
    double facing = s.dot(n);
    if (facing > 0) {
      add(sum, s, n, path.sun(o.x(), o.y(), o.z()) * sky.sunNormalLux());
    }
    for (int l = 0; l < house.lamps().size(); l++) {
      for (int k = 0; k < side; k++) {
        Vec3 from = place(house.lamps().get(l), random);
        Vec3 d = from.minus(o).unit();
        double normal = path.lampNormalLux(l, from, o.x(), o.y(), o.z());
        if (d.dot(n) > 0) {
          add(sum, d, n, normal / side);
        }
      }
    }
    return sum;
  }

  private static void add(double[] sum, Vec3 d, Vec3 n, double normalLux) {
    sum[0] += d.dot(n) * normalLux;
    sum[1] += d.x() * normalLux;
    sum[2] += d.y() * normalLux;
    sum[3] += d.z() * normalLux;
  }

  private static Vec3 direction(Frame f, double cos, double phi) {
    double sin = Math.sqrt(1 - cos * cos);
    return f.u()
        .times(sin * Math.cos(phi))
        .plus(f.v().times(sin * Math.sin(phi)))
        .plus(f.n().times(cos));
  }

  /** A random point of the luminous opening. */
  private static Vec3 place(Lamp lamp, SplittableRandom random) {
    Vec3 across = lamp.c0().cross(lamp.aim());
    return lamp.position()
        .plus(across.times((random.nextDouble() - 0.5) * lamp.width()))
        .plus(lamp.c0().times((random.nextDouble() - 0.5) * lamp.length()))
        .plus(lamp.aim().times((random.nextDouble() - 0.5) * lamp.height()));
  }

  /** Paths of one batch; not shared between threads. */
  private final class Path {
    private final SplittableRandom random;
    private final OutsidePaths outside;
    private final Hit hit = new Hit();

    Path(SplittableRandom random) {
      this.random = random;
      this.outside = new OutsidePaths(house.outside(), scenery, sky, wallsExchange, random);
    }

    /** Luminance seen along a ray from inside, the sun's disc and lamps themselves left out. */
    double seen(double ox, double oy, double oz, double dx, double dy, double dz) {
      scenery.inside(ox, oy, oz, dx, dy, dz, Double.POSITIVE_INFINITY, hit);
      double t = hit.distance;
      return switch (hit.what) {
        case SURFACE -> bounces(hit.index, ox + t * dx, oy + t * dy, oz + t * dz);
        case PANE -> through(hit.index, ox + t * dx, oy + t * dy, oz + t * dz, dx, dy, dz);
        case BACK -> 0;
        case SHELL, NOTHING -> throw new IllegalStateException("a ray leaked out of the room");
      };
    }

    /** Luminance of an opening at a point of its hole. */
    private double through(
        int pane, double x, double y, double z, double dx, double dy, double dz) {
      Scenery.Pane p = scenery.panes[pane];
      if (p.cloth) {
        return cloth(p, x, y, z);
      }
      double share = p.share(x, y, z, dx, dy, dz);
      if (share == 0) {
        return 0;
      }
      double t = p.depth(dx, dy, dz);
      return share * outside.luminance(x + t * dx, y + t * dy, z + t * dz, dx, dy, dz);
    }

    /** Luminance of a scattering cloth lit from outside through its glass. */
    private double cloth(Scenery.Pane p, double x, double y, double z) {
      Vec3 n = new Vec3(-p.plate.nx, -p.plate.ny, -p.plate.nz);
      Vec3 s = sky.sun();
      double lux = 0;
      if (n.dot(s) > 0 && sky.sunNormalLux() > 0) {
        lux +=
            n.dot(s)
                * sky.sunNormalLux()
                * p.share(x, y, z, s.x(), s.y(), s.z())
                * outside.sun(x, y, z);
      }
      Vec3 d = Directions.cosine(n, random);
      lux +=
          Math.PI
              * p.share(x, y, z, d.x(), d.y(), d.z())
              * outside.unlitByWalls(x, y, z, d.x(), d.y(), d.z());
      return lux / Math.PI;
    }

    /** Luminance of a diffuse surface at a point, by a path of bounces. */
    private double bounces(int surface, double x, double y, double z) {
      double luminance = 0;
      double weight = 1;
      for (int depth = 0; depth < LONGEST; depth++) {
        Plate plate = scenery.surfaces[surface];
        double rho = scenery.reflectance[surface];
        weight *= rho;
        luminance += weight / Math.PI * straight(plate, x, y, z);
        if (depth >= ROULETTE_AFTER) {
          double survive = Math.min(0.95, rho);
          if (random.nextDouble() >= survive) {
            return luminance;
          }
          weight /= survive;
        }
        if (weight == 0) {
          return luminance;
        }
        Vec3 d = Directions.cosine(new Vec3(plate.nx, plate.ny, plate.nz), random);
        scenery.inside(x, y, z, d.x(), d.y(), d.z(), Double.POSITIVE_INFINITY, hit);
        if (hit.what != Hit.What.SURFACE) {
          return luminance; // the openings were asked outright
        }
        surface = hit.index;
        x += hit.distance * d.x();
        y += hit.distance * d.y();
        z += hit.distance * d.z();
      }
      return luminance;
    }

    /** One-sample estimate of the illuminance that reaches a point without a bounce inside. */
    private double straight(Plate plate, double x, double y, double z) {
      double e = 0;
      double facing =
          plate.nx * sky.sun().x() + plate.ny * sky.sun().y() + plate.nz * sky.sun().z();
      if (facing > 0 && sky.sunNormalLux() > 0) {
        e += sun(x, y, z) * facing * sky.sunNormalLux();
      }
      if (paneArea > 0) {
        e += throughOnePane(plate, x, y, z);
      }
      int lamps = house.lamps().size();
      if (lamps > 0) {
        int l = random.nextInt(lamps);
        Vec3 from = place(house.lamps().get(l), random);
        double rx = from.x() - x;
        double ry = from.y() - y;
        double rz = from.z() - z;
        double cos =
            (plate.nx * rx + plate.ny * ry + plate.nz * rz)
                / Math.sqrt(rx * rx + ry * ry + rz * rz);
        if (cos > 0) {
          e += lamps * cos * lampNormalLux(l, from, x, y, z);
        }
      }
      return e;
    }

    private double throughOnePane(Plate plate, double x, double y, double z) {
      double pick = random.nextDouble() * paneArea;
      int i = 0;
      while (i < paneAreas.length - 1 && pick >= paneAreas[i]) {
        pick -= paneAreas[i++];
      }
      double[] box = paneBoxes[i];
      Frame frame = scenery.panes[i].opening.face().frame();
      Vec3 to =
          frame.toWorld(
              new Vec2(
                  box[0] + random.nextDouble() * box[2], box[1] + random.nextDouble() * box[3]));
      double rx = to.x() - x;
      double ry = to.y() - y;
      double rz = to.z() - z;
      double r2 = rx * rx + ry * ry + rz * rz;
      double r = Math.sqrt(r2);
      rx /= r;
      ry /= r;
      rz /= r;
      double cos = plate.nx * rx + plate.ny * ry + plate.nz * rz;
      Vec3 n = frame.n();
      double cosPane = -(n.x() * rx + n.y() * ry + n.z() * rz);
      if (cos <= 0 || cosPane <= 0) {
        return 0;
      }
      scenery.inside(x, y, z, rx, ry, rz, r * (1 + 1e-9), hit);
      if (hit.what != Hit.What.PANE || hit.index != i) {
        return 0; // hidden, or outside the true outline of a pane that is no rectangle
      }
      return through(i, to.x(), to.y(), to.z(), rx, ry, rz) * cos * cosPane / r2 * paneArea;
    }

    /** Share of the sun's beam that arrives straight at a point inside. */
    double sun(double x, double y, double z) {
      Vec3 s = sky.sun();
      if (sky.sunNormalLux() <= 0 || s.z() <= 0) {
        return 0;
      }
      scenery.inside(x, y, z, s.x(), s.y(), s.z(), Double.POSITIVE_INFINITY, hit);
      if (hit.what != Hit.What.PANE || scenery.panes[hit.index].cloth) {
        return 0;
      }
      Scenery.Pane p = scenery.panes[hit.index];
      double t = hit.distance;
      double share = p.share(x + t * s.x(), y + t * s.y(), z + t * s.z(), s.x(), s.y(), s.z());
      t += p.depth(s.x(), s.y(), s.z());
      return share == 0 ? 0 : share * outside.sun(x + t * s.x(), y + t * s.y(), z + t * s.z());
    }

    /** Normal illuminance at a point from a place of a lamp, as if all its light left there, lx. */
    double lampNormalLux(int l, Vec3 from, double x, double y, double z) {
      double share = lampShares.get(l);
      if (share == 0) {
        return 0;
      }
      Lamp lamp = house.lamps().get(l);
      double rx = x - from.x();
      double ry = y - from.y();
      double rz = z - from.z();
      double r = Math.sqrt(rx * rx + ry * ry + rz * rz);
      scenery.inside(x, y, z, -rx / r, -ry / r, -rz / r, r * (1 - 1e-9), hit);
      if (hit.what != Hit.What.NOTHING) {
        return 0;
      }
      Vec3 aim = lamp.aim();
      Vec3 c0 = lamp.c0();
      Vec3 c90 = c0.cross(aim);
      double down = (rx * aim.x() + ry * aim.y() + rz * aim.z()) / r;
      double along = rx * c0.x() + ry * c0.y() + rz * c0.z();
      double across = rx * c90.x() + ry * c90.y() + rz * c90.z();
      double gamma = Math.acos(Math.max(-1, Math.min(1, down)));
      double candela =
          lamp.lumens() * lamp.distribution().intensityPerLumen(gamma, Math.atan2(across, along));
      return share * candela / (r * r);
    }
  }
}
