package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_CULL_FACE;
import static org.lwjgl.opengl.GL11C.GL_DEPTH_TEST;
import static org.lwjgl.opengl.GL11C.GL_TRIANGLES;
import static org.lwjgl.opengl.GL11C.glDisable;
import static org.lwjgl.opengl.GL11C.glEnable;

import slantlight.geom.Vec2;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.view.gl.Mesh;
import slantlight.view.gl.Program;
import slantlight.view.gl.Target;
import slantlight.view.gl.Texture;

/**
 * What frames are measured by: the triangles of the as-lit picture drawn at once with one texture.
 */
final class Yardstick implements AutoCloseable {
  private final Program program = new Program("plain", "plain");
  private final Mesh mesh = new Mesh(3, 2);
  private final Texture texture;

  /**
   * The triangles of a house.
   *
   * @param withRidges those of the ridges at level 4 too
   */
  Yardstick(Screen screen, House house, boolean withRidges) {
    Vertices vertices = new Vertices(5);
    for (Surface s : house.surfaces()) {
      SurfaceGrid grid = screen.shape().fine(s);
      int first = vertices.vertices();
      for (Vec2 p : grid.points()) {
        vertices.add(s.face().frame().toWorld(p)).add(p.x()).add(p.y());
      }
      for (int i : grid.triangles()) {
        vertices.index(first + i);
      }
      if (withRidges) {
        screen.shape().strips(screen.model(), s, 4).ifPresent(strips -> add(vertices, s, strips));
      }
    }
    mesh.fill(vertices.data(), vertices.index());
    int[] checks = new int[64 * 64];
    for (int i = 0; i < checks.length; i++) {
      checks[i] = (i & 8) == (i >> 6 & 8) ? 0xffd0d0d0 : 0xfff0f0f0;
    }
    texture = new Texture(64, 64, checks);
  }

  private static void add(Vertices vertices, Surface s, RidgeStrips strips) {
    int first = vertices.vertices();
    for (Vec2 p : strips.points()) {
      vertices.add(s.face().frame().toWorld(p, 0.001)).add(p.x()).add(p.y());
    }
    for (int i : strips.triangles()) {
      vertices.index(first + i);
    }
  }

  /** Draws them over a whole picture. */
  void draw(Camera camera, Target target) {
    target.bind();
    Screen.clear(0xffffff);
    glEnable(GL_DEPTH_TEST);
    glEnable(GL_CULL_FACE);
    texture.bind(0);
    double aspect = (double) target.width() / target.height();
    program.use().set("picture", 0).set("camera", camera.matrix(aspect));
    mesh.draw(GL_TRIANGLES);
    glDisable(GL_CULL_FACE);
    glDisable(GL_DEPTH_TEST);
  }

  @Override
  public void close() {
    program.close();
    mesh.close();
    texture.close();
  }
}
