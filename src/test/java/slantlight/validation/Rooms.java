package slantlight.validation;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.PrescribedLight;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Site;
import slantlight.sky.CieSky;
import slantlight.sky.SkyModel;
import slantlight.sky.Sun;
import slantlight.sky.SunPath;
import slantlight.sky.Weather;

/** Demo scenes and parts of them, for checks of the whole chain. */
final class Rooms {
  private static final int CLEAR_SKY = 12;

  private Rooms() {}

  static House scene(String name) {
    return ((Read.Ok) SceneReader.read(Path.of("scenes", name + ".json"))).house();
  }

  /**
   * A house whose light stands still as it is at one moment of clear weather: the sun is traced
   * where it is, not interpolated between places on a grid.
   */
  static House still(House h, ZonedDateTime at) {
    Site s = h.site();
    Sun sun = SunPath.at(s.latitudeDeg(), s.longitudeDeg(), s.elevation(), at.toInstant());
    SkyModel.Amounts amounts = SkyModel.of(s).amounts(sun, at.getDayOfYear(), Weather.CLEAR);
    CieSky sky = CieSky.ofHorizontal(CLEAR_SKY, sun.direction(), amounts.diffuse());
    List<Double> shares = h.lampShares(at.toLocalTime(), sun.altitude());
    List<Lamp> lit = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      if (shares.get(i) > 0) {
        lit.add(h.lamps().get(i));
      }
    }
    double ground = s.groundReflectance().get(at.getMonthValue() - 1);
    return h.withSite(onGround(s, Collections.nCopies(12, ground)))
        .withLamps(lit)
        .withPrescribed(
            new PrescribedLight(
                Optional.of(sun.direction()),
                amounts.beam(),
                CLEAR_SKY,
                sky.toward(0, 0, 1),
                OptionalDouble.empty()));
  }

  /** A site with other ground, month by month. */
  static Site onGround(Site s, List<Double> reflectance) {
    return new Site(
        s.latitudeDeg(),
        s.longitudeDeg(),
        s.zone(),
        s.elevation(),
        reflectance,
        s.haze(),
        s.clearShare(),
        s.skyline());
  }
}
