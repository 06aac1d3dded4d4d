package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_ALWAYS;
import static org.lwjgl.opengl.GL11C.GL_BLEND;
import static org.lwjgl.opengl.GL11C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_CULL_FACE;
import static org.lwjgl.opengl.GL11C.GL_DEPTH_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_DEPTH_TEST;
import static org.lwjgl.opengl.GL11C.GL_EQUAL;
import static org.lwjgl.opengl.GL11C.GL_KEEP;
import static org.lwjgl.opengl.GL11C.GL_LEQUAL;
import static org.lwjgl.opengl.GL11C.GL_ONE;
import static org.lwjgl.opengl.GL11C.GL_POLYGON_OFFSET_FILL;
import static org.lwjgl.opengl.GL11C.GL_REPLACE;
import static org.lwjgl.opengl.GL11C.GL_SCISSOR_TEST;
import static org.lwjgl.opengl.GL11C.GL_SRC_COLOR;
import static org.lwjgl.opengl.GL11C.GL_STENCIL_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_STENCIL_TEST;
import static org.lwjgl.opengl.GL11C.GL_TRIANGLES;
import static org.lwjgl.opengl.GL11C.GL_ZERO;
import static org.lwjgl.opengl.GL11C.glBlendFunc;
import static org.lwjgl.opengl.GL11C.glClear;
import static org.lwjgl.opengl.GL11C.glClearColor;
import static org.lwjgl.opengl.GL11C.glDepthFunc;
import static org.lwjgl.opengl.GL11C.glDepthMask;
import static org.lwjgl.opengl.GL11C.glDisable;
import static org.lwjgl.opengl.GL11C.glEnable;
import static org.lwjgl.opengl.GL11C.glPolygonOffset;
import static org.lwjgl.opengl.GL11C.glScissor;
import static org.lwjgl.opengl.GL11C.glStencilFunc;
import static org.lwjgl.opengl.GL11C.glStencilOp;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joml.FrustumIntersection;
import org.joml.Matrix4f;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Paint;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;
import slantlight.sight.Coating;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;
import slantlight.view.gl.FloatTable;
import slantlight.view.gl.LightBuffer;
import slantlight.view.gl.Mesh;
import slantlight.view.gl.Program;
import slantlight.view.gl.Target;

/**
 * The surfaces under their computed light. Luminance is summed at the vertices from the cones of
 * {@link Cones}, sun patches are added where they fall, ridges multiply what is there by the ratio
 * of their facet's luminance to the level surface's, and one tone curve brings it to the screen.
 */
final class LitHouse implements AutoCloseable {
  /** Linear display value given to the average (log) luminance of the painted surfaces. */
  private static final double KEY = 0.42;

  /** The same for a sun patch that is looked at: a little more, well within the straight part. */
  private static final double SUNLIT_KEY = 0.62;

  /** How far the brightness follows a place from that of its room. */
  private static final double UP = 6;

  private static final double DOWN = 200;

  /** A place this near a sun patch is looked at for the patch, m. */
  private static final double NEAR_PATCH = 0.25;

  /** Fastener spots are drawn where one is this wide at least, pixels: smaller ones are lost. */
  private static final double SPOT_PIXELS = 6;

  /** Width of a spot, m, by the table of ridges at level 4. */
  private static final double SPOT = RidgeTable.standard().ridge(RidgeKind.SPOT, 4).crown().width();

  /** Reflectance of white paint. */
  private static final double WHITE = 0.85;

  /** Linear display value round the house. */
  private static final float SURROUND = 0.02f;

  private final Program lit = new Program("lit", "lit");
  private final Program beam = new Program("beam", "beam");
  private final Program ridge = new Program("ridge", "ridge");
  private final Program tone = new Program("tone", "tone");
  private final Mesh base = new Mesh(3, 1);
  private final FloatTable baseCones = new FloatTable();
  private final Mesh beams = new Mesh(3);
  private final Mesh empty = new Mesh(3).fill(new float[9], new int[] {0, 1, 2});
  private final Map<Integer, RidgeMesh> ridges = new HashMap<>();
  private final Map<String, Run> baseRuns = new LinkedHashMap<>();
  private final List<BeamRun> beamRuns = new ArrayList<>();
  private final Map<Paint, Map<Double, CoatTable>> coats = new HashMap<>();
  private final Backdrop backdrop = new Backdrop();
  private final Reveals reveals = new Reveals();
  private ViewModel model;
  private HouseShape shape;
  private LitMoment moment;
  private LightBuffer buffer;
  private final FrustumIntersection frustum = new FrustumIntersection();
  private double roomExposure = 1;
  private double exposure = 1;

