package slantlight.sky;

import slantlight.scene.Site;

/** A site's far skyline, with the share it leaves of each part of the vault. */
final class Skyline {
  private final Site site;
  private final float[] clear;

  Skyline(Site site) {
    this.site = site;
    this.clear = SkyZones.clearShares(site::skylineAltitude);
  }

  /** Share of a sub-direction of {@link SkyZones} that is open sky. */
  float clear(int subDirection) {
    return clear[subDirection];
  }

  /** True when a unit direction points above the skyline. */
  boolean isAbove(double dx, double dy, double dz) {
    double altitude = site.skylineAltitude(Math.atan2(dx, dy));
    return dz > Math.sin(altitude);
  }
}
