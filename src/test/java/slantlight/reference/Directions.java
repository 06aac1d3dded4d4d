package slantlight.reference;

import java.util.SplittableRandom;
import slantlight.geom.Vec3;

/** Random directions. */
final class Directions {
  private Directions() {}

  /** A direction about a unit normal, by the cosine law. */
  static Vec3 cosine(Vec3 n, SplittableRandom random) {
    double sin2 = random.nextDouble();
    double phi = 2 * Math.PI * random.nextDouble();
    Vec3 hint = Math.abs(n.z()) < 0.9 ? Vec3.UP : Vec3.EAST;
    Vec3 u = hint.cross(n).unit();
    Vec3 v = n.cross(u);
    double sin = Math.sqrt(sin2);
    return u.times(sin * Math.cos(phi))
        .plus(v.times(sin * Math.sin(phi)))
        .plus(n.times(Math.sqrt(1 - sin2)));
  }
}