  /** Pixels that a radian takes in the middle of the picture. */
  private double pixelsPerRadian;

  private final Map<String, CoatTable> worn = new HashMap<>();

  private record Run(Surface surface, int first, int count) {}

  private record BeamRun(LitMoment.Beam beam, int mark, int first, int count) {}

  /** One half of a split picture, or all of it. */
  record Half(int level, Optional<Paint> swatch) {}

  /** Shows another house or other scores from now on; light must follow. */
  void show(ViewModel next, HouseShape nextShape) {
    model = next;
    shape = nextShape;
    ridges.values().forEach(RidgeMesh::close);
    ridges.clear();
    baseRuns.clear();
  }

  /** Takes the light of a moment. */
  void fill(LitMoment next) {
    if (baseRuns.isEmpty()) {
      surfaces();
    }
    moment = next;
    ConeValues values = new ConeValues(next.cones());
    double logSum = 0;
    double weight = 0;
    for (Surface s : model.house().surfaces()) {
      for (Vec2 p : shape.fine(s).points()) {
        double lux = values.add(s, shape.grid(s), p);
        boolean counts = next.room().isEmpty() || next.room().get().equals(s.roomId());
        if (counts && s.kind() != SurfaceKind.FLOOR && lux > 0) {
          logSum += Math.log(lux * s.paint().lrv() / Math.PI);
          weight++;
        }
      }
    }
    baseCones.fill(values.data());
    roomExposure = weight == 0 ? 1 : KEY / Math.exp(logSum / weight);
    exposure = roomExposure;
    ridges.values().forEach(r -> r.fill(next.cones()));
    patches();
    backdrop.fill(next, shape, model.house());
    reveals.fill(next, shape, model.house());
  }

  private void surfaces() {
    Vertices out = new Vertices(4);
    for (Surface s : model.house().surfaces()) {
      SurfaceGrid grid = shape.fine(s);
      int first = out.vertices();
      int start = out.indices();
      for (Vec2 p : grid.points()) {
        out.add(s.face().frame().toWorld(p)).add(out.vertices());
      }
      for (int i : grid.triangles()) {
        out.index(first + i);
      }
      baseRuns.put(s.id(), new Run(s, start, out.indices() - start));
    }
    base.fill(out.data(), out.index());
  }

  private void patches() {
    Vertices out = new Vertices(3);
    beamRuns.clear();
    Map<String, Integer> marks = new HashMap<>();
    for (LitMoment.Beam b : moment.beams()) {
      Frame f = b.patch().surface().face().frame();
      int start = out.indices();
      Outlines.triangles(
          b.patch().region(),
          t -> {
            for (Vec2 p : t) {
              out.index(out.vertices());
              out.add(f.toWorld(p));
            }
          });
      int mark = marks.merge(b.patch().surface().id(), 1, Integer::sum);
      beamRuns.add(new BeamRun(b, mark, start, out.indices() - start));
    }
    beams.fill(out.data(), out.index());
  }

  private RidgeMesh ridges(int level) {
    return ridges.computeIfAbsent(
        level,
        l -> {
          RidgeMesh mesh = new RidgeMesh(model, shape, l);
          mesh.fill(moment.cones());
          return mesh;
        });
  }

