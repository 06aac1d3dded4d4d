package slantlight.view;

import java.time.ZonedDateTime;
import slantlight.light.LightState;
import slantlight.scene.House;
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
    double altitude = Almanac.sun(house, time).altitude();
    return new LightState(state, house.lampShares(time.toLocalTime(), altitude));
  }
}
