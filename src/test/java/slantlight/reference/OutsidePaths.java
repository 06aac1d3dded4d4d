package slantlight.reference;

import java.util.List;
import java.util.SplittableRandom;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.GroundKind;
import slantlight.scene.GroundZone;
import slantlight.scene.Outside;
import slantlight.sky.SkyState;
import slantlight.sky.WaterMirror;

/**
 * Luminance of what lies outside, by paths: sky; ground under what sky and sun the house and blocks
 * leave it; walls and blocks lit by sky, sun and ground; water that mirrors all of them. Light that
 * walls throw on walls and on the ground can be followed too; the program leaves it out.
 */
final class OutsidePaths {
  private final Outside outside;
  private final Scenery scenery;
  private final SkyState sky;
  private final boolean wallsExchange;
  private final SplittableRandom random;
  private final Hit hit = new Hit();

  OutsidePaths(
      Outside outside,
      Scenery scenery,
      SkyState sky,
      boolean wallsExchange,
      SplittableRandom random) {
    this.outside = outside;
    this.scenery = scenery;
    this.sky = sky;
    this.wallsExchange = wallsExchange;
    this.random = random;
  }

  /** Luminance toward a unit direction from a point outside, cd/m2; without the sun's disc. */
  double luminance(double ox, double oy, double oz, double dx, double dy, double dz) {
    return seen(ox, oy, oz, dx, dy, dz, 0, true);
  }

  /** The same, but walls dark unless they exchange light. */
  double unlitByWalls(double ox, double oy, double oz, double dx, double dy, double dz) {
    return seen(ox, oy, oz, dx, dy, dz, 1, wallsExchange);
  }

  /** Share of the beam of the sun that arrives at a point outside: 0 or 1. */
  double sun(double x, double y, double z) {
    Vec3 s = sky.sun();
    if (sky.sunNormalLux() <= 0 || s.z() <= 0) {
      return 0;
    }
    scenery.outside(x, y, z, s.x(), s.y(), s.z(), hit);
    return hit.what == Hit.What.NOTHING ? 1 : 0;
  }

  /**
   * Luminance of a scattering body at a point that faces {@code n}.
   *
   * @param factor luminance per lx that arrives
   */
  double body(double x, double y, double z, Vec3 n, double factor, int depth) {
    Vec3 s = sky.sun();
    double facing = n.dot(s);
    double e = facing > 0 ? facing * sky.sunNormalLux() * sun(x, y, z) : 0;
    Vec3 d = Directions.cosine(n, random);
    e += Math.PI * seen(x, y, z, d.x(), d.y(), d.z(), depth + 1, wallsExchange);
    return factor * e;
  }

  private double seen(
      double ox, double oy, double oz, double dx, double dy, double dz, int depth, boolean walls) {
    scenery.outside(ox, oy, oz, dx, dy, dz, hit);
    double tShell = hit.distance;
    int index = hit.index;
    double tGround = Double.POSITIVE_INFINITY;
    GroundZone zone = null;
    if (dz < 0) {
      List<GroundZone> zones = outside.zones();
      for (GroundZone z : zones) {
        double t = (z.z() - oz) / dz;
        if (t > 0 && t < tGround && covers(z, ox + t * dx, oy + t * dy)) {
          tGround = t;
          zone = z;
        }
      }
      double t = (outside.groundZ() - oz) / dz;
      if (t > 0 && t < tGround && !hollow(ox + t * dx, oy + t * dy)) {
        tGround = t;
        zone = null;
      }
    }
    double t = Math.min(tShell, tGround);
    if (t == Double.POSITIVE_INFINITY) {
      return sky.luminance().toward(dx, dy, Math.max(1e-9, dz));
    }
    double x = ox + t * dx;
    double y = oy + t * dy;
    double z = oz + t * dz;
    if (tShell <= tGround) {
      return walls && depth < 12 ? wall(index, x, y, z, dx, dy, dz, depth) : 0;
    }
    return ground(zone, x, y, z, dx, dy, dz, depth);
  }

  private double wall(
      int index, double x, double y, double z, double dx, double dy, double dz, int depth) {
    Plate p = scenery.shell[index];
    double side = p.nx * dx + p.ny * dy + p.nz * dz > 0 ? -1 : 1;
    Vec3 n = new Vec3(side * p.nx, side * p.ny, side * p.nz);
    return body(x, y, z, n, scenery.shellReflectance[index] / Math.PI, depth);
  }

  private double ground(
      GroundZone zone, double x, double y, double z, double dx, double dy, double dz, int depth) {
    boolean general = zone == null || zone.kind() == GroundKind.GROUND;
    if (zone != null && zone.kind() == GroundKind.WATER) {
      return mirrored(WaterMirror.water(zone.wind()), x, y, z, dx, dy, dz, depth);
    }
    if (general && !Double.isNaN(sky.groundLuminance())) {
      return sky.groundLuminance();
    }
    double rho = general ? sky.groundReflectance() : zone.reflectance();
    double e =
        sky.diffuseHorizontalLux() + Math.max(0, sky.sun().z()) * sky.sunNormalLux() * sun(x, y, z);
    // Only what is hidden of the vault is sampled: open ground has no noise.
    Vec3 d = Directions.cosine(Vec3.UP, random);
    scenery.outside(x, y, z, d.x(), d.y(), d.z(), hit);
    if (hit.what == Hit.What.SHELL) {
      double instead = 0;
      if (wallsExchange && depth < 12) {
        double t = hit.distance;
        instead =
            wall(
                hit.index,
                x + t * d.x(),
                y + t * d.y(),
                z + t * d.z(),
                d.x(),
                d.y(),
                d.z(),
                depth + 1);
      }
      e += Math.PI * (instead - sky.luminance().toward(d.x(), d.y(), d.z()));
    }
    return rho / Math.PI * e;
  }

  private double mirrored(
      WaterMirror water, double x, double y, double z, double dx, double dy, double dz, int depth) {
    double above = z + 1e-4;
    double glitter = 0;
    Vec3 s = sky.sun();
    if (sky.sunNormalLux() > 0 && s.z() > 0) {
      glitter =
          sky.sunNormalLux() * water.glitter(s.x(), s.y(), s.z(), -dx, -dy, -dz) * sun(x, y, above);
    }
    return glitter + water.reflectance(-dz) * seen(x, y, above, dx, dy, -dz, depth + 1, true);
  }

  private boolean hollow(double x, double y) {
    for (GroundZone zone : outside.zones()) {
      if (zone.z() < outside.groundZ() && covers(zone, x, y)) {
        return true;
      }
    }
    return false;
  }

  private static boolean covers(GroundZone zone, double x, double y) {
    return Face.inside(zone.outline(), new Vec2(x, y));
  }
}