  /**
   * Sets the brightness as an eye would that looks at a place: by it and by its room.
   *
   * @param eye to which a sun patch may shine more than it does elsewhere
   */
  void meter(Optional<Vec3> place, Optional<Surface> on, Vec3 eye) {
    exposure = roomExposure;
    if (place.isPresent() && on.isPresent() && moment.cones().containsKey(on.get().id())) {
      Surface s = on.get();
      Frame f = s.face().frame();
      Vec2 at = f.toPlane(place.get());
      Vec3 sun = f.directionToLocal(moment.state().sky().sun());
      Vec3 to = f.directionToLocal(eye.minus(place.get()).unit());
      double toward =
          Coating.of(s.paint()).reflectance(sun.x(), sun.y(), sun.z(), to.x(), to.y(), to.z());
      double lux = new ConeValues(moment.cones()).add(s, shape.grid(s), at);
      double luminance = lux * s.paint().lrv() / Math.PI;
      boolean sunlit = false;
      for (LitMoment.Beam b : moment.beams()) {
        boolean struck = b.patch().surface().id().equals(s.id());
        if (struck && b.patch().region().isWithinDistance(Outlines.point(at), NEAR_PATCH)) {
          lux += b.normalLux() * sun.z();
          luminance += b.normalLux() * sun.z() * toward;
          sunlit = true;
        }
      }
      // Dark paint stays darker than white, though the eye adapts toward it.
      double lrv = Math.min(WHITE, Math.PI * luminance / Math.max(1e-6, lux));
      double key = sunlit ? SUNLIT_KEY : KEY;
      double metered = key * Math.sqrt(lrv / WHITE) / Math.max(1e-4, luminance);
      exposure = Math.max(roomExposure / DOWN, Math.min(roomExposure * UP, metered));
    }
  }

  /** Luminance that the screen shows as full white, were the tone curve straight, cd/m2. */
  double white() {
    return 1 / exposure;
  }

  /** Fixes the luminance of white, cd/m2, instead of following the light. */
  void white(double luminance) {
    exposure = 1 / luminance;
  }

  /**
   * Draws into a rectangle of a target, pixels from its lower left corner.
   *
   * @param halves one, or two for a picture split down the middle
   */
  void draw(
      Target target,
      int[] rectangle,
      Camera camera,
      List<Half> halves,
      double strength,
      int samples) {
    int w = rectangle[2];
    int h = rectangle[3];
    if (buffer == null || buffer.width() != w || buffer.height() != h) {
      if (buffer != null) {
        buffer.close();
      }
      buffer = new LightBuffer(w, h, samples);
    }
    halves.forEach(half -> ridges(half.level()));
    buffer.bind();
    glDisable(GL_SCISSOR_TEST);
    glClearColor(SURROUND, SURROUND, SURROUND, 1);
    glDepthMask(true);
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
    Matrix4f matrix = camera.matrix((double) w / h);
    frustum.set(matrix);
    pixelsPerRadian = h / 2.0 / Math.tan(camera.fieldOfView() / 2);
    glEnable(GL_SCISSOR_TEST);
    for (int i = 0; i < halves.size(); i++) {
      int x0 = w * i / halves.size();
      glScissor(x0, 0, w * (i + 1) / halves.size() - x0, h);
      half(matrix, camera.eye(), halves.get(i), strength);
    }
    // A blit obeys the scissor, so it must be off before the samples are put together.
    glDisable(GL_SCISSOR_TEST);
    buffer.read();
    target.bind();
    glEnable(GL_SCISSOR_TEST);
    org.lwjgl.opengl.GL11C.glViewport(rectangle[0], rectangle[1], w, h);
    glScissor(rectangle[0], rectangle[1], w, h);
    tone.use().set("light", 0).set("corner", rectangle[0], rectangle[1]);
    empty.draw(GL_TRIANGLES);
    glDisable(GL_SCISSOR_TEST);
  }

