package slantlight.view;

import static org.lwjgl.opengl.GL11C.GL_CULL_FACE;
import static org.lwjgl.opengl.GL11C.GL_DEPTH_TEST;
import static org.lwjgl.opengl.GL11C.GL_TRIANGLES;
import static org.lwjgl.opengl.GL11C.glDisable;
import static org.lwjgl.opengl.GL11C.glEnable;
import static org.lwjgl.opengl.GL11C.glFinish;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slantlight.geom.Vec2;
import slantlight.scene.Fault;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Surface;
import slantlight.sky.Weather;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Mesh;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Program;
import slantlight.view.gl.Stopwatch;
import slantlight.view.gl.Target;
import slantlight.view.gl.Texture;

/**
 * Times frames without a window: {@code java -cp slantlight.jar slantlight.view.FrameBench SCENE
 * [width height [card|software [frames [samples]]]]}. Prints the median of each kind in
 * milliseconds, beside a plain textured draw of the same triangles. The light is invented (even
 * everywhere, every surface known), for drawing takes as long whatever the light.
 */
public final class FrameBench {
  private final PrintStream out;
  private final int frames;

  private FrameBench(PrintStream out, int frames) {
    this.out = out;
    this.frames = frames;
  }

  /** Runs the bench. */
  public static void main(String[] args) {
    int width = args.length > 2 ? Integer.parseInt(args[1]) : 1280;
    int height = args.length > 2 ? Integer.parseInt(args[2]) : 720;
    boolean card = args.length > 3 && args[3].equals("card");
    int frames = args.length > 4 ? Integer.parseInt(args[4]) : 40;
    int samples = args.length > 5 ? Integer.parseInt(args[5]) : card ? 4 : 1;
    Read read = SceneReader.read(Path.of(args[0]));
    if (read instanceof Read.Faulty faulty) {
      faulty.faults().stream().map(Fault::text).forEach(System.err::println);
      System.exit(1);
    }
    new FrameBench(System.out, frames)
        .run(
            ((Read.Ok) read).house(),
            width,
            height,
            samples,
            card ? Offscreen.Way.CARD : Offscreen.Way.SOFTWARE);
  }

  private void run(House house, int width, int height, int samples, Offscreen.Way way) {
    ViewModel model = BenchScores.of(house);
    try (GlContext gl = Offscreen.open(way, false);
        Screen screen = new Screen(model, samples);
        Target target = new Target(width, height, samples);
        Stopwatch watch = new Stopwatch()) {
      out.println(gl.renderer());
      out.printf(Locale.ROOT, "%d x %d, %d samples, %s%n", width, height, samples, house.name());
      out.println("moving: the camera turns, so the room is drawn and kept panels are laid beside");
      out.println("redrawn: every panel is drawn anew as well; medians of " + frames + " frames");
      Stage stage = new Stage(Show.noon(house), Camera.around(screen.shape().middle(), 0, 0, 9));
      Controls controls = new Controls(stage);
      controls.show(model, screen.shape());
      screen.light(even(house, screen.shape()));
      for (boolean inside : new boolean[] {false, true}) {
        String from = inside ? "inside" : "outside";
        stand(controls, house, inside, (double) width / height);
        double surfaces = plain(screen, house, stage.camera, target, false);
        double ridges = plain(screen, house, stage.camera, target, true);
        say("plain textured", from, surfaces, surfaces);
        say("plain, with ridges", from, ridges, surfaces);
        for (Stage.Look look : Stage.Look.values()) {
          stage.look = look;
          double plain = look == Stage.Look.AS_LIT ? ridges : surfaces;
          stage.panes = Stage.Panes.ROOM;
          say(
              look + " picture",
              from,
              median(() -> turned(controls), () -> screen.drawPicture(target, stage, 1)),
              plain);
          stage.panes = Stage.Panes.BOTH;
          double moving = median(() -> turned(controls), () -> screen.draw(target, stage, 1));
          say(look + " frame, moving", from, moving, plain);
          parts(() -> turned(controls), screen, target, stage, watch);
          double redrawn = median(screen::forget, () -> screen.draw(target, stage, 1));
          say(look + " frame, redrawn", from, redrawn, plain);
          parts(screen::forget, screen, target, stage, watch);
        }
      }
      gl.check();
    }
  }

