package slantlight.light;

import java.util.List;
import slantlight.geom.Vec3;

/** The sun's own beam at fixed samples. */
final class SunBeamTests implements SunBeams {
  private final Beam beam;
  private final double[] place;
  private final double[] normal;
  private final Candidate[][] candidates;

  /** An opening with the cone of directions in which a sample sees its hole. */
  private record Candidate(
      Aperture aperture, boolean clear, double ax, double ay, double az, double cosine) {}

  SunBeamTests(Beam beam, Interior interior, List<SamplePoint> points) {
    this.beam = beam;
    place = new double[3 * points.size()];
    normal = new double[3 * points.size()];
    candidates = new Candidate[points.size()][];
    Veil veil = new Veil(interior);
    for (int i = 0; i < points.size(); i++) {
      SamplePoint s = points.get(i);
      Vec3 n = s.frame().n();
      Vec3 p = s.frame().origin().plus(n.times(Interior.LIFT));
      place[3 * i] = p.x();
      place[3 * i + 1] = p.y();
      place[3 * i + 2] = p.z();
      normal[3 * i] = n.x();
      normal[3 * i + 1] = n.y();
      normal[3 * i + 2] = n.z();
      int room = interior.room(s.roomId());
      candidates[i] =
          java.util.Arrays.stream(interior.reach(room))
              .filter(a -> a.cloth == null)
              .map(a -> candidate(a, veil, room, p, n))
              .filter(java.util.Objects::nonNull)
              .toArray(Candidate[]::new);
    }
  }

  /** The opening as a candidate, or null when the sample cannot see the sky through it. */
  private static Candidate candidate(Aperture a, Veil veil, int room, Vec3 p, Vec3 n) {
    if (a.height(p.x(), p.y(), p.z()) <= 1e-6) {
      return null;
    }
    veil.draw(room, p.x(), p.y(), p.z(), a.room, a.corners());
    if (veil.shut()) {
      return null;
    }
    double[] r = a.ring;
    Vec3 axis = Vec3.ZERO;
    boolean front = false;
    boolean above = false;
    Vec3[] to = new Vec3[r.length / 2];
    for (int i = 0; i < to.length; i++) {
      Vec3 d = a.frame.toWorld(new slantlight.geom.Vec2(r[2 * i], r[2 * i + 1])).minus(p);
      front |= d.dot(n) > 0;
      above |= d.z() > 0;
      to[i] = d.unit();
      axis = axis.plus(to[i]);
    }
    if (!front || !above) {
      return null;
    }
    axis = axis.unit();
    double cosine = 1;
    for (Vec3 d : to) {
      cosine = Math.min(cosine, d.dot(axis));
    }
    return new Candidate(a, veil.clear(), axis.x(), axis.y(), axis.z(), cosine - 1e-9);
  }

  @Override
  public double transmittance(int sample, double dx, double dy, double dz) {
    Aperture a = find(sample, dx, dy, dz);
    return a == null ? 0 : a.transmittance(Beam.cosine(a, dx, dy, dz));
  }

  @Override
  public int opening(int sample, double dx, double dy, double dz) {
    Aperture a = find(sample, dx, dy, dz);
    return a == null ? -1 : a.index;
  }

  private Aperture find(int sample, double dx, double dy, double dz) {
    int k = 3 * sample;
    if (dz <= 0 || dx * normal[k] + dy * normal[k + 1] + dz * normal[k + 2] <= 0) {
      return null;
    }
    for (Candidate c : candidates[sample]) {
      if (c.ax * dx + c.ay * dy + c.az * dz >= c.cosine
          && beam.reaches(c.aperture, c.clear, place[k], place[k + 1], place[k + 2], dx, dy, dz)) {
        return c.aperture;
      }
    }
    return null;
  }
}
