package slantlight.scene;

import java.time.LocalTime;
import java.util.List;
import slantlight.geom.Vec3;

/**
 * A light fixture.
 *
 * @param position centre of the luminous opening, world, m
 * @param aim unit direction of the photometric nadir (gamma 0)
 * @param c0 unit direction of the C0 plane, square to {@code aim}
 * @param lumens total flux, lm
 * @param width luminous opening along c0 x aim, m
 * @param length luminous opening along c0, m
 * @param height luminous opening along the aim, m
 * @param on when it is switched on; empty means never
 */
public record Lamp(
    String id,
    String label,
    String roomId,
    Vec3 position,
    Vec3 aim,
    Vec3 c0,
    Distribution distribution,
    double lumens,
    double width,
    double length,
    double height,
    List<OnHours> on) {
  public Lamp {
    on = List.copyOf(on);
  }

  /** True when the lamp is on at a clock time with the sun at an altitude, radians. */
  public boolean lit(LocalTime time, double sunAltitude) {
    return on.stream().anyMatch(hours -> hours.on(time, sunAltitude));
  }

  /** This lamp in another place or turned. */
  public Lamp placed(Vec3 newPosition, Vec3 newAim, Vec3 newC0) {
    return new Lamp(
        id,
        label,
        roomId,
        newPosition,
        newAim,
        newC0,
        distribution,
        lumens,
        width,
        length,
        height,
        on);
  }

  /** This lamp switched on at other hours. */
  public Lamp withOn(List<OnHours> newOn) {
    return new Lamp(
        id, label, roomId, position, aim, c0, distribution, lumens, width, length, height, newOn);
  }
}
