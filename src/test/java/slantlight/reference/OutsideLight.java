package slantlight.reference;

import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.scene.GroundKind;
import slantlight.scene.GroundZone;
import slantlight.scene.Outside;
import slantlight.sky.SkyState;
import slantlight.sky.WaterMirror;

/**
 * Luminance of what lies beyond all blocks: sky above, ground below. Ground lies open to sun and
 * sky; water mirrors the sky as a level mirror and the sun as glitter.
 */
final class OutsideLight {
  private final Outside outside;
  private final SkyState sky;
  private final double globalLux;

  OutsideLight(Outside outside, SkyState sky) {
    this.outside = outside;
    this.sky = sky;
    this.globalLux = sky.globalHorizontalLux();
  }

  /** Luminance toward a unit direction from a point, cd/m2; the sun's disc is left out. */
  double luminance(double ox, double oy, double oz, double dx, double dy, double dz) {
    if (dz > 0) {
      return sky.luminance().toward(dx, dy, dz);
    }
    for (GroundZone zone : outside.zones()) {
      double t = (zone.z() - oz) / dz;
      if (t > 0 && Face.inside(zone.outline(), new Vec2(ox + t * dx, oy + t * dy))) {
        return zoneLuminance(zone, dx, dy, dz);
      }
    }
    return Double.isNaN(sky.groundLuminance())
        ? sky.groundReflectance() * globalLux / Math.PI
        : sky.groundLuminance();
  }

  private double zoneLuminance(GroundZone zone, double dx, double dy, double dz) {
    double diffuse = zone.reflectance() * globalLux / Math.PI;
    if (zone.kind() != GroundKind.WATER) {
      return diffuse;
    }
    WaterMirror water = WaterMirror.water(zone.wind());
    double mirrored = water.reflectance(-dz) * sky.luminance().toward(dx, dy, Math.max(1e-6, -dz));
    double glitter =
        sky.sun().z() <= 0
            ? 0
            : sky.sunNormalLux()
                * water.glitter(sky.sun().x(), sky.sun().y(), sky.sun().z(), -dx, -dy, -dz);
    return diffuse + mirrored + glitter;
  }
}
