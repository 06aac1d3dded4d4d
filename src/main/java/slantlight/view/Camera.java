package slantlight.view;

import java.util.List;
import org.joml.Matrix4f;
import org.joml.Vector3f;
import org.joml.Vector4f;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.view.draw.Box;

/**
 * Where the picture is taken from.
 *
 * @param eye world, m
 * @param azimuth of the direction looked in, radians clockwise from north
 * @param altitude of the direction looked in, radians
 * @param fieldOfView vertical angle of view, radians
 */
record Camera(Vec3 eye, double azimuth, double altitude, double fieldOfView) {
  static final double NEAR = 0.05;
  static final double FAR = 2000;
  private static final double STEEPEST = Math.toRadians(89);

  /** Looking at a point from a direction and distance: the view from outside. */
  static Camera around(Vec3 target, double azimuth, double altitude, double distance) {
    double a = Math.max(-STEEPEST, Math.min(STEEPEST, altitude));
    Vec3 away = Vec3.ofAzimuthAltitude(azimuth, a);
    return new Camera(target.plus(away.times(distance)), azimuth + Math.PI, -a, Math.toRadians(32));
  }

  /** From outside, as near as keeps all points inside a picture of that aspect. */
  static Camera fitting(
      List<Vec3> points, Vec3 target, double azimuth, double altitude, double aspect) {
    double near = 0.5;
    double far = 1000;
    Box picture = new Box(0, 0, aspect, 1);
    Box inside = picture.inset(0.03 * aspect, 0.03);
    for (int i = 0; i < 40; i++) {
      double d = Math.sqrt(near * far);
      Camera c = around(target, azimuth, altitude, d);
      boolean fits =
          points.stream()
              .map(p -> c.project(p, picture))
              .allMatch(p -> p != null && inside.contains(p.x(), p.y()));
      if (fits) {
        far = d;
      } else {
        near = d;
      }
    }
    return around(target, azimuth, altitude, far);
  }

  /** Looking from an eye toward a point with a wide lens: the view of a person. */
  static Camera from(Vec3 eye, Vec3 target) {
    Vec3 d = target.minus(eye);
    return new Camera(eye, d.azimuth(), limit(d.altitude()), Math.toRadians(58));
  }

  /** Looking from an eye at a place, narrow enough that a board's width round it fills the view. */
  static Camera onto(Vec3 eye, Vec3 place) {
    double field = 2 * Math.atan(1.3 / Math.max(0.5, eye.distance(place)));
    Camera c = from(eye, place);
    double narrow = Math.max(Math.toRadians(14), Math.min(c.fieldOfView(), field));
    return new Camera(eye, c.azimuth(), c.altitude(), narrow);
  }

  private static double limit(double altitude) {
    return Math.max(-STEEPEST, Math.min(STEEPEST, altitude));
  }

  Vec3 forward() {
    return Vec3.ofAzimuthAltitude(azimuth, altitude);
  }

  Camera turned(double dAzimuth, double dAltitude) {
    return new Camera(eye, azimuth + dAzimuth, limit(altitude + dAltitude), fieldOfView);
  }

  Camera movedTo(Vec3 place) {
    return new Camera(place, azimuth, altitude, fieldOfView);
  }

  /** With a field of view of that share of this one's. */
  Camera zoomed(double share) {
    double field = Math.max(0.12, Math.min(1.5, fieldOfView * share));
    return new Camera(eye, azimuth, altitude, field);
  }

  Matrix4f matrix(double aspect) {
    Vector3f e = new Vector3f((float) eye.x(), (float) eye.y(), (float) eye.z());
    Vec3 f = forward();
    return new Matrix4f()
        .perspective((float) fieldOfView, (float) aspect, (float) NEAR, (float) FAR)
        .lookAt(
            e,
            new Vector3f(e).add((float) f.x(), (float) f.y(), (float) f.z()),
            new Vector3f(0, 0, 1));
  }

  /** Where a world point lands in a picture box, or null when it is behind the eye. */
  Vec2 project(Vec3 p, Box picture) {
    Vector4f v =
        matrix(picture.w() / picture.h())
            .transform(new Vector4f((float) p.x(), (float) p.y(), (float) p.z(), 1));
    if (v.w <= NEAR) {
      return null;
    }
    return new Vec2(
        picture.x() + (v.x / v.w + 1) / 2 * picture.w(),
        picture.y() + (1 - v.y / v.w) / 2 * picture.h());
  }

  /** Unit direction of the ray through a point of a picture box. */
  Vec3 ray(double x, double y, Box picture) {
    double t = Math.tan(fieldOfView / 2);
    double sx = (2 * (x - picture.x()) / picture.w() - 1) * t * picture.w() / picture.h();
    double sy = (1 - 2 * (y - picture.y()) / picture.h()) * t;
    Vec3 f = forward();
    Vec3 right = Vec3.ofAzimuthAltitude(azimuth + Math.PI / 2, 0);
    Vec3 up = right.cross(f);
    return f.plus(right.times(sx)).plus(up.times(sy)).unit();
  }
}
