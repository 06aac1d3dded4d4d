package slantlight.scene;

import java.time.ZoneId;
import java.util.List;

/**
 * Where the house stands.
 *
 * @param latitudeDeg degrees north
 * @param longitudeDeg degrees east
 * @param elevation m above the sea
 * @param groundReflectance twelve values, January first
 * @param haze extinction coefficient of the clear atmosphere in Edn = Ext exp(-c m), 0.21 typical
 * @param clearShare twelve shares (0 to 1) of daylight time with a clear sky, January first
 * @param skyline far obstruction, by ascending azimuth; empty means a level horizon
 */
public record Site(
    double latitudeDeg,
    double longitudeDeg,
    ZoneId zone,
    double elevation,
    List<Double> groundReflectance,
    double haze,
    List<Double> clearShare,
    List<SkylinePoint> skyline) {
  public Site {
    groundReflectance = List.copyOf(groundReflectance);
    clearShare = List.copyOf(clearShare);
    skyline = List.copyOf(skyline);
  }

  /**
   * Skyline altitude toward an azimuth (both radians), linear between points, round the compass.
   */
  public double skylineAltitude(double azimuth) {
    if (skyline.isEmpty()) {
      return 0;
    }
    double full = 2 * Math.PI;
    double a = ((azimuth % full) + full) % full;
    for (int i = 0; i < skyline.size(); i++) {
      SkylinePoint p = skyline.get(i);
      SkylinePoint q = skyline.get((i + 1) % skyline.size());
      double span = ((q.azimuth() - p.azimuth()) % full + full) % full;
      double from = ((a - p.azimuth()) % full + full) % full;
      if (span == 0) {
        span = full;
      }
      if (from <= span) {
        return p.altitude() + (q.altitude() - p.altitude()) * from / span;
      }
    }
    return skyline.get(0).altitude();
  }
}
