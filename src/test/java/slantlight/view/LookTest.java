package slantlight.view;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.scene.Read;
import slantlight.scene.Room;
import slantlight.scene.SceneReader;
import slantlight.sky.Weather;
import slantlight.units.Progress;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Target;

class LookTest {
  @Test
  void lake() throws Exception {
    Read r = SceneReader.read(Path.of("scenes/lake-house.json"));
    if (r instanceof Read.Faulty f) {
      throw new AssertionError(f.faults().toString());
    }
    House house = ((Read.Ok) r).house();
    ViewModel model = ViewModel.unscored(house);
    long t0 = System.nanoTime();
    HouseShape shape = new HouseShape(model);
    System.out.println("shape ms " + (System.nanoTime() - t0) / 1e6);
    ZonedDateTime at = ZonedDateTime.of(2026, 10, 18, 16, 30, 0, 0, house.site().zone());
    Stage stage = new Stage(at, Camera.fitting(shape.boxCorners(), shape.middle(), Math.toRadians(205), Math.toRadians(28), 888.0 / 514));
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        Screen screen = new Screen(model, 4);
        Target target = new Target(1280, 720, 4)) {
      screen.draw(target, stage, 1);
      target.read().write(Path.of("target/view/k1.png"));
      t0 = System.nanoTime();
      LightModel light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
      System.out.println("transport ms " + (System.nanoTime() - t0) / 1e6);
      List<RoomField> fields = new ArrayList<>();
      for (Room room : house.rooms()) {
        t0 = System.nanoTime();
        fields.add(new RoomField(light, shape, room.id(), Progress.NONE));
        System.out.println(room.id() + " field ms " + (System.nanoTime() - t0) / 1e6 + " MB " + (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / 1e6);
        if (fields.size() == 3) break;
      }
      t0 = System.nanoTime();
      LitMoment m = LitMoment.of(light, fields, new Moments(house).at(at, Weather.CLEAR), Optional.of("great-room"));
      System.out.println("moment ms " + (System.nanoTime() - t0) / 1e6 + " beams " + m.beams().size());
      screen.light(m);
      stage.look = Stage.Look.AS_LIT;
      t0 = System.nanoTime();
      screen.draw(target, stage, 1);
      System.out.println("draw ms " + (System.nanoTime() - t0) / 1e6);
      target.read().write(Path.of("target/view/k2.png"));
      Controls controls = new Controls(stage);
      controls.show(model, shape);
      controls.press(new Controls.Press("R", false), 1.6);
      screen.draw(target, stage, 1);
      target.read().write(Path.of("target/view/k3.png"));
      stage.keyCard = true;
      stage.split = Stage.Split.PAINTS;
      Dials.swatch(stage);
      screen.draw(target, stage, 1);
      target.read().write(Path.of("target/view/k4.png"));
      for (int i = 0; i < 3; i++) {
        t0 = System.nanoTime();
        screen.draw(target, stage, 1);
        target.read();
        System.out.println("draw ms " + (System.nanoTime() - t0) / 1e6);
      }
      gl.check();
    }
  }
}