  private static void stand(Controls controls, House house, boolean inside, double aspect) {
    controls.goOutside(aspect);
    if (inside) {
      controls.standIn(house.rooms().get(0).id());
    }
  }

  /** Turns a little: a whole turn would need thousands of frames, so the picture stays alike. */
  private static void turned(Controls controls) {
    controls.drag(0.2, 0);
  }

  private void say(String what, String from, double ms, double plain) {
    out.printf(Locale.ROOT, "%-24s %-8s %8.3f ms  %5.2f x plain%n", what, from, ms, ms / plain);
  }

  /** Prints where a frame's time goes. */
  private void parts(Runnable before, Screen screen, Target target, Stage stage, Stopwatch watch) {
    Map<String, List<Stopwatch.Lap>> laps = new LinkedHashMap<>();
    for (int i = -3; i < frames; i++) {
      before.run();
      glFinish();
      watch.start();
      screen.draw(target, stage, 1, watch::lap);
      glFinish();
      for (Stopwatch.Lap lap : watch.laps()) {
        if (i >= 0) {
          laps.computeIfAbsent(lap.part(), p -> new ArrayList<>()).add(lap);
        }
      }
    }
    laps.forEach(
        (part, all) ->
            out.printf(
                Locale.ROOT,
                "    %-24s %8.3f ms to send %8.3f ms on the card%n",
                part,
                middle(all.stream().mapToDouble(Stopwatch.Lap::sendMs).toArray()),
                middle(all.stream().mapToDouble(Stopwatch.Lap::drawMs).toArray())));
  }

  private double median(Runnable frame) {
    return median(() -> {}, frame);
  }

  /** Median time of a frame; what comes before each is not counted. */
  private double median(Runnable before, Runnable frame) {
    double[] ms = new double[frames];
    for (int i = -3; i < frames; i++) {
      before.run();
      glFinish();
      long start = System.nanoTime();
      frame.run();
      glFinish();
      if (i >= 0) {
        ms[i] = (System.nanoTime() - start) / 1e6;
      }
    }
    return middle(ms);
  }

  private static double middle(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }

  /** The yardstick: the as-lit picture's own triangles with one texture. */
  private double plain(
      Screen screen, House house, Camera camera, Target target, boolean withRidges) {
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
    int[] checks = new int[64 * 64];
    for (int i = 0; i < checks.length; i++) {
      checks[i] = (i & 8) == (i >> 6 & 8) ? 0xffd0d0d0 : 0xfff0f0f0;
    }
    try (Program program = new Program("plain", "plain");
        Mesh mesh = new Mesh(3, 2).fill(vertices.data(), vertices.index());
        Texture texture = new Texture(64, 64, checks)) {
      double aspect = (double) target.width() / target.height();
      return median(
          () -> {
            target.bind();
            Screen.clear(0xffffff);
            glEnable(GL_DEPTH_TEST);
            glEnable(GL_CULL_FACE);
            texture.bind(0);
            program.use().set("picture", 0).set("camera", camera.matrix(aspect));
            mesh.draw(GL_TRIANGLES);
            glDisable(GL_CULL_FACE);
            glDisable(GL_DEPTH_TEST);
          });
    }
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

  private static LitMoment even(House house, HouseShape shape) {
    double[] one = new double[Cones.VALUES];
    Map<String, float[]> cones = new HashMap<>();
    for (Surface s : house.surfaces()) {
      float[] values = new float[shape.grid(s).nodes() * Cones.VALUES];
      Cones.KERNEL.weigh(0.5, 0.5, Math.sqrt(0.5), one);
      for (int i = 0; i < values.length; i++) {
        values[i] = (float) (40 + 500 * one[i % Cones.VALUES]);
      }
      cones.put(s.id(), values);
    }
    return new LitMoment(
        new Moments(house).at(Show.noon(house), Weather.CLEAR), cones, List.of(), Optional.empty());
  }
}
