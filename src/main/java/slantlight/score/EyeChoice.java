package slantlight.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.LightModel;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;

/** Finds the eyes of a house that see a point, and among them those likely to see most. */
final class EyeChoice {
  private final LightModel light;
  private final House house;
  private final List<Vec3> openings = new ArrayList<>();
  private final List<Vec3> lamps = new ArrayList<>();

  /** How well an eye at a distance (m) and foreshortening (0 to 1) sees the joint at hand. */
  @FunctionalInterface
  interface Acuity {
    double at(double distance, double foreshortening);
  }

  EyeChoice(LightModel light) {
    this.light = light;
    this.house = light.house();
    for (Opening o : house.openings()) {
      openings.add(o.face().frame().toWorld(o.face().centroid()));
    }
    for (Lamp lamp : house.lamps()) {
      lamps.add(lamp.position());
    }
  }

  /**
   * All eyes that see a point.
   *
   * @param frame of the point
   */
  List<Eye> seeing(Frame frame) {
    List<Eye> out = new ArrayList<>();
    for (Eye eye : house.eyes()) {
      double height = frame.height(eye.position());
      if (height > 0.02 && light.sees(frame.origin(), eye.position())) {
        out.add(eye);
      }
    }
    return out;
  }

  /**
   * Up to three of the eyes that see a point: the one whose distance and angle suit the contrast
   * sensitivity best, and those nearest to the mirror image of an opening or a lamp, where the
   * sheen is strongest. Enough to rank places; now and then another eye sees twice as much.
   *
   * @param frame of the point, u across the joint
   */
  List<Eye> likely(Frame frame, Acuity acuity) {
    List<Eye> seeing = seeing(frame);
    Set<Eye> chosen = new LinkedHashSet<>();
    seeing.stream()
        .max(Comparator.comparingDouble(e -> acuityOf(frame, e, acuity)))
        .ifPresent(chosen::add);
    mirror(frame, seeing, openings).ifPresent(chosen::add);
    mirror(frame, seeing, lamps).ifPresent(chosen::add);
    return List.copyOf(chosen);
  }

  private static double acuityOf(Frame frame, Eye eye, Acuity acuity) {
    Vec3 to = frame.directionToLocal(eye.position().minus(frame.origin()));
    return acuity.at(to.length(), foreshortening(to));
  }

  /**
   * Foreshortening of a width across the joint: sine of the angle between the line of sight and the
   * across direction, 1 when seen square.
   *
   * @param local direction to the eye in the point's frame, any length
   */
  static double foreshortening(Vec3 local) {
    double across = local.x() / local.length();
    return Math.sqrt(Math.max(0, 1 - across * across));
  }

  private static Optional<Eye> mirror(Frame frame, List<Eye> eyes, List<Vec3> targets) {
    Eye best = null;
    double most = -1;
    for (Eye eye : eyes) {
      Vec3 d = frame.directionToLocal(eye.position().minus(frame.origin())).unit();
      Vec3 mirrored = frame.directionToWorld(new Vec3(-d.x(), -d.y(), d.z()));
      for (Vec3 target : targets) {
        Vec3 to = target.minus(frame.origin());
        if (to.length() > 0 && to.dot(frame.n()) > 0) {
          double cos = mirrored.dot(to.unit());
          if (cos > most) {
            most = cos;
            best = eye;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }
}
