package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_TRIANGLES;

import java.util.List;
import org.joml.Matrix4f;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Surface;
import slantlight.view.gl.Mesh;
import slantlight.view.gl.Program;

/**
 * The linings of windows. No light is computed on them; they take the brightness of the wall at
 * their corners, so that the picture holds together.
 */
final class Reveals implements AutoCloseable {
  /** Brightness of a lining as a share of its wall's. */
  private static final double SHARE = 0.75;

  /** So far linings stand out of their wall, m, lest specks of dark show between the two. */
  private static final double LIP = 0.003;

  private final Program program = new Program("sky", "flat");
  private final Mesh mesh = new Mesh(3, 4);

  void fill(LitMoment moment, HouseShape shape, House house) {
    Vertices out = new Vertices(7);
    for (Surface s : house.surfaces()) {
      float[] cones = moment.cones().get(s.id());
      if (cones == null) {
        continue;
      }
      for (List<Vec2> hole : s.face().holes()) {
        double depth = depth(house, s, hole);
        ConeValues values = new ConeValues(moment.cones());
        for (int i = 0, j = hole.size() - 1; depth > 0 && i < hole.size(); j = i++) {
          double a = values.add(s, shape.grid(s), hole.get(j));
          double b = values.add(s, shape.grid(s), hole.get(i));
          side(out, s, hole.get(j), hole.get(i), depth, a, b);
        }
      }
    }
    mesh.fill(out.data(), out.index());
  }

  private static void side(
      Vertices out, Surface s, Vec2 p, Vec2 q, double depth, double luxP, double luxQ) {
    int first = out.vertices();
    Vec2[] corners = {p, q, q, p};
    double[] lux = {luxP, luxQ, luxQ, luxP};
    for (int k = 0; k < 4; k++) {
      Vec3 at = s.face().frame().toWorld(corners[k], k < 2 ? LIP : -depth);
      double luminance = SHARE * lux[k] * s.paint().lrv() / Math.PI;
      out.add(at).add(Hue.WALL.times(luminance)).add(1);
    }
    // Both ways round: a lining is seen from either side of its edge.
    for (int k : new int[] {0, 1, 2, 0, 2, 3, 0, 2, 1, 0, 3, 2}) {
      out.index(first + k);
    }
  }

  /** How deep the lining of a hole is: a window's reveal; passages have surfaces of their own. */
  private static double depth(House house, Surface s, List<Vec2> hole) {
    Vec3 middle = s.face().frame().toWorld(Face.of(s.face().frame(), hole).centroid());
    return house.openings().stream()
        .filter(o -> o.surfaceId().equals(s.id()) && o.kind() != OpeningKind.PASSAGE)
        .filter(o -> o.face().contains(o.face().frame().toPlane(middle)))
        .mapToDouble(Opening::revealDepth)
        .findFirst()
        .orElse(0);
  }

  void draw(Matrix4f camera, double exposure) {
    program.use().set("camera", camera).set("exposure", exposure);
    mesh.draw(GL_TRIANGLES);
  }

  @Override
  public void close() {
    program.close();
    mesh.close();
  }
}
