package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_BLEND;
import static org.lwjgl.opengl.GL11C.GL_DEPTH_TEST;
import static org.lwjgl.opengl.GL11C.GL_ONE_MINUS_SRC_ALPHA;
import static org.lwjgl.opengl.GL11C.GL_SRC_ALPHA;
import static org.lwjgl.opengl.GL11C.GL_TRIANGLES;
import static org.lwjgl.opengl.GL11C.glBlendFunc;
import static org.lwjgl.opengl.GL11C.glDisable;
import static org.lwjgl.opengl.GL11C.glEnable;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.sky.Sun;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;
import slantlight.view.gl.Mesh;
import slantlight.view.gl.Program;

/** The sun's path over the house on the day set, between those of the solstices, and a compass. */
final class SunArc implements AutoCloseable {
  private static final int MINUTES = 10;
  private final Program program = new Program("line", "line");
  private final Mesh mesh = new Mesh(3, 3, 1, 4);
  private List<Object> filledFor = List.of();
  private int thin;

  /** The sun at each whole hour of the day that is drawn. */
  private final List<Sun> hours = new ArrayList<>();

  private static Vec3 centre(HouseShape shape) {
    return new Vec3(shape.middle().x(), shape.middle().y(), shape.low().z());
  }

  private static double radius(HouseShape shape) {
    return shape.radius() * HouseShape.RING;
  }

  /** Draws the lines, hidden by the house where they pass behind it. */
  void draw(House house, HouseShape shape, Stage stage, int width, int height, double scale) {
    ready(house, shape, stage);
    glEnable(GL_DEPTH_TEST);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    program
        .use()
        .set("camera", stage.camera.matrix((double) width / height))
        .set("screen", width, height)
        .set("pull", 0.0)
        .set("width", 1.2 * scale);
    mesh.draw(GL_TRIANGLES, 0, thin);
    program.set("width", 2.6 * scale);
    mesh.draw(GL_TRIANGLES, thin, mesh.count() - thin);
    glDisable(GL_BLEND);
    glDisable(GL_DEPTH_TEST);
  }

  private void ready(House house, HouseShape shape, Stage stage) {
    LocalDate date = stage.time.toLocalDate();
    ZoneId zone = stage.time.getZone();
    List<Object> wanted = List.of(shape, date, zone);
    if (!wanted.equals(filledFor)) {
      fill(house, shape, date, zone);
      hours.clear();
      for (int h = 0; h < 24; h++) {
        hours.add(Almanac.sun(house, date.atStartOfDay(zone).plusHours(h)));
      }
      filledFor = wanted;
    }
  }

  private void fill(House house, HouseShape shape, LocalDate date, ZoneId zone) {
    Vertices out = new Vertices(11);
    Vec3 c = centre(shape);
    double r = radius(shape);
    for (int i = 0; i < 72; i++) {
      Vec3 a = c.plus(Vec3.ofAzimuthAltitude(Math.toRadians(5 * i), 0).times(r));
      Vec3 b = c.plus(Vec3.ofAzimuthAltitude(Math.toRadians(5 * (i + 1)), 0).times(r));
      out.line(a, b, Palette.SOFT_INK, 0.35);
    }
    arc(out, house, c, r, date.withMonth(6).withDayOfMonth(21), zone, 0.3);
    arc(out, house, c, r, date.withMonth(12).withDayOfMonth(21), zone, 0.3);
    thin = out.indices();
    arc(out, house, c, r, date, zone, 1);
    mesh.fill(out.data(), out.index());
  }

  private static void arc(
      Vertices out, House house, Vec3 c, double r, LocalDate date, ZoneId zone, double alpha) {
    ZonedDateTime at = date.atStartOfDay(zone);
    Vec3 last = null;
    for (int m = 0; m <= 24 * 60; m += MINUTES) {
      Sun sun = Almanac.sun(house, at.plusMinutes(m));
      Vec3 next = sun.altitude() > 0 ? c.plus(sun.direction().times(r)) : null;
      if (last != null && next != null) {
        out.line(last, next, Palette.SUN, alpha);
      }
      last = next;
    }
  }

  /**
   * Writes hours, compass points and the sun itself.
   *
   * @param taken a part of the box in which nothing may be written
   */
  void label(Canvas canvas, Box box, Box taken, House house, HouseShape shape, Stage stage) {
    ready(house, shape, stage);
    Box closed = taken.inset(-24, -24);
    Box open = box.inset(10);
    Predicate<Vec2> free =
        p -> p != null && open.contains(p.x(), p.y()) && !closed.contains(p.x(), p.y());
    Vec3 c = centre(shape);
    double r = radius(shape);
    String[] winds = {"N", "E", "S", "W"};
    for (int i = 0; i < 4; i++) {
      Vec3 at = c.plus(Vec3.ofAzimuthAltitude(Math.PI / 2 * i, 0).times(r * 1.07));
      Vec2 p = stage.camera.project(at, box);
      if (free.test(p) && !hidden(house, stage.camera.eye(), at)) {
        canvas.label(p, box, Type.strong(13), winds[i]);
      }
    }
    Sun now = Almanac.sun(house, stage.time);
    if (now.altitude() > 0) {
      Vec2 p = stage.camera.project(c.plus(now.direction().times(r)), box);
      if (free.test(p)) {
        canvas.disc(p, 11, Palette.PAPER);
        canvas.disc(p, 9, Palette.SUN);
      }
    }
    for (int h = 1; h < 24; h++) {
      Sun sun = hours.get(h);
      Vec3 at = c.plus(sun.direction().times(r));
      Vec2 p = stage.camera.project(at, box);
      boolean seen = sun.altitude() > 0 && !hidden(house, stage.camera.eye(), at);
      if (seen && free.test(p)) {
        canvas.disc(p, 2.6, Palette.SUN);
        if (h % 3 == 0) {
          canvas.label(new Vec2(p.x(), p.y() - 15), box, Type.plain(12), h + ":00");
        }
      }
    }
  }

  /** Whether a surface that is drawn stands between the eye and a point. */
  private static boolean hidden(House house, Vec3 eye, Vec3 point) {
    Vec3 d = point.minus(eye);
    for (Surface s : house.surfaces()) {
      double toward = d.dot(s.face().frame().n());
      double t = -s.face().frame().height(eye) / toward;
      if (toward < 0 && t > 0 && t < 1) {
        if (s.face().contains(s.face().frame().toPlane(eye.plus(d.times(t))))) {
          return true;
        }
      }
    }
    return false;
  }

  @Override
  public void close() {
    program.close();
    mesh.close();
  }
}
