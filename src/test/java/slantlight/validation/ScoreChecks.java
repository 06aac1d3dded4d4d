package slantlight.validation;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import slantlight.TestHouses;
import slantlight.decide.Verdict;
import slantlight.decide.Verdicts;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.EnergyBalance;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Distribution;
import slantlight.scene.GivenJoint;
import slantlight.scene.GroundKind;
import slantlight.scene.GroundZone;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Paint;
import slantlight.scene.PrescribedLight;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.score.HouseScore;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.score.SurfaceScore;
import slantlight.score.Variants;
import slantlight.sky.SkyModel;
import slantlight.sky.Weather;
import slantlight.units.Progress;

/** What every taper and painter knows, asked of the whole chain. */
final class ScoreChecks {
  private static final String PRACTICE = "common practice, no source";
  private static final String SUBJECT = "Trade facts and demo scenes";
  private static final Paint PALE = new Paint(0.85, Sheen.FLAT);
  private static final String CEILING = "room/ceiling";

  /** A room 6 m wide and 8 m deep with glass 5 m wide from the floor nearly to the ceiling. */
  private static final House TALL_GLASS = TestHouses.boxRoom(6, 8, 2.75, 0.5, 5.5, 0, 2.44, 0.85);

  private ScoreChecks() {}

  static List<Check> all() {
    List<Check> out = new ArrayList<>();
    out.add(acrossAndAlong());
    out.add(noHeight());
    out.add(longerBoards());
    out.add(darkPaint());
    out.add(sconce());
    out.add(water());
    out.addAll(lakeHouse());
    for (String scene : List.of("one-room", "lake-house", "wide-glass", "narrow-glass")) {
      out.add(energy(scene));
    }
    return out;
  }

  /** Ceiling plane of the box room: u east from x = 0, v south from y = depth. */
  private static Check acrossAndAlong() {
    House grey =
        TALL_GLASS.withPrescribed(
            new PrescribedLight(Optional.empty(), 0, 16, 5000, OptionalDouble.of(1000)));
    double across =
        peak(
            Variants.joints(grey, CEILING, Variants.joint(JointKind.TAPERED, 2.5, 5, 3.5, 5)),
            CEILING);
    double along =
        peak(
            Variants.joints(grey, CEILING, Variants.joint(JointKind.TAPERED, 3, 4.5, 3, 5.5)),
            CEILING);
    return Check.fact(
        SUBJECT,
        "under a grey sky a ceiling joint across the light of a glass wall shows; the same joint"
            + " along it, in the middle of the room, stays quiet",
        PRACTICE,
        figures("across %.1f, along %.1f", across, along),
        across > 1 && along < 0.25);
  }

  private static Check noHeight() {
    House flat =
        Variants.joints(
            TALL_GLASS,
            CEILING,
            new GivenJoint(
                Optional.empty(),
                JointKind.TAPERED,
                new Vec2(2, 5),
                new Vec2(4, 5),
                OptionalDouble.of(0),
                OptionalDouble.empty()));
    double s = peak(flat, CEILING);
    double tall =
        peak(
            Variants.joints(TALL_GLASS, CEILING, Variants.joint(JointKind.TAPERED, 2, 5, 4, 5)),
            CEILING);
    return Check.fact(
        SUBJECT,
        "a joint measured without any height shows no relief",
        "identity",
        figures("%.2f against %.2f", s, tall),
        s < 0.1 * tall);
  }

  private static Check longerBoards() {
    SurfaceScore shorter = ceiling(withBoards(TALL_GLASS, 8));
    SurfaceScore longer = ceiling(withBoards(TALL_GLASS, 16, 14, 12, 10, 8));
    return Check.fact(
        SUBJECT,
        "longer boards remove butt joints and never raise the length that shows",
        PRACTICE,
        figures(
            "butt %.1f m with 8 ft boards, %.1f m with boards to 16 ft",
            butts(shorter), butts(longer)),
        butts(longer) < butts(shorter) && shown(longer) <= shown(shorter) + 1e-9);
  }

