package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Lamp;

/**
 * Light straight from lamps. A lamp nearer than five times its size is a cluster of points spread
 * over its luminous opening, each with the lamp's own distribution; farther it is one point.
 */
final class LampLight {
  /** Hears of lamp light. */
  interface LampSink {
    /**
     * Light of one lamp, or of a part of it, at full power.
     *
     * @param dx unit direction to it
     * @param normalLux illuminance square to the direction, lx
     */
    void light(int lamp, double dx, double dy, double dz, double normalLux);
  }

  private static final double FAR_SIZES = 5;
  private static final int MOST_PARTS = 12;

  private final List<Lamp> lamps;
  private final Interior interior;
  private final int[] rooms;

  LampLight(House house, Interior interior) {
    this.lamps = house.lamps();
    this.interior = interior;
    this.rooms = lamps.stream().mapToInt(l -> interior.room(l.roomId())).toArray();
  }

  /** All lamp light in front of a surface point. */
  void at(int room, Vec3 p, Vec3 n, LampSink sink) {
    for (int near : interior.near(room)) {
      for (int l = 0; l < lamps.size(); l++) {
        if (rooms[l] == near) {
          oneLamp(l, interior.clear(room, near), p, n, sink);
        }
      }
    }
  }

  private void oneLamp(int index, boolean clear, Vec3 p, Vec3 n, LampSink sink) {
    Lamp lamp = lamps.get(index);
    Vec3 across = lamp.c0().cross(lamp.aim());
    double size = Math.max(lamp.length(), Math.max(lamp.width(), lamp.height()));
    double d = p.distance(lamp.position());
    if (size <= 0 || d > FAR_SIZES * size) {
      point(index, clear, lamp, across, lamp.position(), 1, p, n, sink);
      return;
    }
    // Parts small enough for the gap to the nearest point the lamp can have.
    double gap = Math.max(d - size / 2, 0.02);
    double part = Math.max(gap / FAR_SIZES, size / MOST_PARTS);
    int nl = parts(lamp.length(), part);
    int nw = parts(lamp.width(), part);
    int nh = parts(lamp.height(), part);
    double share = 1.0 / (nl * nw * nh);
    List<Vec3> places = new ArrayList<>();
    for (int i = 0; i < nl * nw * nh; i++) {
      int row = i / nl;
      int layer = row / nw;
      places.add(
          lamp.position()
              .plus(lamp.c0().times(lamp.length() * ((i % nl + 0.5) / nl - 0.5)))
              .plus(across.times(lamp.width() * ((row % nw + 0.5) / nw - 0.5)))
              .plus(lamp.aim().times(lamp.height() * ((layer + 0.5) / nh - 0.5))));
    }
    for (Vec3 q : places) {
      point(index, clear, lamp, across, q, share, p, n, sink);
    }
  }

  private static int parts(double extent, double part) {
    return (int) Math.max(1, Math.min(MOST_PARTS, Math.ceil(extent / part - 1e-9)));
  }

  private void point(
      int index,
      boolean clear,
      Lamp lamp,
      Vec3 across,
      Vec3 q,
      double share,
      Vec3 p,
      Vec3 n,
      LampSink sink) {
    double dx = q.x() - p.x();
    double dy = q.y() - p.y();
    double dz = q.z() - p.z();
    double d2 = dx * dx + dy * dy + dz * dz;
    double d = Math.sqrt(d2);
    double facing = dx * n.x() + dy * n.y() + dz * n.z();
    if (!(facing > 1e-9 * d) || d < 1e-4) {
      return;
    }
    Vec3 out = new Vec3(-dx / d, -dy / d, -dz / d);
    double gamma = Math.acos(Math.max(-1, Math.min(1, out.dot(lamp.aim()))));
    // Counter-clockwise about the aim as seen from below looking up: C90 lies along c0 x aim.
    double c = Math.atan2(out.dot(across), out.dot(lamp.c0()));
    double candela = share * lamp.lumens() * lamp.distribution().intensityPerLumen(gamma, c);
    if (candela <= 0 || (!clear && hidden(p, n, q))) {
      return;
    }
    sink.light(index, dx / d, dy / d, dz / d, candela / d2);
  }

  private boolean hidden(Vec3 p, Vec3 n, Vec3 q) {
    double ax = p.x() + n.x() * Interior.LIFT;
    double ay = p.y() + n.y() * Interior.LIFT;
    double az = p.z() + n.z() * Interior.LIFT;
    double d = p.distance(q);
    // A lamp may sit in the very plane of the surface it is fixed to.
    double end = Math.max(0.5, 1 - 2e-3 / d);
    return interior.faces().any(ax, ay, az, q.x() - ax, q.y() - ay, q.z() - az, 1e-6, end) >= 0;
  }
}
