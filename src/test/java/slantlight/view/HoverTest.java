package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.score.JointScore;
import slantlight.view.draw.Box;
import slantlight.view.draw.Placed;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Target;

class HoverTest {
  private static final Box WINDOW = new Box(0, 0, 1000, 620);

  /** The pointer on the projected middle of a joint finds it; a click chooses the same. */
  @Test
  void thePointerFindsTheJointUnderIt() {
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Screen screen = new Screen(Studio.MODEL, 1);
        Target target = new Target(1000, 620, 1)) {
      Stage stage = Studio.stage(screen.shape());
      stage.panes = Stage.Panes.ROOM;
      stage.camera = Camera.from(new Vec3(2.6, 7.6, 1.2), new Vec3(2.4, 3.4, 2.75));
      screen.draw(target, stage, 1);
      JointScore j = Studio.MODEL.joint("room/ceiling#T3").orElseThrow();
      Vec2 middle = j.joint().from().lerp(j.joint().to(), 0.5);
      Vec3 place = Studio.HOUSE.surface("room/ceiling").face().frame().toWorld(middle);
      Vec2 p = stage.camera.project(place, screen.picture());
      stage.hover = screen.under(p.x(), p.y(), stage.camera);
      assertThat(stage.hover.flatMap(Hover::jointId)).contains("room/ceiling#T3");
      screen.draw(target, stage, 1);
      assertThat(words(screen)).contains("Tapered joint T3").contains("light").contains("when");
      assertThat(screen.under(5, 610, stage.camera)).as("over the ribbons").isEmpty();
      gl.check();
    }
  }

  /** On the sheet the pointer tells what a click there would choose. */
  @Test
  void theSheetTellsWhatAClickWouldChoose() {
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Screen screen = new Screen(Studio.MODEL, 1);
        Target target = new Target(1000, 620, 1)) {
      Stage stage = Studio.stage(screen.shape());
      screen.draw(target, stage, 1);
      Box pane = Arrangement.of(WINDOW, stage).sheet();
      int joints = 0;
      for (double x = pane.x() + 3; x < pane.right(); x += 11) {
        for (double y = pane.y() + 3; y < pane.bottom(); y += 11) {
          Optional<Hover> rest = screen.under(x, y, stage.camera);
          stage.surface = Optional.empty();
          stage.joint = Optional.empty();
          Optional.ofNullable(screen.hits().find(x, y)).orElse((a, b) -> {}).at(x, y);
          assertThat(stage.surface).isEqualTo(rest.map(Hover::surfaceId));
          assertThat(stage.joint).isEqualTo(rest.flatMap(Hover::jointId));
          joints += stage.joint.isPresent() ? 1 : 0;
        }
      }
      assertThat(joints).isGreaterThan(20);
      gl.check();
    }
  }

  /** Wherever the pointer is, all of the card is in the window. */
  @Test
  void theCardStaysInTheWindow() {
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Screen screen = new Screen(Studio.MODEL, 1);
        Target target = new Target(1000, 620, 1)) {
      Stage stage = Studio.stage(screen.shape());
      for (String surface : List.of("room/ceiling", "room/west", "room/floor")) {
        for (double x : new double[] {1, 500, 999}) {
          for (double y : new double[] {1, 310, 619}) {
            stage.hover = Optional.of(new Hover(surface, Optional.empty(), new Vec2(1, 1), x, y));
            screen.draw(target, stage, 1);
            for (Placed p : screen.placed()) {
              assertThat(WINDOW.holds(p.bounds(), 0)).as("off the window: " + p).isTrue();
              assertThat(p.room().holds(p.bounds(), 0.5)).as("clipped: " + p).isTrue();
            }
          }
        }
      }
      gl.check();
    }
  }

  private static List<String> words(Screen screen) {
    return screen.placed().stream().map(Placed::text).toList();
  }
}
