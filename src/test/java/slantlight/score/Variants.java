package slantlight.score;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Distribution;
import slantlight.scene.GivenJoint;
import slantlight.scene.GroundZone;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Lamp;
import slantlight.scene.OnHours;
import slantlight.scene.Outside;
import slantlight.scene.Paint;
import slantlight.scene.Surface;

/** Houses that differ from another in one thing, for tests of what that thing does. */
public final class Variants {
  private Variants() {}

  /** The house with its surfaces changed. */
  public static House surfaces(House h, UnaryOperator<Surface> change) {
    return h.withSurfaces(h.surfaces().stream().map(change).toList());
  }

  /** Joints already up on one surface, instead of a layout. */
  public static House joints(House h, String surfaceId, GivenJoint... joints) {
    return surfaces(h, s -> s.id().equals(surfaceId) ? s.withJoints(List.of(joints)) : s);
  }

  /** A surface with a part of it behind tile or the like. */
  public static Surface covered(Surface s, List<Vec2> ring) {
    return new Surface(
        s.id(),
        s.label(),
        s.roomId(),
        s.kind(),
        s.face(),
        s.paint(),
        s.boarded(),
        s.framing(),
        s.boards(),
        s.level(),
        List.of(ring),
        s.joints());
  }

  /** Every wall and ceiling in one paint. */
  public static House paint(House h, Paint paint) {
    return surfaces(h, s -> s.boarded() ? s.withPaint(paint) : s);
  }

  public static House lamps(House h, Lamp... lamps) {
    return h.withLamps(List.of(lamps));
  }

  public static House ground(House h, GroundZone... zones) {
    Outside o = h.outside();
    return h.withOutside(new Outside(o.groundZ(), List.of(zones), o.blocks()));
  }

  /** A joint in plane coordinates, m. */
  public static GivenJoint joint(JointKind kind, double x0, double y0, double x1, double y1) {
    return new GivenJoint(
        Optional.empty(),
        kind,
        new Vec2(x0, y0),
        new Vec2(x1, y1),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  /** A lamp that is on every evening. */
  public static Lamp lamp(String roomId, Vec3 at, Vec3 aim, Distribution how, double lumens) {
    Vec3 c0 = Math.abs(aim.z()) > 0.9 ? Vec3.EAST : Vec3.UP;
    return new Lamp(
        roomId + "/lamp",
        "lamp",
        roomId,
        at,
        aim,
        c0,
        how,
        lumens,
        0.05,
        0.05,
        0,
        List.of(new OnHours(LocalTime.of(17, 0), LocalTime.of(23, 0), true)));
  }
}
