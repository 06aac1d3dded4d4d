package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_ALWAYS;
import static org.lwjgl.opengl.GL11C.GL_CULL_FACE;
import static org.lwjgl.opengl.GL11C.GL_DEPTH_TEST;
import static org.lwjgl.opengl.GL11C.GL_EQUAL;
import static org.lwjgl.opengl.GL11C.GL_KEEP;
import static org.lwjgl.opengl.GL11C.GL_REPLACE;
import static org.lwjgl.opengl.GL11C.GL_STENCIL_TEST;
import static org.lwjgl.opengl.GL11C.GL_TRIANGLES;
import static org.lwjgl.opengl.GL11C.glColorMask;
import static org.lwjgl.opengl.GL11C.glDisable;
import static org.lwjgl.opengl.GL11C.glEnable;
import static org.lwjgl.opengl.GL11C.glStencilFunc;
import static org.lwjgl.opengl.GL11C.glStencilOp;

import org.joml.Matrix4f;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.sky.SkyState;
import slantlight.view.gl.Mesh;
import slantlight.view.gl.Program;

/**
 * Sky and ground as seen through the windows: the vault's own luminance and the ground's. Things
 * outside are left out; the picture is of the room.
 */
final class Backdrop implements AutoCloseable {
  private static final int ROUND = 32;
  private static final int UP = 8;
  private static final double FAR = 900;

  /** Stencil value of glass; sun patches count up from 1. */
  private static final int MARK = 255;

  private final Program program = new Program("sky", "flat");
  private final Mesh mesh = new Mesh(3, 4);
  private final Mesh holes = new Mesh(3, 4);

  void fill(LitMoment moment, HouseShape shape, House house) {
    windows(moment, house);
    SkyState sky = moment.state().sky();
    Vertices out = new Vertices(7);
    Vec3 middle = shape.middle();
    double ground =
        Double.isNaN(sky.groundLuminance())
            ? sky.groundReflectance() * sky.globalHorizontalLux() / Math.PI
            : sky.groundLuminance();
    for (int row = -1; row <= UP; row++) {
      double altitude = Math.PI / 2 * Math.max(0, row) / UP;
      for (int k = 0; k <= ROUND; k++) {
        Vec3 d = Vec3.ofAzimuthAltitude(2 * Math.PI * k / ROUND, Math.max(0.01, altitude));
        double l = row < 0 ? ground : sky.luminance().toward(d.x(), d.y(), d.z());
        Vec3 hue = (row < 0 ? Hue.GROUND : Hue.SKY).times(l);
        out.add(middle.plus(d.times(FAR))).add(hue).add(1);
      }
    }
    int down = out.vertices();
    for (int k = 0; k <= ROUND; k++) {
      Vec3 d = Vec3.ofAzimuthAltitude(2 * Math.PI * k / ROUND, 0.01);
      out.add(middle.plus(d.times(FAR))).add(Hue.GROUND.times(ground)).add(1);
    }
    int nadir = out.vertices();
    out.add(middle.plus(new Vec3(0, 0, -FAR))).add(Hue.GROUND.times(ground)).add(1);
    for (int row = 1; row <= UP; row++) {
      for (int k = 0; k < ROUND; k++) {
        int a = row * (ROUND + 1) + k;
        int b = a + ROUND + 1;
        for (int i : new int[] {a, a + 1, b, a + 1, b + 1, b}) {
          if (b + 1 < down) {
            out.index(i);
          }
        }
      }
    }
    for (int k = 0; k < ROUND; k++) {
      out.index(down + k);
      out.index(nadir);
      out.index(down + k + 1);
    }
    mesh.fill(out.data(), out.index());
  }

  private void windows(LitMoment moment, House house) {
    Vertices out = new Vertices(7);
    for (Opening o : house.openings()) {
      if (o.kind() != OpeningKind.PASSAGE && moment.cones().containsKey(o.surfaceId())) {
        Vec3 back = o.face().frame().n().times(-Math.max(0, o.revealDepth()));
        int first = out.vertices();
        for (Vec3 p : o.face().corners()) {
          out.add(p.plus(back)).add(0, 0);
        }
        for (int i = 2; i < o.face().outer().size(); i++) {
          out.index(first);
          out.index(first + i - 1);
          out.index(first + i);
        }
      }
    }
    holes.fill(out.data(), out.index());
  }

  /** Draws what is seen through windows that are seen; surfaces are drawn already. */
  void draw(Matrix4f camera, double exposure) {
    program.use().set("camera", camera).set("exposure", exposure);
    glEnable(GL_STENCIL_TEST);
    glStencilFunc(GL_ALWAYS, MARK, 0xff);
    glStencilOp(GL_KEEP, GL_KEEP, GL_REPLACE);
    glColorMask(false, false, false, false);
    holes.draw(GL_TRIANGLES);
    glColorMask(true, true, true, true);
    glStencilOp(GL_KEEP, GL_KEEP, GL_KEEP);
    glStencilFunc(GL_EQUAL, MARK, 0xff);
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_CULL_FACE);
    mesh.draw(GL_TRIANGLES);
    glEnable(GL_CULL_FACE);
    glEnable(GL_DEPTH_TEST);
    glDisable(GL_STENCIL_TEST);
  }

  @Override
  public void close() {
    program.close();
    mesh.close();
    holes.close();
  }
}
