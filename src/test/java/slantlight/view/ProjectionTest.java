package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.score.JointScore;
import slantlight.view.draw.Box;
import slantlight.view.draw.Palette;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Pixels;
import slantlight.view.gl.Target;

class ProjectionTest {
  @Test
  void paintedJointsLandWhereAPinholeCameraPutsThem() {
    HouseShape shape = new HouseShape(Studio.MODEL);
    Vec3 eye = new Vec3(2.6, 7.6, 1.2);
    Vec3 target = new Vec3(2.4, 3.4, 2.75);
    Camera camera = Camera.from(eye, target);
    int w = 800;
    int h = 500;
    Stage stage = new Stage(Studio.at(5, 18, 12, 45), camera);
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        PaintedHouse house = new PaintedHouse();
        Target picture = new Target(w, h, 1)) {
      picture.bind();
      Screen.clear(0xffffff);
      JointColours colours = new JointColours(Studio.MODEL, stage, java.util.Optional.empty());
      house.fill(Studio.MODEL, shape, stage, colours);
      house.draw(camera, w, h, 1);
      Pixels p = picture.read();
      gl.check();
      int seen = 0;
      Frame f = Studio.HOUSE.surface("room/ceiling").face().frame();
      for (String id : new String[] {"T2", "T3", "T4"}) {
        JointScore j = Studio.MODEL.joint("room/ceiling#" + id).orElseThrow();
        double half = Studio.MODEL.featherWidth().applyAsDouble(j.joint()) / 2;
        for (double t = 0.42; t < 0.6; t += 0.03) { // clear of the butt joints
          Vec2 at = j.joint().from().lerp(j.joint().to(), t);
          Vec2 in = pinhole(camera, f.toWorld(at), w, h);
          if (!new Box(4, 4, w - 8, h - 8).contains(in.x(), in.y())) {
            continue;
          }
          // Just inside the band's rims it has the joint's colour, just outside it has not.
          int expected = colours.at(j, t);
          for (double side : new double[] {-0.8 * half, 0.8 * half}) {
            Vec2 rim = pinhole(camera, f.toWorld(at.plus(new Vec2(0, side))), w, h);
            assertThat(distance(p.at((int) rim.x(), (int) rim.y()), expected)).isLessThan(10);
          }
          for (double side : new double[] {-1.25 * half, 1.25 * half}) {
            Vec2 off = pinhole(camera, f.toWorld(at.plus(new Vec2(0, side))), w, h);
            int there = p.at((int) off.x(), (int) off.y());
            assertThat(distance(there, Palette.ofLevel(5))).isLessThan(60);
          }
          seen++;
        }
      }
      assertThat(seen).isGreaterThan(8);
    }
  }

  /** Pinhole projection from first principles, apart from the matrices the viewer uses. */
  private static Vec2 pinhole(Camera c, Vec3 p, int w, int h) {
    Vec3 forward = c.forward();
    Vec3 right = forward.cross(Vec3.UP).unit();
    Vec3 up = right.cross(forward);
    Vec3 d = p.minus(c.eye());
    double k = h / 2.0 / Math.tan(c.fieldOfView() / 2) / d.dot(forward);
    return new Vec2(w / 2.0 + d.dot(right) * k, h / 2.0 - d.dot(up) * k);
  }

  private static int distance(int a, int b) {
    int most = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      most = Math.max(most, Math.abs((a >> shift & 255) - (b >> shift & 255)));
    }
    return most;
  }

  @Test
  void aRayThroughAPixelMeetsWhatIsDrawnThere() {
    Camera camera = Camera.from(new Vec3(2.6, 7.6, 1.2), new Vec3(2.4, 3.4, 2.75));
    Box picture = new Box(10, 20, 640, 400);
    Vec3 place = new Vec3(1.9, 4, 2.4);
    Vec2 at = camera.project(place, picture);
    Vec3 ray = camera.ray(at.x(), at.y(), picture);
    assertThat(ray.distance(place.minus(camera.eye()).unit())).isLessThan(1e-5);
  }

  @Test
  void pickingFindsTheJointUnderThePointer() {
    JointScore j = Studio.MODEL.joint("room/ceiling#B3").orElseThrow();
    Frame f = Studio.HOUSE.surface("room/ceiling").face().frame();
    Vec3 place = f.toWorld(j.joint().from().lerp(j.joint().to(), 0.5));
    Vec3 eye = new Vec3(2.6, 7, 1.5);
    Picked inside = Picked.along(Studio.MODEL, eye, place.minus(eye).unit()).orElseThrow();
    assertThat(inside.joint()).contains(j);
    // From above the ceiling is hung in the air: its joints are caught, its field is not.
    Vec3 above = new Vec3(2.6, -6, 9);
    Picked hung = Picked.along(Studio.MODEL, above, place.minus(above).unit()).orElseThrow();
    assertThat(hung.joint()).contains(j);
    Sheet sheet = Sheet.of(Studio.HOUSE, java.util.Optional.empty());
    Box box = new Box(0, 0, 300, 300);
    Vec2 on = sheet.toScreen(box).apply(new Vec2(place.x(), place.y()));
    assertThat(sheet.pick(Studio.MODEL, box, on.x(), on.y()).orElseThrow().joint()).contains(j);
  }
}
