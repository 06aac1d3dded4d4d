package slantlight.light;

import slantlight.sky.WaterMirror;

/** What one ray out of an opening meets: reused by its owner, filled by {@link Outdoors}. */
final class View {
  SourceKind kind;
  int mark;

  /** Sky seen straight or in a mirror: its zone and share, or -1. */
  int zone;

  double zoneWeight;
  double skyX;
  double skyY;
  double skyZ;

  /** Ground or wall seen, or null, and its share. */
  OutsideCell cell;

  double cellWeight;

  /** Wall seen in a mirror, or null, and its share. */
  OutsideCell mirrored;

  double mirroredWeight;

  /** The mirror met, or null, the ground it lies on, and the ray's direction. */
  WaterMirror mirror;

  GroundCell place;
  double dx;
  double dy;
  double dz;

  final double[] t = new double[1];

  void clear() {
    zone = -1;
    zoneWeight = 0;
    cell = null;
    cellWeight = 0;
    mirrored = null;
    mirroredWeight = 0;
    mirror = null;
    place = null;
  }

  void setSky(double x, double y, double z) {
    skyX = x;
    skyY = y;
    skyZ = z;
  }

  void setDirection(double x, double y, double z) {
    dx = x;
    dy = y;
    dz = z;
  }

  /** Luminance of the sun's glitter in the mirror per lx of beam, its shade left out. */
  double glitter(double sx, double sy, double sz) {
    return mirror.glitter(sx, sy, sz, -dx, -dy, -dz);
  }
}
