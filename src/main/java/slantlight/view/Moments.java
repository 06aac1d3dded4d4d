package slantlight.view;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import slantlight.light.LightState;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.sky.SkyModel;
import slantlight.sky.SkyState;
import slantlight.sky.Weather;

/** What shines at a moment: sky and sun by the sky model, lamps by their hours. */
final class Moments {
  private final House house;
  private final SkyModel sky;

  Moments(House house) {
    this.house = house;
    sky = SkyModel.of(house.site());
  }

  LightState at(ZonedDateTime time, Weather weather) {
    SkyState state =
        house
            .prescribed()
            .map(p -> sky.prescribed(p, time.getMonth()))
            .orElseGet(() -> sky.at(time, weather));
    List<Lamp> on = Almanac.lampsOn(house, time);
    List<Double> shares = new ArrayList<>();
    for (Lamp lamp : house.lamps()) {
      shares.add(on.contains(lamp) ? 1.0 : 0.0);
    }
    return new LightState(state, shares);
  }
}
