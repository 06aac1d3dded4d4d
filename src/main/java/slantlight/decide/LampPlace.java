package slantlight.decide;

import java.util.List;
import java.util.Optional;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.Incident;
import slantlight.light.IncidentField;
import slantlight.light.SamplePoint;
import slantlight.light.Source;
import slantlight.light.SourceKind;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;
import slantlight.score.JointScore;
import slantlight.score.Peak;

/**
 * Where to hold a small lamp so that it rakes a joint at least as hard, from the same side, as its
 * worst moment of the year.
 *
 * <p>A point of light at distance D across the joint and height h over the surface has, at every
 * point of the joint, the slant D / h across it, wherever along the joint it is: both parts of the
 * light vector fall with the same cube of the distance. So h = D tan(g) with cot(g) = the worst
 * slant times a margin. The margin lets the lamp be mixed with a quarter of its own light from the
 * room before it rakes less hard than the worst moment does.
 *
 * @param jointId the joint it is for
 * @param position of the lamp, world, m
 * @param target point of the joint it is aimed at, world, m
 * @param across distance from the joint along the surface, m
 * @param height over the surface, m
 * @param grazing angle of its light to the surface at the target, radians
 * @param slant of its light across the joint, alone in the dark, 1/rad
 * @param worstSlant of the worst moment, 1/rad
 * @param reachable false when the place is beyond the surface's edge at every distance tried
 */
public record LampPlace(
    String jointId,
    Vec3 position,
    Vec3 target,
    double across,
    double height,
    double grazing,
    double slant,
    double worstSlant,
    boolean reachable) {
  /** Share by which the lamp alone exceeds the worst moment. */
  public static final double MARGIN = 1.25;

  /** No flatter than this, radians: half a hand's breadth at arm's length. */
  private static final double FLATTEST = Math.toRadians(1);

  /** No steeper than critical light is taken to be, radians. */
  private static final double STEEPEST = Math.toRadians(15);

  /** Distances tried, m: a comfortable arm and stand first. */
  private static final List<Double> DISTANCES = List.of(1.0, 1.5, 0.7, 0.5, 0.3);

  /** Cosine to the joint's normal from which the light counts as coming from one side. */
  private static final double ONE_SIDED = 0.2;

  /** A hand lamp's own half thickness, m. */
  private static final double LAMP = 0.02;

  /** The place for a joint's worst moment; empty when the joint has none. */
  public static Optional<LampPlace> of(House house, Surface surface, JointScore score) {
    if (score.peak().isEmpty()) {
      return Optional.empty();
    }
    Peak peak = score.peak().get();
    Frame frame = surface.face().frame();
    Vec2 target = frame.toPlane(peak.place());
    Vec2 along = score.joint().to().minus(score.joint().from()).unit();
    Vec2 across = new Vec2(-along.y(), along.x());
    double side = Advice.towardLight(house, surface, peak).map(across::dot).orElse(0.0);
    double wanted = MARGIN * Math.abs(peak.slant());
    double grazing =
        Math.max(FLATTEST, wanted == 0 ? STEEPEST : Math.min(STEEPEST, Math.atan(1 / wanted)));
    Optional<Double> oneWay = fits(surface, target, across, grazing);
    Optional<Double> otherWay = fits(surface, target, across.times(-1), grazing);
    boolean other = Math.abs(side) >= ONE_SIDED ? side < 0 : rank(otherWay) < rank(oneWay);
    Optional<Double> fits = other ? otherWay : oneWay;
    Vec2 toLight = other ? across.times(-1) : across;
    double distance = fits.orElse(DISTANCES.get(0));
    double height = distance * Math.tan(grazing);
    Vec3 position = frame.toWorld(target.plus(toLight.times(distance)), height);
    return Optional.of(
        new LampPlace(
            score.joint().id(),
            position,
            peak.place(),
            distance,
            height,
            grazing,
            slant(frame, target, toLight, position),
            Math.abs(peak.slant()),
            fits.isPresent()));
  }

  /** Slant of a point of light across a joint, from its light vector at a point of the surface. */
  static double slant(Frame frame, Vec2 at, Vec2 across, Vec3 lamp) {
    Vec3 place = frame.toWorld(at);
    Vec3 way = lamp.minus(place);
    double r = way.length();
    Source source = new Source(SourceKind.LAMP, "", "hand lamp");
    Frame here = new Frame(place, frame.u(), frame.v(), frame.n());
    IncidentField field =
        new IncidentField(
            new SamplePoint(here, ""), List.of(new Incident(way.unit(), 1 / (r * r), source)));
    Vec3 local = frame.directionToLocal(field.lightVector());
    return new Vec2(local.x(), local.y()).dot(across) / field.illuminance();
  }

  private static int rank(Optional<Double> distance) {
    return distance.map(DISTANCES::indexOf).orElse(DISTANCES.size());
  }

  private static Optional<Double> fits(Surface surface, Vec2 target, Vec2 toward, double grazing) {
    return DISTANCES.stream()
        .filter(d -> d * Math.tan(grazing) >= LAMP)
        .filter(d -> surface.face().contains(target.plus(toward.times(d))))
        .findFirst();
  }

  /** Where the lamp is from its target, seen from inside the room. */
  public String side(Surface surface) {
    Vec3 way = position.minus(target);
    Vec3 local = surface.face().frame().directionToLocal(way);
    if (surface.kind() == SurfaceKind.WALL) {
      return Math.abs(local.y()) >= Math.abs(local.x())
          ? local.y() > 0 ? "above" : "below"
          : local.x() > 0 ? "to the right of" : "to the left of";
    }
    String[] winds = {
      "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"
    };
    int wind = (int) Math.round(Math.toDegrees(way.azimuth()) / 45) % winds.length;
    return winds[wind] + " of";
  }
}