  private static Check darkPaint() {
    House wall =
        Variants.joints(
            TestHouses.boxRoom(5, 5, 2.75, 1.5, 3.5, 0.9, 2.1, 0.85),
            "room/north",
            Variants.joint(JointKind.TAPERED, 1, 1.2, 4, 1.2));
    double pale = peak(wall, "room/north");
    double black = peak(Variants.paint(wall, new Paint(0.04, Sheen.EGGSHELL)), "room/north");
    return Check.fact(
        SUBJECT,
        "a wall repainted from pale flat to near-black eggshell shows what the pale coat hid",
        PRACTICE,
        figures("pale %.2f, near-black %.2f", pale, black),
        pale < 1 && black >= 1 && black > 1.5 * pale);
  }

  private static Check sconce() {
    House dark = TestHouses.boxRoom(5, 5, 2.75, 1.5, 3.5, 0.9, 2.1, 0.85).withOpenings(List.of());
    House jointed =
        Variants.joints(dark, CEILING, Variants.joint(JointKind.TAPERED, 1.5, 4, 3.5, 4));
    Distribution upDown = Distribution.Named.UP_DOWN;
    // South wall is at v = 5 in the ceiling plane: the joint runs 1 m from it.
    House near =
        Variants.lamps(
            jointed,
            Variants.lamp(
                "room", new Vec3(2.5, 0.1, 2.6), Vec3.DOWN, Distribution.Named.BARE, 800));
    House low =
        Variants.lamps(
            jointed, Variants.lamp("room", new Vec3(2.5, 0.1, 1.5), Vec3.DOWN, upDown, 800));
    double a = peak(near, CEILING);
    double b = peak(low, CEILING);
    return Check.fact(
        SUBJECT,
        "a sconce 150 mm below the ceiling rakes it harder than an up/down light at 1.5 m",
        PRACTICE,
        figures("near %.1f, low %.1f", a, b),
        a > 1 && a > 2 * b);
  }

  /**
   * Winter noon, sun 22 degrees up: a ceiling 6 m in from the glass, over grass and over a lake.
   */
  private static Check water() {
    GroundZone lake =
        new GroundZone(
            "lake",
            "lake",
            GroundKind.WATER,
            TestHouses.rectangle(-300, -600, 300, -3),
            -0.5,
            0.06,
            false,
            2);
    double over = alongCeiling(Variants.ground(TALL_GLASS, lake));
    double without = alongCeiling(TALL_GLASS);
    return Check.fact(
        SUBJECT,
        "a lake before the glass throws the winter sun up along a ceiling: more than three times"
            + " the raking light of grass",
        PRACTICE,
        figures("lake %.1f klx, grass %.1f klx", over / 1000, without / 1000),
        over > 3 * without);
  }

  private static double alongCeiling(House house) {
    ZonedDateTime noon = ZonedDateTime.of(2026, 12, 21, 12, 10, 0, 0, house.site().zone());
    SamplePoint place =
        new SamplePoint(
            new Frame(new Vec3(3, 6, 2.749), Vec3.EAST, Vec3.NORTH.times(-1), Vec3.DOWN), "room");
    LightState state = new LightState(SkyModel.at(house.site(), noon, Weather.CLEAR), List.of());
    return Math.abs(
        Transport.of(house, TransportOptions.DEFAULT, Progress.NONE)
            .incident(place, state)
            .lightVector()
            .y());
  }

  /** A clear spring noon with every lamp on: what enters is absorbed or leaves again. */
  private static Check energy(String scene) {
    House house = Rooms.scene(scene);
    Transport light = Transport.of(house, TransportOptions.DEFAULT, Progress.NONE);
    ZonedDateTime noon = ZonedDateTime.of(2026, 3, 20, 12, 0, 0, 0, house.site().zone());
    EnergyBalance balance =
        light.energy(
            new LightState(
                SkyModel.at(house.site(), noon, Weather.CLEAR),
                Collections.nCopies(house.lamps().size(), 1.0)));
    return Check.fact(
        SUBJECT,
        "demo scene " + scene + ": absorbed + escaped = entered within 0.5 %",
        "conservation of energy",
        "within 0.5 %",
        Math.abs(balance.imbalance()) <= 0.005 && balance.entered() > 0);
  }

