package slantlight.sky;

import java.time.Instant;
import java.time.Month;
import java.time.ZonedDateTime;
import slantlight.geom.Vec3;
import slantlight.scene.PrescribedLight;
import slantlight.scene.Site;

/**
 * Sun, vault and ground of a site at an instant.
 *
 * <p>Amounts follow {@link Availability}, with the air mass scaled by the pressure of the site's
 * elevation; the vault's pattern is CIE type 12 when clear, 7 when partly cloudy and 1 when
 * overcast (ISO 15469:2004), scaled to the amount. A beam below the site's skyline is cut off; the
 * vault below the skyline is far land, a reflector of 0.1 (trees, worn land) under the open sky.
 * Build one model per site and share it: it holds what the skyline leaves of the vault.
 */
public final class SkyModel {
  /** Reflectance of far land below the skyline. */
  public static final double FAR_REFLECTANCE = 0.1;

  private final Site site;
  private final Skyline skyline;

  private SkyModel(Site site) {
    this.site = site;
    this.skyline = site.skyline().isEmpty() ? null : new Skyline(site);
  }

  /** The model of a site. */
  public static SkyModel of(Site site) {
    return new SkyModel(site);
  }

  /** One sky of a site; for many, keep {@link #of(Site)}. */
  public static SkyState at(Site site, ZonedDateTime at, Weather weather) {
    return of(site).at(at.toInstant(), weather);
  }

  /** The sky under a kind of weather. Black from the end of civil twilight; never NaN. */
  public SkyState at(ZonedDateTime at, Weather weather) {
    return at(at.toInstant(), weather);
  }

  /** The sky under a kind of weather. Black from the end of civil twilight; never NaN. */
  public SkyState at(Instant at, Weather weather) {
    Sun sun = SunPath.at(site.latitudeDeg(), site.longitudeDeg(), site.elevation(), at);
    ZonedDateTime local = at.atZone(site.zone());
    return at(sun, local.getDayOfYear(), local.getMonth(), weather);
  }

  /**
   * The sky with the sun at a stated place.
   *
   * @param dayOfYear 1 to 366, for the sun's distance
   * @param month for the ground's reflectance
   */
  public SkyState at(Sun sun, int dayOfYear, Month month, Weather weather) {
    Amounts amounts = amounts(sun, dayOfYear, weather);
    CieSky sky = CieSky.ofHorizontal(typeOf(weather), sun.direction(), amounts.diffuse());
    return state(sun.direction(), amounts.beam(), sky, reflectance(month), Double.NaN);
  }

  /**
   * How much light there is before the skyline takes its share, lx.
   *
   * @param beam of the sun, square to it
   * @param diffuse of the open vault on level ground
   */
  public record Amounts(double beam, double diffuse) {}

  /** Amounts with the sun at a stated place; see {@link #at(Sun, int, Month, Weather)}. */
  public Amounts amounts(Sun sun, int dayOfYear, Weather weather) {
    Availability availability = Availability.of(weather, site.haze());
    double beam = 0;
    if (sun.altitude() > 0) {
      double pressureShare = SunPath.pressure(site.elevation()) / SunPath.pressure(0);
      beam =
          availability.directNormal(
              Availability.extraterrestrial(dayOfYear),
              Availability.airMass(sun.altitude()) * pressureShare);
    }
    return new Amounts(beam, availability.horizontal(sun.altitude()));
  }

  /**
   * The vault alone, as if the sun sent no beam: one of the two parts of which every sky is a sum.
   *
   * @param sun unit vector that places the bright region
   * @param diffuse illuminance of the open vault on level ground, lx
   * @param reflectance of the general ground
   */
  public SkyState vaultOnly(Vec3 sun, Weather weather, double diffuse, double reflectance) {
    CieSky sky = CieSky.ofHorizontal(typeOf(weather), sun, diffuse);
    return state(sun, 0, sky, reflectance, Double.NaN);
  }

  /**
   * The sun's beam alone under a black vault, far land below the skyline lit by it; not cut off by
   * the skyline: the other of the two parts.
   *
   * @param sun unit vector toward the sun
   * @param beam illuminance square to it, lx
   * @param reflectance of the general ground
   */
  public SkyState beamOnly(Vec3 sun, double beam, double reflectance) {
    CieSky black = CieSky.ofHorizontal(CieSky.UNIFORM, sun, 0);
    SkyState state = state(sun, beam, black, reflectance, Double.NaN);
    return new SkyState(
        sun,
        beam,
        state.luminance(),
        state.diffuseHorizontalLux(),
        reflectance,
        state.groundLuminance());
  }

  /** True when the skyline lets the beam from a unit direction pass. */
  public boolean clears(Vec3 sun) {
    return skyline == null || skyline.isAbove(sun.x(), sun.y(), sun.z());
  }

  /**
   * Light that is stated outright. Without a sun the bright region of a sky type that has one is
   * put in the zenith; types 1, 3, 5 and 16 have none. The site's skyline still stands.
   *
   * @param month for the ground's reflectance
   */
  public SkyState prescribed(PrescribedLight light, Month month) {
    Vec3 sun = light.sunDirection().map(Vec3::unit).orElse(Vec3.UP);
    double beam = light.sunDirection().isPresent() && sun.z() > 0 ? light.sunNormalLux() : 0;
    CieSky sky = CieSky.ofZenith(light.skyType(), sun, light.zenithLuminance());
    return state(sun, beam, sky, reflectance(month), light.groundLuminance().orElse(Double.NaN));
  }

  /** CIE type that gives a kind of weather its pattern. */
  static int typeOf(Weather weather) {
    return switch (weather) {
      case CLEAR -> 12;
      case PARTLY_CLOUDY -> 7;
      case OVERCAST -> 1;
    };
  }

  private double reflectance(Month month) {
    return site.groundReflectance().get(month.getValue() - 1);
  }

  private SkyState state(
      Vec3 sun, double beam, CieSky sky, double reflectance, double groundLuminance) {
    double open = sky.horizontalLux();
    if (skyline == null) {
      return new SkyState(sun, beam, sky, open, reflectance, groundLuminance);
    }
    double global = open + beam * Math.max(0, sun.z());
    SkylineSky cut = new SkylineSky(sky, skyline, FAR_REFLECTANCE * global / Math.PI);
    float[] zones = new float[SkyZones.COUNT];
    SkyZones.luminances(cut, zones, 0, 1);
    double beamLeft = clears(sun) ? beam : 0;
    return new SkyState(
        sun, beamLeft, cut, SkyZones.horizontalLux(zones), reflectance, groundLuminance);
  }
}
