package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import slantlight.geom.Vec2;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.view.draw.Box;
import slantlight.view.draw.Placed;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Pixels;
import slantlight.view.gl.Target;

/**
 * Whole frames against stored ones, averaged over squares of pixels so that files stay small and
 * rasterisers may differ in an edge. {@code -Dgolden.update=true} stores the frames anew; look at
 * them before keeping them. Also holds every line of type to its place.
 */
class GoldenTest {
  private static final Path STORED = Path.of("src", "test", "resources", "view");
  private static final Path DRAWN = Path.of("target", "view");

  /** Largest difference of a colour channel that passes, of 255. */
  private static final int CHANNEL = 12;

  /** Share of averaged pixels that may differ by more. */
  private static final double SHARE = 0.004;

  private static Map<String, Consumer<Stage>> looks() {
    Map<String, Consumer<Stage>> looks = new LinkedHashMap<>();
    looks.put("risk", s -> {});
    looks.put(
        "boards",
        s -> {
          s.look = Stage.Look.BOARDS;
          s.surface = Optional.of("room/ceiling");
          s.joint = Optional.of("room/ceiling#B3");
        });
    looks.put(
        "resting",
        s -> {
          s.panes = Stage.Panes.ROOM;
          s.surface = Optional.of("room/ceiling");
          s.joint = Optional.of("room/ceiling#B3");
          s.measure = Stage.Measure.MOMENT;
          s.hover =
              Optional.of(
                  new Hover(
                      "room/ceiling", Optional.of("room/ceiling#T2"), new Vec2(2, 2), 700, 360));
        });
    looks.put(
        "elevation",
        s -> {
          s.surface = Optional.of("room/west");
          s.panes = Stage.Panes.SHEET;
        });
    looks.put("as-lit", s -> inside(s));
    looks.put(
        "split-levels",
        s -> {
          inside(s);
          s.split = Stage.Split.LEVELS;
          s.strength = 4;
        });
    looks.put(
        "dark-paint",
        s -> {
          inside(s);
          s.split = Stage.Split.PAINTS;
          s.swatch = Optional.of(new Paint(0.12, Sheen.EGGSHELL));
        });
    looks.put(
        "presenting",
        s -> {
          inside(s);
          s.presenting = true;
          s.swatch = Optional.of(new Paint(0.5, Sheen.SATIN));
          Stop.all(Studio.MODEL).get(0).go(Studio.MODEL, s);
        });
    looks.put("keys", s -> s.keyCard = true);
    looks.put(
        "notice",
        s -> {
          s.measure = Stage.Measure.MOMENT;
          s.notice =
              Optional.of(
                  "scenes/one-room.json:14:9 $.rooms[0].height: a height of 0 m; write a height"
                      + " above 1 m (and 2 more)");
        });
    return looks;
  }

  private static void inside(Stage s) {
    s.look = Stage.Look.AS_LIT;
    s.panes = Stage.Panes.ROOM;
    s.time = Studio.at(5, 18, 9, 0);
    s.camera =
        Camera.from(new slantlight.geom.Vec3(4.2, 7.2, 1.6), new slantlight.geom.Vec3(1.8, 0, 1.9));
  }

  @TestFactory
  Stream<DynamicTest> framesLookAsTheyDid() {
    List<DynamicTest> tests = new ArrayList<>();
    looks()
        .forEach(
            (name, set) -> {
              tests.add(DynamicTest.dynamicTest(name, () -> frame(name, set, 1280, 720, 1)));
              tests.add(
                  DynamicTest.dynamicTest(
                      name + " at high density", () -> frame(name, set, 2560, 1440, 2)));
            });
    return tests.stream();
  }

  private static void frame(String name, Consumer<Stage> set, int w, int h, int scale)
      throws IOException {
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Screen screen = new Screen(Studio.MODEL, 4);
        Target target = new Target(w, h, 1)) {
      Stage stage = Studio.stage(screen.shape());
      set.accept(stage);
      if (stage.look == Stage.Look.AS_LIT) {
        screen.light(Studio.moment(stage.time));
      }
      screen.draw(target, stage, scale);
      gl.check();
      fits(screen.placed(), new Box(0, 0, w / (double) scale, h / (double) scale));
      Pixels whole = target.read();
      whole.write(DRAWN.resolve(name + "-" + w + ".png"));
      compare(name + "-" + w + ".png", averaged(whole, 2 * scale));
    }
  }

  /** No line of type leaves its room or the window, and none lies over another. */
  static void fits(List<Placed> placed, Box window) {
    assertThat(placed).isNotEmpty();
    for (Placed p : placed) {
      assertThat(p.room().holds(p.bounds(), 0.5)).as("clipped: " + p).isTrue();
      assertThat(window.holds(p.bounds(), 0)).as("off the window: " + p).isTrue();
    }
    for (int i = 0; i < placed.size(); i++) {
      for (int j = 0; j < i; j++) {
        boolean over = placed.get(i).bounds().overlaps(placed.get(j).bounds(), 1);
        assertThat(over).as(placed.get(i) + " over " + placed.get(j)).isFalse();
      }
    }
  }

  private static Pixels averaged(Pixels p, int n) {
    int w = p.width() / n;
    int h = p.height() / n;
    int[] out = new int[w * h];
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int[] sum = new int[3];
        for (int k = 0; k < n * n; k++) {
          int rgb = p.at(x * n + k % n, y * n + Math.floorDiv(k, n));
          sum[0] += rgb >> 16 & 255;
          sum[1] += rgb >> 8 & 255;
          sum[2] += rgb & 255;
        }
        int many = n * n;
        out[y * w + x] = ((sum[0] / many) << 16) | ((sum[1] / many) << 8) | (sum[2] / many);
      }
    }
    return new Pixels(w, h, out);
  }

  private static void compare(String file, Pixels now) throws IOException {
    if (Boolean.getBoolean("golden.update")) {
      now.write(STORED.resolve(file));
    }
    assertThat(Files.exists(STORED.resolve(file))).as("stored frame " + file).isTrue();
    Pixels then = Pixels.read(STORED.resolve(file));
    int wrong = 0;
    for (int y = 0; y < now.height(); y++) {
      for (int x = 0; x < now.width(); x++) {
        int a = now.at(x, y);
        int b = then.at(x, y);
        for (int shift = 0; shift <= 16; shift += 8) {
          if (Math.abs((a >> shift & 255) - (b >> shift & 255)) > CHANNEL) {
            wrong++;
            break;
          }
        }
      }
    }
    double share = (double) wrong / (now.width() * now.height());
    assertThat(share).as(file + ": share of pixels that differ").isLessThan(SHARE);
  }
}
