package slantlight.validation;

import java.util.ArrayList;
import java.util.List;
import slantlight.decide.RegionalScale;
import slantlight.decide.StandardRule;
import slantlight.decide.StandardRule.Coating;
import slantlight.decide.StandardRule.RakingLight;
import slantlight.scene.LevelScale;
import slantlight.scene.Paint;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;

/** Finish levels as the published tables assign them. */
public final class LevelChecks {
  private static final String SUBJECT = "Finish levels";
  private static final String GA = "GA-214 / ASTM C840, typical uses of the level";
  private static final Paint FLAT = new Paint(0.8, Sheen.FLAT);

  private LevelChecks() {}

  public static List<Check> all() {
    List<Check> out = new ArrayList<>();
    out.add(row("plenum", GA, 1, RoomUse.PLENUM, Coating.SMOOTH_PAINT, FLAT, RakingLight.CRITICAL));
    out.add(row("attic", GA, 1, RoomUse.ATTIC, Coating.SMOOTH_PAINT, FLAT, RakingLight.CRITICAL));
    out.add(row("garage", GA, 2, RoomUse.GARAGE, Coating.SMOOTH_PAINT, FLAT, RakingLight.CRITICAL));
    out.add(row("storage", GA, 2, RoomUse.STORAGE, Coating.SMOOTH_PAINT, FLAT, RakingLight.GENTLE));
    out.add(row("substrate for tile", GA, 2, RoomUse.BATH, Coating.TILE, FLAT, RakingLight.GENTLE));
    out.add(living("medium or heavy texture", 3, Coating.HEAVY_TEXTURE, FLAT, RakingLight.GENTLE));
    out.add(living("heavy wallcovering", 3, Coating.HEAVY_COVERING, FLAT, RakingLight.GENTLE));
    out.add(living("light texture", 4, Coating.LIGHT_TEXTURE, FLAT, RakingLight.GENTLE));
    out.add(living("light wallcovering", 4, Coating.LIGHT_COVERING, FLAT, RakingLight.GENTLE));
    out.add(
        living("flat paint, no critical light", 4, Coating.SMOOTH_PAINT, FLAT, RakingLight.GENTLE));
    out.add(
        living("flat paint, severe lighting", 5, Coating.SMOOTH_PAINT, FLAT, RakingLight.CRITICAL));
    for (Sheen s : List.of(Sheen.SEMI_GLOSS, Sheen.GLOSS, Sheen.HIGH_GLOSS)) {
      Paint paint = new Paint(0.8, s);
      String what = s.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-') + " paint";
      out.add(living(what, 5, Coating.SMOOTH_PAINT, paint, RakingLight.GENTLE));
    }
    out.add(
        row(
            "MPI gloss class G2, light not critical",
            "MPI reading: G1 and G2 over level 4 unless critical light",
            4,
            RoomUse.LIVING,
            Coating.SMOOTH_PAINT,
            new Paint(0.8, Sheen.VELVET),
            RakingLight.NOTICEABLE));
    out.add(
        row(
            "MPI gloss class G3 where joints can be noticed",
            "MPI reading: G3 and above over level 5",
            5,
            RoomUse.LIVING,
            Coating.SMOOTH_PAINT,
            new Paint(0.8, Sheen.EGGSHELL),
            RakingLight.NOTICEABLE));
    out.add(
        row(
            "dark tone (LRV 10), flat",
            "AS/NZS 2589:2017, level 5 for mid and dark tones",
            5,
            RoomUse.LIVING,
            Coating.SMOOTH_PAINT,
            new Paint(0.1, Sheen.FLAT),
            RakingLight.GENTLE));
    for (RoomUse use : List.of(RoomUse.CLOSET, RoomUse.LAUNDRY)) {
      out.add(
          row(
              use.name().toLowerCase(java.util.Locale.ROOT) + " under semi-gloss",
              "common practice, no source: service rooms do not earn level 5",
              4,
              use,
              Coating.SMOOTH_PAINT,
              new Paint(0.8, Sheen.SEMI_GLOSS),
              RakingLight.CRITICAL));
    }
    String map = "cross-map of practice, from memory";
    out.add(name("level 5 as a Q class", map, "Q4", LevelScale.EUROPE_Q, 5));
    out.add(name("level 3 as a Q class", map, "Q2", LevelScale.EUROPE_Q, 3));
    out.add(name("level 4 in AS/NZS 2589", "AS/NZS 2589:2017, 3.1.4", "L4", LevelScale.AS_NZS, 4));
    out.add(name("level 5 in AS/NZS 2589", "AS/NZS 2589:2017, 3.1.5", "L5", LevelScale.AS_NZS, 5));
    return out;
  }

  private static Check living(
      String what, int level, Coating coating, Paint paint, RakingLight light) {
    return row(what, GA, level, RoomUse.LIVING, coating, paint, light);
  }

  private static Check row(
      String what,
      String source,
      int level,
      RoomUse use,
      Coating coating,
      Paint paint,
      RakingLight light) {
    int ours = StandardRule.of(new StandardRule.Situation(use, coating, paint, light)).level();
    return Check.near(SUBJECT, what, source, level, ours, 0, 0);
  }

  private static Check name(
      String what, String source, String published, LevelScale scale, int level) {
    String ours = RegionalScale.name(scale, level);
    boolean same = ours.equals(published);
    return new Check(SUBJECT, what, source, published, ours, same ? "same" : "other", same);
  }
}
