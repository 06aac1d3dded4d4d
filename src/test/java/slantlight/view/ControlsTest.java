package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

class ControlsTest {
  private static final HouseShape SHAPE = new HouseShape(Studio.MODEL);
  private Stage stage;
  private Controls controls;

  @BeforeEach
  void open() {
    stage = Studio.stage(SHAPE);
    controls = new Controls(stage);
    controls.show(Studio.MODEL, SHAPE);
    controls.goOutside(1.6);
  }

  private boolean press(String key) {
    return controls.press(new Controls.Press(key, false), 1.6);
  }

  @Test
  void everyKeyOfTheCardDoesSomething() {
    Set<String> elsewhere = Set.of("K", "F", "rest", "click", "drag", "wheel");
    Set<String> keys = new TreeSet<>();
    Keys.ALL.forEach(
        g -> g.rows().forEach(r -> keys.addAll(java.util.List.of(r.keys().split(" +", -1)))));
    keys.removeAll(elsewhere);
    for (String key : keys) {
      assertThat(press(key)).as(key).isTrue();
    }
    assertThat(press("Z")).isFalse();
  }

  @Test
  void theWorstMomentStandsAtItsEyeAndLooksAtItsPlace() {
    press("N");
    assertThat(stage.surface).contains("room/ceiling");
    press("T");
    var peak = Studio.MODEL.score("room/ceiling").orElseThrow().worst().orElseThrow();
    assertThat(stage.time).isEqualTo(peak.at());
    assertThat(stage.camera.eye()).isEqualTo(Studio.HOUSE.eyes().get(0).position());
    Vec3 toward = peak.place().minus(stage.camera.eye()).unit();
    assertThat(stage.camera.forward().dot(toward)).isGreaterThan(0.9999);
  }

  @Test
  void presentingStepsThroughTheStopsAndBack() {
    press("Enter");
    assertThat(stage.presenting).isTrue();
    assertThat(stage.look).isEqualTo(Stage.Look.AS_LIT);
    String first = stage.surface.orElseThrow();
    press("Right");
    assertThat(stage.surface.orElseThrow()).isNotEqualTo(first);
    press("Left");
    assertThat(stage.surface).contains(first);
    press("Esc");
    assertThat(stage.presenting).isFalse();
  }

  @Test
  void theStrengthDialSaysItsFactor() {
    assertThat(Legend.strength(stage)).isEqualTo("ridges ×1, true");
    press("X");
    assertThat(Legend.strength(stage)).isEqualTo("ridges ×2, exaggerated");
  }

  @Test
  void wallsStopAndSlideAStep() {
    Walker walker = new Walker(Studio.HOUSE);
    Vec3 middle = new Vec3(2.6, 4, 1.6);
    assertThat(walker.step(middle, new Vec2(0.3, 0.2))).isEqualTo(new Vec3(2.9, 4.2, 1.6));
    Vec3 near = new Vec3(5.0 - 0.05, 4, 1.6);
    Vec3 slid = walker.step(near, new Vec2(0.3, 0.2));
    assertThat(slid).isEqualTo(new Vec3(near.x(), 4.2, 1.6));
    Vec3 at = middle;
    for (int i = 0; i < 100; i++) {
      at = walker.step(at, new Vec2(0.13, -0.17));
    }
    assertThat(walker.room(at)).isPresent();
  }

  @Test
  void theDayTurnsWithTheClock() {
    var before = stage.time;
    press("Right");
    assertThat(stage.time).isEqualTo(before.plusMinutes(15));
    controls.press(new Controls.Press("Up", true), 1.6);
    assertThat(stage.time).isEqualTo(before.plusMinutes(15).plusMonths(1));
  }

  @Test
  void windowAndCameraAreRemembered(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("deep").resolve("view.properties");
    Path scene = Path.of("scenes", "one-room.json");
    Remembered first = new Remembered(file, scene);
    assertThat(first.camera()).isEmpty();
    Camera camera = Camera.from(new Vec3(1, 2, 1.6), new Vec3(4, 4, 2));
    first.keep(new Window.Place(10, 20, 1000, 700), camera);
    Remembered second = new Remembered(file, scene);
    assertThat(second.camera()).contains(camera);
    assertThat(second.place()).isEqualTo(new Window.Place(10, 20, 1000, 700));
    assertThat(new Remembered(file, Path.of("other.json")).camera()).isEmpty();
    java.nio.file.Files.writeString(file, "window=1,2,x\n\\u00zz");
    assertThat(new Remembered(file, scene).place().width()).isEqualTo(1280);
  }

  @Test
  void choosingNothingLeavesNothingChosen() {
    press("N");
    controls.choose(Optional.empty());
    assertThat(stage.surface).isEmpty();
    assertThat(stage.focus).isEmpty();
  }
}
