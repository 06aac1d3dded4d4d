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
    Set<String> elsewhere = Set.of("K", "F", "rest", "click", "Ctrl", "Q", "drag", "wheel");
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

  /**
   * Where one stood and how one had turned the house comes back, and turning goes on from there.
   */
  @Test
  void aRememberedCameraIsTakenUpWhereItWasLeft() {
    controls.drag(140, -30);
    controls.wheel(3);
    Camera left = stage.camera;
    controls.goOutside(1.2);
    assertThat(stage.camera).isNotEqualTo(left);
    controls.stand(left);
    near(stage.camera, left);
    controls.drag(10, 0);
    Camera turned = stage.camera;
    controls.drag(-10, 0);
    near(stage.camera, left);
    assertThat(turned.eye().distance(left.eye())).isGreaterThan(0.1);
    Camera inside = Camera.from(new Vec3(2.6, 4, 1.6), new Vec3(1, 1, 1.5));
    controls.stand(inside);
    assertThat(stage.camera).isEqualTo(inside);
  }

  private static void near(Camera a, Camera b) {
    assertThat(a.eye().distance(b.eye())).isLessThan(1e-9);
    assertThat(a.forward().distance(b.forward())).isLessThan(1e-9);
  }

  @Test
  void choosingNothingLeavesNothingChosen() {
    press("N");
    controls.choose(Optional.empty());
    assertThat(stage.surface).isEmpty();
    assertThat(stage.focus).isEmpty();
  }
}
