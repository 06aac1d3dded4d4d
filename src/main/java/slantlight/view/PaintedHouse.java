package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_BLEND;
import static org.lwjgl.opengl.GL11C.GL_CULL_FACE;
import static org.lwjgl.opengl.GL11C.GL_DEPTH_TEST;
import static org.lwjgl.opengl.GL11C.GL_LEQUAL;
import static org.lwjgl.opengl.GL11C.GL_ONE_MINUS_SRC_ALPHA;
import static org.lwjgl.opengl.GL11C.GL_SRC_ALPHA;
import static org.lwjgl.opengl.GL11C.GL_TRIANGLES;
import static org.lwjgl.opengl.GL11C.glBlendFunc;
import static org.lwjgl.opengl.GL11C.glDepthFunc;
import static org.lwjgl.opengl.GL11C.glDepthMask;
import static org.lwjgl.opengl.GL11C.glDisable;
import static org.lwjgl.opengl.GL11C.glEnable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.joml.Matrix4f;
import slantlight.board.PlacedBoard;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.JointKind;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;
import slantlight.score.SurfaceScore;
import slantlight.view.draw.Palette;
import slantlight.view.gl.Mesh;
import slantlight.view.gl.Program;

/**
 * The house as a plaster model with its risk painted on: surfaces tinted by level, joints as bands
 * of their true width, edges as lines. Surfaces are seen from inside only, so that near walls and
 * the ceiling fall away from an outside view; joints of ceilings stay, hung in the air.
 */
final class PaintedHouse implements AutoCloseable {
  /** Height of bands above their surface, m: more than rounding, less than can be seen. */
  private static final double LIFT = 0.002;

  private final Program flat = new Program("flat", "flat");
  private final Program line = new Program("line", "line");
  private final Mesh solid = new Mesh(3, 4);
  private final Mesh bands = new Mesh(3, 4);
  private final Mesh hung = new Mesh(3, 4);
  private final Mesh glass = new Mesh(3, 4);
  private final Mesh edges = new Mesh(3, 3, 1, 4);
  private final Mesh extra = new Mesh(3, 3, 1, 4);
  private final List<Run> runs = new ArrayList<>();

  /** Indices of one surface's edges. */
  private record Run(Surface surface, int first, int count) {}

  /** Uploads everything for what is set now. */
  void fill(ViewModel model, HouseShape shape, Stage stage, JointColours colours) {
    Vertices fill = new Vertices(7);
    Vertices line = new Vertices(11);
    Vertices panes = new Vertices(7);
    Vertices flush = new Vertices(7);
    runs.clear();
    for (Surface s : model.house().surfaces()) {
      surface(fill, model, shape.grid(s), s);
      int first = line.indices();
      outline(line, s.face().frame(), s.face().outer(), Palette.INK, 1);
      for (List<Vec2> hole : s.face().holes()) {
        outline(line, s.face().frame(), hole, Palette.INK, 1);
      }
      if (stage.look == Stage.Look.BOARDS) {
        model.score(s.id()).ifPresent(score -> boards(line, s, score));
        framing(flush, shape, s);
      }
      runs.add(new Run(s, first, line.indices() - first));
    }
    for (Opening o : model.house().openings()) {
      if (o.kind() != OpeningKind.PASSAGE) {
        pane(panes, o.face());
      }
    }
    Vertices above = new Vertices(7);
    double alpha = stage.look == Stage.Look.BOARDS ? 0.55 : 1;
    for (HouseShape.Band b : shape.bands()) {
      band(flush, b, colours, alpha);
      if (b.surface().face().frame().n().z() < -0.2) {
        band(above, b, colours, alpha);
      }
    }
    solid.fill(fill.data(), fill.index());
    edges.fill(line.data(), line.index());
    glass.fill(panes.data(), panes.index());
    bands.fill(flush.data(), flush.index());
    hung.fill(above.data(), above.index());
    Vertices chosen = new Vertices(11);
    stage.surface.ifPresent(
        id -> {
          Face f = model.house().surface(id).face();
          outline(chosen, f.frame(), f.outer(), Palette.ACCENT, 1);
        });
    stage.joint.flatMap(model::joint).ifPresent(j -> ring(chosen, model, j.joint()));
    extra.fill(chosen.data(), chosen.index());
  }

  private static void surface(Vertices out, ViewModel model, SurfaceGrid grid, Surface s) {
    int base = tint(model, s);
    Frame f = s.face().frame();
    double facing = shade(f.n());
    int first = out.vertices();
    for (Vec2 p : grid.points()) {
      double corner = 0.10 * Math.exp(-HouseShape.edgeDistance(s.face(), p) / 0.3);
      out.add(f.toWorld(p)).add(Palette.mix(0, base, facing - corner), 1);
    }
    for (int i : grid.triangles()) {
      out.index(first + i);
    }
  }

  private static int tint(ViewModel model, Surface s) {
    if (s.kind() == SurfaceKind.FLOOR) {
      return Palette.BOARDS;
    }
    return model.verdict(s.id()).map(v -> Palette.ofLevel(v.level())).orElse(Palette.PLASTER);
  }