  /** The demo house, sampled coarsely: what the levels come out at. */
  private static List<Check> lakeHouse() {
    House house = Rooms.scene("lake-house");
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 30))
            .withStep(60)
            .withSpacing(1);
    HouseScore score = Scorer.score(house, options, Progress.NONE);
    List<Verdict> verdicts = Verdicts.of(score);
    List<Check> out = new ArrayList<>();
    out.add(
        levels(
            house,
            verdicts,
            "closets and laundries do not earn level 5",
            EnumSet.of(RoomUse.CLOSET, RoomUse.LAUNDRY),
            v -> v.level() < 5));
    out.add(
        levels(
            house,
            verdicts,
            "black paint earns level 5 wherever its joints can be seen",
            EnumSet.of(RoomUse.STUDY),
            v ->
                house.surface(v.surfaceId()).paint().lrv() > 0.1
                    || score.surface(v.surfaceId()).worst().isEmpty()
                    || v.level() == 5));
    out.add(
        levels(
            house,
            verdicts,
            "a garage stays at its standard's level",
            EnumSet.of(RoomUse.GARAGE),
            v -> v.level() <= 2));
    out.add(
        levels(
            house,
            verdicts,
            "a wall that tile covers stays a substrate",
            EnumSet.of(RoomUse.BATH),
            v -> coveredShare(house.surface(v.surfaceId())) < 0.9 || v.level() <= 2));
    long stairs =
        verdicts.stream()
            .filter(v -> house.room(house.surface(v.surfaceId()).roomId()).use() == RoomUse.STAIR)
            .filter(v -> v.level() == 5)
            .count();
    out.add(
        Check.fact(
            SUBJECT,
            "demo house: tall stair-hall walls under up/down sconces and a high window earn level 5",
            PRACTICE,
            stairs + " surfaces of the stair hall at level 5",
            stairs >= 2));
    return out;
  }

  private static Check levels(
      House house,
      List<Verdict> verdicts,
      String what,
      Set<RoomUse> uses,
      Predicate<Verdict> rule) {
    List<Verdict> asked =
        verdicts.stream()
            .filter(v -> uses.contains(house.room(house.surface(v.surfaceId()).roomId()).use()))
            .toList();
    long good = asked.stream().filter(rule).count();
    return Check.fact(
        SUBJECT,
        "demo house: " + what,
        PRACTICE,
        good + " of " + asked.size() + " surfaces",
        !asked.isEmpty() && good == asked.size());
  }

  private static double coveredShare(Surface s) {
    return s.covered().stream().mapToDouble(r -> Math.abs(Face.signedArea(r))).sum()
        / s.face().area();
  }

  private static House withBoards(House h, int... feet) {
    List<BoardSize> sizes = new ArrayList<>();
    for (int f : feet) {
      sizes.add(new BoardSize(4 * 0.3048, f * 0.3048));
    }
    BoardOffer offer =
        new BoardOffer(sizes, 0.0127, BoardRun.ACROSS_FRAMING, Double.POSITIVE_INFINITY);
    return Variants.surfaces(
        h,
        s ->
            s.id().equals(CEILING)
                ? new Surface(
                    s.id(),
                    s.label(),
                    s.roomId(),
                    s.kind(),
                    s.face(),
                    PALE,
                    true,
                    s.framing(),
                    Optional.of(offer),
                    OptionalInt.empty(),
                    List.of(),
                    List.of())
                : s);
  }

  private static double butts(SurfaceScore s) {
    return s.layout().joints().stream()
        .filter(j -> j.kind() != JointKind.TAPERED)
        .mapToDouble(j -> j.length())
        .sum();
  }

  /** Showing-weighted length at level 4. */
  private static double shown(SurfaceScore s) {
    return s.joints().stream()
        .mapToDouble(j -> j.visibleLength() * Math.max(0, j.atLevel(4).peakShowing() - 1))
        .sum();
  }

  private static SurfaceScore ceiling(House h) {
    return score(h, CEILING).surface(CEILING);
  }

  private static double peak(House h, String surfaceId) {
    return score(h, surfaceId).surface(surfaceId).atLevel(4).peakShowing();
  }

  private static HouseScore score(House h, String surfaceId) {
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 15))
            .withStep(20)
            .withSurfaces(Set.of(surfaceId));
    return Scorer.score(h, options, Progress.NONE);
  }

  private static String figures(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
