package slantlight.validation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import slantlight.TestHouses;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.SourceKind;
import slantlight.scene.Eye;
import slantlight.scene.GivenJoint;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Site;
import slantlight.score.Peak;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.score.Variants;
import slantlight.sight.EyeModel;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;
import slantlight.sky.Availability;
import slantlight.sky.SunPath;
import slantlight.units.Progress;

/** How the largest showing of the year moves with what nobody knows well, against physics. */
final class SensitivityChecks {
  private static final String SUBJECT = "What moves a showing, and how far";
  private static final String CEILING = "room/ceiling";

  /** A room 4 m wide and 6 m deep with glass from the floor nearly to the ceiling. */
  private static final House ROOM = TestHouses.boxRoom(4, 6, 2.6, 0.4, 3.6, 0, 2.3, 0.85);

  private SensitivityChecks() {}

  static List<Check> all() {
    List<Check> out = new ArrayList<>();
    out.addAll(heights());
    out.addAll(ground());
    out.add(eyes());
    out.add(haze());
    return out;
  }

  /** Flat paint, small tilt: contrast is slant times slope, and slope goes with height. */
  private static List<Check> heights() {
    double low = ceiling(ROOM, 0.7);
    double usual = ceiling(ROOM, 1);
    double high = ceiling(ROOM, 1.3);
    double exponent = Math.log(high / low) / Math.log(1.3 / 0.7);
    double faint = Math.log(ceiling(ROOM, 0.5) / ceiling(ROOM, 0.25)) / Math.log(2);
    return List.of(
        Check.fact(
            SUBJECT,
            "ridge height 30 % down and up: showing goes with its power 0.95 to 1.05",
            "C = slant x slope under matt paint (docs/model.md, section 3)",
            figures("%.1f, %.1f, %.1f: power %.2f", low, usual, high, exponent),
            Math.abs(exponent - 1) < 0.05),
        Check.fact(
            SUBJECT,
            "a ridge of a quarter and of half the height: the same power, as long as relief hides"
                + " the step from paper to compound",
            "C = slant x slope under matt paint (docs/model.md, section 3)",
            figures("power %.2f", faint),
            faint > 0.8 && faint < 1.05));
  }

  /** The sun never strikes a ceiling: what rakes it through the glass is the ground. */
  private static List<Check> ground() {
    double[] shares = {0.1, 0.2, 0.3, 0.7};
    double[] x = new double[shares.length];
    for (int i = 0; i < x.length; i++) {
      Site site = Rooms.onGround(ROOM.site(), Collections.nCopies(12, shares[i]));
      x[i] = ceiling(ROOM.withSite(site), 1);
    }
    boolean rises = true;
    boolean bounded = true;
    for (int i = 1; i < x.length; i++) {
      rises &= x[i] > x[i - 1];
      bounded &= x[i] / x[i - 1] <= Math.pow(shares[i] / shares[i - 1], 1.5);
    }
    return List.of(
        Check.fact(
            SUBJECT,
            "ground reflectance 0.1, 0.2, 0.3 and snow 0.7: the ceiling shows more each time",
            "light from below through the glass is what rakes a ceiling",
            figures("%.1f, %.1f, %.1f, %.1f", x[0], x[1], x[2], x[3]),
            rises),
        Check.fact(
            SUBJECT,
            "the same: never by more than the power 1.5 of the ground, 1 of light and at most 0.5"
                + " of the eye",
            "superposition; square-root law of de Vries 1943 and Rose 1948 as upper limit",
            "holds for every step",
            bounded));
  }