  /** How bright a face of the model is, by where it looks: a drawing convention, not light. */
  private static double shade(Vec3 n) {
    double side = 0.5 + 0.5 * n.dot(Vec3.ofAzimuthAltitude(Math.toRadians(40), 0.35));
    return 0.86 + 0.14 * side;
  }

  /** Bands of crossing kinds lie over one another in this order, so that they do not flicker. */
  private static double lift(JointKind kind) {
    return switch (kind) {
      case TAPERED -> LIFT;
      case CUT -> 1.5 * LIFT;
      case BUTT, SPOT -> 2 * LIFT;
    };
  }

  private static void band(Vertices out, HouseShape.Band b, JointColours colours, double alpha) {
    Frame f = b.surface().face().frame();
    double lift = lift(b.score().joint().kind());
    Map<Vec2, Integer> known = new HashMap<>();
    for (int i = 0; i < b.triangles().size(); i++) {
      Vec2 p = b.triangles().get(i);
      Integer at = known.putIfAbsent(p, out.vertices());
      if (at == null) {
        out.index(out.vertices());
        out.add(f.toWorld(p, lift)).add(colours.at(b.score(), b.along().get(i)), alpha);
      } else {
        out.index(at);
      }
    }
  }

  private static void boards(Vertices line, Surface s, SurfaceScore score) {
    for (PlacedBoard board : score.layout().boards()) {
      outline(line, s.face().frame(), board.outline(), Palette.ACCENT, 0.8);
    }
  }

  /** Studs and joists as faint bars under the joints. */
  private static void framing(Vertices out, HouseShape shape, Surface s) {
    Frame f = s.face().frame();
    for (Vec2 p : shape.members(s)) {
      out.index(out.vertices());
      out.add(f.toWorld(p, LIFT / 2)).add(Palette.SOFT_INK, 0.22);
    }
  }

  private static void pane(Vertices out, Face face) {
    int first = out.vertices();
    for (Vec2 p : face.outer()) {
      out.add(face.frame().toWorld(p)).add(Palette.GLASS, 0.38);
    }
    for (int i = 2; i < face.outer().size(); i++) {
      out.index(first);
      out.index(first + i - 1);
      out.index(first + i);
    }
  }

  private static void outline(Vertices out, Frame f, List<Vec2> ring, int rgb, double alpha) {
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      out.line(f.toWorld(ring.get(j), LIFT), f.toWorld(ring.get(i), LIFT), rgb, alpha);
    }
  }

  private static void ring(Vertices out, ViewModel model, slantlight.board.Joint joint) {
    Frame f = model.house().surface(ViewModel.surfaceOf(joint.id())).face().frame();
    outline(out, f, quad(joint, model.featherWidth().applyAsDouble(joint)), Palette.INK, 1);
  }

  /** Corners of a joint's band, plane coordinates. */
  static List<Vec2> quad(slantlight.board.Joint joint, double width) {
    Vec2 d = joint.to().minus(joint.from()).unit();
    Vec2 a = new Vec2(-d.y(), d.x()).times(width / 2);
    return List.of(
        joint.from().minus(a), joint.to().minus(a), joint.to().plus(a), joint.from().plus(a));
  }

  /**
   * Draws into the current viewport.
   *
   * @param scale pixels per layout unit
   */
  void draw(Camera camera, int width, int height, double scale) {
    Matrix4f m = camera.matrix((double) width / height);
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LEQUAL);
    glEnable(GL_CULL_FACE);
    glDisable(GL_BLEND);
    flat.use().set("camera", m);
    solid.draw(GL_TRIANGLES);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    bands.draw(GL_TRIANGLES);
    glDisable(GL_CULL_FACE);
    glDepthMask(false);
    glass.draw(GL_TRIANGLES);
    hung.draw(GL_TRIANGLES);
    line.use().set("camera", m).set("screen", width, height).set("pull", 2e-5);
    line.set("width", 1.3 * scale);
    edges(camera, true);
    line.set("width", 0.7 * scale);
    edges(camera, false);
    line.set("width", 2.6 * scale).set("pull", 1e-4);
    extra.draw(GL_TRIANGLES);
    glDepthMask(true);
    glDisable(GL_BLEND);
    glDisable(GL_DEPTH_TEST);
  }

  /** Draws the edges of the surfaces that show their inside, or of those that do not. */
  private void edges(Camera camera, boolean seen) {
    int[] firsts = new int[runs.size()];
    int[] counts = new int[runs.size()];
    int many = 0;
    for (Run r : runs) {
      if (r.surface().face().frame().height(camera.eye()) > 0 != seen) {
        continue;
      }
      if (many > 0 && firsts[many - 1] + counts[many - 1] == r.first()) {
        counts[many - 1] += r.count();
      } else {
        firsts[many] = r.first();
        counts[many++] = r.count();
      }
    }
    edges.draw(GL_TRIANGLES, Arrays.copyOf(firsts, many), Arrays.copyOf(counts, many));
  }

  @Override
  public void close() {
    flat.close();
    line.close();
    for (Mesh m : List.of(solid, bands, hung, glass, edges, extra)) {
      m.close();
    }
  }
}
