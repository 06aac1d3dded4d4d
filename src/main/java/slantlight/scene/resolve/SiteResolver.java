package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import slantlight.geom.Vec3;
import slantlight.scene.PrescribedLight;
import slantlight.scene.Rates;
import slantlight.scene.Site;
import slantlight.scene.SkylinePoint;
import slantlight.scene.file.SceneFile.PrescribedFile;
import slantlight.scene.file.SceneFile.PrescribedSunFile;
import slantlight.scene.file.SceneFile.RatesFile;
import slantlight.scene.file.SceneFile.SiteFile;
import slantlight.scene.file.Values;
import slantlight.units.LengthUnit;

/** Resolves the site, prices and prescribed light. */
final class SiteResolver {
  private static final double USUAL_HAZE = 0.21;
  private static final double USUAL_REFLECTANCE = 0.2;
  private static final double USUAL_CLEAR_SHARE = 0.5;

  private final Scope scope;

  SiteResolver(Scope scope) {
    this.scope = scope;
  }

  Site site(SiteFile s) {
    Site site =
        new Site(
            s.latitude(),
            s.longitude(),
            s.zone().id(),
            s.elevation() == null ? 0 : s.elevation().metres(),
            monthly(s.groundReflectance(), USUAL_REFLECTANCE),
            s.haze() == null ? USUAL_HAZE : s.haze(),
            monthly(s.clearShare(), USUAL_CLEAR_SHARE),
            skyline(s));
    if (!Resolver.plausible(site)) {
      scope.warn(
          s,
          "longitude",
          "longitude " + s.longitude() + " lies far from the zone " + s.zone().id(),
          "degrees east are positive, so the Americas are negative");
    }
    return site;
  }

  private static List<Double> monthly(Values.Monthly m, double otherwise) {
    return m == null ? Collections.nCopies(12, otherwise) : m.values();
  }

  private List<SkylinePoint> skyline(SiteFile s) {
    List<SkylinePoint> out = new ArrayList<>();
    for (Values.Pair p : s.skyline() == null ? List.<Values.Pair>of() : s.skyline()) {
      double azimuth = ((p.first() % 360) + 360) % 360;
      if (out.stream().anyMatch(o -> Math.abs(Math.toDegrees(o.azimuth()) - azimuth) < 1e-9)) {
        scope.fault(p, "the skyline has this azimuth twice", "give each azimuth once");
      }
      out.add(new SkylinePoint(Math.toRadians(azimuth), Math.toRadians(p.second())));
    }
    out.sort(Comparator.comparingDouble(SkylinePoint::azimuth));
    return out;
  }

  Rates rates(RatesFile r) {
    double length = (scope.binder().units().imperial() ? LengthUnit.FT : LengthUnit.M).metres();
    double area = length * length;
    Map<Integer, Double> byLevel = new TreeMap<>();
    if (r.perAreaByLevel() != null) {
      r.perAreaByLevel().values().forEach((level, money) -> byLevel.put(level, money / area));
    }
    return new Rates(
        r.currency() == null ? "money" : r.currency(),
        byLevel,
        Optional.ofNullable(r.perBoardArea()).map(m -> m / area),
        Optional.ofNullable(r.perJointLength()).map(m -> m / length),
        r.highFactor() == null ? 1 : r.highFactor(),
        r.highFrom() == null ? 10 * LengthUnit.FT.metres() : r.highFrom().metres(),
        Optional.ofNullable(r.perShadeArea()).map(m -> m / area),
        Optional.ofNullable(r.perLamp()));
  }

  PrescribedLight prescribed(PrescribedFile p) {
    Optional<PrescribedSunFile> sun = Optional.ofNullable(p.sun());
    return new PrescribedLight(
        sun.map(
            s -> Vec3.ofAzimuthAltitude(Math.toRadians(s.azimuth()), Math.toRadians(s.altitude()))),
        sun.map(PrescribedSunFile::lux).orElse(0.0),
        p.skyType() == null ? 5 : p.skyType(),
        p.zenithLuminance(),
        p.groundLuminance() == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(p.groundLuminance()));
  }
}