  private void half(Matrix4f matrix, Vec3 eye, Half half, double strength) {
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LEQUAL);
    glEnable(GL_CULL_FACE);
    glDisable(GL_BLEND);
    baseCones.bind(1);
    lit.use().set("cones", 1).set("camera", matrix).set("eye", eye).set("exposure", exposure);
    for (Run run : baseRuns.values()) {
      boolean known = moment.cones().containsKey(run.surface().id());
      if (known && surface(lit, run.surface(), eye)) {
        wear(lit, "lit", "paper", coat(paint(run.surface(), half), 0));
        base.draw(GL_TRIANGLES, run.first(), run.count());
      }
    }
    reveals.draw(matrix, exposure);
    backdrop.draw(matrix, exposure);
    glDepthMask(false);
    glEnable(GL_BLEND);
    glEnable(GL_STENCIL_TEST);
    glEnable(GL_POLYGON_OFFSET_FILL);
    glPolygonOffset(-1, -4);
    beams(matrix, eye, half);
    glStencilOp(GL_KEEP, GL_KEEP, GL_KEEP);
    glBlendFunc(GL_ZERO, GL_SRC_COLOR);
    ridges(matrix, eye, half, strength);
    glDisable(GL_POLYGON_OFFSET_FILL);
    glDisable(GL_STENCIL_TEST);
    glDisable(GL_BLEND);
    glDisable(GL_CULL_FACE);
    glDisable(GL_DEPTH_TEST);
    glDepthMask(true);
  }

  private void beams(Matrix4f matrix, Vec3 eye, Half half) {
    glStencilOp(GL_KEEP, GL_KEEP, GL_REPLACE);
    glBlendFunc(GL_ONE, GL_ONE);
    beam.use().set("camera", matrix).set("eye", eye).set("exposure", exposure);
    for (BeamRun run : beamRuns) {
      Surface s = run.beam().patch().surface();
      if (surface(beam, s, eye)) {
        wear(beam, "beam", "paper", coat(paint(s, half), 0));
        sun(beam, s, run.beam().normalLux());
        glStencilFunc(GL_ALWAYS, run.mark(), 0xff);
        beams.draw(GL_TRIANGLES, run.first(), run.count());
      }
    }
  }

  private void ridges(Matrix4f matrix, Vec3 eye, Half half, double strength) {
    double gain = RidgeTable.standard().roughnessGain(half.level());
    RidgeMesh mesh = ridges(half.level());
    mesh.bind(1);
    ridge.use().set("cones", 1).set("camera", matrix).set("eye", eye).set("strength", strength);
    for (RidgeMesh.Run run : mesh.runs()) {
      Surface s = run.surface();
      if (!surface(ridge, s, eye)) {
        continue;
      }
      Paint paint = paint(s, half);
      wear(ridge, "ridge", "paper", coat(paint, 0));
      wear(ridge, "ridge", "compound", coat(paint, gain));
      sun(ridge, s, 0);
      boolean spots = pixelsPerRadian * SPOT > SPOT_PIXELS * shape.bounds(s).distance(eye);
      glStencilFunc(GL_EQUAL, 0, 0xff);
      mesh.draw(run, spots);
      for (BeamRun b : beamRuns) {
        if (b.beam().patch().surface().id().equals(s.id())) {
          sun(ridge, s, b.beam().normalLux());
          glStencilFunc(GL_EQUAL, b.mark(), 0xff);
          mesh.draw(run, spots);
        }
      }
    }
  }

  /** Sets what belongs to a surface; false when it is seen from behind or out of the picture. */
  private boolean surface(Program program, Surface s, Vec3 eye) {
    Frame f = s.face().frame();
    if (f.height(eye) <= 0 || !shape.bounds(s).in(frustum)) {
      return false;
    }
    program.set("axisU", f.u()).set("axisV", f.v()).set("axisN", f.n());
    program.set("hue", s.kind() == SurfaceKind.FLOOR ? Hue.FLOOR : Hue.WALL);
    return true;
  }

  private void sun(Program program, Surface s, double lux) {
    Vec3 local = s.face().frame().directionToLocal(moment.state().sky().sun());
    program.set("sun", local).set("sunLux", lux);
  }

  private static Paint paint(Surface s, Half half) {
    return s.boarded() ? half.swatch().orElse(s.paint()) : s.paint();
  }

  /** Sets a coat of a program unless it is the one set last. */
  private void wear(Program program, String name, String part, CoatTable coat) {
    if (worn.put(name + part, coat) != coat) {
      coat.set(program, part);
    }
  }

  private CoatTable coat(Paint paint, double gain) {
    return coats
        .computeIfAbsent(paint, p -> new HashMap<>())
        .computeIfAbsent(gain, g -> CoatTable.of(paint, g));
  }

  @Override
  public void close() {
    for (Program p : List.of(lit, beam, ridge, tone)) {
      p.close();
    }
    base.close();
    baseCones.close();
    beams.close();
    empty.close();
    backdrop.close();
    reveals.close();
    ridges.values().forEach(RidgeMesh::close);
    if (buffer != null) {
      buffer.close();
    }
  }
}
