package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_TRIANGLES;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.scene.Surface;
import slantlight.sight.RidgeTable;
import slantlight.view.gl.FloatTable;
import slantlight.view.gl.Mesh;

/** The ridges of every joint at one finish level, on the card. */
final class RidgeMesh implements AutoCloseable {
  private final Mesh mesh = new Mesh(3, 1, 3);
  private final FloatTable cones = new FloatTable();
  private final List<Run> runs = new ArrayList<>();
  private final List<RidgeStrips> strips = new ArrayList<>();
  private final HouseShape shape;

  /** Indices of one surface's ridges: those of its joints, then those of its spots. */
  record Run(Surface surface, int first, int joints, int spots) {}

  RidgeMesh(ViewModel model, HouseShape shape, int level) {
    this.shape = shape;
    Vertices out = new Vertices(7);
    double compound = RidgeTable.standard().roughnessGain(level) > 0 ? 1 : 0;
    int sections = 0;
    for (Surface s : model.house().surfaces()) {
      Optional<RidgeStrips> found = shape.strips(model, s, level);
      if (found.isEmpty()) {
        continue;
      }
      RidgeStrips strip = found.get();
      int first = out.vertices();
      int start = out.indices();
      for (int i = 0; i < strip.points().size(); i++) {
        Vec2 g = strip.slopes().get(i);
        out.add(s.face().frame().toWorld(strip.points().get(i)));
        out.add(sections + strip.sectionOfPoint().get(i));
        out.add(g.x()).add(g.y()).add(compound);
      }
      for (int i : strip.triangles()) {
        out.index(first + i);
      }
      int joints = out.indices() - start;
      for (int i : strip.spotTriangles()) {
        out.index(first + i);
      }
      runs.add(new Run(s, start, joints, out.indices() - start - joints));
      strips.add(strip);
      sections += strip.sections().size();
    }
    mesh.fill(out.data(), out.index());
  }

  /** Takes the light of a moment. */
  void fill(Map<String, float[]> light) {
    ConeValues values = new ConeValues(light);
    for (int i = 0; i < runs.size(); i++) {
      Surface s = runs.get(i).surface();
      for (Vec2 p : strips.get(i).sections()) {
        values.add(s, shape.grid(s), p);
      }
    }
    cones.fill(values.data());
  }

  List<Run> runs() {
    return runs;
  }

  void bind(int unit) {
    cones.bind(unit);
  }

  /** Draws a surface's joints, and its spots when asked to. */
  void draw(Run run, boolean spots) {
    mesh.draw(GL_TRIANGLES, run.first(), spots ? run.joints() + run.spots() : run.joints());
  }

  @Override
  public void close() {
    mesh.close();
    cones.close();
  }
}
