package slantlight.view;

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
import slantlight.scene.Fault;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Surface;
import slantlight.sky.Weather;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Stopwatch;
import slantlight.view.gl.Target;

/**
 * Times frames without a window: {@code java -cp slantlight.jar slantlight.view.FrameBench SCENE
 * [width height [card|software [frames [samples]]]]}. Prints medians in milliseconds, each beside a
 * plain textured draw that was timed in turn with it. The light is invented (even everywhere, every
 * surface known), for drawing takes as long whatever the light.
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
    int frames = args.length > 4 ? Integer.parseInt(args[4]) : card ? 200 : 40;
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
        Target target = new Target(width, height, 1);
        Yardstick surfaces = new Yardstick(screen, house, false);
        Yardstick ridges = new Yardstick(screen, house, true);
        Stopwatch watch = new Stopwatch()) {
      out.println(gl.renderer());
      out.printf(Locale.ROOT, "%d x %d, %d samples, %s%n", width, height, samples, house.name());
      out.println("picture: the room picture alone over the whole window");
      out.println("moving: the camera turns: the room is drawn, kept panels are laid beside it");
      out.println("still: nothing changes: the kept room picture and panels are laid");
      out.println("redrawn: the room and every panel are drawn anew");
      out.println("plain: the surfaces' triangles with a texture; for AS_LIT the ridges' as well");
      out.printf(Locale.ROOT, "medians of %d frames after %d to warm up%n", frames, frames / 2);
      Stage stage = new Stage(Show.noon(house), Camera.around(screen.shape().middle(), 0, 0, 9));
      Controls controls = new Controls(stage);
      controls.show(model, screen.shape());
      screen.light(even(house, screen.shape()));
      for (boolean inside : new boolean[] {false, true}) {
        stand(controls, house, inside, (double) width / height);
        for (Stage.Look look : Stage.Look.values()) {
          stage.look = look;
          String from = look + (inside ? " inside" : " outside");
          Yardstick plain = look == Stage.Look.AS_LIT ? ridges : surfaces;
          Runnable yard = () -> plain.draw(stage.camera, target);
          Runnable whole = () -> screen.draw(target, stage, 1);
          Runnable turn = () -> turned(controls);
          stage.panes = Stage.Panes.ROOM;
          say(from + " picture", turn, () -> screen.drawPicture(target, stage, 1), yard);
          stage.panes = Stage.Panes.BOTH;
          say(from + " moving", turn, whole, yard);
          parts(turn, screen, target, stage, watch);
          say(from + " still", () -> {}, whole, yard);
          say(from + " redrawn", screen::forget, whole, yard);
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

  /** Times frames and the yardstick in turn, so that both meet the same load, and prints both. */
  private void say(String what, Runnable before, Runnable frame, Runnable plain) {
    double[] ms = new double[frames];
    double[] yard = new double[frames];
    for (int i = -frames / 2; i < frames; i++) {
      double p = time(plain);
      before.run();
      double f = time(frame);
      if (i >= 0) {
        yard[i] = p;
        ms[i] = f;
      }
    }
    double m = middle(ms);
    double p = middle(yard);
    out.printf(Locale.ROOT, "%-24s %8.3f ms  plain %8.3f ms  %5.2f x plain%n", what, m, p, m / p);
  }

  private static double time(Runnable frame) {
    glFinish();
    long start = System.nanoTime();
    frame.run();
    glFinish();
    return (System.nanoTime() - start) / 1e6;
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

  private static double middle(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
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
