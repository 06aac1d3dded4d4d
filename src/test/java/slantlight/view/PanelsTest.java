package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec2;
import slantlight.view.draw.Box;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Pixels;
import slantlight.view.gl.Target;

class PanelsTest {
  private static final int WIDE = 1000;
  private static final int HIGH = 620;

  /** Whatever is done, a frame with kept panels is the frame that is drawn from nothing. */
  @Test
  void keptPanelsAreNeverStale() {
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Screen screen = new Screen(Studio.MODEL, 1);
        Target target = new Target(WIDE, HIGH, 1)) {
      Stage stage = Studio.stage(screen.shape());
      Controls controls = new Controls(stage);
      controls.show(Studio.MODEL, screen.shape());
      controls.goOutside(1.6);
      screen.light(Studio.even(Studio.MODEL, screen.shape(), 100, 50, 200));
      List<String> keys = new ArrayList<>(List.of("N", "J"));
      Keys.ALL.forEach(g -> g.rows().forEach(r -> keys.addAll(List.of(r.keys().split(" +", -1)))));
      keys.removeAll(List.of("rest", "click", "Ctrl", "Q", "drag", "wheel", "K", "F"));
      for (String key : keys) {
        controls.press(new Controls.Press(key, false), 1.6);
        stage.playing = Stage.Play.NO;
        same("after " + key, screen, target, stage);
        controls.drag(7, 3);
        same("turned after " + key, screen, target, stage);
      }
      stage.notice = Optional.of("a word");
      screen.working("computing");
      same("noted", screen, target, stage);
      stage.hover =
          Optional.of(new Hover("room/ceiling", Optional.empty(), new Vec2(1, 1), 300, 300));
      same("rested on", screen, target, stage);
      screen.show(Studio.MODEL);
      same("shown again", screen, target, stage);
      gl.check();
    }
  }

  private static void same(String what, Screen screen, Target target, Stage stage) {
    screen.draw(target, stage, 1);
    Pixels kept = target.read();
    var placed = screen.placed();
    screen.forget();
    screen.draw(target, stage, 1);
    Pixels fresh = target.read();
    assertThat(kept.image().getRGB(0, 0, WIDE, HIGH, null, 0, WIDE))
        .as(what)
        .isEqualTo(fresh.image().getRGB(0, 0, WIDE, HIGH, null, 0, WIDE));
    assertThat(screen.placed()).as(what).isEqualTo(placed);
  }

  /** A kept part still takes the pointer. */
  @Test
  void keptPanelsStillTakeThePointer() {
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Screen screen = new Screen(Studio.MODEL, 1);
        Target target = new Target(WIDE, HIGH, 1)) {
      Stage stage = Studio.stage(screen.shape());
      screen.draw(target, stage, 1);
      screen.draw(target, stage, 1);
      Box ribbons = Arrangement.of(new Box(0, 0, WIDE, HIGH), stage).ribbons();
      var before = stage.time;
      screen.hits().find(ribbons.midX(), ribbons.y() + 20).at(ribbons.midX(), ribbons.y() + 20);
      assertThat(stage.time).isNotEqualTo(before);
      gl.check();
    }
  }
}