  /** One moment, one eye straight before a wall: only the eye's distance differs. */
  private static Check eyes() {
    double[] distances = {2, 2.5, 3};
    double[] x = new double[3];
    double[] expected = new double[3];
    JointRidge ridge = RidgeTable.standard().ridge(RidgeKind.TAPERED, 4);
    for (int i = 0; i < 3; i++) {
      double d = distances[i];
      House h = wall(ROOM.site(), new Vec3(d, 1.3, 0.9));
      Peak peak = noon(h);
      x[i] = peak.showing();
      double luminance = peak.illuminance() * h.surface("room/west").paint().lrv() / Math.PI;
      EyeModel eye = EyeModel.STANDARD;
      expected[i] =
          eye.pooled(
              gain(ridge.crown().width(), d, luminance) * ridge.crown().peakSlope(),
              gain(ridge.edge().width(), d, luminance) * ridge.edge().peakSlope());
    }
    boolean holds = true;
    for (int i = 0; i < 3; i += 2) {
      holds &= Math.abs(x[i] / x[1] / (expected[i] / expected[1]) - 1) < 0.05;
    }
    return Check.fact(
        SUBJECT,
        "an eye at 2, 2.5 and 3 m before a wall: showing goes as its sensitivity at the ridge's"
            + " frequency there, within 5 % for the little sheen of flat paint",
        "Barten 2003, at the frequency that the distance makes",
        figures("%.1f, %.1f, %.1f", x[0], x[1], x[2]),
        holds);
  }

  private static double gain(double width, double distance, double luminance) {
    return EyeModel.STANDARD.gain(EyeModel.frequency(width, distance, 1), luminance);
  }

  /** A wall that the sun itself rakes: haze takes beam, and with it slant and luminance. */
  private static Check haze() {
    double usual = 0.21;
    double hazy = 0.35;
    Vec3 eye = new Vec3(2.5, 1.3, 0.9);
    Peak clear = noon(wall(hazed(usual), eye));
    Peak dull = noon(wall(hazed(hazy), eye));
    Site site = ROOM.site();
    double altitude =
        SunPath.at(
                site.latitudeDeg(), site.longitudeDeg(), site.elevation(), clear.at().toInstant())
            .altitude();
    double left = Math.exp(-(hazy - usual) * Availability.airMass(altitude));
    double ratio = dull.showing() / clear.showing();
    return Check.fact(
        SUBJECT,
        "haze 0.21 to 0.35 before a wall that the sun rakes: it shows less, by no more than the"
            + " power 1.5 of the beam that is left",
        "Edn = Ext exp(-c m); square-root law of de Vries 1943 and Rose 1948 as upper limit",
        figures("%.2f, %.2f", clear.showing(), dull.showing()),
        clear.source().kind() == SourceKind.SUN && ratio < 1 && ratio > Math.pow(left, 1.5));
  }

  private static Site hazed(double haze) {
    Site s = ROOM.site();
    return new Site(
        s.latitudeDeg(),
        s.longitudeDeg(),
        s.zone(),
        s.elevation(),
        s.groundReflectance(),
        haze,
        s.clearShare(),
        s.skyline());
  }

  /** The west wall with one joint up the wall where the sun of a spring noon rakes it. */
  private static House wall(Site site, Vec3 eye) {
    House h =
        Variants.joints(
            ROOM.withSite(site),
            "room/west",
            Variants.joint(JointKind.TAPERED, 1.3, 0.7, 1.3, 1.1));
    return new House(
        h.name(),
        h.note(),
        h.site(),
        h.rooms(),
        h.surfaces(),
        h.openings(),
        h.lamps(),
        h.outside(),
        List.of(new Eye("room/eye", "before the wall", "room", eye, false)),
        h.rates(),
        h.prescribed(),
        h.scale());
  }

  private static Peak noon(House h) {
    ScoreOptions noon =
        ScoreOptions.standard()
            .withDays(List.of(80))
            .withStep(720)
            .withSpacing(1)
            .withSurfaces(Set.of("room/west"));
    return Scorer.score(h, noon, Progress.NONE).surface("room/west").worst().orElseThrow();
  }

  /** Peak of a tapered joint across the light, 3 m in, its heights scaled. */
  private static double ceiling(House h, double share) {
    JointRidge ridge = RidgeTable.standard().ridge(RidgeKind.TAPERED, 4);
    GivenJoint joint =
        new GivenJoint(
            Optional.empty(),
            JointKind.TAPERED,
            new Vec2(1.5, 3),
            new Vec2(2.5, 3),
            OptionalDouble.of(share * ridge.crown().height()),
            OptionalDouble.empty());
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(List.of(21, 111, 172, 264, 355))
            .withStep(60)
            .withSurfaces(Set.of(CEILING));
    return Scorer.score(Variants.joints(h, CEILING, joint), options, Progress.NONE)
        .surface(CEILING)
        .atLevel(4)
        .peakShowing();
  }

  private static String figures(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
